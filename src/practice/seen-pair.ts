/** Where a student sees the pieces of a pair: what makes it easy or hard to read. */

import type { Face } from '../cube/faces.ts';
import { type Corner, cornerOf, type Edge, edgeOf, faceOfCornerSpot } from '../cube/spots.ts';
import { type Address, seenFrom } from '../steps/pair/address.ts';
import { type Slot, slotOfPlace } from '../steps/pair/slots.ts';

/** The pair of `slot` at an address: places and faces as the viewer of the straight cube names them. */
export interface SeenPair {
  readonly address: Address;
  readonly slot: Slot;
  readonly corner: { readonly place: Corner; readonly cross: Face };
  readonly edge: { readonly place: Edge };
}

export function seenPair(address: Address, slot: Slot): SeenPair {
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
