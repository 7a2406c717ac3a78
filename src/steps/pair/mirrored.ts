/**
 * The mirror that swaps F and R, and so L and B: the slots FR and BL stay, FL and BR change places. It turns a solution
 * of a case of the slot FR into one of the mirrored case, of the same length.
 */

import type { Face } from '../../cube/faces.ts';
import {
  cornerAt,
  cornerOf,
  cornerSpot,
  edgeAt,
  edgeOf,
  edgeSpot,
  faceOfCornerSpot,
  faceOfEdgeSpot,
} from '../../cube/spots.ts';
import type { Address } from './address.ts';
import type { Slot } from './slots.ts';

const FACE_SEEN: Readonly<Record<Face, Face>> = { U: 'U', D: 'D', R: 'F', F: 'R', L: 'B', B: 'L' };
const SLOT_SEEN: Readonly<Record<Slot, Slot>> = { FR: 'FR', FL: 'BR', BL: 'BL', BR: 'FL' };

const seen = (face: Face): Face => FACE_SEEN[face];
const facesSeen = (place: string): Face[] => [...place].map((face) => seen(face as Face));

/** What a mirror at the left or right makes of it, the own slot seen at FR again. */
export function mirroredAddress({ corner, edge }: Address): Address {
  return {
    corner: cornerSpot(cornerAt(facesSeen(cornerOf(corner))), seen(faceOfCornerSpot(corner))),
    // An address speaks of the F-coloured sticker of the edge; in the mirror that is the other one.
    edge: edgeSpot(edgeAt(facesSeen(edgeOf(edge))), seen(faceOfEdgeSpot(edge ^ 1))),
  };
}

/** The other mirror, that swaps R and L: where a slot is seen in it. */
export const IN_SIDE_MIRROR: Readonly<Record<Slot, Slot>> = { FR: 'FL', FL: 'FR', BL: 'BR', BR: 'BL' };

export const mirroredSlots = (slots: readonly Slot[]): Slot[] => slots.map((slot) => SLOT_SEEN[slot]);
