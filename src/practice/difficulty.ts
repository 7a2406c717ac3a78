/**
 * How hard an exercise is: a measure of our own (no published one is known), in whole points. Ten points are one easy
 * turn of the top.
 *
 * Doing: what the hands need for the recommended solution, as they do it (src/cube/search/hands.ts), cube turns and
 * regrips with it.
 *
 * Seeing, ten points each unless said otherwise: a piece stuck in a slot (20 in a slot at the back); an own slot
 * that is not at the front right (20 at the back); the cross colour of a corner on top up, where nothing can be compared; a
 * piece turned wrongly in its own slot; a corner on top at the back (5); a further slot open; an exception of the lesson's
 * rules (20); each comparing of two colours before it is known which of the rules applies (5).
 *
 * Who leads with the left hand sees and does all in a mirror, and so is measured in it.
 */

import { costAsWritten, type HandModel } from '../cube/search/hands.ts';
import { mirror, type Turn } from '../cube/turns.ts';
import type { Slot } from '../steps/pair/slots.ts';
import { type SeenPair, stuckSlot } from './seen-pair.ts';

export interface Leading {
  readonly hand: 'right' | 'left';
  readonly model: HandModel;
}

type Points = WeakMap<readonly Turn[], number>;
/** Each kind of exercise asks of the same solutions. By hand, model and turns. */
const knownPoints = { right: new WeakMap<HandModel, Points>(), left: new WeakMap<HandModel, Points>() };

/** Points for the hands. */
export function doing(turns: readonly Turn[], { hand, model }: Leading): number {
  const known = knownPoints[hand].get(model) ?? new WeakMap<readonly Turn[], number>();
  knownPoints[hand].set(model, known);
  const points = known.get(turns) ?? Math.round(10 * costAsWritten(hand === 'left' ? mirror(turns) : turns, model));
  known.set(turns, points);
  return points;
}

const EASIEST_SLOT = { right: 'FR', left: 'FL' } as const;
const isBehind = (place: string): boolean => place.includes('B');

function stuckPoints(place: SeenPair['corner']['place'] | SeenPair['edge']['place'], slot: Slot): number {
  const stuck = stuckSlot(place, slot);
  return stuck === undefined ? 0 : isBehind(stuck) ? 20 : 10;
}

const ownSlotPoints = (slot: Slot, { hand }: Leading): number =>
  slot === EASIEST_SLOT[hand] ? 0 : isBehind(slot) ? 20 : 10;

/** Points for finding and reading the edge. */
export const seeingEdge = ({ edge, slot }: SeenPair, leading: Leading): number =>
  stuckPoints(edge.place, slot) + ownSlotPoints(slot, leading);

/** A pair with what the lesson's rules make of it: material.ts. */
interface Recognised extends SeenPair {
  readonly comparisons: number;
  readonly isException: boolean;
}

/** Points for reading the whole pair. */
export function seeing(s: Recognised, leading: Leading, open: readonly Slot[] = []): number {
  const { corner, edge, slot } = s;
  const onTop = corner.place.startsWith('U');
  const turnedAtHome = corner.place === `D${slot}` && corner.cross !== 'D' ? 10 : 0;
  return (
    stuckPoints(corner.place, slot) +
    stuckPoints(edge.place, slot) +
    ownSlotPoints(slot, leading) +
    (onTop && corner.cross === 'U' ? 10 : 0) +
    (onTop && isBehind(corner.place) ? 5 : 0) +
    turnedAtHome +
    5 * s.comparisons +
    (s.isException ? 20 : 0) +
    10 * open.length
  );
}
