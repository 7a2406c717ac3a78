/** Cards on finished pages: each back behind its front, over either edge, and every solution proved again. */
import { describe, expect, it } from 'vitest';
import { auditBuild } from '../../src/audit/audit-build.ts';
import { type PdfPage, readPdf } from '../../src/audit/pdf-text.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import type { ProvedLesson } from '../../src/lesson/prove.ts';
import { claimsFile } from '../../src/sheets/claims.ts';
import { printLesson } from '../../src/sheets/printed.ts';
import { bytesOf } from '../lesson/small-lesson.ts';
import { sampleText } from '../samples.ts';

const provedFor = (turnedOver: 'long' | 'short'): ProvedLesson => {
  const text = sampleText('standard-pairs').replace('duplex: long', `duplex: ${turnedOver}`);
  return loadLesson('a.yaml', bytesOf(text)).proved!;
};

async function cardsOf(proved: ProvedLesson, paper: 'a4' | 'letter' | 'a5', ink: 'colour' | 'mono') {
  const { sheets, problems } = printLesson(proved, { paper, ink, only: ['-cards'] });
  expect(problems).toEqual([]);
  const cards = sheets[0]!;
  const pdf = await writePdf(cards.pages);
  return { cards, pdf, read: await readPdf(pdf), cases: proved.cases.length };
}

/** Where the small line of each card stands, from the left and from the bottom: `12 · title · edition`. */
const marksOf = ({ items }: PdfPage): Map<number, { x: number; y: number }> =>
  new Map(
    items.flatMap(({ text, along, across }) => {
      const number = /^(\d+) · .* · [0-9a-f]{4}-[0-9a-f]{4}$/.exec(text)?.[1];
      return number ? [[Number(number), { x: Math.round(along), y: Math.round(across) }] as const] : [];
    }),
  );

/** Of a page that is full: its columns from the left and its rows from the top. */
function gridOf(page: PdfPage): { columns: number[]; rows: number[] } {
  const places = [...marksOf(page).values()];
  const distinct = (all: number[]): number[] => [...new Set(all)].sort((a, b) => a - b);
  return { columns: distinct(places.map(({ x }) => x)), rows: distinct(places.map(({ y }) => y)).reverse() };
}

describe.each([
  ['long', 'a4', 'colour'],
  ['short', 'a4', 'mono'],
  ['long', 'letter', 'mono'],
  ['short', 'a5', 'colour'],
] as const)('cards turned over the %s edge, on %s in %s', (turnedOver, paper, ink) => {
  const made = cardsOf(provedFor(turnedOver), paper, ink);

  it('have each back behind its front, on the last page too', async () => {
    const { read, cases } = await made;
    const seen: number[] = [];
    const [frontGrid, backGrid] = [gridOf(read.pages[0]!), gridOf(read.pages[1]!)];
    const [columns, rows] = [frontGrid.columns.length, frontGrid.rows.length];
    expect([backGrid.columns.length, backGrid.rows.length]).toEqual([columns, rows]);
    expect(columns * rows).toBe(marksOf(read.pages[0]!).size);
    expect(rows).toBeGreaterThan(1);
    for (let i = 0; i < read.pages.length; i += 2) {
      const fronts = marksOf(read.pages[i]!);
      const backs = marksOf(read.pages[i + 1]!);
      expect([...backs.keys()].sort()).toEqual([...fronts.keys()].sort());
      for (const [number, front] of fronts) {
        seen.push(number);
        const back = backs.get(number)!;
        const [column, row] = [frontGrid.columns.indexOf(front.x), frontGrid.rows.indexOf(front.y)];
        // What is at the left is behind at the right over the long edge; what is above is behind below over the short one.
        const behind = turnedOver === 'long' ? [columns - 1 - column, row] : [column, rows - 1 - row];
        expect([backGrid.columns.indexOf(back.x), backGrid.rows.indexOf(back.y)]).toEqual(behind);
      }
    }
    expect(seen.sort((a, b) => a - b)).toEqual(Array.from({ length: cases }, (_, i) => i + 1));
  });

  it('print what the second checker proves and finds', async () => {
    const { cards, pdf, cases } = await made;
    const file = JSON.parse(JSON.stringify(claimsFile([cards], 'a', 'a.yaml')));
    expect(await auditBuild(file, new Map([['a-cards.pdf', pdf]]))).toEqual({ claims: cases, faults: [] });
    expect(file.claims.every((c: { page: number }) => c.page % 2 === 0)).toBe(true);
  });

  it('are cut at marks as far from one edge of the paper as from the other', async () => {
    const { cards } = await made;
    const { width, height, frames } = cards.pages;
    const lines = frames[0]!.items.filter((item) => item.kind === 'line');
    const upright = [...new Set(lines.filter((l) => l.x1 === l.x2).map((l) => l.x1))].sort((a, b) => a - b);
    // The rule over the foot is as wide as the page's text; marks are short.
    const level = [...new Set(lines.filter((l) => l.y1 === l.y2 && l.x2 - l.x1 < 20).map((l) => l.y1))].sort(
      (a, b) => a - b,
    );
    for (const [at, size] of [
      [upright, width],
      [level, height],
    ] as const) {
      expect(at.length).toBeGreaterThan(1);
      for (const [i, one] of at.entries()) expect(one + at.at(-1 - i)!).toBeCloseTo(size, 1);
    }
  });
});
