/** The running order of a lesson: its rules in minutes, each with set-ups to show, proved as those of the lesson are. */

import { setUpFor } from '../cube/search/set-up-for.ts';
import { chooseExamples, type Example } from '../cube/teach/examples.ts';
import { type ProvedTable, type Seen, solutionAt } from '../cube/teach/rules.ts';
import type { Lesson } from './lesson.ts';
import type { Problem } from './problem.ts';
import type { ProvedLessonRule, ProvedRules } from './prove-rules.ts';
import type { ProvedCase } from './proved.ts';
import { exampleOf } from './rule-examples.ts';

export interface PlannedExample {
  readonly rule: ProvedLessonRule;
  readonly isException: boolean;
  readonly shown: ProvedCase;
  /** With the cube turned a quarter, so, this rule applies instead. */
  readonly contrast: { readonly rule: ProvedLessonRule; readonly turn: 'y' | "y'" } | undefined;
  /** What looks alike and is another rule's. */
  readonly alike: { readonly rule: ProvedLessonRule; readonly shown: ProvedCase } | undefined;
}

export type PlanStep =
  | { readonly kind: 'open' | 'practise' | 'break' | 'close'; readonly minutes: number }
  | {
      readonly kind: 'rule';
      readonly minutes: number;
      readonly rule: ProvedLessonRule;
      readonly examples: readonly PlannedExample[];
    };

export interface ProvedPlan {
  readonly minutes: number;
  readonly steps: readonly PlanStep[];
  /** No choice of examples that shows all of this has fewer. */
  readonly atLeast: number;
}

/** Shares of the whole: of the rules together, and of what follows them. The project's own figures. */
const OPENING = 0.1;
const CLOSING = 0.08;
const RULES = 0.47;
/** Hands rest in a lesson as long as this, once for each such stretch; minutes. */
const STRETCH = 40;
const BREAK = 3;

/** Whole minutes that sum to the whole, the rest going to practice. */
function minutesOf(
  minutes: number,
  rules: number,
): { open: number; each: number[]; pause: number; practise: number; close: number } {
  const open = Math.max(1, Math.round(minutes * OPENING));
  const close = Math.max(1, Math.round(minutes * CLOSING));
  const pause = BREAK * Math.floor(minutes / STRETCH);
  const forRules = Math.max(rules, Math.round(minutes * RULES));
  const each = Array.from({ length: rules }, (_, i) => Math.floor(forRules / rules) + (i < forRules % rules ? 1 : 0));
  return { open, each, pause, practise: minutes - open - close - pause - forRules, close };
}

/** The fewest minutes in which each rule has one and some are left to practise. */
function fewestMinutes(rules: number): number {
  let minutes = 10;
  while (minutesOf(minutes, rules).practise < 3) minutes++;
  return minutes;
}

/** A plan needs rules, and time for each. */
export function planProblems({ plan, rules }: Lesson): Problem[] {
  if (!plan) return [];
  const { span, minutes } = plan;
  if (rules.length === 0) {
    const message = 'a running order goes through the rules of a lesson, and this one has none';
    return [{ code: 'plan-without-rules', span, message, hint: 'add rules, or take the plan out' }];
  }
  const fewest = fewestMinutes(rules.length);
  if (minutes >= fewest) return [];
  const message = `${minutes} minutes are too few for ${rules.length} rules and some practice`;
  return [{ code: 'plan-too-short', span, message, hint: `plan ${fewest} minutes, or fewer rules` }];
}

export function provePlan(lesson: Lesson, { table, rules }: ProvedRules, minutes: number): ProvedPlan {
  let number = 0;
  const shown = (table_: ProvedTable, sighting: Seen, rule: ProvedLessonRule): ProvedCase => {
    const solution = solutionAt(table_, sighting);
    const setup = setUpFor(sighting.address, sighting.seen, [solution]);
    return exampleOf({ sighting, setup, solution }, lesson, rule.said, 'plan:', ++number);
  };
  const planned = ({ rule, sighting, done, contrast, alike }: Example): PlannedExample => ({
    rule: rules[rule]!,
    isException: done === undefined,
    shown: shown(table, sighting, rules[rule]!),
    contrast: contrast && { rule: rules[contrast.rule]!, turn: contrast.turn },
    alike: alike && { rule: rules[alike.rule]!, shown: shown(table, alike.sighting, rules[alike.rule]!) },
  });
  const { examples, atLeast } = chooseExamples(table);
  const all = examples.map(planned);
  const shares = minutesOf(minutes, rules.length);
  return {
    minutes,
    atLeast,
    steps: [
      { kind: 'open', minutes: shares.open },
      ...rules.map(
        (rule, i): PlanStep => ({
          kind: 'rule',
          minutes: shares.each[i]!,
          rule,
          examples: all.filter((one) => one.rule === rule),
        }),
      ),
      ...(shares.pause > 0 ? [{ kind: 'break' as const, minutes: shares.pause }] : []),
      { kind: 'practise', minutes: shares.practise },
      { kind: 'close', minutes: shares.close },
    ],
  };
}
