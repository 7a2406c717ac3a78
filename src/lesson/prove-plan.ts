/** The running order of a lesson: what is shown when, each set-up proved as those of the lesson are. */

import { type Turn, turnOf } from '../cube/turns.ts';
import {
  contrastPairs,
  type Example,
  easiestOfRule,
  examplesOf,
  fewestExamples,
  lookAlike,
} from '../rules/examples.ts';
import type { Condition, Done, ProvedRule } from '../rules/rules.ts';
import { treeOf, type WayMark, wayTo } from '../rules/tree.ts';
import type { SolutionClaim } from './claim.ts';
import type { Lesson, Part } from './lesson.ts';
import { BREAK, drillWithBreaks, HOUR, shareOut } from './plan-minutes.ts';
import type { Problem } from './problem.ts';
import { proveCase } from './prove-case.ts';
import type { ProvedLessonRule, ProvedRules } from './prove-rules.ts';
import type { ProvedCase, ProvedPart } from './proved.ts';
import { exampleOf } from './rule-examples.ts';

/** What a class takes for what was shown: an exception of its rule, or what another rule speaks of. */
export interface ExpectedSlip {
  readonly shown: ProvedCase;
  readonly rule: ProvedLessonRule;
  readonly isException: boolean;
  /** What is seen otherwise there. */
  readonly differ: readonly Condition[];
}

/** One set-up, solved as it is held and after a quarter turn of the cube, by different rules. */
export interface TurnedPair {
  readonly before: ProvedCase;
  readonly after: ProvedCase;
  readonly rules: readonly [before: ProvedLessonRule, after: ProvedLessonRule];
}

/** A set-up for the drill of an evening. */
export interface DrillItem {
  readonly rule: ProvedLessonRule;
  readonly isException: boolean;
  readonly shown: ProvedCase;
}

/** What is done in a step of an evening. */
export type PlanContent =
  | { readonly does: 'open' | 'break' | 'drill again' | 'close' }
  | {
      readonly does: 'rule';
      readonly rule: ProvedLessonRule;
      readonly shown: ProvedCase;
      readonly done: Done;
      /** The last question on the way to the rule, and its answer. */
      readonly asked: WayMark | undefined;
      readonly slip: ExpectedSlip | undefined;
    }
  /** Of a lesson without rules: the first case of a part. */
  | { readonly does: 'part'; readonly part: Part; readonly shown: ProvedCase }
  | { readonly does: 'turned'; readonly pairs: readonly TurnedPair[] }
  /** `isWhole`: they show all there is to see; no items in a lesson without rules. */
  | { readonly does: 'drill'; readonly items: readonly DrillItem[]; readonly isWhole: boolean };

/** A step of an evening, and when it begins. */
export type PlanStep = PlanContent & {
  readonly minutes: number;
  /** Minutes from the start. */
  readonly at: number;
};

/** The running order of an evening. */
export interface ProvedPlan {
  readonly minutes: number;
  readonly steps: readonly PlanStep[];
}

const MOST_PAIRS = 2;
const MOST_IN_DRILL = 12;
/** A class turns by itself as long as four rules are shown. */
const DRILL = 4;
const Y = turnOf('rotation', 'y', 1);

/** A minute for each step at least, and one more for each of the drill's weight. */
const fewestMinutes = ({ rules, parts }: Lesson): number => Math.max(rules.length, parts.length, 1) + 3 + DRILL;

export function planProblems(lesson: Lesson): Problem[] {
  if (!lesson.plan) return [];
  const { span, minutes } = lesson.plan;
  const fewest = fewestMinutes(lesson);
  if (minutes >= fewest) return [];
  const message = `${minutes} minutes are too few for what the lesson shows and some practice`;
  return [{ code: 'plan-too-short', span, message, hint: `plan ${fewest} minutes, or show less` }];
}

/** Shows sightings as cases, each with claims of its own. */
function showing(lesson: Lesson, rules: readonly ProvedLessonRule[]) {
  let number = 0;
  return ({ sighting, rule, turns }: Example, otherwise?: { turns: readonly Turn[]; setup: readonly Turn[] }) => {
    const solution = otherwise?.turns ?? turns;
    const setup = otherwise?.setup ?? lesson.step.rules!.setUp(sighting, [solution]);
    return exampleOf({ sighting, setup, solution }, lesson, rules[rule]!.said, 'plan:', ++number);
  };
}

type Show = ReturnType<typeof showing>;

function slipOf(example: Example, { table, rules }: ProvedRules, show: Show): ExpectedSlip | undefined {
  const alike = lookAlike(table, example);
  if (!alike) return undefined;
  const { features } = alike.example.sighting;
  return {
    shown: show(alike.example),
    rule: rules[alike.example.rule]!,
    isException: !alike.example.done,
    differ: alike.differ.flatMap((feature) => {
      const value = features[feature];
      return value === undefined ? [] : [{ feature, values: [value] }];
    }),
  };
}

function ruleSteps(proved: ProvedRules, show: Show): PlanContent[] {
  return proved.rules.flatMap((rule, index): PlanContent[] => {
    const example = easiestOfRule(proved.table, index);
    if (!example) return [];
    const shown = show(example);
    const asked = wayTo(treeOf(proved.table), index)?.at(-1);
    return [{ does: 'rule', rule, shown, done: example.done, asked, slip: slipOf(example, proved, show) }];
  });
}

function turnedSteps({ table, rules }: ProvedRules, show: Show): PlanContent[] {
  const pairs = contrastPairs(table)
    .slice(0, MOST_PAIRS)
    .map(({ example, turned }): TurnedPair => {
      const before = show(example);
      const after = show(example, { turns: [Y, ...turned.turns], setup: before.case.setup });
      return { before, after, rules: [rules[example.rule]!, rules[turned.rule]!] };
    });
  return pairs.length > 0 ? [{ does: 'turned', pairs }] : [];
}

/** Of one rule so many: those of `chosen` first, exceptions no more than are due to them but for one, then what else is easy to show. */
function drilled(
  { sightings, exceptions }: ProvedRule,
  of: readonly Example[],
  chosen: readonly Example[],
  share: number,
) {
  const mostExceptions = Math.ceil((share * exceptions.length) / sightings.length);
  const isException = ({ done }: Example): boolean => done === undefined;
  const others = of.filter((one) => !chosen.includes(one)).sort((a, b) => a.effort - b.effort);
  const ranked = [...chosen, ...others];
  const failing = ranked.filter(isException).slice(0, mostExceptions);
  const holding = ranked.filter((one) => !isException(one)).slice(0, share - failing.length);
  return [...holding, ...failing];
}

/** Every rule by its weight, which is how often it is met, one after the other in turn. */
function drillOf({ table, rules }: ProvedRules, show: Show): PlanContent {
  const chosen = fewestExamples(table);
  const met = table.rules.map((rule, index) => ({ rule, index })).filter(({ rule }) => rule.sightings.length > 0);
  const shares = shareOut(
    MOST_IN_DRILL,
    met.map(({ rule }) => rule.sightings.length),
  );
  const ofRule = (all: readonly Example[], index: number): Example[] => all.filter((one) => one.rule === index);
  const byRule = met.map(({ rule, index }, i) =>
    drilled(rule, ofRule(examplesOf(table), index), ofRule(chosen, index), shares[i]!),
  );
  const rounds = Array.from({ length: Math.max(...byRule.map(({ length }) => length)) }, (_, i) => i);
  const examples = rounds.flatMap((i) => byRule.flatMap((of) => of.slice(i, i + 1)));
  const items = examples.map((example): DrillItem => {
    return { rule: rules[example.rule]!, isException: !example.done, shown: show(example) };
  });
  return { does: 'drill', items, isWhole: chosen.every((one) => examples.includes(one)) };
}

/** A lesson without rules is shown part by part: the first case of each with its first solution. */
const partSteps = (parts: readonly ProvedPart[], lesson: Lesson): PlanContent[] =>
  parts.flatMap(({ part, cases: [first] }): PlanContent[] => {
    if (!first) return [];
    const again = proveCase({ ...first.case, solutions: first.case.solutions.slice(0, 1) }, lesson, [], 'plan:');
    return again ? [{ does: 'part', part, shown: again }] : [];
  });

type Timed = readonly [content: PlanContent, minutes: number];

/** The minutes of each; a drill is parted by short breaks. */
function sharedOut(contents: readonly PlanContent[], minutes: number): Timed[] {
  const rests = contents.filter(({ does }) => does === 'break').length * BREAK;
  const turning = contents.filter(({ does }) => does !== 'break');
  const shares = shareOut(
    minutes - rests,
    turning.map(({ does }) => (does === 'drill' ? DRILL : 1)),
  );
  return contents.flatMap((content): Timed[] => {
    if (content.does === 'break') return [[content, BREAK]];
    const share = shares[turning.indexOf(content)]!;
    if (content.does !== 'drill') return [[content, share]];
    return drillWithBreaks(share).map(({ does, minutes: length }, i): Timed => {
      if (does === 'break') return [{ does }, length];
      return [i === 0 ? content : { does: 'drill again' }, length];
    });
  });
}

/** The first content that would end more than an hour after the last break, and is not alone since then. */
function pastTheHour(steps: readonly Timed[]): PlanContent | undefined {
  let since = 0;
  let alone = true;
  for (const [content, minutes] of steps) {
    since += minutes;
    if (content.does === 'break') since = 0;
    else if (since > HOUR && !alone) return content;
    alone = content.does === 'break';
  }
  return undefined;
}

/** Puts the minutes to the steps, with a break in every hour. */
function timed(contents: readonly PlanContent[], minutes: number): PlanStep[] {
  const shared = sharedOut(contents, minutes);
  const late = contents.indexOf(pastTheHour(shared)!);
  if (late > 0) return timed(contents.toSpliced(late, 0, { does: 'break' }), minutes);
  let at = 0;
  return shared.map(([content, length]) => {
    const step = { ...content, minutes: length, at };
    at += length;
    return step;
  });
}

export function provePlan(
  lesson: Lesson,
  parts: readonly ProvedPart[],
  rules: ProvedRules | undefined,
  minutes: number,
): ProvedPlan {
  const show = showing(lesson, rules?.rules ?? []);
  const shown = rules ? [...ruleSteps(rules, show), ...turnedSteps(rules, show)] : partSteps(parts, lesson);
  const drill: PlanContent = rules ? drillOf(rules, show) : { does: 'drill', items: [], isWhole: true };
  return { minutes, steps: timed([{ does: 'open' }, ...shown, drill, { does: 'close' }], minutes) };
}

function casesOf(step: PlanContent): readonly ProvedCase[] {
  switch (step.does) {
    case 'rule':
      return [step.shown, ...(step.slip ? [step.slip.shown] : [])];
    case 'part':
      return [step.shown];
    case 'turned':
      return step.pairs.flatMap(({ before, after }) => [before, after]);
    case 'drill':
      return step.items.map(({ shown }) => shown);
    default:
      return [];
  }
}

/** Of what the plan shows, in its order. */
export const planClaims = ({ steps }: ProvedPlan): SolutionClaim[] =>
  steps.flatMap(casesOf).flatMap(({ solutions }) => solutions.map(({ claim }) => claim));
