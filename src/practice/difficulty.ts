/**
 * How hard an exercise is: a measure of our own (no published one is known), in whole points. Ten points are one easy
 * turn of the top.
 *
 * Doing: what the hands need for the recommended solution, as they do it (src/cube/search/hands.ts), cube turns and
 * regrips with it. Who leads with the left hand does all in a mirror, and so is measured in it.
 *
 * Seeing: what the step says of the case; an exception of the lesson's rules (20); each comparing of two colours before it
 * is known which of the rules applies (5).
 */

import { costAsWritten, type HandModel } from '../cube/search/hands.ts';
import { mirror, type Turn } from '../cube/turns.ts';
import type { Recognised } from '../lesson/recognition.ts';
import { stepOf } from '../steps/steps.ts';
import type { Subject } from '../steps/subject.ts';

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

/** Points for reading the whole case. */
export const seeing = (
  { subject, comparisons, isException }: Recognised & { readonly subject: Subject },
  { hand }: Leading,
): number => stepOf(subject).practice.seeing(subject, hand) + 5 * comparisons + (isException ? 20 : 0);
