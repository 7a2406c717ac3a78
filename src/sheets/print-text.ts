/** What strangers wrote, made fit for paper: signs that the fonts have, words that fit a line. */
import type { Span } from '../layout/blocks.ts';
import { missingGlyphs, widthOf } from '../layout/fonts.ts';
import { typographic } from './typographic.ts';

/** In the size of the letters: 24 letters of a usual word, and what the narrowest column of a slip takes. */
const WIDEST_WORD = 12;
const LONGEST_TEXT = 160;

/** Stands for a sign that the fonts do not have. */
const UNKNOWN = '?';

/** Printable ASCII is in every font, and nearly all there is. */
const isPlain = (sign: string): boolean => sign >= ' ' && sign <= '~';

/** Cut, with a space in words that would not fit a column. */
export function printable(text: string, longest = LONGEST_TEXT): string {
  const cut = text.length > longest ? `${text.slice(0, longest - 1)}…` : text;
  const known = [...cut].map((sign) => {
    if (isPlain(sign)) return sign;
    if (/[\s\p{Cc}\p{Cf}]/u.test(sign)) return ' ';
    return missingGlyphs('sans', sign).length + missingGlyphs('sans-strong', sign).length > 0 ? UNKNOWN : sign;
  });
  return known
    .join('')
    .replaceAll(/\S+/gu, (word) => partsOf(word).join(' '))
    .trim();
}

/** The word, or parts of it that each fit a column. Measured in strong letters, which are the wider ones. */
function partsOf(word: string): string[] {
  if (word.length < WIDEST_WORD) return [word];
  const parts: string[] = [];
  let part = '';
  for (const sign of word) {
    if (part !== '' && widthOf('sans-strong', typographic(part + sign), 1) > WIDEST_WORD) {
      parts.push(part);
      part = '';
    }
    part += sign;
  }
  return [...parts, part];
}

/** A student's code; of one that the fonts have nothing of, where it was handed in: a slip has to find its way back. */
export function printableCode(
  { student, row }: { readonly student: string; readonly row: number },
  longest: number,
  words: { readonly noCode: string; readonly rowOf: (row: number) => string },
): string {
  const said = printable(student, longest);
  if (said === '') return words.noCode;
  return /[^\s?…]/.test(said) ? said : words.rowOf(row);
}

const TURN = /^(?:[UDLRFB]w?|[MESxyz])[2']?$/;

/** A text with turns between backticks. */
export const spansOf = (says: string): Span[] =>
  says.split('`').flatMap((part, i): Span[] => {
    if (part === '') return [];
    const turns = part.split(' ');
    if (i % 2 === 1 && turns.every((turn) => TURN.test(turn))) return [{ kind: 'turns', turns }];
    return [{ kind: 'plain', text: spaced(part) }];
  });

/** Print form, the spaces at its ends kept: they part it from the turns beside it. */
function spaced(part: string): string {
  const [before, after] = [/^\s/.test(part) ? ' ' : '', /\s$/.test(part) ? ' ' : ''];
  return `${before}${typographic(printable(part, 600))}${after}`;
}
