/**
 * What a coach may ask of solutions, and when a search is to stop. All words of a search are turns of the six faces, so
 * that none turns the cube: asking for that is no limit here. It becomes one where solutions are executed in other
 * ways, with wide turns, slices and rotations.
 */
import type { Face } from '../faces.ts';
import type { FaceTurn } from '../spots.ts';
import type { Turn } from '../turns.ts';

/** What solutions may consist of. */
export interface Limits {
  /** Only these faces, as the viewer names them. "Without the back face" is all of FACES but B. */
  readonly faces?: readonly Face[];
  /** The first turns of each solution, exactly as its normal form has them: face turns. */
  readonly begins?: readonly Turn[];
  /** The last turns, likewise. */
  readonly ends?: readonly Turn[];
}

/** When a search ends before it is done; without any it goes on until it is. */
export interface StopConditions {
  /** The longest length that is searched. */
  readonly most?: number;
  /** So many front halves of words are walked and no more; the same number always stops at the same place. */
  readonly nodes?: number;
  /** Asked every few thousand nodes, a millisecond or so apart; true stops the search where it is. */
  readonly stop?: () => boolean;
}

/**
 * No position needs more than 20 turns: Rokicki, Kociemba, Davidson, Dethridge, "The Diameter of the Rubik's Cube Group
 * Is Twenty", SIAM Journal on Discrete Mathematics 27(2), 2013. Under limits solutions may be longer, or none may exist.
 */
export const MOST_TURNS_NEEDED = 20;

/** The face turns of a limit; a turn of anything else is an error of the caller. */
export function faceTurnsIn(turns: readonly Turn[]): FaceTurn[] {
  const other = turns.find((turn) => turn.kind !== 'face');
  if (other) throw new RangeError(`${other.text} is not a turn of a face`);
  return turns.map((turn) => turn.index);
}
