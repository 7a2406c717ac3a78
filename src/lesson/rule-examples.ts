/** Sightings of rules as cases with a set-up and a solution, proved as those of the lesson are. */

import type { Turn } from '../cube/turns.ts';
import { caseAndSide, easiestOfRule } from '../rules/examples.ts';
import type { Done, ProvedRule, ProvedTable } from '../rules/rules.ts';
import type { Sighting } from '../rules/world.ts';
import { groupedBy } from '../text/grouped.ts';
import { chosenSolution, type Lesson, type LessonRule, plainCase } from './lesson.ts';
import type { Problem } from './problem.ts';
import { proveCase } from './prove-case.ts';
import type { ProvedCase } from './proved.ts';

interface Wanted {
  readonly sighting: Sighting;
  readonly setup: readonly Turn[];
  readonly solution: readonly Turn[];
}

/** The case of a sighting on the lesson's cube. `sheet` and `number` name its claims. */
export function exampleOf(
  { sighting, setup, solution }: Wanted,
  lesson: Lesson,
  { span }: Pick<LessonRule, 'span'>,
  sheet: string,
  number: number,
): ProvedCase {
  const { where } = lesson.step.rules!.subjectOf(sighting);
  const solutions = [chosenSolution(1, solution, span)];
  const c = { ...plainCase(number, { ...lesson, where }, span), setup, made: true, solutions };
  const problems: Problem[] = [];
  const proved = proveCase(c, lesson, problems, sheet);
  // Set-up and solution come from the engine: a fault in them is one of ours.
  if (!proved || problems.length > 0) throw new Error(`an example is not proved: ${problems[0]?.message}`);
  return proved;
}

/** A rule followed where it holds. */
export interface ShownExample {
  readonly shown: ProvedCase;
  readonly done: Done;
}

/** Exceptions as a student tells them apart: turns of U of one case, seen from one side, are one. */
export interface ShownException {
  readonly shown: ProvedCase;
  /** For how many sightings it stands, of how many that differ by turns of U. */
  readonly alike: number;
  readonly of: number;
}

/** `numberOf`: what the claims of the first, second … are called by. */
export function shownExceptions(
  { exceptions }: ProvedRule,
  lesson: Lesson,
  rule: LessonRule,
  numberOf: (index: number) => number,
): ShownException[] {
  const { step } = lesson;
  const groups = groupedBy(exceptions, ({ sighting }) => caseAndSide(sighting));
  return [...groups.values()].map((group, i) => {
    const { sighting, setup, best } = group.reduce((a, b) => (b.setup.length < a.setup.length ? b : a));
    return {
      shown: exampleOf({ sighting, setup, solution: best }, lesson, rule, 'rules:', numberOf(i)),
      alike: group.length,
      of: step.upToTop(step.rules!.subjectOf(sighting)).length,
    };
  });
}

/** Where the rule is easiest to show; undefined if it holds nowhere. */
export function shownExample(
  table: ProvedTable,
  index: number,
  lesson: Lesson,
  rule: LessonRule,
): ShownExample | undefined {
  const best = easiestOfRule(table, index);
  if (!best) return undefined;
  const { sighting, turns: solution, done } = best;
  const setup = table.world.setUp(sighting, [solution]);
  return { shown: exampleOf({ sighting, setup, solution }, lesson, rule, 'rules:', rule.number), done };
}
