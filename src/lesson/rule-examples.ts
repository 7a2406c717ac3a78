/** Sightings of rules as cases with a set-up and a solution, proved as those of the lesson are. */
import { writeAddress } from '../cube/address.ts';
import { caseOf } from '../cube/cases.ts';
import { setUpFor } from '../cube/search/set-up-for.ts';
import type { ProvedRule, Seen } from '../cube/teach/rules.ts';
import type { Turn } from '../cube/turns.ts';
import type { Lesson, LessonRule } from './lesson.ts';
import type { Problem } from './problem.ts';
import { proveCase } from './prove-case.ts';
import type { ProvedCase } from './proved.ts';

interface Wanted {
  readonly sighting: Seen;
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
  const problems: Problem[] = [];
  const proved = proveCase(
    {
      number,
      name: undefined,
      hold: lesson.hold,
      colours: lesson.colours,
      slot: sighting.seen,
      open: [],
      setup,
      made: true,
      setupSpan: span,
      solutions: [{ number: 1, chosen: true, turns: solution, remark: [], span }],
      watch: [],
      span,
    },
    lesson,
    problems,
    sheet,
  );
  // Set-up and solution come from the engine: a fault in them is one of ours.
  if (!proved || problems.length > 0) throw new Error(`an example is not proved: ${problems[0]?.message}`);
  return proved;
}

/** Exceptions as a student tells them apart: turns of U of one case, seen from one side, are one. */
export function exceptionCases(
  { exceptions }: ProvedRule,
  lesson: Lesson,
  rule: LessonRule,
  count: (number: number) => number,
): ProvedCase[] {
  const first = new Map<string, ProvedRule['exceptions'][number]>();
  for (const exception of exceptions) {
    const key = `${writeAddress(caseOf(exception.sighting.address))} ${exception.sighting.seen}`;
    const known = first.get(key);
    if (!known || exception.setup.length < known.setup.length) first.set(key, exception);
  }
  return [...first.values()].map(({ sighting, setup, best }, i) =>
    exampleOf({ sighting, setup, solution: best }, lesson, rule, 'rules:', count(i)),
  );
}

/**
 * A sighting that shows a rule at its plainest: no turn of U first, few turns, its own slot at the front right. Undefined
 * if the rule holds nowhere.
 */
export function plainExample(proved: ProvedRule, lesson: Lesson, rule: LessonRule): ProvedCase | undefined {
  const ranked = proved.sightings
    .flatMap((sighting, i) => {
      const done = proved.done[i];
      if (!done) return [];
      const startsOnTop = done.takeOut[0]?.letter === 'U' && done.takeOut.length > 1;
      return [{ sighting, done, rank: (startsOnTop ? 20 : 0) + done.length + (sighting.seen === 'FR' ? 0 : 5) }];
    })
    .sort((a, b) => a.rank - b.rank);
  const [best] = ranked;
  if (!best) return undefined;
  const solution = [...best.done.first, ...best.done.takeOut, ...best.done.rest];
  const setup = setUpFor(best.sighting.address, best.sighting.seen, [solution]);
  return exampleOf({ sighting: best.sighting, setup, solution }, lesson, rule, 'rules:', rule.number);
}
