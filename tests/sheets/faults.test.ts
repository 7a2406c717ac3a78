/** What cannot be laid out, told as problems: those that no other suite provokes. */
import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/layout/blocks.ts';
import { layOut } from '../../src/layout/layout.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { problemOfFault } from '../../src/sheets/faults.ts';
import { printLesson } from '../../src/sheets/printed.ts';
import { sheet, text } from '../layout/sample.ts';
import { bytesOf, SMALL_LESSON } from '../lesson/small-lesson.ts';

describe('what is too large to print', () => {
  it('is told of a card at the case it is of, and in front and behind each once', () => {
    const name = 'a long name '.repeat(60).trim();
    const source = SMALL_LESSON.replace('family:', 'cards: { duplex: long }\nfamily:').replace('The first', name);
    const { proved, problems: found } = loadLesson('a.yaml', bytesOf(source));
    expect(found).toEqual([]);
    const { problems } = printLesson(proved!, { paper: 'a4', ink: 'colour', only: ['-cards'] });
    expect(problems).toMatchObject([{ code: 'print-too-tall' }]);
    const { message, span } = problems[0]!;
    expect(message).toMatch(/^what begins with "1 · A small lesson.*" is taller than a page and cannot be parted$/);
    expect(source.slice(span.start)).toMatch(/^name: a long name/);
    // The other sheets part it, and have nothing to tell.
    expect(printLesson(proved!, { paper: 'a4', ink: 'colour', only: [''] }).problems).toEqual([]);
  });

  const asked = (width: number, origin?: { start: number; end: number }): Block => ({
    kind: 'columns',
    gap: 0,
    columns: [{ width, child: text('An answer') }],
    ...(origin && { origin }),
  });
  const problemsOf = (block: Block) => layOut(sheet([block]), { paper: 'a5' }).faults.map(problemOfFault);

  // No lesson leads to one: our own sheets leave room for what they print.
  it('is told of a block wider than its place, where it comes from', () => {
    const origin = { start: 7, end: 11 };
    expect(problemsOf(asked(100, origin))).toEqual([]);
    const message = 'An answer is wider than the place it is printed in';
    expect(problemsOf(asked(2000, origin))).toMatchObject([{ code: 'print-too-wide', span: origin, message }]);
    expect(problemsOf(asked(2000))).toMatchObject([{ code: 'print-too-wide', span: { start: 0, end: 0 } }]);
  });
});
