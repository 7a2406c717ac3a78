/**
 * Our turns against a computer algebra system's: the worked example "Analyzing Rubik's Cube with GAP" (M. Schönert 1993,
 * updated for GAP 4, www.gap-system.org/Doc/Examples/rubik.html), and words that GAP 4.12.1 worked out in its numbering
 * (tests/data/README.md).
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { cycleType, imagesOf, imagesOfCycles, orderOf } from './facelets.ts';
import { turnsIn } from './read.ts';

/** The generators, as the example prints them. */
const GENERATORS = [
  ['U', '( 1, 3, 8, 6)( 2, 5, 7, 4)( 9,33,25,17)(10,34,26,18)(11,35,27,19)'],
  ['L', '( 9,11,16,14)(10,13,15,12)( 1,17,41,40)( 4,20,44,37)( 6,22,46,35)'],
  ['F', '(17,19,24,22)(18,21,23,20)( 6,25,43,16)( 7,28,42,13)( 8,30,41,11)'],
  ['R', '(25,27,32,30)(26,29,31,28)( 3,38,43,19)( 5,36,45,21)( 8,33,48,24)'],
  ['B', '(33,35,40,38)(34,37,39,36)( 3, 9,46,32)( 2,12,47,29)( 1,14,48,27)'],
  ['D', '(41,43,48,46)(42,45,47,44)(14,22,30,38)(15,23,31,39)(16,24,32,40)'],
] as const;

/** The generator of the centre that the example prints: it flips all twelve edges. */
const CENTRE = '( 2,34)( 4,10)( 5,26)( 7,18)(12,37)(13,20)(15,44)(21,28)(23,42)(29,36)(31,45)(39,47)';

describe('generators of the worked example', () => {
  test.each(GENERATORS)('%s', (face, cycles) => {
    expect(imagesOf(turnsIn(face)).slice(0, 48)).toEqual(imagesOfCycles(cycles, 48));
  });
});

/**
 * Three words for the centre's generator: the first two of 20 turns (the second by D. Winter, Cube-Lovers archive,
 * 17 May 1992), the third of 24 quarter turns; each checked equal in GAP.
 */
test.each([
  "U R2 F B R B2 R U2 L B2 R U' D' R2 F R' L B2 U2 F2",
  "F B U2 R F2 R2 B2 U' D F U2 R' L' U B2 D R2 U B2 U",
  "R' U2 B L' F U' B D F U D' L D2 F' R B' D F' U' B' U D'",
])('the centre: %s', (word) => {
  expect(imagesOf(turnsIn(word)).slice(0, 48)).toEqual(imagesOfCycles(CENTRE, 48));
});

interface Row {
  readonly word: string;
  readonly order: number;
  readonly moved: number;
  readonly cycles: string;
  readonly images: number[];
}

function rowsOf(file: string): Row[] {
  const lines = readFileSync(new URL(`../data/${file}`, import.meta.url), 'utf8')
    .trimEnd()
    .split('\n')
    .slice(1);
  return lines.map((line) => {
    const [word, order, moved, cycles, images] = line.split(',') as [string, string, string, string, string];
    return { word, order: Number(order), moved: Number(moved), cycles, images: images.split(' ').map(Number) };
  });
}

describe.each([
  { file: 'gap-words.csv', words: 108, facelets: 48 },
  { file: 'words-54.csv', words: 65, facelets: 54 },
])('words of $file', ({ file, words, facelets }) => {
  const rows = rowsOf(file);

  test(`are ${words}`, () => expect(rows).toHaveLength(words));

  test.each(rows)('"$word"', ({ word, order, moved, cycles, images }) => {
    const ours = imagesOf(turnsIn(word)).slice(0, facelets);
    expect(ours).toEqual(images);
    expect(orderOf(ours)).toBe(order);
    expect(cycleType(ours)).toBe(cycles);
    expect(ours.filter((image, i) => image !== i + 1)).toHaveLength(moved);
  });
});
