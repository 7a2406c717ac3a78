/** What the rules of a lesson make of a case as it is seen: which applies, how it is found, whether it fails there. */

import type { Condition } from '../rules/rules.ts';
import { fits } from '../rules/rules.ts';
import { askedOnTheWay, treeOf } from '../rules/tree.ts';
import { writeAddress } from '../steps/pair/address.ts';
import { featuresOf, isComparison } from '../steps/pair/features.ts';
import { asPair } from '../steps/pair/subject.ts';
import type { Subject } from '../steps/subject.ts';
import { type ProvedLessonRule, type ProvedRules, ruleFinder } from './prove-rules.ts';

/** Whether it is seen to meet all of these. */
export function looksLike(subject: Subject, when: readonly Condition[]): boolean {
  const { at, side } = asPair(subject);
  const sighting = { address: at, seen: side };
  return fits({ ...sighting, features: featuresOf(sighting) }, when);
}

/** Whether it is the rule of its table that applies there. */
export const speaksOf = ({ proved }: ProvedLessonRule, { address, side }: Subject): boolean =>
  proved.sightings.some((s) => s.seen === side && writeAddress(s.address) === address);

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
  const find = ruleFinder(proved);
  const tree = treeOf(proved.table);
  const comparisons = proved.rules.map((_, i) => askedOnTheWay(tree!, i).filter(isComparison).length);
  const keyOf = (address: string, side: string): string => `${address} ${side}`;
  const exceptions = new Set(
    proved.rules.flatMap((rule) =>
      rule.proved.exceptions.map(({ sighting }) => keyOf(writeAddress(sighting.address), sighting.seen)),
    ),
  );
  return (subject) => {
    const { at, side } = asPair(subject);
    const rule = find(at, side);
    const row = rule && proved.rules.indexOf(rule);
    return {
      row,
      comparisons: row === undefined ? 0 : comparisons[row]!,
      isException: exceptions.has(keyOf(subject.address, side)),
    };
  };
}
