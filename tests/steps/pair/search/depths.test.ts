/** Counts by depth, asked of the search state by state. The deep rows are in depths.deep.ts. */
import { describe, expect, test } from 'vitest';
import { POSITIONS, SEQUENCES } from '../../../cube/published.ts';
import { CROSS_DEPTHS, CROSS_GOAL, depthsFound, WHOLE_GOAL } from './depths.ts';

describe('the cross (computed by two independent programs for this project; no published source was found)', () => {
  test('states by their distance, to depth 4', () => {
    expect(depthsFound(CROSS_GOAL, 4).states).toEqual(CROSS_DEPTHS.slice(0, 5));
  });
});

describe('the whole cube', () => {
  const { states, solutions } = depthsFound(WHOLE_GOAL, 4);

  test('positions by their distance, to depth 4 (OEIS A080601)', () => {
    expect(states).toEqual(POSITIONS.half.slice(0, 5));
  });

  // No sequence of up to four turns in normal form can be shortened, so that each is a shortest solution of something.
  test('all their shortest solutions together are the sequences of that length (OEIS A333298)', () => {
    expect(solutions).toEqual(SEQUENCES.half.slice(0, 5));
  });
});
