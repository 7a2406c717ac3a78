/**
 * The normal form of a sequence of face turns: no two turns of one face in a row, and of two opposite faces in a row
 * only the order U D, R L, F B. Sequences that differ only by the order of opposite faces have one normal form.
 */
import type { FaceTurn } from '../spots.ts';

/** What comes before the first turn, as a row of MAY_FOLLOW: all may follow it. */
export const NO_TURN: FaceTurn = 18;

const faceOf = (turn: FaceTurn): number => Math.floor(turn / 3);
const axisOf = (turn: FaceTurn): number => Math.floor(turn / 6);

/** The same face turned back as far. */
export const inverseOf = (turn: FaceTurn): FaceTurn => turn + 2 - 2 * (turn % 3);

/** MAY_FOLLOW[18 * turn + next] is 1 where `next` may stand right after `turn` (or after NO_TURN). */
export const MAY_FOLLOW: Uint8Array = Uint8Array.from({ length: 19 * 18 }, (_, i) => {
  const [turn, next] = [Math.floor(i / 18), i % 18];
  return turn === NO_TURN || axisOf(turn) !== axisOf(next) || faceOf(turn) < faceOf(next) ? 1 : 0;
});

/** By the turn before (or NO_TURN): the turns that may follow it. */
export type Followers = readonly Uint8Array[];

/** Where only these turns are used. */
export const followersAmong = (turns: readonly FaceTurn[]): Followers =>
  Array.from({ length: 19 }, (_, before) =>
    Uint8Array.from(turns.filter((next) => MAY_FOLLOW[18 * before + next] === 1)),
  );

/** Whether each turn may follow the one before it. */
export const isNormal = (turns: ArrayLike<FaceTurn>): boolean => {
  for (let i = 1; i < turns.length; i++) if (MAY_FOLLOW[18 * turns[i - 1]! + turns[i]!] === 0) return false;
  return true;
};
