/** What of a text no page can show: signs that the fonts lack, control characters among them, and endless words. */
import { missingGlyphs } from '../layout/fonts.ts';
import { shownSign } from '../text/sign.ts';
import type { Problem } from './problem.ts';

/** Letters. A longer word fits no heading; what is shorter and too wide for a column is told by the page. */
const LONGEST_WORD = 60;

/** Printable ASCII is in every font, and white space is a space there; no font is opened for them. */
const UNSURE = /[^ -~\s]/gu;

const isMissing = (sign: string): boolean =>
  missingGlyphs('sans', sign).length + missingGlyphs('sans-strong', sign).length > 0;

type Found = Omit<Problem, 'span'> & {
  /** In the text, in UTF-16 units. */
  readonly at: number;
  readonly size: number;
};

/** Each sign where it first stands, each word. */
export function unprintable(text: string): Found[] {
  const signs = new Map<string, number>();
  for (const { 0: sign, index } of text.matchAll(UNSURE)) if (!signs.has(sign)) signs.set(sign, index);
  const missing = [...signs].filter(([sign]) => isMissing(sign));
  const found = missing.map(([sign, at]): Found => {
    const message = `the fonts of the page have no ${shownSign(sign)}`;
    const hint = 'leave it out, or use a word for it';
    return { code: 'print-glyph-missing', at, size: sign.length, message, hint };
  });
  for (const { 0: word, index } of text.matchAll(/\S+/g)) {
    if (word.length <= LONGEST_WORD) continue;
    const message = `"${word.slice(0, LONGEST_WORD)}…" is one word of ${word.length} letters, which no line has room for`;
    const hint = 'use a shorter word, or part it with a hyphen and a space';
    found.push({ code: 'print-word-too-wide', at: index, size: word.length, message, hint });
  }
  return found;
}
