/** A lesson's texts -> blocks. */
import type { Origin, Span, TextBlock } from '../layout/blocks.ts';
import type { Paragraph, Phrase, Prose } from '../lesson/lesson.ts';
import { positionAt, type Source } from '../lesson/source.ts';
import { type Ink, letterInk, PALETTES } from '../svg/palette.ts';
import type { Words } from '../words/words.ts';

/** How the parts of a sheet are made: the same for all of one sheet. */
export interface Making {
  readonly source: Source;
  readonly words: Words;
  readonly ink: Ink;
}

export function spanOfPhrase(phrase: Phrase, { ink, words }: Making): Span {
  switch (phrase.kind) {
    case 'plain':
    case 'strong':
      return { kind: phrase.kind, text: phrase.text };
    case 'turns':
      return { kind: 'turns', turns: phrase.turns.map((t) => t.text) };
    case 'colour': {
      const { name, letter } = words.colours[phrase.colour];
      const palette = PALETTES[ink];
      const fill = palette.full[phrase.colour];
      const lettered = palette.letters ? { letter, letterInk: letterInk(fill) } : {};
      return { kind: 'swatch', text: name, fill, ...lettered };
    }
  }
}

export const originOf = (offset: number, { source }: Making): Origin => positionAt(source.text, offset);

const spansOf = (paragraph: Paragraph, making: Making): Span[] =>
  paragraph.phrases.map((phrase) => spanOfPhrase(phrase, making));

/** What stands in a column of running text. */
export const textBlocks = (prose: Prose, making: Making): TextBlock[] =>
  prose.map((paragraph): TextBlock => {
    const spans = spansOf(paragraph, making);
    const origin = originOf(paragraph.span.start, making);
    if (paragraph.kind === 'heading') {
      return { kind: 'text', role: 'H2', style: 'heading', spans, origin, keepWithNext: true };
    }
    return { kind: 'text', role: 'P', style: 'body', spans, origin, bullet: paragraph.kind === 'item' };
  });

/** The same in the small type of panels and side columns; a heading there is no part of the outline. */
export function noteBlocks(prose: Prose, making: Making): TextBlock[] {
  return prose.map((paragraph) => {
    const spans = spansOf(paragraph, making);
    const origin = originOf(paragraph.span.start, making);
    if (paragraph.kind === 'heading') return { kind: 'text', role: 'H2', style: 'heading', spans, origin };
    return { kind: 'text', role: 'P', style: 'note', spans, origin, bullet: paragraph.kind === 'item' };
  });
}
