/** Solutions for one side of a case, as they are for another: the same turns seen from there. */

import { fromTheSide } from '../cube/sides.ts';
import { afterTop, type Turn } from '../cube/turns.ts';
import { stepOf } from '../steps/steps.ts';
import type { Subject } from '../steps/subject.ts';

export const ROUND = [0, 1, 2, 3] as const;

/** Quarter turns about U that bring one side to another; undefined if none do. */
const roundTo = (from: Subject, side: string): number | undefined =>
  ROUND.find((quarters) => stepOf(from).turned(from, quarters).side === side);

/** The turns that solve `from`, for the same case after some turn of U and on some side. Not proved here. */
export function carried(turns: readonly Turn[], from: Subject, to: Subject): Turn[] {
  const step = stepOf(from);
  const round = roundTo(from, to.side) ?? 0;
  // upToTop goes on by one turn of U at a time, from the subject it is given.
  const quarters = step.upToTop(step.turned(from, round)).findIndex(({ address }) => address === to.address);
  return afterTop((4 - quarters) % 4, fromTheSide(turns, round));
}

/**
 * All solutions of up to `longer` turns over the shortest, nothing open that need not be: searched for one side, so that
 * the others have the same turns in the same order.
 */
export function solutionsSeen(subject: Subject, longer: number): readonly (readonly Turn[])[] {
  const step = stepOf(subject);
  const usual = step.at(subject.address, step.usual) ?? subject;
  const round = roundTo(usual, subject.side);
  const { solutions } = step.solutions(round === undefined ? subject : usual, longer);
  return solutions.map(({ turns }) => fromTheSide(turns, round ?? 0));
}

/** Turns that bring a case about and give none of `avoid` away, of so many turns at least where there are such. */
export const setUpFor = (subject: Subject, avoid: readonly (readonly Turn[])[], least = 0): readonly Turn[] =>
  stepOf(subject).setUp(subject, avoid, { solutions: (longer) => solutionsSeen(subject, longer), least });
