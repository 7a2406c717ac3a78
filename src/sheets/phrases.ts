/** A lesson's texts -> blocks. */
import { spelt, type Turn } from '../cube/turns.ts';
import type { Span, TextBlock, TurnsBlock } from '../layout/blocks.ts';
import type { Phrase, Prose, TextLine } from '../lesson/lesson.ts';
import { factId } from '../lesson/prove-facts.ts';
import type { Step } from '../steps/step.ts';
import { letterInk, PALETTES } from '../svg/palette.ts';
import { h2 } from './blocks.ts';
import type { Making } from './making.ts';
import { line as lineOf } from './texts.ts';
import { typographic } from './typographic.ts';

/** What lines and shades of the pictures mean in this ink. */
export const signsOf = ({ sheets }: Step, { words, ink }: Pick<Making, 'words' | 'ink'>): string[] => [
  ...sheets.words(words).signs,
  ...words.handout.signs[ink],
];

/** Turns as they are printed; the page itself sets the primes. */
export const printedTurns = (turns: readonly Turn[], { wide }: Pick<Making, 'wide'>): string[] =>
  turns.map((turn) => spelt(turn, wide));

export const turnsSpan = (turns: readonly Turn[], making: Pick<Making, 'wide'>): Span => ({
  kind: 'turns',
  turns: printedTurns(turns, making),
});

/** Turns on a line of their own, in one group. */
export const turnsLine = (
  turns: readonly Turn[],
  making: Pick<Making, 'wide'>,
  rest?: Omit<Partial<TurnsBlock>, 'kind' | 'groups'>,
): TurnsBlock => ({ kind: 'turns', groups: [{ turns: printedTurns(turns, making) }], ...rest });

/** A length in a ring. */
export const ringOf = (length: number, { words }: Pick<Making, 'words'>): NonNullable<TurnsBlock['ring']> => ({
  text: String(length),
  spoken: words.handout.turns(length),
});

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const colourName = ({ colour, capital: isCapital }: ColourPhrase, { words }: Making): string =>
  isCapital ? capital(words.colours[colour].name) : words.colours[colour].name;

/** `follows`: not the first phrase of its paragraph. */
function spanOfPhrase(phrase: Phrase, making: Making, follows: boolean): Span {
  switch (phrase.kind) {
    case 'plain':
    case 'strong':
      return { kind: phrase.kind, text: typographic(phrase.text, follows) };
    case 'turns':
      return turnsSpan(phrase.turns, making);
    case 'colour':
      return colourSpan(phrase, making);
  }
}

type ColourPhrase = Pick<Phrase & { kind: 'colour' }, 'colour' | 'capital' | 'strong'>;

/** A colour's name with its square. */
export function colourSpan(phrase: ColourPhrase, making: Making): Span {
  const palette = PALETTES[making.ink];
  const fill = palette.full[phrase.colour];
  const { letter } = making.words.colours[phrase.colour];
  const lettered = palette.letters ? { letter, letterInk: letterInk(fill) } : {};
  return { kind: 'swatch', text: colourName(phrase, making), fill, strong: phrase.strong ?? false, ...lettered };
}

/** Without marks: for outlines, titles of files and names of pictures. */
export const plainText = (line: TextLine | undefined, making: Making): string =>
  (line?.phrases ?? [])
    .map((phrase, i) => {
      if (phrase.kind === 'turns') return printedTurns(phrase.turns, making).join(' ');
      return phrase.kind === 'colour' ? colourName(phrase, making) : typographic(phrase.text, i > 0);
    })
    .join('');

/** The line of a heading: its colours are words there, without squares. */
export const lineSpans = (line: TextLine, making: Making, kind: 'plain' | 'strong' = 'plain'): Span[] =>
  line.phrases.map((phrase) =>
    phrase.kind === 'turns'
      ? spanOfPhrase(phrase, making, false)
      : { kind, text: plainText({ phrases: [phrase], span: line.span }, making) },
  );

/** With the ids of the facts that their sentences say. */
const blocksOf = (prose: Prose, style: 'body' | 'note', making: Making): TextBlock[] =>
  prose.map(({ kind, phrases, span: origin }): TextBlock => {
    const spans = phrases.map((phrase, i) => spanOfPhrase(phrase, making, i > 0));
    const facts = phrases.flatMap(({ says }) => says?.names ?? []);
    const claims = [...new Set(facts)].map(factId);
    const rest = { origin, ...(claims.length > 0 && { claims }) };
    return kind === 'heading' ? h2(spans, rest) : { ...lineOf(style, ...spans), ...rest, bullet: kind === 'item' };
  });

/** What stands in a column of running text. */
export const textBlocks = (prose: Prose, making: Making): TextBlock[] => blocksOf(prose, 'body', making);

/** The same in the small type of panels and side columns. */
export const noteBlocks = (prose: Prose, making: Making): TextBlock[] => blocksOf(prose, 'note', making);
