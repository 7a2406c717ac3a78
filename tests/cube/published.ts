/** Published counts, by depth or length from 0 on. */
import type { Metric } from './search-tree.ts';

export const POSITIONS: Readonly<Record<Metric, readonly number[]>> = {
  // OEIS A080601: positions of the cube that need n face turns
  half: [1, 18, 243, 3240, 43239, 574908, 7618438, 100803036],
  // OEIS A080602: positions of the cube that need n quarter turns
  quarter: [1, 12, 114, 1068, 10011, 93840, 878880, 8221632, 76843595],
};

export const SEQUENCES: Readonly<Record<Metric, readonly number[]>> = {
  // OEIS A333298: canonical sequences of n face turns
  half: [1, 18, 243, 3240, 43254, 577368, 7706988, 102876480],
  // OEIS A333299: canonical sequences of n quarter turns
  quarter: [1, 12, 114, 1068, 10011, 93840, 879624, 8245296],
};
