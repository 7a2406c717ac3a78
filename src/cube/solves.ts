/** Proving: do these turns solve this case? */
import {
  afterTurns,
  CORNER_PIECES,
  type Cube,
  copyOf,
  homeOf,
  homeSpot,
  isHome,
  PIECES,
  type Piece,
  placeOf,
  turnFace,
} from './cube.ts';
import type { Goal } from './goal.ts';
import { CORNER_AFTER, EDGE_AFTER, faceOfCornerSpot, faceOfEdgeSpot, faceTurn, type Place } from './spots.ts';
import type { Turn } from './turns.ts';
import { effect } from './view.ts';

/** What turns did to a goal. */
export interface Proof {
  readonly verdict: 'solves' | 'fails';
  /** Home places of the required pieces that end elsewhere or turned, in the order of the goal; then places of its `top`. */
  readonly broken: readonly Place[];
  /** After how many of the written turns the base was last whole; 0 is before the first. */
  readonly baseLastWhole: number;
}

/**
 * Corner and edge spots in one numbering, edges from 24 on, so that the inner loop has no branch:
 * SPOT_AFTER[SPOTS * turn + spot], HOME_SPOT[piece].
 */
const EDGES_FROM = 24;
export const SPOTS = 48;
export const numberedSpot = (piece: Piece, spot: number): number => (piece < CORNER_PIECES ? spot : EDGES_FROM + spot);
export const HOME_SPOT: Uint8Array = Uint8Array.from({ length: PIECES }, (_, piece) =>
  numberedSpot(piece, homeSpot(piece)),
);
export const SPOT_AFTER: Uint8Array = new Uint8Array(18 * SPOTS);
for (let turn = 0; turn < 18; turn++) {
  for (let spot = 0; spot < 24; spot++) {
    SPOT_AFTER[SPOTS * turn + spot] = CORNER_AFTER[24 * turn + spot]!;
    SPOT_AFTER[SPOTS * turn + EDGES_FROM + spot] = EDGES_FROM + EDGE_AFTER[24 * turn + spot]!;
  }
}

/** Whether the sticker on the top face, by the centres, of the piece in this place of the top layer has its colour. */
function showsTop(cube: Cube, place: Place): boolean {
  const piece = Array.from(cube.spots.keys()).find((one) => placeOf(cube, one) === place)!;
  const face = piece < CORNER_PIECES ? faceOfCornerSpot(cube.spots[piece]!) : faceOfEdgeSpot(cube.spots[piece]!);
  return homeOf(piece).startsWith('U') && face === 'U';
}

/** For goals of the last layer, which few look at and few turns lead to. `asItIs`: with the top as it is left. */
function brokenAtTheEnd(end: Cube, { pieces, top, free }: Goal, asItIs: Place[]): Place[] {
  let fewest = asItIs;
  const turned = copyOf(end);
  for (let quarters = 1; free && quarters < 4; quarters++) {
    turnFace(turned, faceTurn('U', 1));
    const left = pieces.filter((piece) => !isHome(turned, piece)).map(homeOf);
    if (left.length < fewest.length) fewest = left;
  }
  return [...fewest, ...top.filter((place) => !showsTop(end, place))];
}

/** Follows only the pieces of the goal; the cube given stays as it is. */
export function prove(from: Cube, turns: readonly Turn[], goal: Goal): Proof {
  const { pieces, base } = goal;
  const count = pieces.length;
  const spots: number[] = [];
  for (const piece of pieces) spots.push(numberedSpot(piece, from.spots[piece]!));
  let { view } = from;
  let baseLastWhole = 0;
  for (let n = 0; n < turns.length; n++) {
    const e = effect(turns[n]!, view);
    for (const t of e.faceTurns) {
      const row = SPOTS * t;
      for (let i = 0; i < count; i++) spots[i] = SPOT_AFTER[row + spots[i]!]!;
    }
    view = e.view;
    let whole = 0;
    while (whole < base.length && spots[whole] === HOME_SPOT[base[whole]!]) whole++;
    if (whole === base.length) baseLastWhole = n + 1;
  }
  let broken: Place[] = [];
  for (let i = 0; i < count; i++) if (spots[i] !== HOME_SPOT[pieces[i]!]) broken.push(homeOf(pieces[i]!));
  if (goal.free || goal.top.length > 0) broken = brokenAtTheEnd(afterTurns(from, turns), goal, broken);
  return { verdict: broken.length === 0 ? 'solves' : 'fails', broken, baseLastWhole };
}
