import { describe, expect, it } from 'vitest';
import { givesAway } from '../../src/cube/gives-away.ts';
import { readTurns } from '../../src/cube/notation.ts';
import type { Turn } from '../../src/cube/turns.ts';

const turnsOf = (text: string): readonly Turn[] => {
  const read = readTurns(text);
  if (!read.ok) throw new Error(text);
  return read.turns;
};

describe('a set-up gives its answer away', () => {
  it.each([
    ['taken back', "R U R' L' U L", "L' U' L R U' R'", true],
    ['with turns of U around', "U2 R U R'", "U' R U' R' U", true],
    ['opposite faces in another order', "R L' U R'", "R U' R' L", true],
    ['in another hold', "F U F'", "y L U' L'", true],
    ['with a wide turn for the opposite face', "L U L'", "x' Rw U' L'", true],
    ['another answer', "R U R' L' U L", "L' U L R U R'", false],
    ['the same turns, not taken back', "R U R'", "R U R'", false],
  ])('%s', (_, setup, answer, gives) => {
    expect(givesAway(turnsOf(setup), turnsOf(answer))).toBe(gives);
  });
});
