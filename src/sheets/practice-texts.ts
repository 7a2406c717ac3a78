/** What practice papers and their keys word alike. */

import { lengthOf, type Turn, writeTurns } from '../cube/turns.ts';
import type { Block, Span } from '../layout/blocks.ts';
import type { Option, SolveExercise } from '../practice/exercise.ts';
import type { PaperItem, PracticePaper } from '../practice/papers.ts';
import { drawCase } from '../svg/draw-case.ts';
import type { Look } from '../svg/marks.ts';
import type { Scene } from '../svg/scene.ts';
import type { Making } from './making.ts';
import { printedTurns } from './phrases.ts';
import { type RuleTexts, textSpans, wholeText } from './rule-texts.ts';
import { plain, strong } from './texts.ts';

/** The number by which an item is called, here and in the claims file. */
export const itemId = ({ code }: PracticePaper, { number }: PaperItem): string => `${code}.${number}`;

/** What the key has beside the recommended solution: nothing if that is one of the shortest. */
export const shorterOf = ({ recommended, shortest }: SolveExercise): (readonly Turn[])[] =>
  lengthOf(shortest) < lengthOf(recommended) ? [shortest] : [];
export const shorterId = (id: string): string => `${id}.2`;

export const numberOf = ({ number }: PaperItem): Block => ({
  kind: 'text',
  role: 'H3',
  style: 'panel',
  spans: [strong(String(number))],
});

export const textsOf = ({ student }: PracticePaper, making: Making): RuleTexts => ({
  lesson: student.proved.lesson,
  making,
});

/** What a choice offers, its rule with all that it must see to stand alone. */
export function optionSpans(option: Option, texts: RuleTexts): Span[] {
  switch (option.says) {
    case 'turns':
      return [{ kind: 'turns', turns: printedTurns(option.turns, texts.making) }];
    case 'word':
      return [plain(texts.making.words.practice.options[option.word])];
    case 'rule':
      // A colour's square beside the letter of a choice would be taken for a box to tick.
      return textSpans(wholeText(option.rule, texts) ?? '', texts).map((span) =>
        span.kind === 'swatch' ? plain(span.text) : span,
      );
  }
}

/** In ASCII, for the claims file. */
export const optionText = (option: Option, texts: RuleTexts): string =>
  option.says === 'turns'
    ? writeTurns(option.turns, texts.making.wide)
    : optionSpans(option, texts)
        .map((span) => ('text' in span ? span.text : ''))
        .join('');

/** The letter of an option, by its index. */
const letterOf = ({ order, letters }: PaperItem, option: number): string => letters[order.indexOf(option)]!;

/** The answer as a student writes it: one letter, or several where options are to be put in order. */
export const rightLetters = (item: PaperItem): string =>
  item.exercise.form === 'choice' ? item.exercise.right.map((i) => letterOf(item, i)).join('') : '';

export const lookOf = ({ student }: PracticePaper, { ink, words }: Making): Look => ({
  colours: student.proved.lesson.colours,
  ink,
  words,
});

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
  drawnOnce(exercise, 'case', look, () => drawCase(exercise.cube, exercise.subject, 'open', look));
