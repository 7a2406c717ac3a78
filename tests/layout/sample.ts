/** Blocks for the tests, and readings of finished frames. */
import type { Block, Paper, Sheet, Span, TextBlock, TurnsBlock } from '../../src/layout/blocks.ts';
import { widthOf } from '../../src/layout/fonts.ts';
import type { Area, Frame, Item, Pages, PlacedText } from '../../src/layout/frames.ts';
import { pageShape } from '../../src/layout/paper.ts';
import type { Scene } from '../../src/svg/scene.ts';

export const plain = (text: string): Span => ({ kind: 'plain', text });

export const text = (words: string, more: Partial<TextBlock> = {}): TextBlock => ({
  kind: 'text',
  role: 'P',
  style: 'body',
  spans: [plain(words)],
  ...more,
});

export const turns = (...groups: readonly (readonly [turns: string, words?: string])[]): TurnsBlock => ({
  kind: 'turns',
  groups: groups.map(([line, words]) => ({ turns: line.split(' '), ...(words !== undefined && { words }) })),
});

export const scene = (description: string): Scene => ({
  width: 100,
  height: 80,
  description,
  marks: [
    {
      kind: 'polygon',
      points: [
        { x: 1, y: 1 },
        { x: 99, y: 1 },
        { x: 50, y: 79 },
      ],
      fill: '#2fae8c',
      stroke: { colour: '#000000', width: 2 },
    },
    {
      kind: 'line',
      points: [
        { x: 1, y: 79 },
        { x: 99, y: 79 },
      ],
      stroke: { colour: '#8c1225', width: 1, dash: [3, 2] },
    },
    { kind: 'label', text: 'K', x: 50, y: 30, size: 12, colour: '#000000' },
  ],
});

export const sheet = (body: readonly Block[], more: Partial<Sheet> = {}): Sheet => ({
  title: 'A sheet',
  language: 'en',
  body,
  foot: { left: ['left foot'], right: (page, pages) => `page ${page} of ${pages}` },
  ...more,
});

/** One of each kind of block, on two pages. */
export const everything = (): Sheet =>
  sheet(
    [
      text('Turns & tests <one>', { role: 'H1', style: 'title', bookmark: 'Turns & tests' }),
      { kind: 'rule', weight: 'heavy' },
      text('See, then turn', { role: 'H2', style: 'heading', bookmark: 'See' }),
      {
        kind: 'text',
        role: 'P',
        style: 'body',
        spans: [
          plain('Put the '),
          { kind: 'swatch', text: 'green', fill: '#2fae8c', letter: 'G' },
          plain(' edge in with '),
          { kind: 'turns', turns: ["R'", 'U2', 'R'] },
          plain(', then look '),
          { kind: 'strong', text: 'again' },
          plain('.'),
        ],
      },
      {
        kind: 'grid',
        columns: 2,
        gap: 17,
        rowGap: 12,
        cells: [1, 2, 3, 4].map((n) => ({
          kind: 'stack',
          keep: true,
          gap: 6,
          line: 'above',
          claims: [`claim-${n}`],
          children: [
            {
              kind: 'columns',
              gap: 10,
              columns: [
                { width: 96, child: { kind: 'figure', scene: scene(`Drawing number ${n}`), width: 96 } },
                {
                  width: { share: 1 },
                  child: {
                    kind: 'stack',
                    gap: 0,
                    children: [
                      text(`Case ${n}`, { role: 'H3', style: 'panel' }),
                      {
                        ...turns(["R' U2 R", 'edge out'], ["F' U' F", 'insert']),
                        ring: { text: '6', spoken: '6 turns' },
                      },
                    ],
                  },
                },
              ],
            },
          ],
        })),
      },
      { kind: 'space', height: 500 },
      { kind: 'write-line', label: 'Name' },
      text('On the second page', { bullet: true, claims: ['claim-late'] }),
    ],
    { title: 'Turns & tests <one>' },
  );

export const textsOf = (frame: Frame): readonly PlacedText[] =>
  frame.items.filter((item): item is PlacedText => item.kind === 'text');

/** Texts of the body: what belongs to a part of the document. */
export const bodyTexts = (frame: Frame): readonly PlacedText[] =>
  textsOf(frame).filter((one) => one.part !== undefined);

/** All of a sheet's body in order, as single-spaced words. */
export const wordsOf = (pages: Pages): string =>
  pages.frames
    .flatMap(bodyTexts)
    .map((one) => one.text)
    .join(' ')
    .replace(/\s+/g, ' ')
    .trim();

/** Rounding to two decimals moves an edge by a hundredth at most. */
const rounding = 0.021;

export const intersect = (a: Area, b: Area): boolean =>
  a.x + a.width > b.x + rounding &&
  b.x + b.width > a.x + rounding &&
  a.y + a.height > b.y + rounding &&
  b.y + b.height > a.y + rounding;

/** The pairs of areas of a frame that share a spot. */
export const overlaps = ({ areas }: Frame): readonly (readonly [Area, Area])[] =>
  areas.flatMap((a, i) => areas.slice(i + 1).flatMap((b) => (intersect(a, b) ? [[a, b] as const] : [])));

const extentOf = (item: Item): Area => {
  switch (item.kind) {
    case 'text':
      return { x: item.x, y: item.y - item.size, width: widthOf(item.font, item.text, item.size), height: item.size };
    case 'line':
      return { x: item.x1, y: item.y1, width: item.x2 - item.x1, height: item.y2 - item.y1 };
    case 'box':
    case 'scene':
      return item;
  }
};

/** Areas and drawn items that reach over the edges blocks must stay within; texts may reach up by their size. */
export const strays = (frame: Frame, paper: Paper): readonly Area[] => {
  const shape = pageShape(paper);
  const isStray = ({ x, y, width, height }: Area, top: number, bottom: number): boolean =>
    x < shape.left - rounding ||
    x + width > shape.right + rounding ||
    y < top - rounding ||
    y + height > bottom + rounding;
  return [
    ...frame.areas.filter((one) => isStray(one, shape.top, shape.bottom)),
    ...frame.items.map(extentOf).filter((one) => isStray(one, shape.top - 1, shape.height - 28)),
  ];
};
