/** A cube for one pair: its pieces where an address says, all else as solved as can be. */

import { type Cube, homeSpot, type Piece, pieceOf, solvedCube } from '../../cube/cube.ts';
import { type Address, SOLVED_ADDRESS, seenFrom } from './address.ts';
import { cornerOfSlot, edgeOfSlot, type Slot } from './slots.ts';

/** Puts a piece on a spot; the piece that had the place goes to the place left empty, as if solved there. */
function put(cube: Cube, piece: Piece, spot: number, faces: 2 | 3): void {
  const placeOf = (s: number): number => Math.floor(s / faces);
  const from = placeOf(cube.spots[piece]!) * faces;
  const other = cube.spots.findIndex((s, p) => p < 8 === (faces === 3) && placeOf(s) === placeOf(spot));
  if (other !== piece) cube.spots[other] = from;
  cube.spots[piece] = spot;
}

/**
 * The pair of `slot` at an address. Twist, flip and parity of the rest are let go: turns may not be able to bring this
 * cube about. For all that is asked of the pair, the cross and the kept slots that makes no difference, since where turns
 * take a piece depends on that piece alone, and the pieces put out of their places are of the top or of open slots.
 */
export function cubeWithPair(address: Address, slot: Slot): Cube {
  const cube = solvedCube();
  const { corner, edge } = seenFrom(address, slot);
  const edgePiece = pieceOf(edgeOfSlot(slot));
  // An address speaks of the edge's F-coloured sticker, a cube of the one whose home spot is even; see addressOf.
  const isSpeaking = seenFrom(SOLVED_ADDRESS, slot).edge === homeSpot(edgePiece);
  put(cube, pieceOf(cornerOfSlot(slot)), corner, 3);
  put(cube, edgePiece, isSpeaking ? edge : edge ^ 1, 2);
  return cube;
}
