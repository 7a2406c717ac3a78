/** Conditions of rules in the words that are printed, and the way back: from printed words to the conditions that they say. */
import { valuesOf } from '../rules/conditions.ts';
import type { Condition } from '../rules/rules.ts';
import { wordsIn } from '../steps/languages.ts';
import { withClubWords } from '../words/rename.ts';
import type { FeatureWords } from '../words/said.ts';
import type { Words } from '../words/words.ts';
import type { Lesson } from './lesson.ts';
import type { ProvedLessonRule } from './prove-rules.ts';

type Saying = Pick<Lesson, 'step' | 'families' | 'language' | 'clubWords'>;

const known = new WeakMap<Saying, Words>();

/** All words that a lesson is printed with: those of its language, its club's in place of some. */
export function wordsOfLesson(lesson: Saying): Words {
  const words = known.get(lesson) ?? withClubWords(wordsIn(lesson.language), lesson.clubWords);
  known.set(lesson, words);
  return words;
}

/** Of a step that has rules. */
export const featureWords = (feature: string, { step, families }: Saying, words: Words): FeatureWords =>
  step.rules!.words(words, families).feature(feature);

export function answerText({ feature, values }: Condition, lesson: Saying, words: Words): string {
  const { answers } = featureWords(feature, lesson, words);
  return answers[values.join(' or ')] ?? words.rules.or(values.map((value) => answers[value] ?? value));
}

/** Without its stop, beginning small; `{cross}` stands for the cross colour. */
export const statementText = (condition: Condition, lesson: Saying, words: Words): string =>
  featureWords(condition.feature, lesson, words).says(answerText(condition, lesson, words));

/** All that a rule must see to stand alone; nothing if it says nothing by itself. */
export function wholeOf({ said, implied }: ProvedLessonRule, { step }: Saying): readonly Condition[] {
  if (!implied) return [];
  const order = Object.keys(step.rules!.features);
  // Where the pieces are and face first, then what is compared.
  return [...said.rule.when, ...implied].sort((a, b) => order.indexOf(a.feature) - order.indexOf(b.feature));
}

/** Every choice of some values and not of all, in their order. */
const choicesOf = (values: readonly string[]): string[][] =>
  Array.from({ length: 2 ** values.length - 2 }, (_, i) => values.filter((_, k) => ((i + 1) >> k) & 1));

type Table = ReadonlyMap<string, Condition | undefined>;
const tables = new WeakMap<Saying, Table>();

/** By what is printed of it: each condition; undefined where two features would be printed alike. */
function tableOf(lesson: Saying): Table {
  const found = tables.get(lesson);
  if (found) return found;
  const table = new Map<string, Condition | undefined>();
  const words = wordsOfLesson(lesson);
  const rules = lesson.step.rules!;
  for (const feature of Object.keys(rules.features)) {
    for (const values of choicesOf(valuesOf(rules, feature))) {
      const text = statementText({ feature, values }, lesson, words);
      table.set(text, table.has(text) ? undefined : { feature, values });
    }
  }
  tables.set(lesson, table);
  return table;
}

/** What a printed statement says; undefined where it says nothing, or might say two things. */
export const conditionSaid = (statement: string, lesson: Saying): Condition | undefined =>
  tableOf(lesson).get(statement);
