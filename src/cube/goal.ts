/** What a solution has to bring about, measured against the centres. */
import { type Cube, homeSpot, type Piece } from './cube.ts';
import type { Place } from './spots.ts';

/** What must be home, and what besides, after a solution. */
export interface Goal {
  /** Home before and home after, whatever happens in between. The first of `pieces`. */
  readonly base: readonly Piece[];
  /** The base, and what a solution brings home besides. */
  readonly pieces: readonly Piece[];
  /** Places whose stickers on the top face have to have its centre's colour; which pieces are there is open. */
  readonly top: readonly Place[];
  /** "U": pieces of the goal in the top layer need be home only up to one turn of it. */
  readonly free: 'U' | undefined;
}

/** These pieces home, with the base as before: what the first two layers ask for. */
export const goalOfPieces = (base: readonly Piece[], more: readonly Piece[]): Goal => ({
  base,
  pieces: [...base, ...more],
  top: [],
  free: undefined,
});

/** All of them in their places and turned rightly, against the centres. */
export const areHome = (cube: Cube, pieces: readonly Piece[]): boolean =>
  pieces.every((piece) => cube.spots[piece] === homeSpot(piece));
