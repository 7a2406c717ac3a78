/** What the eye should be led to on a pair: its two pieces, its own slot, slots that it is stuck in. */
import { type Cube, type Piece, pieceOf, placeOf } from '../../cube/cube.ts';
import type { Place } from '../../cube/spots.ts';
import type { Emphasis } from '../../svg/emphasis.ts';
import { cornerOfSlot, edgeOfSlot, type PairGoal, type Slot, slotOfPlace } from './slots.ts';

export const pairPieces = (goal: Pick<PairGoal, 'slot'>): { corner: Piece; edge: Piece } => ({
  corner: pieceOf(cornerOfSlot(goal.slot)),
  edge: pieceOf(edgeOfSlot(goal.slot)),
});

/** The two places that a slot is. */
const placesOfSlot = (slot: Slot): readonly Place[] => [cornerOfSlot(slot), edgeOfSlot(slot)];

/** The own slot is emptied while a piece of the pair is not in it; it may be twisted or flipped there. */
export function pairEmphasis(cube: Cube, goal: PairGoal): Emphasis {
  const { corner, edge } = pairPieces(goal);
  const slots = [corner, edge].map((piece) => slotOfPlace(placeOf(cube, piece)));
  const isFilled = slots.every((slot) => slot === goal.slot);
  const foreign = slots.filter((slot): slot is Slot => slot !== undefined && slot !== goal.slot);
  return {
    roleOf: ({ piece }) => {
      if (piece === undefined) return 'centre';
      if (piece === corner || piece === edge) return 'main';
      return goal.base.includes(piece) ? 'kept' : 'other';
    },
    bodies: [corner, edge],
    target: isFilled ? [] : placesOfSlot(goal.slot),
    framed: [...new Set(foreign)].map(placesOfSlot),
  };
}
