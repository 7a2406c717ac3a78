/** Name the rule: which row of the lesson's table speaks of this case, the cube held as it is? */

import type { Lesson } from '../../lesson/lesson.ts';
import type { ProvedLessonRule } from '../../lesson/prove-rules.ts';
import { couldLookLike, looksLike, speaksOf } from '../../lesson/recognition.ts';
import { conditionSaid, statementText, wholeOf, wordsOfLesson } from '../../lesson/rule-words.ts';
import type { Condition } from '../../rules/rules.ts';
import { seeing } from '../difficulty.ts';
import type { ChoiceExercise, Exercise, Option } from '../exercise.ts';
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

type RuleOption = Option & { readonly says: 'rule' };

function optionOf(rule: ProvedLessonRule, lesson: Lesson): RuleOption {
  const words = wordsOfLesson(lesson);
  return { says: 'rule', rule, lesson, statements: wholeOf(rule, lesson).map((c) => statementText(c, lesson, words)) };
}

/** What its printed words say, read back from them; undefined where they cannot be read in one way. */
function readBack({ statements, lesson }: RuleOption): readonly Condition[] | undefined {
  const read = statements.map((statement) => conditionSaid(statement, lesson));
  return read.length === 0 || read.includes(undefined) ? undefined : read.map((condition) => condition!);
}

function unsound(exercise: Exercise): string | undefined {
  if (exercise.form !== 'choice') return 'it offers no choice';
  const options = exercise.options.flatMap((option) => (option.says === 'rule' ? [option] : []));
  if (options.length !== exercise.options.length) return 'a choice is no rule';
  const said = options.map(readBack);
  const unread = said.indexOf(undefined);
  if (unread >= 0) return `what is printed of rule ${options[unread]!.rule.said.number} cannot be read in one way`;
  const fitting = said.flatMap((when, i) => (couldLookLike(exercise.subject, when!) ? [i] : []));
  if (fitting.length !== 1) return `${fitting.length} of the rules are true as they are printed`;
  const [at] = fitting;
  if (exercise.right.join() !== `${at}`) return 'another rule fits';
  if (!looksLike(exercise.subject, said[at!]!)) return 'what is printed of the rule has no meaning here';
  const { rule } = options[at!]!;
  return speaksOf(rule, exercise.subject) ? undefined : 'an earlier rule of the lesson applies';
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
      options: options.map((some) => optionOf(some, material.lesson)),
      right: [options.indexOf(material.rules[at]!)],
    };
  },
  unsound,
};
