/** Rules in the words of a sheet: questions, statements, advice, with colours and turns set as everywhere. */
import type { Turn } from '../cube/turns.ts';
import type { Span } from '../layout/blocks.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { ProvedLessonRule } from '../lesson/prove-rules.ts';
import { answerText as answerIn, statementText as statementIn, wholeOf } from '../lesson/rule-words.ts';
import { type Condition, type Counsel, turnsTheCube } from '../rules/rules.ts';
import type { Answer, Question } from '../rules/tree.ts';
import type { RuleWordsOfStep } from '../steps/rule-part.ts';
import type { FeatureWords } from '../words/said.ts';
import type { Making } from './making.ts';
import { colourSpan, turnsSpan } from './phrases.ts';
import { typographic } from './typographic.ts';

/** What the texts of one lesson's rules have in common. */
export interface RuleTexts {
  readonly lesson: Lesson;
  readonly making: Making;
}

type Token = 'cross' | 'Cross' | 'turns';

/** A text of words with the cross colour, and turns, put in. */
export function textSpans(
  text: string,
  { lesson, making }: RuleTexts,
  { turns = [], strong = false }: { readonly turns?: readonly Turn[]; readonly strong?: boolean } = {},
): Span[] {
  const parts = text.split(/\{(cross|Cross|turns)\}/);
  return parts.flatMap((part, i): Span[] => {
    if (i % 2 === 0) {
      return part === '' ? [] : [{ kind: strong ? 'strong' : 'plain', text: typographic(part, i > 0) }];
    }
    const token = part as Token;
    if (token === 'turns') return [turnsSpan(turns, making)];
    return [colourSpan({ colour: lesson.colours.D, capital: token === 'Cross', strong }, making)];
  });
}

/** What the step says of features and advice; texts of rules are those of a step that has rules. */
export const ownWords = ({ lesson, making }: RuleTexts): RuleWordsOfStep =>
  lesson.step.rules!.words(making.words, lesson.families);

export const wordsOf = ({ feature }: Pick<Condition, 'feature'>, texts: RuleTexts): FeatureWords =>
  ownWords(texts).feature(feature);

export const answerText = (condition: Condition, { lesson, making }: RuleTexts): string =>
  answerIn(condition, lesson, making.words);

/** Without its stop, beginning small. */
export const statementText = (condition: Condition, { lesson, making }: RuleTexts): string =>
  statementIn(condition, lesson, making.words);

/** What is asked at a branch of the tree. */
export const questionText = (asks: Question['asks'], texts: RuleTexts): string =>
  'feature' in asks
    ? wordsOf(asks, texts).ask
    : texts.making.words.rules.together(asks.together.map((condition) => statementText(condition, texts)));

/** An answer to it. */
export const branchText = (answer: Answer, texts: RuleTexts): string =>
  answer.kind === 'is' ? answerText(answer.condition, texts) : texts.making.words.rules[answer.kind];

/** All that a rule must see to stand alone, as one sentence without its stop; undefined if it says nothing by itself. */
export function wholeText(rule: ProvedLessonRule, texts: RuleTexts): string | undefined {
  const whole = wholeOf(rule, texts.lesson).map((condition) => statementText(condition, texts));
  return whole.length > 0 ? texts.making.words.rules.all(whole) : undefined;
}

/** What to turn, in one sentence without its stop. */
export function adviceSpans(counsel: Counsel, texts: RuleTexts): Span[] {
  const { lesson, making } = texts;
  const { text, turns = [] } = turnsTheCube(counsel)
    ? { text: making.words.rules.turnTheCube }
    : ownWords(texts).advice(counsel, lesson.triggers);
  return textSpans(text, texts, { strong: true, turns });
}

/** How to turn it, as a sentence; undefined where any way will do. */
export const howText = (counsel: Counsel, texts: RuleTexts): string | undefined =>
  turnsTheCube(counsel) ? texts.making.words.rules.lookAgain : ownWords(texts).how(counsel);

/** What stands after the advice, in a word or two. */
export const thenText = (counsel: Counsel, texts: RuleTexts): string =>
  turnsTheCube(counsel) ? texts.making.words.rules.turned : ownWords(texts).after(counsel);
