/** A case as read -> a case that can be proved: a set-up made for its address, a solution chosen where none is listed. */

import { easiestOf } from '../cube/search/for-hands.ts';
import { costAsWritten } from '../cube/search/hands.ts';
import { lengthOf, mirror, type Turn, writeTurns } from '../cube/turns.ts';
import { isFault } from '../steps/step.ts';
import { stepOf } from '../steps/steps.ts';
import type { Subject, Where } from '../steps/subject.ts';
import { type Case, type CaseRead, chosenSolution, type Lesson } from './lesson.ts';

type Turns = readonly Turn[];

interface Ranked {
  readonly turns: Turns;
  readonly cost: number;
}

const byCost = (a: Ranked, b: Ranked): number =>
  a.cost - b.cost || (writeTurns(a.turns) < writeTurns(b.turns) ? -1 : 1);

/** Chosen by the engine, the same from run to run. Undefined for a case that is solved already. */
function chosenTurns(subject: Subject, choice: 'easiest' | 'shortest', { hands, claims }: Lesson): Turns | undefined {
  const { solutions } = stepOf(subject).solutions(subject, choice === 'easiest' ? 1 : 0);
  const all = solutions.map(({ turns }) => turns);
  const withoutTurningTheCube = claims.some(({ claim }) => claim === 'rotations');
  if (choice === 'easiest') return easiestOf(all, hands, { withoutTurningTheCube })?.turns;
  const ranked = all.map((turns) => ({ turns, cost: costAsWritten(turns, hands) })).sort(byCost);
  return ranked[0]?.turns.length ? ranked[0].turns : undefined;
}

/** What the engine adds to the solutions that are listed, if anything. */
function added(c: CaseRead, setup: Turns, where: Where, listed: readonly Turns[], lesson: Lesson): Turns | undefined {
  const choice = listed.length === 0 ? lesson.choose : lesson.addShortest ? 'shortest' : undefined;
  const subject = choice && c.isWhole ? lesson.step.after(setup, where) : undefined;
  if (!choice || !subject || isFault(subject)) return undefined;
  const turns = chosenTurns(subject, choice, lesson);
  return turns && listed.some((one) => lengthOf(one) <= lengthOf(turns)) ? undefined : turns;
}

/**
 * What is made is made for the right hand; for the left one it is its mirror image, as is all that the coach wrote.
 * Throws no problem: a set-up that gives no case is told when it is proved.
 */
export function completed(c: CaseRead, lesson: Lesson): Case {
  const { step } = lesson;
  const isLeft = lesson.hand === 'left';
  const seen = (turns: Turns): Turns => (isLeft ? mirror(turns) : turns);
  const where = isLeft ? step.lesson.mirroredWhere(c.where) : c.where;
  const listed = c.solutions.map(({ turns }) => seen(turns));
  const made = 'address' in c.from ? step.at(c.from.address, where) : undefined;
  const turnsFor = (answers: readonly Turns[]): Turns =>
    'setup' in c.from ? seen(c.from.setup) : step.setUp(made!, answers);
  const chosen = added(c, turnsFor(listed), where, listed, lesson);
  // What was chosen is not to be given away either.
  const setup = turnsFor(chosen ? [...listed, chosen] : listed);
  const { from: _, isWhole: __, ...said } = c;
  const further = chosen ? [chosenSolution(listed.length + 1, seen(chosen), c.setupSpan)] : [];
  return { ...said, setup: seen(setup), made: made !== undefined, solutions: [...c.solutions, ...further] };
}
