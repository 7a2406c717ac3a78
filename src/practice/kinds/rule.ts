/** Name the rule: which row of the lesson's table speaks of this case, the cube held as it is? */

import type { ProvedLessonRule } from '../../lesson/prove-rules.ts';
import { looksLike, speaksOf } from '../../lesson/recognition.ts';
import { seeing } from '../difficulty.ts';
import type { ChoiceExercise, Exercise } from '../exercise.ts';
import { baseOf, candidateOf, type Kind } from './kind.ts';

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

function unsound(exercise: Exercise): string | undefined {
  if (exercise.form !== 'choice') return 'it offers no choice';
  const rules = exercise.options.flatMap((option) => (option.says === 'rule' ? [option.rule] : []));
  if (rules.length !== exercise.options.length) return 'a choice is no rule';
  // As they are printed: each with all that it must see to stand alone.
  const fitting = rules.flatMap(({ said, implied }, i) =>
    looksLike(exercise.subject, [...said.rule.when, ...(implied ?? [])]) ? [i] : [],
  );
  if (fitting.length !== 1) return `${fitting.length} of the rules fit what is seen`;
  if (exercise.right.join() !== fitting.join()) return 'another rule fits';
  return speaksOf(rules[fitting[0]!]!, exercise.subject) ? undefined : 'an earlier rule of the lesson applies';
}

export const rule: Kind = {
  candidates: ({ taught, leading, rules }) =>
    taught.flatMap((one) => {
      const { row: at } = one;
      if (at === undefined || !standsAlone(rules[at]!) || nearest(rules, at).length < 2) return [];
      return [candidateOf(one, DECIDING + seeing(one, leading))];
    }),
  make(one, material): ChoiceExercise | undefined {
    const at = one.taught.row;
    if (at === undefined) return undefined;
    const options = nearest(material.rules, at);
    return {
      ...baseOf('rule', one),
      form: 'choice',
      options: options.map((some) => ({ says: 'rule', rule: some })),
      right: [options.indexOf(material.rules[at]!)],
    };
  },
  unsound,
};
