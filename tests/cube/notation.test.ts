/**
 * What is read, what it means, how it is written back. Sources: the World Cube Association Regulations, version of
 * January 1, 2024 (article 12a; guidelines 12a2+ and E2c4+), and the edition of April 14, 2010 for slices (12a13, 12a17);
 * `common practice, no source` where neither has it.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MOST_TURNS, readTurns } from '../../src/cube/notation.ts';
import { lengthOf, TURNS, type Turn, writeTurns } from '../../src/cube/turns.ts';
import { ALL_FACELETS, faceletAt, imagesOf } from './facelets.ts';
import { turnsIn } from './read.ts';

/**
 * The four stations of one sticker, as `face row column`, when a layer turns clockwise as seen from outside the face:
 * worked out by hand. Near is the face's own layer, far the opposite one.
 */
const STATIONS = {
  U: { near: 'F01 L01 B01 R01', middle: 'F11 L11 B11 R11', far: 'F21 L21 B21 R21' },
  D: { near: 'F21 R21 B21 L21', middle: 'F11 R11 B11 L11', far: 'F01 R01 B01 L01' },
  R: { near: 'F12 U12 B10 D12', middle: 'F11 U11 B11 D11', far: 'F10 U10 B12 D10' },
  L: { near: 'F10 D10 B12 U10', middle: 'F11 D11 B11 U11', far: 'F12 D12 B10 U12' },
  F: { near: 'U21 R10 D01 L12', middle: 'U11 R11 D11 L11', far: 'U01 R12 D21 L10' },
  B: { near: 'U01 L10 D21 R12', middle: 'U11 L11 D11 R11', far: 'U21 L12 D01 R10' },
} as const;
type Layer = 'near' | 'middle' | 'far';

const NEAR: readonly Layer[] = ['near'];
const OUTER_BLOCK: readonly Layer[] = ['near', 'middle'];
const SLICE: readonly Layer[] = ['middle'];
const WHOLE: readonly Layer[] = ['near', 'middle', 'far'];

/** Letter, the face whose direction it has, the layers that turn, the length of one turn, source. */
const MOVES: readonly (readonly [string, keyof typeof STATIONS, readonly Layer[], number, string])[] = [
  ['F', 'F', NEAR, 1, '12a1'],
  ['B', 'B', NEAR, 1, '12a1'],
  ['R', 'R', NEAR, 1, '12a1'],
  ['L', 'L', NEAR, 1, '12a1'],
  ['U', 'U', NEAR, 1, '12a1'],
  ['D', 'D', NEAR, 1, '12a1'],
  ['Fw', 'F', OUTER_BLOCK, 1, '12a2'],
  ['Bw', 'B', OUTER_BLOCK, 1, '12a2'],
  ['Rw', 'R', OUTER_BLOCK, 1, '12a2'],
  ['Lw', 'L', OUTER_BLOCK, 1, '12a2'],
  ['Uw', 'U', OUTER_BLOCK, 1, '12a2'],
  ['Dw', 'D', OUTER_BLOCK, 1, '12a2'],
  ['x', 'R', WHOLE, 0, '12a4'],
  ['y', 'U', WHOLE, 0, '12a4'],
  ['z', 'F', WHOLE, 0, '12a4'],
  ['M', 'L', SLICE, 2, '12a13 and 12a17 of 2010'],
  ['E', 'D', SLICE, 2, '12a13 and 12a17 of 2010'],
  ['S', 'F', SLICE, 2, '12a13 and 12a17 of 2010'],
];
// 12a1a-c, 12a2a-c, 12a4a-c: nothing, a prime, 2. Lengths: 12a5 (outer block turns).
const AMOUNTS = [
  ['', 1],
  ['2', 2],
  ["'", 3],
] as const;

const station = (text: string): number => faceletAt(text[0] as 'U', Number(text[1]), Number(text[2]));

describe.each(MOVES)('%s', (letter, face, layers, length) => {
  test.each(AMOUNTS)(`${letter}%s`, (suffix, quarters) => {
    const turns = turnsIn(letter + suffix);
    expect(writeTurns(turns)).toBe(letter + suffix);
    expect(lengthOf(turns)).toBe(length);
    const images = imagesOf(turns);
    for (const layer of WHOLE) {
      const stations = STATIONS[face][layer].split(' ').map(station);
      const by = layers.includes(layer) ? quarters : 0;
      expect(stations.map((s) => images[s - 1])).toEqual(stations.map((_, i) => stations[(i + by) % 4]));
    }
  });
});

test('these are all the turns that there are', () => {
  const all = MOVES.flatMap(([letter]) => AMOUNTS.map(([suffix]) => letter + suffix));
  expect([...all].sort()).toEqual(TURNS.map((t) => t.text).sort());
});

describe('spellings', () => {
  test.each([
    ['2Rw', 'Rw', 'guideline 12a2+'],
    ["2Uw'", "Uw'", 'guideline 12a2+'],
    ['2Fw2', 'Fw2', 'guideline 12a2+'],
    ["U2'", 'U2', '12a4 of 2010'],
    ["Rw2'", 'Rw2', 'common practice, no source'],
    ["x2'", 'x2', 'common practice, no source'],
    ['r', 'Rw', 'common practice, no source'],
    ["u'", "Uw'", 'common practice, no source'],
    ['f2', 'Fw2', 'common practice, no source'],
    ['R’ U′', "R' U'", 'common practice, no source'],
    ["RU2R'U'", "R U2 R' U'", 'common practice, no source'],
    ['R\u00a0U\n\tF  ', 'R U F', 'common practice, no source'],
    ["(R U R' U')3", "R U R' U' R U R' U' R U R' U'", 'common practice, no source'],
    ["(R U R')'", "R U' R'", 'guideline E2c4+ lists the form'],
    ["(R U)2'", "U' R' U' R'", 'common practice, no source'],
    ["((R U)2 F')'", "F U' R' U' R'", 'common practice, no source'],
    ['(R)', 'R', 'common practice, no source'],
    ['R2Rw', 'R2 Rw', 'a digit belongs to the turn before it; our choice'],
    ['', '', 'our choice'],
    ['  ', '', 'our choice'],
  ])('%j is %j (%s)', (text, normal) => {
    expect(writeTurns(turnsIn(text))).toBe(normal);
  });

  test('small letters of faces are noted, others are not', () => {
    expect(readTurns('R (u R)2')).toMatchObject({ ok: true, smallWide: true });
    expect(readTurns('Rw x M (U R)2')).toMatchObject({ ok: true, smallWide: false });
  });
});

/**
 * Guideline E2c4+ lists symbols that are not turns in Fewest Moves. M, r, R2' and (R U)' we add; Rr is R and r without
 * the space. The others stay errors.
 */
describe('guideline E2c4+', () => {
  test.each([
    ['M', 'M'],
    ['r', 'Rw'],
    ["R2'", 'R2'],
    ["(R U)'", "U' R'"],
    ['Rr', 'R Rw'],
  ])('%s is read as %s', (symbol, normal) => expect(writeTurns(turnsIn(symbol))).toBe(normal));

  test.each("e|Y|T|U1|Ui|U3|U-|R++|R'2|L'w|1R|2U|2f|2-3r|1Rw|3Rw|2-3Rw|rw|[r]|[F]|[R, U]|[R: U]|*|.|?".split('|'))(
    '%s is an error',
    (symbol) => {
      for (const text of [symbol, `F ${symbol} D`]) expect(readTurns(text).ok).toBe(false);
    },
  );
});

describe('writing back', () => {
  const anyTurns = fc.array(fc.constantFrom(...TURNS), { maxLength: 30 });

  test.each(['R R', "R R'", 'U D U', 'x x', "M M'", 'R2 R2', "Rw L'"])('%s: nothing is merged or reordered', (text) => {
    expect(writeTurns(turnsIn(text))).toBe(text);
  });

  test('reads back as the same turns', () => {
    fc.assert(
      fc.property(anyTurns, (turns) => {
        expect(turnsIn(writeTurns(turns))).toEqual(turns);
      }),
      { seed: 20240101, numRuns: 500 },
    );
  });

  /** Turns with groups around stretches of them, as text and as what they should be. */
  const { series } = fc.letrec<{ series: Spelt; group: Spelt; turn: Spelt }>((tie) => ({
    turn: fc.constantFrom(...TURNS).map((t) => ({ text: t.text, turns: [t] })),
    group: fc
      .tuple(tie('series'), fc.integer({ min: 1, max: 3 }), fc.boolean())
      .filter(([inner]) => inner.turns.length > 0)
      .map(([inner, times, spelt]) => ({
        text: `(${inner.text})${times > 1 || spelt ? times : ''}`,
        turns: Array.from({ length: times }, () => inner.turns).flat(),
      })),
    series: fc
      .array(fc.oneof({ depthSize: 'small', withCrossShrink: true }, tie('turn'), tie('group')), { maxLength: 4 })
      .map((parts) => ({ text: parts.map((p) => p.text).join(' '), turns: parts.flatMap((p) => p.turns) })),
  }));

  test('groups are written out in place', () => {
    fc.assert(
      fc.property(series, ({ text, turns }) => {
        fc.pre(turns.length <= MOST_TURNS);
        expect(turnsIn(text)).toEqual(turns);
      }),
      { seed: 20240102, numRuns: 500 },
    );
  });
});

interface Spelt {
  readonly text: string;
  readonly turns: readonly Turn[];
}

test('every facelet of every turn goes somewhere of its own', () => {
  for (const turn of TURNS) expect(new Set(imagesOf([turn])).size).toBe(ALL_FACELETS);
});
