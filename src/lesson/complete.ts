/** A case as read -> a case that can be proved: a set-up made for its address, a solution chosen where none is listed. */

import { byHands } from '../cube/search/for-hands.ts';
import { byEase, costAsWritten, turnsBehind } from '../cube/search/hands.ts';
import { lengthOf, mirror, type Turn, turnOf } from '../cube/turns.ts';
import { turnsByTable } from '../rules/examples.ts';
import { isFault } from '../steps/step.ts';
import { stepOf } from '../steps/steps.ts';
import type { Subject, Where } from '../steps/subject.ts';
import { type Case, type CaseRead, chosenSolution, type Lesson } from './lesson.ts';
import { ruleTable } from './prove-rules.ts';

type Turns = readonly Turn[];

const beginsWithRotation = ([first]: Turns): boolean => first?.kind === 'rotation';

/**
 * How the lesson's rules solve a case as it is seen; undefined where they do not. Where that takes turns of B, or begins with
 * a turn of the cube, the rules are asked anew after a y first, and the easiest way is taken. For the leading hand of the lesson.
 */
export function byTheRules(subject: Subject, lesson: Lesson): Turns | undefined {
  const { step, hands, hand } = lesson;
  const table = ruleTable(lesson);
  if (!table) return undefined;
  const solved = (seen: Subject): Turns | undefined => turnsByTable(table, step.rules!.sightingOf(seen));
  const asHeld = solved(subject);
  if (hands.still) return asHeld && beginsWithRotation(asHeld) ? undefined : asHeld;
  if (!asHeld || !(turnsBehind(asHeld) || beginsWithRotation(asHeld))) return asHeld;
  const turned = ([1, 2, 3] as const).flatMap((quarters) => {
    const turns = solved(step.turned(subject, quarters));
    return turns && !beginsWithRotation(turns) ? [[turnOf('rotation', 'y', quarters), ...turns]] : [];
  });
  // The figures are those of the right hand.
  const forRight = (turns: Turns): Turns => (hand === 'left' ? mirror(turns) : turns);
  const ways = [asHeld, ...turned].map(forRight).map((turns) => ({ turns, cost: costAsWritten(turns, hands) }));
  return forRight(ways.sort(byEase(hands))[0]!.turns);
}

/** Chosen by the engine, the same from run to run. Undefined for a case that is solved already. */
function chosenTurns(subject: Subject, choice: 'easiest' | 'shortest', { hands }: Lesson): Turns | undefined {
  const { solutions } = stepOf(subject).solutions(subject, choice === 'easiest' ? 1 : 0);
  const [best] = byHands(
    solutions.map(({ turns }) => turns),
    hands,
  );
  return best?.turns;
}

/** What the engine adds to the solutions that are listed, if anything: of the right hand, as `setup` and `where` are. */
function added(c: CaseRead, setup: Turns, where: Where, listed: readonly Turns[], lesson: Lesson): Turns | undefined {
  const { step, hand } = lesson;
  const choice = listed.length === 0 ? lesson.choose : lesson.addShortest ? 'shortest' : 'none';
  if (choice === 'none' || !c.isWhole) return undefined;
  const subject = step.after(setup, where);
  if (isFault(subject)) return undefined;
  if (choice === 'rules') {
    const seen = hand === 'left' ? step.after(mirror(setup), c.where) : subject;
    const turns = isFault(seen) || seen.isSolved ? undefined : byTheRules(seen, lesson);
    if (turns) return hand === 'left' ? mirror(turns) : turns;
  }
  const turns = chosenTurns(subject, choice === 'shortest' ? choice : 'easiest', lesson);
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
