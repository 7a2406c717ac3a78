/** Doing a set-up: the case that it gives, or why it gives none. */

import { afterTurns, type Cube, homeOf, isHome, solvedCube } from '../../cube/cube.ts';
import type { Face } from '../../cube/faces.ts';
import type { Place } from '../../cube/spots.ts';
import type { Turn } from '../../cube/turns.ts';
import { centreAt } from '../../cube/view.ts';
import { type Address, addressOf, goalAt } from './address.ts';
import type { PairGoal, Slot } from './slots.ts';

export interface SetUp {
  /** The cube after it. */
  readonly cube: Cube;
  readonly address: Address;
  readonly goal: PairGoal;
}

export type SetUpFault =
  /** Ends with another centre down. */
  | { readonly fault: 'rotates'; readonly down: Face }
  /** Leaves the pair's edge in the bottom layer, where an address cannot name it. */
  | { readonly fault: 'hides-pair' }
  /** Leaves pieces of the base unsolved: their home places. */
  | { readonly fault: 'breaks-base'; readonly broken: readonly Place[] };

/** For the pair of `slot`; open are its own slot, slots that a piece of it is stuck in, and those named. */
export function doSetUp(turns: readonly Turn[], slot: Slot, open: readonly Slot[]): SetUp | SetUpFault {
  const cube = afterTurns(solvedCube(), turns);
  if (centreAt(cube.view, 'U') !== 'U') return { fault: 'rotates', down: centreAt(cube.view, 'D') };
  const address = addressOf(cube, slot);
  if (!address) return { fault: 'hides-pair' };
  const goal = goalAt(address, slot, open);
  const broken = goal.base.filter((piece) => !isHome(cube, piece)).map(homeOf);
  return broken.length > 0 ? { fault: 'breaks-base', broken } : { cube, address, goal };
}
