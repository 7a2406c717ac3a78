/** What practice papers and their keys word alike. */

import { lengthOf, type Turn, writeTurns } from '../cube/turns.ts';
import type { Block, Sheet, Span } from '../layout/blocks.ts';
import type { ExerciseKind } from '../lesson/practice.ts';
import type { ChoiceExercise, SolveExercise } from '../practice/exercise.ts';
import type { PaperItem, PracticePaper } from '../practice/papers.ts';
import type { PracticeWordsOfStep } from '../steps/practice-part.ts';
import { stepOf } from '../steps/steps.ts';
import { drawCase } from '../svg/draw.ts';
import type { Look } from '../svg/marks.ts';
import type { Scene } from '../svg/scene.ts';
import { groupedBy } from '../text/grouped.ts';
import type { KindWords } from '../words/said.ts';
import { h1, h3 } from './blocks.ts';
import type { Making } from './making.ts';
import { turnsSpan } from './phrases.ts';
import { type RuleTexts, textSpans } from './rule-texts.ts';
import { line, plain, strong } from './texts.ts';

/** The number by which an item is called, here and in the claims file. */
export const itemId = ({ code }: PracticePaper, { number }: PaperItem): string => `${code}.${number}`;

/** What the key has beside the recommended solution: nothing if that is one of the shortest. */
export const shorterOf = ({ recommended, shortest }: SolveExercise): (readonly Turn[])[] =>
  lengthOf(shortest) < lengthOf(recommended) ? [shortest] : [];
export const shorterId = (id: string): string => `${id}.2`;

export const numberOf = ({ number }: PaperItem): Block => h3([strong(String(number))]);

/** A paper or its key in the making. */
export interface PaperMaking {
  readonly paper: PracticePaper;
  readonly making: Making;
  readonly look: Look;
}

export const paperMaking = (paper: PracticePaper, making: Making): PaperMaking => ({
  paper,
  making,
  look: { colours: paper.student.proved.lesson.colours, ink: making.ink, words: making.words },
});

/** The title, and below it whose paper it is. */
export function titleBlocks(text: string, { paper: { code, student }, making: { words } }: PaperMaking): Block[] {
  const { practice } = words;
  const whose = [practice.paper(code), ...(student.code ? [practice.student(student.code)] : [])].join(' · ');
  return [h1([plain(text)], { bookmark: whose }), line('body', strong(whose))];
}

export function sheetOf(text: string, { paper: { code }, making: { words } }: PaperMaking, body: Block[]): Sheet {
  const { practice, handout, language } = words;
  return {
    title: text,
    language,
    body,
    foot: { left: [practice.foot(text, code), practice.shortFoot(code)], right: handout.page },
  };
}

/** By kind, in the order in which they stand; those of an earlier lesson on another step, which words them otherwise, apart. */
export const itemsByKind = ({ items }: PracticePaper): [kind: ExerciseKind, items: PaperItem[]][] =>
  [...groupedBy(items, ({ exercise: { kind, subject } }) => `${kind} ${subject.step}`).values()].map((alike) => [
    alike[0]!.exercise.kind,
    alike,
  ]);

const textsOf = ({ paper, making }: PaperMaking): RuleTexts => ({ lesson: paper.student.proved.lesson, making });

/** What the step of an item says on paper. */
export const stepWords = ({ exercise: { subject } }: PaperItem, { words }: Making): PracticeWordsOfStep =>
  stepOf(subject).practice.words(words);

/** Heading and question over the items of one kind. */
export function kindWords(item: PaperItem, making: Making): KindWords {
  const kinds: Readonly<Record<string, KindWords>> = {
    ...making.words.practice.kinds,
    ...stepWords(item, making).kinds,
  };
  return kinds[item.exercise.kind]!;
}

/** What need not be solved besides, if anything. */
export function openLines(
  { exercise: { subject } }: PaperItem,
  { words }: Making,
  as: (text: string) => Span,
): Block[] {
  const said = stepOf(subject).sheets.openSaid(subject, words);
  return said === undefined ? [] : [line('note', as(said))];
}

/** What a choice offers, its rule with all that it must see to stand alone. */
export function optionSpans(item: PaperItem, { options }: ChoiceExercise, i: number, of: PaperMaking): Span[] {
  const texts = textsOf(of);
  const option = options[i]!;
  switch (option.says) {
    case 'turns':
      return [turnsSpan(option.turns, of.making)];
    case 'word':
      return [plain(stepWords(item, of.making).answers[option.word]!)];
    case 'rule':
      // A colour's square beside the letter of a choice would be taken for a box to tick.
      return textSpans(of.making.words.rules.all(option.statements), texts).map((span) =>
        span.kind === 'swatch' ? plain(span.text) : span,
      );
  }
}

/** In ASCII, for the claims file. */
export function optionText(item: PaperItem, e: ChoiceExercise, i: number, of: PaperMaking): string {
  const option = e.options[i]!;
  if (option.says === 'turns') return writeTurns(option.turns, of.making.wide);
  // In any language: answers to a step's own questions go by their names.
  if (option.says === 'word') return option.word;
  return optionSpans(item, e, i, of)
    .map((span) => ('text' in span ? span.text : ''))
    .join('');
}

/** The letter of an option, by its index. */
const letterOf = ({ order, letters }: PaperItem, option: number): string => letters[order.indexOf(option)]!;

/** The answer as a student writes it: one letter, or several where options are to be put in order. */
export const rightLetters = (item: PaperItem): string =>
  item.exercise.form === 'choice' ? item.exercise.right.map((i) => letterOf(item, i)).join('') : '';

/** Papers share many pictures: each is drawn once, and so stands in the file once. Kept as long as what it shows. */
const drawn = new WeakMap<object, Map<string, Scene>>();

/** `shown` and `what` say what the picture is of; two looks at one lesson differ by their ink only. */
export function drawnOnce(shown: object, what: string, { ink }: Look, draw: () => Scene): Scene {
  const known = drawn.get(shown) ?? new Map<string, Scene>();
  drawn.set(shown, known);
  const key = `${what} ${ink}`;
  const found = known.get(key) ?? draw();
  known.set(key, found);
  return found;
}

export const pictureOf = ({ exercise }: PaperItem, look: Look): Scene =>
  drawnOnce(exercise, 'case', look, () => drawCase(exercise.subject.cube, exercise.subject, 'open', look));
