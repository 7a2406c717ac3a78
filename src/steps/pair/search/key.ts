/**
 * Keys: where the six pieces are that every goal of a pair has in common, in one number of 30 bits.
 *
 *   bits   0-4 DF   5-9 DL  10-14 DB  15-19 DR   20-24 DFR  25-29 FR     each the spot of the piece, 0..23
 *          '----- 10 ----'  '----- 10 -----'    '------ 10 ------'      three coordinates of 10 bits, two pieces each
 *
 * A turn is one look-up a coordinate. The pair is always that of the slot FR: other slots are searched with the cube
 * turned (frame.ts). Kept slots have no part in a key; what matches by its key is still to be followed in full.
 */
import { homeSpot, type Piece, pieceOf } from '../../../cube/cube.ts';
import { CORNER_AFTER, EDGE_AFTER } from '../../../cube/spots.ts';

export type Key = number;

/** In the order of their bits. */
export const KEY_PIECES: readonly Piece[] = (['DF', 'DL', 'DB', 'DR', 'DFR', 'FR'] as const).map(pieceOf);
const SPOT_BITS = 5;
const SPOT_MASK = 2 ** SPOT_BITS - 1;
export const COORDINATE_BITS: number = 2 * SPOT_BITS;
export const COORDINATE_MASK: number = 2 ** COORDINATE_BITS - 1;

/** The key of these spots, given in the order of KEY_PIECES. */
export const keyOfSpots = (spots: readonly number[]): Key =>
  spots.reduce((key, spot, i) => key | (spot << (SPOT_BITS * i)), 0);

export const HOME_KEY: Key = keyOfSpots(KEY_PIECES.map(homeSpot));

/** The bits of those key pieces that are among the pieces given: a goal that leaves out some is keyed by the others. */
export const maskOfPieces = (pieces: readonly Piece[]): Key =>
  keyOfSpots(KEY_PIECES.map((piece) => (pieces.includes(piece) ? SPOT_MASK : 0)));

/** AFTER[18 * coordinate + turn]: all turns of one coordinate side by side, since a search asks for all of them. */
function coordinateAfter(first: Uint8Array, second: Uint8Array): Uint16Array {
  const after = new Uint16Array(18 * (COORDINATE_MASK + 1));
  for (let one = 0; one < 24; one++) {
    for (let two = 0; two < 24; two++) {
      const row = 18 * (one | (two << SPOT_BITS));
      for (let turn = 0; turn < 18; turn++) {
        after[row + turn] = first[24 * turn + one]! | (second[24 * turn + two]! << SPOT_BITS);
      }
    }
  }
  return after;
}

/** For both coordinates of the cross. */
export const CROSS_AFTER: Uint16Array = coordinateAfter(EDGE_AFTER, EDGE_AFTER);
/** For the coordinate of the pair. */
export const PAIR_AFTER: Uint16Array = coordinateAfter(CORNER_AFTER, EDGE_AFTER);

export function keyAfter(key: Key, turn: number): Key {
  const front = CROSS_AFTER[18 * (key & COORDINATE_MASK) + turn]!;
  const back = CROSS_AFTER[18 * ((key >> COORDINATE_BITS) & COORDINATE_MASK) + turn]!;
  const pair = PAIR_AFTER[18 * (key >> (2 * COORDINATE_BITS)) + turn]!;
  return front | (back << COORDINATE_BITS) | (pair << (2 * COORDINATE_BITS));
}
