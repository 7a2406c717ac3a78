/** Random block trees: nothing overlaps, nothing runs off, nothing is lost, and no line is left alone. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Block, Paper } from '../../src/layout/blocks.ts';
import { layOut } from '../../src/layout/layout.ts';
import { bodyTexts, overlaps, plain, scene, sheet, strays, wordsOf } from './sample.ts';

const word = fc.constantFrom('a', 'of', 'the', 'slot', 'edge', 'corner', 'AV', 'To.', '(see)', 'lifted,');
const words = fc.array(word, { maxLength: 60 }).map((list) => list.join(' '));
const turn = fc.constantFrom('R', "R'", 'U2', "F'", 'Lw2', "Rw'");
const gap = fc.constantFrom(0, 3, 7.5, 12);

const leaf: fc.Arbitrary<Block> = fc.oneof(
  fc.record({
    kind: fc.constant('text' as const),
    role: fc.constantFrom('P' as const, 'H2' as const),
    style: fc.constantFrom('heading' as const, 'body' as const, 'note' as const, 'label' as const),
    spans: fc.tuple(words, words).map(([a, b]) => [plain(`${a} `), { kind: 'strong' as const, text: b }]),
    bullet: fc.boolean(),
    keepWithNext: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant('turns' as const),
    groups: fc.array(
      fc.record({ turns: fc.array(turn, { maxLength: 9 }), words: fc.constantFrom('', 'out', 'turn, insert') }),
      {
        maxLength: 4,
      },
    ),
    ring: fc.constant({ text: '11', spoken: '11 turns' }),
  }),
  fc.record({
    kind: fc.constant('figure' as const),
    scene: fc.constant(scene('a')),
    width: fc.double({ min: 10, max: 40, noNaN: true }),
  }),
  fc.constant<Block>({ kind: 'rule', weight: 'thin' }),
  fc.constant<Block>({ kind: 'write-line', label: 'Name' }),
  fc.constant<Block>({ kind: 'boxes', count: 4, width: 14, height: 20, label: 'Word', heads: ['1', '2', '10', '11'] }),
  fc.record({ kind: fc.constant('space' as const), height: fc.double({ min: 0, max: 200, noNaN: true }) }),
);

const { block } = fc.letrec<{ block: Block }>((tie) => ({
  block: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    leaf,
    fc.record({
      kind: fc.constant('stack' as const),
      children: fc.array(tie('block'), { maxLength: 5 }),
      gap,
      keep: fc.constantFrom(true, false, 'where-it-fits' as const),
      line: fc.constantFrom('above' as const, 'left' as const),
    }),
    fc.record({
      kind: fc.constant('columns' as const),
      columns: fc.array(
        fc.record({
          width: fc.oneof(fc.constant(90), fc.record({ share: fc.integer({ min: 1, max: 3 }) })),
          child: tie('block'),
        }),
        { minLength: 1, maxLength: 2 },
      ),
      gap,
    }),
    fc.record({
      kind: fc.constant('grid' as const),
      columns: fc.integer({ min: 1, max: 2 }),
      gap,
      rowGap: gap,
      cells: fc.array(tie('block'), { maxLength: 5 }),
    }),
  ),
}));

/** Blocks in reading order, that is, without nesting. */
const leavesOf = (one: Block): readonly Block[] => {
  switch (one.kind) {
    case 'stack':
      return one.children.flatMap(leavesOf);
    case 'columns':
      return one.columns.flatMap((column) => leavesOf(column.child));
    case 'grid':
      return one.cells.flatMap(leavesOf);
    default:
      return [one];
  }
};

const wordsIn = (one: Block): string => {
  switch (one.kind) {
    case 'text':
      return one.spans.map((span) => (span.kind === 'turns' ? '' : span.text)).join(' ');
    case 'turns':
      return [
        ...one.groups.flatMap((group) => group.turns.join(' ').replaceAll("'", '\u2032')),
        ...one.groups.map((group) => group.words),
        one.ring?.text,
      ].join(' ');
    case 'write-line':
      return one.label;
    case 'boxes':
      return [one.label, ...(one.heads ?? [])].join(' ');
    default:
      return '';
  }
};

/** Turns that are set on two lines have the words of both below them, so that order holds for single words only. */
const sorted = (text: string): readonly string[] => text.split(/\s+/).filter(Boolean).toSorted();

test.each<readonly [Paper, number]>([
  ['a4', 2024],
  ['letter', 2025],
  ['a5', 2026],
])('random sheets on %s (seed %i)', (paper, seed) => {
  let whole = 0;
  let paged = 0;
  fc.assert(
    fc.property(fc.array(block, { minLength: 4, maxLength: 14 }), (body) => {
      const { pages, faults } = layOut(sheet(body), { paper });
      expect(pages.parts.every((part, i) => part.parent === undefined || part.parent < i)).toBe(true);
      if (faults.length > 0) return;
      whole++;
      if (pages.frames.length > 1) paged++;
      for (const frame of pages.frames) {
        expect(overlaps(frame)).toEqual([]);
        expect(strays(frame, paper)).toEqual([]);
      }
      expect(sorted(wordsOf(pages))).toEqual(sorted(body.flatMap(leavesOf).map(wordsIn).join(' ')));
      // Reading order: parts are numbered as they are read, and drawn in that order on every page.
      for (const frame of pages.frames) {
        const parts = frame.items.flatMap((item) => item.part ?? []);
        expect(parts).toEqual(parts.toSorted((a, b) => a - b));
      }
      const linesOfPart = new Map<number, number[]>();
      for (const [i, frame] of pages.frames.entries()) {
        for (const one of bodyTexts(frame)) {
          const counts = linesOfPart.get(one.part!) ?? [];
          counts[i] ??= new Set(
            bodyTexts(frame)
              .filter((other) => other.part === one.part)
              .map((other) => other.y),
          ).size;
          linesOfPart.set(one.part!, counts);
        }
      }
      for (const counts of linesOfPart.values()) {
        const found = Object.values(counts);
        if (found.length > 1) expect(Math.min(...found)).toBeGreaterThan(1);
      }
    }),
    { seed, numRuns: 600 },
  );
  // The property says little if most sheets have faults or fit on one page.
  expect(whole).toBeGreaterThan(120);
  expect(paged).toBeGreaterThan(40);
});
