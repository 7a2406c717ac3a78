/**
 * Pair addresses: where the two pieces of a pair are, `UFR:R UB:U`, with the cube turned about its vertical axis so
 * that the pair's own slot is FR: the corner's spot of its cross-colour sticker, the edge's spot of its F-coloured one.
 */
import { type Cube, pieceOf } from '../../cube/cube.ts';
import {
  CORNERS,
  type CornerSpot,
  cornerOf,
  cornerSpot,
  cornerSpotTurned,
  EDGES,
  type EdgeSpot,
  edgeOf,
  edgeSpot,
  edgeSpotTurned,
  faceOfCornerSpot,
  faceOfEdgeSpot,
} from '../../cube/spots.ts';
import type { PairGoal } from './slots.ts';
import { cornerOfSlot, edgeOfSlot, goalOf, SLOTS, type Slot, slotOfPlace } from './slots.ts';

/** Where the two pieces of a pair are, its own slot seen at FR. */
export interface Address {
  readonly corner: CornerSpot;
  readonly edge: EdgeSpot;
}

/** `UFR:R UB:U` */
export const writeAddress = ({ corner, edge }: Address): string =>
  `${cornerOf(corner)}:${faceOfCornerSpot(corner)} ${edgeOf(edge)}:${faceOfEdgeSpot(edge)}`;

/** One number for each, for tables. */
export const addressKey = ({ corner, edge }: Address): number => 24 * corner + edge;

/** Undefined if it is not an address of a pair that is on top or in slots. */
export function readAddress(text: string): Address | undefined {
  const match = /^\s*([UDRLFB]{3}):([UDRLFB])\s+([UDRLFB]{2}):([UDRLFB])\s*$/.exec(text);
  const corner = CORNERS.find((c) => c === match?.[1]);
  const edge = EDGES.find((e) => e === match?.[3]);
  if (!match || !corner || !edge || edge.startsWith('D')) return undefined;
  if (!corner.includes(match[2]!) || !edge.includes(match[4]!)) return undefined;
  return { corner: cornerSpot(corner, match[2] as 'U'), edge: edgeSpot(edge, match[4] as 'U') };
}

/** Quarter turns about U, clockwise, that bring a slot to FR; F goes to L, so BR comes to FR by one. */
const TO_FRONT_RIGHT: Readonly<Record<Slot, number>> = { FR: 0, BR: 1, BL: 2, FL: 3 };
export const SOLVED_ADDRESS: Address = { corner: cornerSpot('DFR', 'D'), edge: edgeSpot('FR', 'F') };

/** The address as it is once the cube is turned by quarter turns about U, clockwise; the viewer's slots, not the pair's. */
const turnedAbout = ({ corner, edge }: Address, quarters: number): Address => ({
  corner: CORNER_ABOUT[24 * quarters + corner]!,
  edge: EDGE_ABOUT[24 * quarters + edge]!,
});

/** By 24 * quarter turns + spot: rules ask for thousands. */
const CORNER_ABOUT = Uint8Array.from({ length: 96 }, (_, i) => cornerSpotTurned(i % 24, 'U', Math.floor(i / 24)));
const EDGE_ABOUT = Uint8Array.from({ length: 96 }, (_, i) => edgeSpotTurned(i % 24, 'U', Math.floor(i / 24)));

/** The address's spots on a cube whose own slot is `slot`, and the other way round. */
export const seenFrom = (address: Address, slot: Slot): Address => turnedAbout(address, (4 - TO_FRONT_RIGHT[slot]) % 4);
const addressFrom = (spots: Address, slot: Slot): Address => turnedAbout(spots, TO_FRONT_RIGHT[slot]);

/** The address of a slot's pair. Undefined while the edge is in the bottom layer, as it can be when the cross is not whole. */
export function addressOf(cube: Cube, slot: Slot): Address | undefined {
  const corner = cube.spots[pieceOf(cornerOfSlot(slot))]!;
  const edge = cube.spots[pieceOf(edgeOfSlot(slot))]!;
  if (edgeOf(edge).startsWith('D')) return undefined;
  // The sticker that the address speaks of belongs, on this cube, on the spot that the turn would bring to FR:F.
  const isSpeaking = seenFrom(SOLVED_ADDRESS, slot).edge % 2 === 0;
  return addressFrom({ corner, edge: isSpeaking ? edge : edge ^ 1 }, slot);
}

/** Where the pieces are, own slot FR. */
export type Whereabouts = 'home' | 'top' | 'away';
const whereabouts = (slot: Slot | undefined): Whereabouts =>
  slot === undefined ? 'top' : slot === 'FR' ? 'home' : 'away';

export const cornerWhereabouts = (a: Address): Whereabouts => whereabouts(slotOfPlace(cornerOf(a.corner)));
export const edgeWhereabouts = (a: Address): Whereabouts => whereabouts(slotOfPlace(edgeOf(a.edge)));

/** The slots in which pieces of the pair sit that is not their own, with the own slot FR. */
const foreignSlots = (a: Address): Slot[] =>
  SLOTS.filter((s) => s !== 'FR' && [cornerOf(a.corner), edgeOf(a.edge)].some((place) => slotOfPlace(place) === s));

/** Foreign slots that pieces are stuck in, for a pair whose own slot is `slot`. */
export function stuckSlots(a: Address, slot: Slot): Slot[] {
  const quarters = TO_FRONT_RIGHT[slot];
  const foreign = foreignSlots(a);
  return SLOTS.filter((s) => foreign.some((f) => (TO_FRONT_RIGHT[f] + quarters) % 4 === TO_FRONT_RIGHT[s]));
}

export const isSolvedAddress = ({ corner, edge }: Address): boolean =>
  corner === SOLVED_ADDRESS.corner && edge === SOLVED_ADDRESS.edge;

/** The goal for the pair of `slot` at an address: all slots kept but its own, those it is stuck in, and those named open. */
export function goalAt(address: Address, slot: Slot, open: readonly Slot[] = []): PairGoal {
  const stuck = stuckSlots(address, slot);
  return goalOf(
    slot,
    SLOTS.filter((s) => !stuck.includes(s) && !open.includes(s)),
  );
}
