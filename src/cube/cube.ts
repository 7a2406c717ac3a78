/**
 * A state of the cube, cheap to turn: for each piece the spot of the sticker that speaks for it (spots.ts), named by
 * the centres, and the view of the one who holds it. A turn is one look-up a piece; a search keeps only the pieces of
 * its goal.
 */
import type { Face } from './faces.ts';
import {
  CORNER_AFTER,
  CORNERS,
  cornerOf,
  EDGE_AFTER,
  EDGES,
  edgeOf,
  type FaceTurn,
  faceOfCornerSpot,
  faceOfEdgeSpot,
  type Place,
} from './spots.ts';
import type { Turn } from './turns.ts';
import { effect, STRAIGHT, seenAt, seenPlace, type View } from './view.ts';

/** 0..7 corners, 8..19 edges, each numbered as its home place. */
export type Piece = number;
/** How many pieces are corners: the first numbers. */
export const CORNER_PIECES = CORNERS.length;
/** How many pieces can move: 8 corners and 12 edges. */
export const PIECES: number = CORNERS.length + EDGES.length;

/** The piece that belongs at a place. */
export const pieceOf = (home: Place): Piece => {
  const corner = (CORNERS as readonly string[]).indexOf(home);
  return corner >= 0 ? corner : CORNER_PIECES + (EDGES as readonly string[]).indexOf(home);
};

/** The place where a piece belongs. */
export const homeOf = (piece: Piece): Place =>
  piece < CORNER_PIECES ? CORNERS[piece]! : EDGES[piece - CORNER_PIECES]!;

/** The spot of a piece that is solved. */
export const homeSpot = (piece: Piece): number => (piece < CORNER_PIECES ? 3 * piece : 2 * (piece - CORNER_PIECES));

/** A state and how it is held. `doTurn` and `turnFace` change it in place; all else leaves it as it is. */
export interface Cube {
  /** By piece: a corner spot or an edge spot. */
  readonly spots: Uint8Array;
  view: View;
}

const SOLVED_SPOTS = Uint8Array.from({ length: PIECES }, (_, piece) => homeSpot(piece));

/** A new solved cube, held as before the first turn. */
export const solvedCube = (): Cube => ({ spots: SOLVED_SPOTS.slice(), view: STRAIGHT });

/** A cube of its own: turning it leaves the one given as it is. */
export const copyOf = (cube: Cube): Cube => ({ spots: cube.spots.slice(), view: cube.view });

/** Turns a face named by its centre, in place. */
export function turnFace(cube: Cube, turn: FaceTurn): void {
  const { spots } = cube;
  const row = 24 * turn;
  for (let p = 0; p < CORNER_PIECES; p++) spots[p] = CORNER_AFTER[row + spots[p]!]!;
  for (let p = CORNER_PIECES; p < PIECES; p++) spots[p] = EDGE_AFTER[row + spots[p]!]!;
}

/** Does one written turn, as the viewer would, in place. */
export function doTurn(cube: Cube, turn: Turn): void {
  const e = effect(turn, cube.view);
  for (const t of e.faceTurns) turnFace(cube, t);
  cube.view = e.view;
}

/** The cube after these turns; the one given stays as it is. */
export function afterTurns(cube: Cube, turns: readonly Turn[]): Cube {
  const next = copyOf(cube);
  for (const turn of turns) doTurn(next, turn);
  return next;
}

/** The place, named by the centres, in which a piece sits. */
export function placeOf(cube: Cube, piece: Piece): Place {
  const spot = cube.spots[piece]!;
  return piece < CORNER_PIECES ? cornerOf(spot) : edgeOf(spot);
}

/** Where a piece is, and where the sticker that speaks for it looks, as the viewer names places and faces. */
export function seenPiece(cube: Cube, piece: Piece): { readonly at: Place; readonly faces: Face } {
  const spot = cube.spots[piece]!;
  const face = piece < CORNER_PIECES ? faceOfCornerSpot(spot) : faceOfEdgeSpot(spot);
  return { at: seenPlace(cube.view, placeOf(cube, piece)), faces: seenAt(cube.view, face) };
}

/** Whether it is in the top layer, by the centres: the first four places of corners and of edges are. */
export const isOnTop = (cube: Cube, piece: Piece): boolean =>
  cube.spots[piece]! < (piece < CORNER_PIECES ? TOP_CORNER_SPOTS : TOP_EDGE_SPOTS);
const TOP_CORNER_SPOTS = 4 * 3;
const TOP_EDGE_SPOTS = 4 * 2;

/** In its place and turned rightly, against the centres. */
export const isHome = (cube: Cube, piece: Piece): boolean => cube.spots[piece] === homeSpot(piece);
