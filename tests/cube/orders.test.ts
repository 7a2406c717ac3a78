/** How often a word must be repeated until the cube is solved again. */
import { expect, test } from 'vitest';
import { cycleType, imagesOf, orderOf } from './facelets.ts';
import { turnsIn } from './read.ts';

const GAP = 'GAP 4.12.1, on the 48 facelets of the worked example';
const GAP_54 = 'GAP 4.12.1, on 54 facelets';
const ORDERS: readonly (readonly [word: string, order: number, source: string])[] = [
  ['R U', 105, GAP],
  ["R U'", 63, GAP],
  ["R U R' U'", 6, GAP],
  ["R U' R' U", 6, GAP],
  ['R2 U2', 6, GAP],
  ['R2 U', 30, GAP],
  ['R L', 4, GAP],
  ["R L'", 4, GAP],
  ["U R U' F2", 10, 'OEIS A338883, example; GAP 4.12.1'],
  ["R U2 D' B D'", 1260, 'OEIS A330389, comment: the longest period; GAP 4.12.1'],
  ["U R' U F' D2", 1260, 'computed with GAP 4.12.1; the turns from memory'],
  ["U R F' B U' D' F U' D F L F' L' U R D F U R L", 6, 'M. Reid, Cube-Lovers, 5 August 1997; order by GAP 4.12.1'],
  ['Rw U', 120, GAP_54],
  ["Rw U'", 252, GAP_54],
  ['M U', 8, GAP_54],
  ['M E', 12, GAP_54],
  ["M E M' E'", 3, GAP_54],
];

test.each(ORDERS)('%s: %i (%s)', (word, order) => {
  expect(orderOf(imagesOf(turnsIn(word)))).toBe(order);
});

// OEIS A330389 has the word, GAP 4.12.1 its cycles.
test('the cycles of the word of order 1260', () => {
  expect(cycleType(imagesOf(turnsIn("R U2 D' B D'")).slice(0, 48))).toBe('1^2 2^2 4^1 9^1 14^1 15^1');
});
