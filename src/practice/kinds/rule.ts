/** Name the rule: which row of the lesson's table speaks of this case, the cube held as it is? */

import type { ProvedLessonRule } from '../../lesson/prove-rules.ts';
import { fits } from '../../rules/rules.ts';
import { writeAddress } from '../../steps/pair/address.ts';
import { featuresOf } from '../../steps/pair/features.ts';
import { seeing } from '../difficulty.ts';
import type { ChoiceExercise, Exercise } from '../exercise.ts';
import { baseOf } from './base.ts';
import type { Kind } from './kind.ts';

const DECIDING = 60;
const CHOICES = 4;

/** A row that says by itself when it applies; one for whatever is left over says nothing that could be chosen. */
const standsAlone = ({ said, implied }: ProvedLessonRule): boolean =>
  implied !== undefined && said.rule.when.length + implied.length > 0;

/** The row and its neighbours in the table: those that are taken for it. */
function nearest(rules: readonly ProvedLessonRule[], at: number): ProvedLessonRule[] {
  const byDistance = rules
    .map((rule, i) => ({ rule, far: Math.abs(i - at) }))
    .filter(({ rule }) => standsAlone(rule))
    .sort((a, b) => a.far - b.far);
  return byDistance.slice(0, CHOICES).map(({ rule }) => rule);
}

const speaksOf = ({ proved }: ProvedLessonRule, { address, slot }: Exercise): boolean =>
  proved.sightings.some((s) => s.seen === slot && writeAddress(s.address) === writeAddress(address));

function unsound(exercise: Exercise): string | undefined {
  if (exercise.form !== 'choice') return 'it offers no choice';
  const rules = exercise.options.flatMap((option) => (option.says === 'rule' ? [option.rule] : []));
  if (rules.length !== exercise.options.length) return 'a choice is no rule';
  const seen = { address: exercise.address, seen: exercise.slot };
  const features = featuresOf(seen);
  // As they are printed: each with all that it must see to stand alone.
  const fitting = rules.flatMap(({ said, implied }, i) =>
    fits({ ...seen, features }, [...said.rule.when, ...(implied ?? [])]) ? [i] : [],
  );
  if (fitting.length !== 1) return `${fitting.length} of the rules fit what is seen`;
  if (exercise.right.join() !== fitting.join()) return 'another rule fits';
  return speaksOf(rules[fitting[0]!]!, exercise) ? undefined : 'an earlier rule of the lesson applies';
}

export const rule: Kind = {
  kind: 'rule',
  candidates: ({ seen, leading, ruleOf, rules }) =>
    seen.flatMap((one) => {
      const at = ruleOf(one);
      if (at === undefined || !standsAlone(rules[at]!) || nearest(rules, at).length < 2) return [];
      return [{ key: one.key, difficulty: DECIDING + seeing(one, leading), seen: one, open: [] }];
    }),
  make(one, material): ChoiceExercise | undefined {
    const at = material.ruleOf(one.seen);
    if (at === undefined) return undefined;
    const options = nearest(material.rules, at);
    return {
      ...baseOf('rule', one, material),
      form: 'choice',
      options: options.map((some) => ({ says: 'rule', rule: some })),
      right: [options.indexOf(material.rules[at]!)],
    };
  },
  unsound,
};
