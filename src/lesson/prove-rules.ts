/** The rules of a lesson, proved on every sighting of its families: claims, and what there is to tell. */

import { type Turn, writeTurns } from '../cube/turns.ts';
import { impliedBy } from '../rules/alone.ts';
import { mirroredCondition, writeSee } from '../rules/conditions.ts';
import { type Narrowed, narrowed } from '../rules/narrow.ts';
import { type Condition, lengthsNeeded, type ProvedRule, type ProvedTable, proveTable } from '../rules/rules.ts';
import type { Sighting } from '../rules/world.ts';
import type { RulePart } from '../steps/rule-part.ts';
import { stepOf } from '../steps/steps.ts';
import type { Subject } from '../steps/subject.ts';
import { joined } from '../text/likely.ts';
import type { RuleClaim } from './claim.ts';
import type { Lesson, LessonRule } from './lesson.ts';
import type { Problem } from './problem.ts';
import { type ShownExample, type ShownException, shownExample, shownExceptions } from './rule-examples.ts';
import { ruleFacts, ruleSaid } from './rule-said.ts';
import { positionAt } from './source.ts';

export interface ProvedLessonRule {
  readonly said: LessonRule;
  readonly proved: ProvedRule;
  readonly claim: RuleClaim;
  /** Shows it at its plainest; undefined if it holds nowhere. */
  readonly example: ShownExample | undefined;
  /** What it must see besides, to stand alone: what earlier rules leave it. Undefined if no few conditions say it. */
  readonly implied: readonly Condition[] | undefined;
  readonly exceptions: readonly ShownException[];
  /** With these conditions more it would have none; empty if it has none, or if no few conditions do it. */
  readonly exactIf: readonly Condition[];
}

export interface ProvedRules {
  readonly table: ProvedTable;
  readonly rules: readonly ProvedLessonRule[];
}

const bySighting = new WeakMap<ProvedRules, ReadonlyMap<Sighting, ProvedLessonRule>>();

/** The rule that applies to a case as it is seen: the first of the table that fits. */
export function ruleAt(proved: ProvedRules, subject: Subject): ProvedLessonRule | undefined {
  const found =
    bySighting.get(proved) ??
    new Map(proved.rules.flatMap((rule) => rule.proved.sightings.map((s) => [s, rule] as const)));
  bySighting.set(proved, found);
  return found.get(stepOf(subject).rules!.sightingOf(subject));
}

/** The part of a claim that names the rule that applies. */
export function ruleField(proved: ProvedRules | undefined, subject: Subject): { readonly rule?: string } {
  const rule = proved && ruleAt(proved, subject);
  return rule ? { rule: rule.claim.id } : {};
}

const claimOf = (lesson: Lesson, { number, rule, span }: LessonRule, proved: ProvedRule): RuleClaim => ({
  id: `rule.${number}`,
  kind: 'rule',
  file: lesson.source.file,
  line: positionAt(lesson.source, span.start).line,
  families: lesson.families,
  ...ruleSaid(lesson.step.rules!, rule),
  ...ruleFacts(lesson.step.rules!, proved),
  step: lesson.step.name,
  number,
});

const setUpText = (
  { seenSaid }: RulePart,
  { sighting, setup }: { readonly sighting: Sighting; readonly setup: readonly Turn[] },
): string => `set up ${writeTurns(setup)} (${seenSaid(sighting)})`;

/** The smallest further conditions with which a rule has no exceptions; undefined if it has none. */
const mendOf = ({ world }: ProvedTable, { sightings, done, exceptions }: ProvedRule): Narrowed | undefined =>
  exceptions.length > 0 ? narrowed(world, sightings, (i) => done[i] !== undefined) : undefined;

/** The most turns that a rule may allow (schema.ts). */
const MOST_TURNS = 30;

/** The fewest turns that would have to be allowed for the advice to work wherever it can, and in how many sightings. */
function withMoreTurns(table: ProvedTable, proved: ProvedRule): { most: number; holds: number } | undefined {
  const lengths = lengthsNeeded(table, proved).filter((n) => n !== undefined && n <= MOST_TURNS) as number[];
  return lengths.length > proved.holds ? { most: Math.max(...lengths), holds: lengths.length } : undefined;
}

/** As the file has them: for the left hand all is proved in the mirror. */
const asWritten = ({ hand, step }: Lesson, conditions: readonly Condition[]): readonly Condition[] =>
  hand === 'left' ? conditions.map((c) => mirroredCondition(step.rules!, c)) : conditions;

/** A rule of the table, and the conditions that would make it exact. */
interface Judged {
  readonly table: ProvedTable;
  readonly said: LessonRule;
  readonly proved: ProvedRule;
  readonly narrower: Narrowed | undefined;
}

function holdsNowhere({ step }: Lesson, { table, said: { span, rule }, proved }: Judged): Problem {
  const { length: all } = proved.sightings;
  const more = withMoreTurns(table, proved);
  if (more) {
    const within = `within ${rule.counsel.most} turns the advice works in none`;
    const message = `${within} of the ${all} sightings that the rule applies to; it needs up to ${more.most}`;
    const where = more.holds === all ? `all ${all}` : `${more.holds} of the ${all}`;
    return { code: 'rule-fails', span, message, hint: `write most: ${more.most}, and it works in ${where}` };
  }
  const message = `the advice works in none of the ${all} sightings that the rule applies to`;
  return { code: 'rule-fails', span, message, hint: `one of them: ${setUpText(step.rules!, proved.exceptions[0]!)}` };
}

/** What to write so that the rule has no exceptions, all ways that are known. */
function mendsSaid(lesson: Lesson, { table, said: { rule }, proved, narrower }: Judged): string[] {
  const more = withMoreTurns(table, proved);
  const see = narrower && writeSee(table.world, asWritten(lesson, [...rule.when, ...narrower.conditions]));
  return [
    ...(see ? [`write see: ${see}, and it holds for all ${narrower.left} that are left`] : []),
    ...(more?.holds === proved.sightings.length
      ? [`write most: ${more.most}, and it holds for all ${more.holds}`]
      : []),
  ];
}

function problemsOf(lesson: Lesson, judged: Judged): Problem[] {
  const { span, rule } = judged.said;
  const { sightings, holds, exceptions, excluded, contrast } = judged.proved;
  if (sightings.length === 0) {
    const message = 'this rule never applies: no case fits it that an earlier rule does not take';
    return [{ code: 'rule-never-applies', span, message, hint: 'check its conditions, or put it before the others' }];
  }
  if (holds === 0) return [holdsNowhere(lesson, judged)];
  const problems: Problem[] = [];
  if (exceptions.length > 0) {
    const mends = mendsSaid(lesson, judged);
    const message = `holds for ${holds} of ${sightings.length} sightings; the first exception: ${setUpText(lesson.step.rules!, exceptions[0]!)}`;
    const hint =
      mends.length > 0
        ? `${mends.join('; or ')}; or leave it, and the exceptions are printed with it`
        : 'no one or two conditions make it exact; the exceptions are printed with it';
    problems.push({ code: 'rule-exceptions', span, message, hint });
  }
  if (rule.when.length > 0 && excluded > 0 && contrast === excluded) {
    const message = `the advice works as well in all ${excluded} sightings that the conditions exclude`;
    const hint = `leave them out, or say ${lesson.step.rules!.sharper}`;
    problems.push({ code: 'rule-empty-condition', span, message, hint });
  }
  return problems;
}

function leftOut({ world, uncovered, sightings }: ProvedTable, lesson: Lesson): Problem[] {
  if (uncovered.length === 0) return [];
  const { span } = lesson.rules.at(-1)!;
  const sighting = uncovered[0]!;
  const message = `${uncovered.length} of ${sightings.length} sightings of ${joined(lesson.families)} fit no rule`;
  const first = setUpText(lesson.step.rules!, { sighting, setup: world.setUp(sighting, []) });
  const hint = `the first: ${first}, ${sighting.address}; a last rule without "see" would take them all`;
  return [{ code: 'rules-leave-out', span, message, hint }];
}

const tables = new WeakMap<Lesson, ProvedTable>();

/** The lesson's rules, held against every sighting of its families; undefined if it has none, or names no family. */
export function ruleTable(lesson: Lesson): ProvedTable | undefined {
  const { step, families, rules, hand } = lesson;
  if (rules.length === 0 || families.length === 0) return undefined;
  const world = step.rules!;
  const said = rules.map(({ rule }) => rule);
  const table = tables.get(lesson) ?? proveTable(world, families, said, world.front(hand));
  tables.set(lesson, table);
  return table;
}

/**
 * `isWhole`: all of the lesson could be read; a family that was not is not told as missing. `proved` is undefined if the
 * lesson has no rules that could be read.
 */
export function proveRules(
  lesson: Lesson,
  isWhole: boolean,
): { readonly proved: ProvedRules | undefined; readonly problems: readonly Problem[] } {
  if (lesson.rules.length === 0) return { proved: undefined, problems: [] };
  if (lesson.families.length === 0) {
    if (!isWhole) return { proved: undefined, problems: [] };
    const message = 'rules speak of families of cases, and the lesson names none';
    const hint = `add family: ${lesson.step.lesson.about.family[1]}, or whichever they are for`;
    return {
      proved: undefined,
      problems: [{ code: 'rule-without-family', span: lesson.rules[0]!.span, message, hint }],
    };
  }
  const table = ruleTable(lesson)!;
  let exceptionNumber = lesson.rules.length;
  const problems: Problem[] = [];
  const rules = lesson.rules.map((said, i) => {
    const proved = table.rules[i]!;
    const exceptions = shownExceptions(proved, lesson, said, (n) => exceptionNumber + n + 1);
    exceptionNumber += exceptions.length;
    const narrower = mendOf(table, proved);
    problems.push(...problemsOf(lesson, { table, said, proved, narrower }));
    return {
      said,
      proved,
      claim: claimOf(lesson, said, proved),
      example: shownExample(table, i, lesson, said),
      implied: impliedBy(table, i),
      exceptions,
      exactIf: narrower?.conditions ?? [],
    };
  });
  problems.push(...leftOut(table, lesson));
  return { proved: { table, rules }, problems };
}
