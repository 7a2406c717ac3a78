/** Identities of turns, their inverses and mirror images. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { afterTurns, solvedCube } from '../../src/cube/cube.ts';
import { inverse, lengthOf, mirror, TURNS, writeTurns } from '../../src/cube/turns.ts';
import { STRAIGHT } from '../../src/cube/view.ts';
import { ALL_FACELETS, followed, imagesOf, MIRRORED } from './facelets.ts';
import { turnsIn } from './read.ts';

const anyTurns = fc.array(fc.constantFrom(...TURNS), { maxLength: 25 });
const SAME = Array.from({ length: ALL_FACELETS }, (_, i) => i + 1);

// Computed on 54 facelets by an independent program for this project; no published source.
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
])('%s does what %s does', (a, b) => {
  expect(imagesOf(turnsIn(a))).toEqual(imagesOf(turnsIn(b)));
});

test('x, y and z hold the cube in 24 ways', () => {
  const ways = new Set<string>();
  const open = ['x', 'y', 'z'].map((axis) => [axis]);
  for (let at = open.pop(); at; at = open.pop()) {
    const way = imagesOf(turnsIn(at.join(' '))).join(' ');
    if (ways.has(way)) continue;
    ways.add(way);
    for (const axis of ['x', 'y', 'z']) open.push([...at, axis]);
  }
  expect(ways.size).toBe(24);
});

describe('inverse', () => {
  test.each([
    ["R U2 F'", "F U2 R'"],
    ["Rw x M' y2", "y2 M x' Rw'"],
    ['', ''],
  ])('of %j is %j', (text, back) => expect(writeTurns(inverse(turnsIn(text)))).toBe(back));

  test('takes back what the turns did, held as before; twice it is nothing', () => {
    fc.assert(
      fc.property(anyTurns, (turns) => {
        const after = afterTurns(solvedCube(), [...turns, ...inverse(turns)]);
        expect(after.spots).toEqual(solvedCube().spots);
        expect(after.view).toBe(STRAIGHT);
        expect(imagesOf([...turns, ...inverse(turns)])).toEqual(SAME);
        expect(inverse(inverse(turns))).toEqual(turns);
        expect(lengthOf(inverse(turns))).toBe(lengthOf(turns));
      }),
      { seed: 20240104, numRuns: 200 },
    );
  });
});

describe('mirror', () => {
  // Worked out by hand: a turn of R forwards is, in the mirror, one of L forwards, which is L'.
  test.each([
    ["R U R' U'", "L' U' L U"],
    ["F D2 B'", "F' D2 B"],
    ['Rw M x Lw2', "Lw' M x Rw2"],
    ["y z' E S2", "y' z E' S2"],
  ])('of %s is %s', (text, seen) => expect(writeTurns(mirror(turnsIn(text)))).toBe(seen));

  test('moves the stickers as the mirror shows them; twice it is nothing', () => {
    fc.assert(
      fc.property(anyTurns, (turns) => {
        const seen = followed(followed(MIRRORED, imagesOf(turns)), MIRRORED);
        expect(imagesOf(mirror(turns))).toEqual(seen);
        expect(mirror(mirror(turns))).toEqual(turns);
        expect(lengthOf(mirror(turns))).toBe(lengthOf(turns));
      }),
      { seed: 20240105, numRuns: 200 },
    );
  });
});

test('a length counts outer turns: regulations 12a5, a slice as two (12a17 of 2010)', () => {
  expect(lengthOf(turnsIn("R U2 Rw' x M y2 E2"))).toBe(7);
});
