import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { faceletsOf, PLACES } from '../../src/audit/places.ts';
import { readTurns } from '../../src/audit/read-turns.ts';
import {
  afterTurns,
  againstCentres,
  followedBy,
  SOLVED,
  type Stickers,
  sameStickers,
  undone,
} from '../../src/audit/stickers.ts';
import { randomWord, seeded } from './random.ts';

function stickersOf(word: string): Stickers {
  const read = readTurns(word);
  if (!read.ok) throw new Error(`${word}: ${read.fault}`);
  return afterTurns(read.turns);
}

function orderOf(stickers: Stickers): number {
  let order = 1;
  for (let power = stickers; !sameStickers(power, SOLVED); power = followedBy(power, stickers)) order++;
  return order;
}

function cycleType(stickers: Stickers, facelets: number): string {
  const seen = new Set<number>();
  const lengths = new Map<number, number>();
  for (let i = 1; i <= facelets; i++) {
    let length = 0;
    for (let at = i; !seen.has(at); at = stickers[at]!, length++) seen.add(at);
    if (length > 0) lengths.set(length, (lengths.get(length) ?? 0) + 1);
  }
  return [...lengths]
    .sort(([a], [b]) => a - b)
    .map(([length, n]) => `${length}^${n}`)
    .join(' ');
}

interface Row {
  readonly word: string;
  readonly order: number;
  readonly cycles: string;
  readonly images: string;
}

function rowsOf(file: string): Row[] {
  const lines = readFileSync(new URL(`../data/${file}`, import.meta.url), 'utf8')
    .trimEnd()
    .split(/\r?\n/)
    .slice(1);
  return lines.map((line) => {
    const [word, order, , cycles, images] = line.split(',');
    return { word: word!, order: Number(order), cycles: cycles!, images: images! };
  });
}

// Computed for this project with GAP 4.12.1 on the generators that the published GAP example prints: tests/data/README.md.
describe.each([
  ['gap-words.csv', 108, 48],
  ['words-54.csv', 65, 54],
] as const)('%s', (file, words, facelets) => {
  const rows = rowsOf(file);

  test(`has ${words} words`, () => expect(rows).toHaveLength(words));

  test.each(rows.map((row) => [row.word || '(no turn)', row] as const))('%s', (_, row) => {
    const stickers = stickersOf(row.word);
    expect([...stickers.slice(1, facelets + 1)].join(' ')).toBe(row.images);
    expect(cycleType(stickers, facelets)).toBe(row.cycles);
    expect(orderOf(stickers)).toBe(row.order);
  });
});

describe('orders', () => {
  test.each([
    ['R U', 105, 'computed with GAP'],
    ["R U'", 63, 'computed with GAP'],
    ["R U R' U'", 6, 'computed with GAP'],
    ["U R U' F2", 10, 'OEIS A338883, example'],
    ["R U2 D' B D'", 1260, 'OEIS A330389'],
    ["U R' U F' D2", 1260, 'computed with GAP 4.12.1; the turns from memory'],
    ['Rw U', 120, 'computed on 54 facelets'],
    ["Rw U'", 252, 'computed on 54 facelets'],
    ['M U', 8, 'computed on 54 facelets'],
    ['M E', 12, 'computed on 54 facelets'],
    ["M E M' E'", 3, 'computed on 54 facelets'],
  ])('%s has order %i (%s)', (word, order) => expect(orderOf(stickersOf(word))).toBe(order));
});

describe('superflip', () => {
  // The centre of the group as the GAP example prints it.
  const flips = '(2,34)(4,10)(5,26)(7,18)(12,37)(13,20)(15,44)(21,28)(23,42)(29,36)(31,45)(39,47)'
    .slice(1, -1)
    .split(')(')
    .map((pair) => pair.split(',').map(Number) as [number, number]);
  const superflip = SOLVED.slice();
  for (const [a, b] of flips) [superflip[a], superflip[b]] = [b, a];

  test.each([
    ["U R2 F B R B2 R U2 L B2 R U' D' R2 F R' L B2 U2 F2", 'encyclopedia text'],
    ["F B U2 R F2 R2 B2 U' D F U2 R' L' U B2 D R2 U B2 U", 'D. Winter, Cube-Lovers archive, 17 May 1992'],
    ["R' U2 B L' F U' B D F U D' L D2 F' R B' D F' U' B' U D'", '24 quarter turns, compared in GAP'],
  ])('%s (%s)', (word) => expect([...stickersOf(word)]).toEqual([...superflip]));

  test('flips exactly the edges of the table of places', () => {
    const edges = PLACES.map(faceletsOf).filter((facelets) => facelets.length === 2);
    const sorted = (pairs: readonly (readonly number[])[]) =>
      pairs.map((p) => [...p].sort((a, b) => a - b).join()).sort();
    expect(sorted(edges)).toEqual(sorted(flips));
  });

  test('with every corner twisted, the 3-cycles are the corners of the table of places', () => {
    // M. Reid, Cube-Lovers archive, 5 August 1997.
    const twisted = stickersOf("U R F' B U' D' F U' D F L F' L' U R D F U R L");
    const corners = PLACES.map(faceletsOf).filter((facelets) => facelets.length === 3);
    expect(corners).toHaveLength(8);
    for (const [a, b, c] of corners) {
      expect([a, b, c].map((facelet) => twisted[facelet!]).sort()).toEqual([a, b, c].sort());
      expect(twisted[a!]).not.toBe(a);
    }
  });
});

describe('identities, computed on 54 facelets', () => {
  test.each([
    ['Rw', 'L x'],
    ['Rw', "R M'"],
    ['Lw', "R x'"],
    ['Uw', 'D y'],
    ['Uw', "U E'"],
    ['Dw', "U y'"],
    ['Fw', 'B z'],
    ['Fw', 'F S'],
    ['Bw', "F z'"],
    ['M', "R L' x'"],
    ['x', "R M' L'"],
    ['y', "U E' D'"],
    ['z', "F S B'"],
    ["x U x'", 'F'],
    ["y R y'", 'B'],
  ])('%s = %s', (a, b) => expect([...stickersOf(a)]).toEqual([...stickersOf(b)]));
});

test('a whole-cube rotation at the end changes nothing against the centres', () => {
  const seed = 20240101;
  const pick = seeded(seed);
  for (let i = 0; i < 200; i++) {
    const word = randomWord(pick, ['U', 'D', 'L', 'R', 'F', 'B', 'Rw', 'Uw', 'M', 'S'], 12);
    const rotation = randomWord(pick, ['x', 'y', 'z'], 3);
    const plain = againstCentres(stickersOf(word));
    const turned = againstCentres(stickersOf(`${word} ${rotation}`));
    expect([...turned], `seed ${seed}: ${word}, ${rotation}`).toEqual([...plain]);
    const undoing = followedBy(stickersOf(word), undone(stickersOf(word)));
    expect([...undoing], `seed ${seed}: ${word}`).toEqual([...SOLVED]);
  }
});
