/**
 * Keys and half-words are those of the slot FR. A search for another slot is done with the cube turned by quarter turns
 * about U, such that its slot comes to FR, and what is found is turned back.
 */
import { CORNER_PIECES, type Cube, homeOf, homeSpot, type Piece, pieceOf } from '../../../cube/cube.ts';
import { FACES, faceTowards, NORMAL, rotated } from '../../../cube/faces.ts';
import type { Goal } from '../../../cube/goal.ts';
import {
  type CornerSpot,
  cornerOf,
  cornerSpotTurned,
  type EdgeSpot,
  edgeOf,
  edgeSpotTurned,
  type FaceTurn,
} from '../../../cube/spots.ts';
import { cornerOfSlot, SLOTS, type Slot, slotOfPlace } from '../slots.ts';
import { KEY_PIECES, type Key, keyOfSpots, maskOfPieces } from './key.ts';

export interface Frame {
  /** The pieces that come to stand for KEY_PIECES, in their order. */
  readonly pieces: readonly Piece[];
  /** By key piece and spot: SPOTS[24 * i + spot] is where the turned cube has it. */
  readonly spots: Uint8Array;
  /** By a turn of the turned cube: the same turn before the cube was turned. */
  readonly turnsBack: readonly FaceTurn[];
}

const spotTurned = (piece: Piece, spot: CornerSpot | EdgeSpot, quarters: number): number =>
  piece < CORNER_PIECES ? cornerSpotTurned(spot, 'U', quarters) : edgeSpotTurned(spot, 'U', quarters);

const pieceTurned = (piece: Piece, quarters: number): Piece => {
  const spot = spotTurned(piece, homeSpot(piece), quarters);
  return pieceOf(piece < CORNER_PIECES ? cornerOf(spot) : edgeOf(spot));
};

/** Where the sticker that speaks for `to` is on the turned cube when `from`, which came to stand for it, is on a spot. */
function spotInFrame(from: Piece, spot: number, quarters: number, to: Piece): number {
  const faces = from < CORNER_PIECES ? 3 : 2;
  const speakers = spotTurned(from, homeSpot(from), quarters) - homeSpot(to);
  const turned = spotTurned(from, spot, quarters);
  const k = turned % faces;
  return turned - k + ((k - speakers + faces) % faces);
}

/** Every piece that a key piece can stand for. */
const KEY_PIECES_AND_PAIRS: readonly Piece[] = [
  ...KEY_PIECES,
  ...SLOTS.flatMap((slot) => [pieceOf(cornerOfSlot(slot)), pieceOf(slot)]),
];

function frameTurned(quarters: number): Frame {
  const pieces = KEY_PIECES.map((to) => KEY_PIECES_AND_PAIRS.find((from) => pieceTurned(from, quarters) === to)!);
  const spots = new Uint8Array(24 * KEY_PIECES.length);
  KEY_PIECES.forEach((to, i) => {
    for (let spot = 0; spot < 24; spot++) spots[24 * i + spot] = spotInFrame(pieces[i]!, spot, quarters, to);
  });
  const turnsBack = FACES.flatMap((face) => {
    const before = FACES.indexOf(faceTowards(rotated(NORMAL[face], 'U', 4 - quarters)));
    return [0, 1, 2].map((k) => 3 * before + k);
  });
  return { pieces, spots, turnsBack };
}

/** Quarter turns about U, clockwise, that bring a slot to FR: F goes to L, so BR comes to FR by one. */
const QUARTERS: Readonly<Record<Slot, number>> = { FR: 0, BR: 1, BL: 2, FL: 3 };
const frames = new Map<Slot, Frame>();

/** The slot of the pieces that a goal has beside its base; FR where none of them belongs into a slot. */
export function slotOfGoal({ base, pieces }: Pick<Goal, 'base' | 'pieces'>): Slot {
  const wanted = pieces.filter((piece) => !base.includes(piece)).map((piece) => slotOfPlace(homeOf(piece)));
  return wanted.find((slot) => slot !== undefined) ?? 'FR';
}

/** The frame in which this slot is FR. */
export function frameOf(slot: Slot): Frame {
  const known = frames.get(slot) ?? frameTurned(QUARTERS[slot]);
  frames.set(slot, known);
  return known;
}

export const keyIn = (frame: Frame, cube: Cube): Key =>
  keyOfSpots(frame.pieces.map((piece, i) => frame.spots[24 * i + cube.spots[piece]!]!));

/** The bits of a key that a goal of these pieces minds. */
export const maskIn = (frame: Frame, pieces: readonly Piece[]): Key =>
  maskOfPieces(KEY_PIECES.filter((_, i) => pieces.includes(frame.pieces[i]!)));
