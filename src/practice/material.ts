/** What a lesson has taught, as the stuff that exercises are made of: every case from every side, with what solves it. */

import { byHands } from '../cube/search/for-hands.ts';
import { prove } from '../cube/solves.ts';
import { lengthOf, mirror, type Turn } from '../cube/turns.ts';
import { byTheRules } from '../lesson/complete.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { PracticeFilter } from '../lesson/practice.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { ProvedLessonRule } from '../lesson/prove-rules.ts';
import type { ProvedCase } from '../lesson/proved.ts';
import { looksLike, type Recognised, recognition } from '../lesson/recognition.ts';
import { stepOf } from '../steps/steps.ts';
import { type Subject, subjectKey } from '../steps/subject.ts';
import { groupedBy } from '../text/grouped.ts';
import { carried, ROUND } from './carry.ts';
import type { Leading } from './difficulty.ts';

/** A case as it was taught, after some turn of the top and from one side, with what is recommended for it. */
export interface Taught extends Recognised {
  readonly subject: Subject;
  /** `UFR:R UB:U FL`: what makes two exercises the same. */
  readonly key: string;
  readonly recommended: readonly Turn[];
}

export interface Material {
  readonly lesson: Lesson;
  readonly leading: Leading;
  /** In the order of the lesson, then by turns of U, then by side. */
  readonly taught: readonly Taught[];
  /** The rows of the lesson's table; none if it has no rules. */
  readonly rules: readonly ProvedLessonRule[];
}

/** The easiest for the hands, which may begin with y. */
function easiestOf(solutions: readonly (readonly Turn[])[], { hand, model }: Leading): readonly Turn[] {
  const isLeft = hand === 'left';
  const [best] = byHands(isLeft ? solutions.map(mirror) : solutions, model);
  return best ? (isLeft ? mirror(best.turns) : best.turns) : [];
}

/** The easiest of the shortest. */
export const shortestFor = (subject: Subject, leading: Leading): readonly Turn[] =>
  easiestOf(
    stepOf(subject)
      .solutions(subject, 0)
      .solutions.map(({ turns }) => turns),
    leading,
  );

type Of = Pick<Material, 'lesson' | 'leading'>;

/** A solution of the coach, seen from elsewhere; proved with all kept that can be, else nothing. */
function fromElsewhere({ subject: from }: ProvedCase, turns: readonly Turn[], to: Subject): readonly Turn[][] {
  const seen = carried(turns, from, to);
  return prove(to.cube, seen, to.goal).verdict === 'solves' ? [seen] : [];
}

/**
 * As it was taught: what the coach recommends for this side, else what the lesson's rules give, else the easiest of what is
 * recommended for other sides, as it is done here.
 */
function taughtWay(cases: readonly ProvedCase[], to: Subject, { lesson, leading }: Of): readonly Turn[] | undefined {
  const here = cases.find(({ subject, solutions }) => subject.side === to.side && solutions.length > 0);
  const first = here && fromElsewhere(here, here.solutions[0]!.solution.turns, to)[0];
  if (first) return first;
  const byRule = byTheRules(to, lesson);
  if (byRule) return byRule;
  const all = cases.flatMap((one) => one.solutions.flatMap(({ solution }) => fromElsewhere(one, solution.turns, to)));
  return all.length > 0 ? easiestOf(all, leading) : undefined;
}

/** Of the two sides R and L the one that is turned first. */
const firstHand = (turns: readonly Turn[]): 'right' | 'left' | undefined => {
  const first = turns.find(({ kind, letter }) => kind !== 'rotation' && (letter === 'R' || letter === 'L'));
  return first && (first.letter === 'R' ? 'right' : 'left');
};

/** Whether a lesson practises it, as far as that shows before it is known what solves it. */
function isWanted(subject: Subject, { row = -1 }: Recognised, { families, own, rules, see }: PracticeFilter): boolean {
  if (families.length > 0 && !families.includes(subject.family)) return false;
  if (!stepOf(subject).practice.isWanted(subject, own)) return false;
  if (rules.length > 0 && !rules.includes(row + 1)) return false;
  return see.length === 0 || looksLike(subject, see);
}

/** The case of a subject after every turn of the top, each from every side, nothing open that need not be. */
function everySideOf(subject: Subject): Subject[] {
  const step = stepOf(subject);
  const all = step
    .upToTop(step.at(subject.caseAddress, step.usual)!)
    .flatMap((one) => ROUND.map((quarters) => step.turned(one, quarters)));
  return [...new Map(all.map((one) => [subjectKey(one), one])).values()];
}

/** Of a lesson as it is for one student; `leading`: their hand, and what it finds hard. */
export function materialOf(proved: ProvedLesson, leading: Leading): Material {
  const { lesson } = proved;
  const only = lesson.practice?.only;
  const recognise = recognition(proved.rules);
  const shown = new Set(proved.cases.map(({ subject }) => subject.side));
  const taught: Taught[] = [];
  const unsolved = proved.cases.filter(({ subject }) => !subject.isSolved);
  for (const cases of groupedBy(unsolved, ({ subject }) => subject.caseAddress).values()) {
    const { subject: first } = cases[0]!;
    const wanted = only ? stepOf(first).practice.sidesWanted(only.own) : [];
    for (const subject of everySideOf(first)) {
      if (wanted.length > 0 ? !wanted.includes(subject.side) : !shown.has(subject.side)) continue;
      const recognised = recognise(subject);
      if (only && !isWanted(subject, recognised, only)) continue;
      const recommended = taughtWay(cases, subject, { lesson, leading }) ?? shortestFor(subject, leading);
      if (only?.turns !== undefined && lengthOf(recommended) > only.turns) continue;
      if (only?.hand !== undefined && firstHand(recommended) !== only.hand) continue;
      taught.push({ subject, key: `${subject.address} ${subject.side}`, recommended, ...recognised });
    }
  }
  return { lesson, leading, taught, rules: proved.rules?.rules ?? [] };
}
