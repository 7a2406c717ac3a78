/** What the eye should be led to: which stickers matter for solving one pair, and which slots to mark. */
import { type Cube, type Piece, pieceOf, placeOf } from '../cube/cube.ts';
import type { Place } from '../cube/spots.ts';
import type { Sticker } from '../cube/stickers.ts';
import type { PairGoal } from '../steps/pair/slots.ts';
import { cornerOfSlot, edgeOfSlot, type Slot, slotOfPlace } from '../steps/pair/slots.ts';

/**
 * pair: the two pieces to be brought home. kept: pieces that stay solved, the cross among them. centre: names its
 * face. other: does not matter.
 */
export type Role = 'pair' | 'kept' | 'centre' | 'other';

export const pairPieces = (goal: PairGoal): { corner: Piece; edge: Piece } => ({
  corner: pieceOf(cornerOfSlot(goal.slot)),
  edge: pieceOf(edgeOfSlot(goal.slot)),
});

/** Which role each sticker has for a goal. */
export function rolesFor(goal: PairGoal): (sticker: Sticker) => Role {
  const { corner, edge } = pairPieces(goal);
  return ({ piece }) => {
    if (piece === undefined) return 'centre';
    if (piece === corner || piece === edge) return 'pair';
    return goal.base.includes(piece) ? 'kept' : 'other';
  };
}

export interface MarkedSlots {
  /** The pair's own slot while a piece of the pair is not in it; it may be twisted or flipped there. */
  readonly target: Slot | undefined;
  /** Foreign slots that a piece of the pair is stuck in. */
  readonly stuck: readonly Slot[];
}

export function markedSlots(cube: Cube, goal: PairGoal): MarkedSlots {
  const { corner, edge } = pairPieces(goal);
  const slots = [corner, edge].map((piece) => slotOfPlace(placeOf(cube, piece)));
  const filled = slots.every((slot) => slot === goal.slot);
  const foreign = slots.filter((slot): slot is Slot => slot !== undefined && slot !== goal.slot);
  return { target: filled ? undefined : goal.slot, stuck: [...new Set(foreign)] };
}

/** The two places that a slot is. */
export const placesOfSlot = (slot: Slot): readonly Place[] => [cornerOfSlot(slot), edgeOfSlot(slot)];
