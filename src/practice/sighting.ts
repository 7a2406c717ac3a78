/** What a student sees of a pair: the questions of reading, answered from the address alone. */
import { type Address, seenFrom } from '../cube/address.ts';
import { type Cube, homeSpot, pieceOf } from '../cube/cube.ts';
import type { Face } from '../cube/faces.ts';
import { cornerOfSlot, edgeOfSlot, type Slot, slotOfPlace } from '../cube/goal.ts';
import {
  type Corner,
  cornerOf,
  EDGE_AFTER,
  type Edge,
  type EdgeSpot,
  edgeOf,
  faceOfCornerSpot,
  faceOfEdgeSpot,
  faceTurn,
} from '../cube/spots.ts';

/** The pair of `slot` at an address: places and faces as the viewer of the straight cube names them. */
export interface Sighting {
  readonly address: Address;
  readonly slot: Slot;
  readonly corner: { readonly place: Corner; readonly cross: Face };
  readonly edge: { readonly place: Edge };
}

export function sightingOf(address: Address, slot: Slot): Sighting {
  const seen = seenFrom(address, slot);
  return {
    address,
    slot,
    corner: { place: cornerOf(seen.corner), cross: faceOfCornerSpot(seen.corner) },
    edge: { place: edgeOf(seen.edge) },
  };
}

/** The slot that a piece is in, its own or a foreign one. */
export const stuckSlot = (place: Corner | Edge, slot: Slot): Slot | undefined => {
  const at = slotOfPlace(place);
  return at === slot ? undefined : at;
};

/** The face whose colour the corner shows up, for a corner on top with the cross colour to the side. */
function topColourOf(cube: Cube, slot: Slot): Face | undefined {
  const piece = pieceOf(cornerOfSlot(slot));
  const spot = cube.spots[piece]!;
  if (!cornerOf(spot).startsWith('U') || faceOfCornerSpot(spot) === 'U') return undefined;
  // Stickers and faces both go round clockwise, from the cross sticker and from the top.
  return faceOfCornerSpot(homeSpot(piece) + ((3 - (spot % 3)) % 3));
}

/** The face whose colour the edge shows up if it is on top, else to the front or back. */
function tellingColourOf(cube: Cube, slot: Slot): Face {
  const piece = pieceOf(edgeOfSlot(slot));
  const spot = cube.spots[piece]!;
  const tells = edgeOf(spot).startsWith('U') ? 'U' : 'FB';
  return faceOfEdgeSpot(homeSpot(piece) + (tells.includes(faceOfEdgeSpot(spot)) ? 0 : 1));
}

/**
 * Like: the corner's top colour is the edge's colour that tells: its top colour if it is on top, its colour in front or
 * behind if it is in a slot. Undefined where the corner is not on top or has the cross colour up.
 */
export function likenessOf(cube: Cube, slot: Slot): 'like' | 'unlike' | undefined {
  const corner = topColourOf(cube, slot);
  if (corner === undefined) return undefined;
  return corner === tellingColourOf(cube, slot) ? 'like' : 'unlike';
}

/** Turns that leave good edges good: all of U, D, R, L and half turns of F and B. */
const GOOD_TURNS = [
  ...(['U', 'D', 'R', 'L'] as const).flatMap((face) => ([1, 2, 3] as const).map((q) => faceTurn(face, q))),
  faceTurn('F', 2),
  faceTurn('B', 2),
];

/** Good: it can be placed by turns of U, D, R, L and half turns of F and B; found by trying them. */
export function edgeIsGood(cube: Cube, slot: Slot): boolean {
  const piece = pieceOf(edgeOfSlot(slot));
  const reached = new Set<EdgeSpot>([cube.spots[piece]!]);
  for (const spot of reached) {
    for (const turn of GOOD_TURNS) reached.add(EDGE_AFTER[24 * turn + spot]!);
  }
  return reached.has(homeSpot(piece));
}
