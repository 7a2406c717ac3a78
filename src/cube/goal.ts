/** What a solution has to bring about: pieces that must be home, measured against the centres. */
import { type Cube, homeSpot, type Piece, pieceOf } from './cube.ts';
import type { Corner, Edge, Place } from './spots.ts';

export const SLOTS = ['FR', 'FL', 'BL', 'BR'] as const;
export type Slot = (typeof SLOTS)[number];

export const cornerOfSlot = (slot: Slot): Corner => `D${slot}`;
export const edgeOfSlot = (slot: Slot): Edge => slot;
export const slotOfPlace = (place: Place): Slot | undefined => SLOTS.find((s) => place === s || place === `D${s}`);

const CROSS: readonly Piece[] = (['DF', 'DL', 'DB', 'DR'] as const).map(pieceOf);
const pairOf = (slot: Slot): Piece[] => [pieceOf(cornerOfSlot(slot)), pieceOf(edgeOfSlot(slot))];

export interface Goal {
  /** Cross and kept slots: whole before, whole after, whatever happens in between. The first of `pieces`. */
  readonly base: readonly Piece[];
  /** The pair that is solved; its own slot. */
  readonly slot: Slot;
  readonly kept: readonly Slot[];
  /** The base and the pair. */
  readonly pieces: readonly Piece[];
}

/** The goal for a pair with these slots kept; the pair's own slot is never one of them. */
export function goalOf(slot: Slot, kept: readonly Slot[]): Goal {
  const keptInOrder = SLOTS.filter((s) => s !== slot && kept.includes(s));
  const base = [...CROSS, ...keptInOrder.flatMap(pairOf)];
  return { base, slot, kept: keptInOrder, pieces: [...base, ...pairOf(slot)] };
}

export const areHome = (cube: Cube, pieces: readonly Piece[]): boolean =>
  pieces.every((piece) => cube.spots[piece] === homeSpot(piece));
