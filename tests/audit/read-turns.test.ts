import { describe, expect, test } from 'vitest';
import { isPlainSequence, lengthOf, readTurns } from '../../src/audit/read-turns.ts';
import { afterTurns, sameStickers, undone } from '../../src/audit/stickers.ts';
import { randomWord, seeded } from './random.ts';

/** Spelled in one way: layer, then nothing, 2 or '. */
function plain(text: string): string {
  const read = readTurns(text);
  if (!read.ok) return `${read.at}: ${read.fault}`;
  return read.turns.map(({ layer, quarters }) => layer + ['', '', '2', "'"][quarters]).join(' ');
}

// Competition regulations, version of January 1, 2024: articles 12a1 (faces), 12a2 with guideline 12a2+ (wide), 12a4.
describe('the regulations’ notation', () => {
  const faces = ['F', 'B', 'R', 'L', 'U', 'D'];
  const wide = faces.map((face) => `${face}w`);
  const rotations = ['x', 'y', 'z'];
  const all = [...faces, ...wide, ...rotations].flatMap((layer) => ['', "'", '2'].map((suffix) => layer + suffix));
  test.each(all)('%s', (turn) => expect(plain(turn)).toBe(turn));
  test.each(faces)('2%sw is the same as without the 2', (face) => expect(plain(`2${face}w'`)).toBe(`${face}w'`));
});

describe('what the project adds', () => {
  test.each([
    ['r', 'Rw'],
    ["u'", "Uw'"],
    ['M E2 S’', "M E2 S'"],
    ['R′ U’', "R' U'"],
    ["R2'", 'R2'],
    ["Rw2′ x2'", 'Rw2 x2'],
    ["RUR'U'", "R U R' U'"],
    ['RrR2Rw2U', 'R Rw R2 Rw2 U'],
    ["  R\tU\n R' ", "R U R'"],
    ["(R U')3", "R U' R U' R U'"],
    ["(R U2 Fw')'", "Fw U2 R'"],
    ["((R U)2 D')'", "D U' R' U' R'"],
    ["(R(U M')' 2Rw)2F", "R M U' Rw R M U' Rw F"],
    ['(R U)1 (L)', 'R U L'],
    ['(R)12', Array(12).fill('R').join(' ')],
    ['(R)2 2Rw', 'R R Rw'],
    ['', ''],
  ])('%j reads as %s', (text, turns) => expect(plain(text)).toBe(turns));
});

describe('what is no notation', () => {
  // Guideline E2c4+ of the same version, without what the project reads on purpose: M, r, R2', Rr, (R U)'.
  const guideline = "e Y T U1 Ui U3 U- R++ R'2 L'w 1R 2U 2f 2-3r 1Rw 3Rw 2-3Rw rw [r] [F] [R,U] [R:U] * . ?".split(' ');
  test.each(guideline)('%s (guideline E2c4+)', (text) => expect(readTurns(text).ok).toBe(false));

  test.each([
    ["R ' U", 2, 'a prime of its own'],
    ['R 2', 2, 'a number of its own'],
    ["R''", 2, 'two primes'],
    ['R22', 2, 'two numbers'],
    ["R'2Rw", 2, "after a prime the 2 would be the guideline's R'2"],
    ['R,U', 1, 'a comma'],
    ['(R U', 0, 'never closed'],
    ['R) U', 1, 'never opened'],
    ['R () U', 3, 'empty group'],
    ['(R)0', 3, 'no times'],
    ["(R)2'", 4, 'repeats and an inverse at once'],
    ['(R) 3', 4, 'repeats after a space'],
    ['R 🙂', 2, 'not a letter'],
    ['((((R)99)99)99)99', 11, 'more turns than any human does'],
  ])('%j is refused at %i: %s', (text, at) => expect(readTurns(text)).toMatchObject({ ok: false, at }));

  test('a text longer than any human needs', () => {
    expect(readTurns('R'.repeat(10_000)).ok).toBe(true);
    expect(readTurns('R'.repeat(10_001))).toMatchObject({ ok: false, at: 10_000 });
  });

  test('deep nesting is read or refused, never thrown', () => {
    const deep = 50_000;
    expect(plain(`${'('.repeat(deep)}R${")'".repeat(deep)}`)).toBe('R');
    expect(readTurns('('.repeat(deep)).ok).toBe(false);
  });
});

test("a group's inverse undoes it", () => {
  const seed = 12;
  const pick = seeded(seed);
  for (let i = 0; i < 100; i++) {
    const word = randomWord(pick, ['U', 'R', 'f', 'Dw', 'M', 'E', 'x', 'z'], 10);
    const there = readTurns(word);
    const back = readTurns(`(${word})'`);
    if (!there.ok || !back.ok) throw new Error(`seed ${seed}: ${word}`);
    expect(sameStickers(afterTurns(back.turns), undone(afterTurns(there.turns))), `seed ${seed}: ${word}`).toBe(true);
  }
});

describe('length', () => {
  // Article 12a5 of the same version: faces and outer blocks 1, rotations 0. Slices 2: rules 12a17-12a19 of the 2010
  // edition.
  test.each([
    ["R U2 R'", 3],
    ["x Rw U' y2", 2],
    ["M' U M", 5],
    ['(R U)3', 6],
    ['', 0],
  ])('%j has %i', (text, length) => {
    const read = readTurns(text);
    expect(read.ok && lengthOf(read.turns)).toBe(length);
  });
});

test.each([
  ["R U2 R' x Rw'", true],
  ['', true],
  ['R  U', false],
  [' R', false],
  ['R U ', false],
  ['RU', false],
  ['R’', false],
  ['(R U)2', false],
])('%j is a plain sequence: %s', (text, is) => expect(isPlainSequence(text)).toBe(is));
