/** What could not be laid out, told as problems of the lesson. */
import type { LayoutFault } from '../layout/frames.ts';
import type { Problem } from '../lesson/problem.ts';
import { shownSign } from '../text/sign.ts';

const TOLD: Readonly<Record<LayoutFault['code'], (what: string) => Omit<Problem, 'span'>>> = {
  'word-too-wide': (what) => ({
    code: 'print-word-too-wide',
    message: `"${what}" is wider than its column`,
    hint: 'use a shorter word, or part it with a hyphen and a space',
  }),
  'block-too-wide': (what) => ({
    code: 'print-too-wide',
    message: `${what} is wider than the place it is printed in`,
    hint: 'make it smaller, or give it more room',
  }),
  'missing-glyph': (what) => ({
    code: 'print-glyph-missing',
    message: `the fonts of the page have no ${shownSign(what)}`,
    hint: 'leave it out, or use a word for it',
  }),
  'block-too-tall': (what) => ({
    code: 'print-too-tall',
    message: `what begins with "${what}" is taller than a page and cannot be parted`,
    hint: 'shorten it, or make two of it',
  }),
};

/** A fault of no place in the lesson is one of the page as a whole. */
export const problemOfFault = ({ code, what, origin }: LayoutFault): Problem => ({
  ...TOLD[code](what),
  span: origin ?? { start: 0, end: 0 },
});
