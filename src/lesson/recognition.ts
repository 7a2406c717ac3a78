/** What the rules of a lesson make of a case as it is seen: which applies, how it is found, whether it fails there. */

import { type Condition, fits } from '../rules/rules.ts';
import { askedOnTheWay, treeOf } from '../rules/tree.ts';
import type { Sighting } from '../rules/world.ts';
import { stepOf } from '../steps/steps.ts';
import type { Subject } from '../steps/subject.ts';
import { type ProvedLessonRule, type ProvedRules, ruleAt } from './prove-rules.ts';

/** Of a step that has rules. */
const sightingOf = (subject: Subject): Sighting => stepOf(subject).rules!.sightingOf(subject);

/** Whether it is seen to meet all of these. */
export const looksLike = (subject: Subject, when: readonly Condition[]): boolean =>
  when.length === 0 || fits(sightingOf(subject), when);

/** Whether none of these is seen to be otherwise: words about what has no meaning there may be taken either way. */
export const couldLookLike = (subject: Subject, when: readonly Condition[]): boolean =>
  looksLike(
    subject,
    when.filter(({ feature }) => sightingOf(subject).features[feature] !== undefined),
  );

/** Whether it is the rule of its table that applies there. */
export const speaksOf = ({ proved }: ProvedLessonRule, subject: Subject): boolean =>
  proved.sightings.includes(sightingOf(subject));

/** What a table of rules makes of one case from one side. */
export interface Recognised {
  /** Index of the row of the lesson's table that applies, the cube held as it is. */
  readonly row: number | undefined;
  /** How often two colours are compared before it is known which. */
  readonly comparisons: number;
  /** The rule that applies does not hold here. */
  readonly isException: boolean;
}

export type Recognise = (subject: Subject) => Recognised;

/** For many cases of one lesson; without rules nothing applies. */
export function recognition(proved: ProvedRules | undefined): Recognise {
  if (!proved) return () => ({ row: undefined, comparisons: 0, isException: false });
  const { table, rules } = proved;
  const tree = treeOf(table);
  const comparisons = rules.map((_, i) => askedOnTheWay(tree, i).filter(table.world.isComparison).length);
  const exceptions = new Set(rules.flatMap((rule) => rule.proved.exceptions.map(({ sighting }) => sighting)));
  return (subject) => {
    const rule = ruleAt(proved, subject);
    const row = rule && rules.indexOf(rule);
    return {
      row,
      comparisons: row === undefined ? 0 : comparisons[row]!,
      isException: exceptions.has(sightingOf(subject)),
    };
  };
}
