/** The rows of positions.test.ts and depths.test.ts that take minutes; they run with DEEP=1. */
import { expect, test } from 'vitest';
import { effect, STRAIGHT } from '../../src/cube/view.ts';
import { POSITIONS, SEQUENCES } from './published.ts';
import { turnsIn } from './read.ts';
import { groupByDepth, positionsByDepth, sequencesByCost } from './search-tree.ts';

test('positions, half turns, to depth 7 (OEIS A080601)', () => {
  expect(positionsByDepth(7, 'half')).toEqual(POSITIONS.half.slice(0, 8));
});

test('positions, quarter turns, to depth 8 (OEIS A080602)', () => {
  expect(positionsByDepth(8, 'quarter')).toEqual(POSITIONS.quarter.slice(0, 9));
});

test('canonical sequences, half turns, to length 7 (OEIS A333298)', () => {
  expect(sequencesByCost(7, 'half')).toEqual(SEQUENCES.half.slice(0, 8));
});

test('the squares group, 663,552 positions (OEIS A080627)', () => {
  const moves = turnsIn('U2 R2 F2 D2 L2 B2').map((turn) => effect(turn, STRAIGHT).faceTurns);
  expect(groupByDepth(moves)).toEqual([
    1, 6, 27, 120, 519, 1932, 6484, 20310, 55034, 113892, 178495, 179196, 89728, 16176, 1488, 144,
  ]);
});
