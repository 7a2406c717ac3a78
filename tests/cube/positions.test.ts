/** How many positions need how many turns; the deep rows are in positions.deep.ts. */
import { describe, expect, test } from 'vitest';
import { POSITIONS, SEQUENCES } from './published.ts';
import { positionsByDepth, sequencesByCost } from './search-tree.ts';

describe.each([
  ['half', 'A080601', 5],
  ['quarter', 'A080602', 6],
] as const)('positions, %s turns (OEIS %s)', (metric, _, most) => {
  test(`to depth ${most}`, () => {
    expect(positionsByDepth(most, metric)).toEqual(POSITIONS[metric].slice(0, most + 1));
  });
});

describe.each([
  ['half', 'A333298', 5],
  ['quarter', 'A333299', 6],
] as const)('canonical sequences, %s turns (OEIS %s)', (metric, _, most) => {
  test(`to length ${most}`, () => {
    expect(sequencesByCost(most, metric)).toEqual(SEQUENCES[metric].slice(0, most + 1));
  });
});
