/** What could not be laid out, told as problems of the lesson file. */
import type { LayoutFault } from '../layout/frames.ts';
import type { PlacedProblem } from '../lesson/source.ts';

const TOLD: Readonly<Record<LayoutFault['code'], (what: string) => Pick<PlacedProblem, 'code' | 'message' | 'hint'>>> =
  {
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
      message: `the fonts of the page have no "${what}"`,
      hint: 'write it another way',
    }),
    'block-too-tall': (what) => ({
      code: 'print-too-tall',
      message: `what begins with "${what}" is taller than a page and cannot be parted`,
      hint: 'shorten it, or make two of it',
    }),
  };

export function problemOfFault(fault: LayoutFault, file: string): PlacedProblem {
  const { line, column } = fault.origin ?? { line: 1, column: 1 };
  return { severity: 'error', file, line, column, ...TOLD[fault.code](fault.what) };
}
