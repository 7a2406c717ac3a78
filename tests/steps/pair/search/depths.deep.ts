/** The rows of depths.test.ts that take minutes; they run with DEEP=1. */
import { expect, test } from 'vitest';
import { POSITIONS } from '../../../cube/published.ts';
import { CROSS_DEPTHS, CROSS_GOAL, depthsFound, WHOLE_GOAL } from './depths.ts';

test('all 190,080 states of the cross by their distance (computed for this project)', () => {
  expect(depthsFound(CROSS_GOAL, 8).states).toEqual(CROSS_DEPTHS);
});

test('positions of the whole cube by their distance, to depth 5 (OEIS A080601)', () => {
  expect(depthsFound(WHOLE_GOAL, 5).states).toEqual(POSITIONS.half.slice(0, 6));
});
