/** Slots of the first two layers, and what a solution of a pair has to bring about. */
import { type Piece, pieceOf } from '../../cube/cube.ts';
import { type Goal, goalOfPieces } from '../../cube/goal.ts';
import type { Corner, Edge, Place } from '../../cube/spots.ts';

/** The four slots by their edge places, clockwise from the front right as seen from above. */
export const SLOTS = ['FR', 'FL', 'BL', 'BR'] as const;
/** A slot of the first two layers. */
export type Slot = (typeof SLOTS)[number];

/** Quarter turns about U, clockwise, that bring the slot FR to each slot. */
export const QUARTERS_FROM_FRONT_RIGHT: Readonly<Record<Slot, number>> = { FR: 0, FL: 1, BL: 2, BR: 3 };

/** How a slot is seen once the cube was turned by so many quarters about U, clockwise. */
export const turnedSlot = (slot: Slot, quarters: number): Slot =>
  SLOTS[(QUARTERS_FROM_FRONT_RIGHT[slot] + quarters + 4) % 4]!;

export const cornerOfSlot = (slot: Slot): Corner => `D${slot}`;
export const edgeOfSlot = (slot: Slot): Edge => slot;
export const slotOfPlace = (place: Place): Slot | undefined => SLOTS.find((s) => place === s || place === `D${s}`);

const CROSS: readonly Piece[] = (['DF', 'DL', 'DB', 'DR'] as const).map(pieceOf);
const pairOf = (slot: Slot): Piece[] => [pieceOf(cornerOfSlot(slot)), pieceOf(edgeOfSlot(slot))];

/** The base is the cross and the kept slots. */
export interface PairGoal extends Goal {
  /** The pair that is solved; its own slot. */
  readonly slot: Slot;
  readonly kept: readonly Slot[];
}

/** By slot and kept slots: there are few goals, and every sighting of every case asks for one. */
const knownGoals = new Map<string, PairGoal>();

/** The goal for a pair with these slots kept; the pair's own slot is never one of them. */
export function goalOf(slot: Slot, kept: readonly Slot[]): PairGoal {
  const key = `${slot} ${kept}`;
  const known = knownGoals.get(key);
  if (known) return known;
  const keptInOrder = SLOTS.filter((s) => s !== slot && kept.includes(s));
  const goal = { ...goalOfPieces([...CROSS, ...keptInOrder.flatMap(pairOf)], pairOf(slot)), slot, kept: keptInOrder };
  knownGoals.set(key, goal);
  return goal;
}
