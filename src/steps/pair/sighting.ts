/** Sightings: a pair as a viewer sees it, which is what a rule of thumb speaks of. */

import { homeSpot, pieceOf } from '../../cube/cube.ts';
import type { Face } from '../../cube/faces.ts';
import { type Corner, cornerOf, type Edge, edgeOf, faceOfCornerSpot, faceOfEdgeSpot } from '../../cube/spots.ts';
import { type Address, isSolvedAddress, SOLVED_ADDRESS, seenFrom } from './address.ts';
import { ADDRESSES, type Family, familyOf } from './cases.ts';
import { cornerOfSlot, SLOTS, type Slot } from './slots.ts';

/** An address, and the slot in which the viewer sees the pair's own slot. */
export interface PairSighting {
  readonly at: Address;
  readonly side: Slot;
}

/** Every sighting of these families but the solved pair: each turn of U is one of its own, seen from four sides. */
export const sightingsOf = (families: readonly Family[]): PairSighting[] =>
  ADDRESSES.filter((address) => families.includes(familyOf(address)) && !isSolvedAddress(address)).flatMap((address) =>
    SLOTS.map((side) => ({ at: address, side })),
  );

/** A colour, named by the viewer's face that it belongs on; D is the cross colour. */
export type SeenColour = Face;

/** What the viewer sees of the two pieces: where they are, and which colour is on which of their faces. */
export interface Look {
  readonly own: Slot;
  readonly corner: { readonly place: Corner; readonly colours: ReadonlyMap<Face, SeenColour> };
  readonly edge: { readonly place: Edge; readonly colours: ReadonlyMap<Face, SeenColour> };
}

export function lookOf({ at: address, side: seen }: PairSighting): Look {
  const at = seenFrom(address, seen);
  const place = at.corner - (at.corner % 3);
  // Its stickers follow each other clockwise from the cross colour, at home as anywhere.
  const cornerHome = homeSpot(pieceOf(cornerOfSlot(seen)));
  const corner = [0, 1, 2].map(
    (k) => [faceOfCornerSpot(place + ((at.corner + k) % 3)), faceOfCornerSpot(cornerHome + k)] as const,
  );
  const edgeHome = seenFrom(SOLVED_ADDRESS, seen).edge;
  const edge = [
    [faceOfEdgeSpot(at.edge), faceOfEdgeSpot(edgeHome)],
    [faceOfEdgeSpot(at.edge ^ 1), faceOfEdgeSpot(edgeHome ^ 1)],
  ] as const;
  return {
    own: seen,
    corner: { place: cornerOf(at.corner), colours: new Map(corner) },
    edge: { place: edgeOf(at.edge), colours: new Map(edge) },
  };
}
