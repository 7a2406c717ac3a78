import { describe, expect, test } from 'vitest';
import type { Block, Paper } from '../../src/layout/blocks.ts';
import { widthOf } from '../../src/layout/fonts.ts';
import type { Frame } from '../../src/layout/frames.ts';
import { layOut } from '../../src/layout/layout.ts';
import { pageShape } from '../../src/layout/paper.ts';
import { typeScale } from '../../src/layout/type.ts';
import { bodyTexts, overlaps, scene, sheet, strays, text, textsOf, turns, wordsOf } from './sample.ts';

const leading = 15;
const lay = (body: readonly Block[], paper: Paper = 'a4') => layOut(sheet(body), { paper });
const linesOf = (frame: Frame): number => new Set(bodyTexts(frame).map((one) => one.y)).size;
const perPage = (paper: Paper): number => {
  const shape = pageShape(paper);
  return Math.floor((shape.bottom - shape.top) / leading);
};
/** A text of so many lines: each word is too long for two to share a line. */
const lines = (count: number, more = {}): Block => text(Array(count).fill('w'.repeat(40)).join(' '), more);
const white = (linesLeft: number): Block => ({ kind: 'space', height: (perPage('a4') - linesLeft) * leading - 15 });
/** A first line and white, which leave so many lines of the page. */
const allBut = (linesLeft: number): readonly Block[] => [text('first'), white(linesLeft)];

describe('papers', () => {
  /** Source: ISO 216 (210 x 297 mm) and ANSI Y14.1 (8.5 x 11 in), at 72 points an inch. */
  test.each([
    ['a4', (210 / 25.4) * 72, (297 / 25.4) * 72],
    ['letter', 8.5 * 72, 11 * 72],
  ] as const)('%s', (paper, width, height) => {
    const { pages } = lay([], paper);
    expect(pages.width).toBeCloseTo(width, 1);
    expect(pages.height).toBeCloseTo(height, 1);
  });
});

describe('text over pages', () => {
  test.each(['a4', 'letter'] as const)('a long text fills page after page of %s', (paper) => {
    const room = perPage(paper);
    const { pages, faults } = lay([lines(2 * room + 5)], paper);
    expect(faults).toEqual([]);
    expect(pages.frames.map(linesOf)).toEqual([room, room, 5]);
  });

  test.each([
    { count: 4, left: 1, split: [0, 4] },
    { count: 4, left: 2, split: [2, 2] },
    { count: 4, left: 3, split: [2, 2] },
    { count: 5, left: 4, split: [3, 2] },
    { count: 6, left: 4, split: [4, 2] },
    { count: 3, left: 2, split: [0, 3] },
    { count: 2, left: 1, split: [0, 2] },
    { count: 3, left: 3, split: [3] },
  ])('$count lines where $left are left: $split', ({ count, left, split }) => {
    const { pages } = lay([...allBut(left), lines(count)]);
    expect(pages.frames.map((frame, i) => linesOf(frame) - (i === 0 ? 1 : 0))).toEqual(split);
  });

  test('both pages print its claims', () => {
    const { pages } = lay([...allBut(2), lines(4, { claims: ['c'] })]);
    expect(pages.frames.map((frame) => frame.claims)).toEqual([['c'], ['c']]);
  });
});

describe('keeping together', () => {
  test('a heading goes with what follows it', () => {
    const { pages } = lay([...allBut(2), text('Heading', { role: 'H2' }), lines(2)]);
    expect(wordsOf({ ...pages, frames: pages.frames.slice(0, 1) })).toBe('first');
  });

  test('a chain of those goes as one', () => {
    const keep = { keepWithNext: true };
    const { pages } = lay([...allBut(3), text('one', keep), text('two', keep), text('three', keep), text('four')]);
    expect(pages.frames.map(linesOf)).toEqual([1, 4]);
  });

  test('a heading may be told that it need not', () => {
    const { pages } = lay([...allBut(1), text('Heading', { role: 'H2', keepWithNext: false }), lines(2)]);
    expect(pages.frames.map(linesOf)).toEqual([2, 2]);
  });

  test('a chain taller than a page is parted all the same', () => {
    const count = 3 * perPage('a4');
    const { pages, faults } = lay(Array.from({ length: count }, (_, i) => text(`line ${i}`, { keepWithNext: true })));
    expect(faults).toEqual([]);
    expect(pages.frames.map(linesOf)).toEqual([count / 3, count / 3, count / 3]);
  });

  test('a stack kept where it fits goes whole to the next page, and is parted where it is taller than one', () => {
    const stack = (count: number): Block => {
      const children = Array.from({ length: count }, (_, i) => text(`line ${i}`));
      return { kind: 'stack', gap: 0, children, keep: 'where-it-fits' };
    };
    expect(lay([...allBut(2), stack(4)]).pages.frames.map(linesOf)).toEqual([1, 4]);
    const room = perPage('a4');
    const { pages, faults } = lay([stack(room + 3)]);
    expect(faults).toEqual([]);
    expect(pages.frames.map(linesOf)).toEqual([room, 3]);
  });

  test('a stack is parted between children unless it is kept', () => {
    const children = [lines(2), lines(2)];
    const parted = lay([...allBut(2), { kind: 'stack', gap: 0, children }]);
    expect(parted.pages.frames.map(linesOf)).toEqual([3, 2]);
    const kept = lay([...allBut(2), { kind: 'stack', gap: 0, children, keep: true }]);
    expect(kept.pages.frames.map(linesOf)).toEqual([1, 4]);
  });

  test('a grid is parted between rows only, and its first row goes with a heading', () => {
    const cells = [lines(2), text('short'), lines(2), lines(2)];
    const { pages } = lay([
      ...allBut(3),
      text('Heading', { role: 'H2' }),
      { kind: 'grid', columns: 2, gap: 9, rowGap: 3, cells },
    ]);
    expect(pages.frames.map(linesOf)).toEqual([4, 2]);
  });

  test('the line over a stack stays with what is under it', () => {
    const { pages } = lay([...allBut(2), { kind: 'stack', gap: 6, line: 'above', children: [lines(2)] }]);
    expect(pages.frames.map((frame) => frame.areas.length)).toEqual([1, 3]);
  });
});

describe('white', () => {
  test('vanishes at the top of a page', () => {
    const { pages } = lay([
      { kind: 'space', height: 50 },
      ...allBut(1),
      text('a'),
      { kind: 'space', height: 20 },
      text('b'),
    ]);
    const tops = pages.frames.map((frame) => frame.areas[0]?.y);
    expect(tops[1]).toBe(tops[0]);
  });

  test('stands between children, and once where one of them is empty', () => {
    const { pages } = lay([{ kind: 'stack', gap: 10, children: [text('a'), text(''), text('b')] }]);
    const [a, b] = pages.frames[0]!.areas;
    expect(b!.y - a!.y).toBeCloseTo(leading + 10, 2);
  });
});

describe('beside each other', () => {
  test('columns take points, then shares of what is left', () => {
    const child = text('x');
    const { pages } = lay([
      {
        kind: 'columns',
        gap: 10,
        columns: [
          { width: 100, child },
          { width: { share: 3 }, child },
          { width: { share: 1 }, child },
        ],
      },
    ]);
    const { left, right } = pageShape('a4');
    const [a, b, c] = pages.frames[0]!.areas;
    expect([a!.x, b!.x]).toEqual([left, left + 110].map((x) => expect.closeTo(x, 2)));
    expect(c!.x).toBeCloseTo(left + 120 + ((right - left - 120) * 3) / 4, 1);
    expect(a!.y).toBe(c!.y);
  });

  test('a line at the left is as long as the row', () => {
    const { pages } = lay([
      {
        kind: 'columns',
        gap: 10,
        columns: [
          { width: { share: 1 }, child: lines(5) },
          { width: { share: 1 }, child: { kind: 'stack', line: 'left', gap: 8, children: [text('short')] } },
        ],
      },
    ]);
    const line = pages.frames[0]!.items.find((item) => item.kind === 'line' && item.x1 === item.x2);
    expect(line?.kind === 'line' && line.y2 - line.y1).toBeCloseTo(5 * leading, 1);
  });
});

describe('turns', () => {
  const narrow = (block: Block): Block => ({ kind: 'columns', gap: 0, columns: [{ width: 133, child: block }] });
  const rowsOf = (block: Block): readonly string[] => {
    const { pages, faults } = lay([narrow(block)]);
    expect(faults).toEqual([]);
    return bodyTexts(pages.frames[0]!)
      .filter((one) => one.font === 'mono')
      .map((one) => one.text);
  };

  test('groups stand further apart than turns, on one line', () => {
    const { pages } = lay([narrow(turns(["R' U2 R", 'out'], ["F' U' F", 'in']))]);
    const [out, back] = bodyTexts(pages.frames[0]!).filter((one) => one.font === 'mono');
    expect([out!.text, back!.text]).toEqual(['R′ U2 R', 'F′ U′ F']);
    expect(back!.y).toBe(out!.y);
    const wide = widthOf('mono', 'R′ U2 R F', typeScale.turns.size) - widthOf('mono', 'F', typeScale.turns.size);
    expect(back!.x - out!.x).toBeGreaterThan(wide + 2);
  });

  test('groups that fit a line only a space apart are one text with single spaces', () => {
    expect(rowsOf(turns(["R' U2 R U2 R", 'out'], ["F' U' F U", 'in']))).toEqual(['R′ U2 R U2 R F′ U′ F U']);
  });

  test('a group goes whole to the next line where it fits there', () => {
    expect(rowsOf(turns(["R' U2 R U2 R' U R", 'out'], ["F' U' F U"]))).toEqual(['R′ U2 R U2 R′ U R', 'F′ U′ F U']);
  });

  test('one that fits no line is parted between turns, indented', () => {
    const long = Array(7).fill("Rw' U2").join(' ');
    const rows = rowsOf(turns([long]));
    expect(rows.length).toBeGreaterThan(1);
    expect(rows.join(' ')).toBe(long.replaceAll("'", '′'));
    const { pages } = lay([narrow(turns([long]))]);
    const xs = bodyTexts(pages.frames[0]!).map((one) => one.x);
    expect(xs[1]).toBeGreaterThan(xs[0]!);
    expect(new Set(xs.slice(1)).size).toBe(1);
  });

  test('words wider than their group push the next one away', () => {
    const { pages } = lay([narrow(turns(['U', 'turn it'], ['R', 'go']))]);
    expect(overlaps(pages.frames[0]!)).toEqual([]);
    const words = bodyTexts(pages.frames[0]!).filter((one) => one.font === 'sans');
    expect(words.map((one) => one.text)).toEqual(['turn it', 'go']);
    expect(words[1]!.x - words[0]!.x).toBeGreaterThan(25);
  });

  test('only a group with words is underlined', () => {
    const underlines = (block: Block): number =>
      lay([block]).pages.frames[0]!.items.filter((item) => item.kind === 'line').length - 1;
    expect(underlines(turns(['R U']))).toBe(0);
    expect(underlines(turns(['R U', 'in']))).toBe(1);
    expect(underlines(turns(['R U', 'in'], ['F']))).toBe(1);
  });

  test('the ring stands at the right end of the first line and no line runs under it', () => {
    const block = { ...turns([Array(9).fill("R'").join(' ')]), ring: { text: '9', spoken: '9 turns' } };
    const { pages } = lay([narrow(block)]);
    const [frame] = pages.frames;
    const ring = frame!.items.find((item) => item.kind === 'box')!;
    const { left } = pageShape('a4');
    expect(ring.kind === 'box' && ring.x + ring.width).toBeCloseTo(left + 133 - 0.4, 1);
    const rows = bodyTexts(frame!).filter((one) => one.font === 'mono');
    expect(rows.length).toBe(2);
    for (const row of rows) expect(row.x + row.text.length * 6).toBeLessThan(ring.kind === 'box' ? ring.x : 0);
    const length = textsOf(frame!).find((one) => one.text === '9')!;
    expect(pages.parts[length.part!]).toMatchObject({ role: 'Span', alt: '9 turns' });
  });
});

describe('the foot', () => {
  test('counts the pages', () => {
    const { pages } = lay([lines(2 * perPage('a4'))]);
    const feet = pages.frames.map((frame) => textsOf(frame).filter((one) => one.part === undefined));
    expect(feet.map((foot) => foot.map((one) => one.text))).toEqual([
      ['left foot', 'page 1 of 2'],
      ['left foot', 'page 2 of 2'],
    ]);
  });

  test('a sheet of nothing is one empty page', () => {
    const { pages, faults } = lay([]);
    expect(faults).toEqual([]);
    expect(pages.frames.map((frame) => frame.areas.length)).toEqual([0]);
  });

  test('two texts that meet are a fault', () => {
    const { faults } = layOut(sheet([], { foot: { left: ['long '.repeat(60)], right: () => 'right' } }), {
      paper: 'a4',
    });
    expect(faults.map((fault) => fault.code)).toEqual(['word-too-wide']);
  });
});

describe('faults', () => {
  const origin = { start: 12, end: 3 };
  const tall = { kind: 'figure', scene: { ...scene('A tower of blocks'), height: 900 }, width: 100, origin } as const;

  test('a block taller than a page is named once and what follows is placed', () => {
    const { pages, faults } = lay([text('before'), tall, text('after')]);
    expect(faults).toEqual([{ code: 'block-too-tall', what: 'A tower of blocks', origin }]);
    expect(wordsOf(pages)).toBe('before after');
  });

  test('a kept stack, a row of columns and a cell are blocks too', () => {
    const high = lines(perPage('a4') + 1, { origin });
    const named = expect.stringContaining('www');
    expect(lay([{ kind: 'stack', gap: 0, keep: true, children: [high], origin }]).faults).toEqual([
      { code: 'block-too-tall', what: named, origin },
    ]);
    expect(lay([{ kind: 'columns', gap: 0, columns: [{ width: 400, child: high }] }]).faults).toEqual([
      { code: 'block-too-tall', what: named },
    ]);
    const grid: Block = { kind: 'grid', columns: 1, gap: 0, rowGap: 0, cells: [high, text('x')] };
    expect(lay([grid]).faults).toEqual([{ code: 'block-too-tall', what: named, origin }]);
  });

  test('a figure, columns and gaps wider than the room', () => {
    const child = text('x');
    expect(lay([{ kind: 'figure', scene: scene('wide'), width: 900 }]).faults).toEqual([
      { code: 'block-too-wide', what: 'wide' },
    ]);
    for (const block of [
      {
        kind: 'columns',
        gap: 0,
        columns: [
          { width: 900, child },
          { width: 1, child },
        ],
      },
      { kind: 'grid', columns: 9, gap: 99, rowGap: 0, cells: [child] },
    ] satisfies Block[]) {
      expect(lay([block]).faults).toContainEqual({ code: 'block-too-wide', what: 'x' });
    }
  });

  test.each<readonly [string, Block]>([
    ['a turn', turns(['R↻'])],
    ['words under turns', turns(['R', '↻'])],
    ['a ring', { ...turns(['R']), ring: { text: '↻', spoken: 'x' } }],
    ['a label to write beside', { kind: 'write-line', label: '↻' }],
    [
      'a label in a drawing',
      {
        kind: 'figure',
        width: 50,
        scene: { ...scene('x'), marks: [{ kind: 'label', text: '↻', x: 1, y: 1, size: 1, colour: '#000000' }] },
      },
    ],
    ['the letter of a swatch', text('', { spans: [{ kind: 'swatch', text: 'a', fill: '#000000', letter: '↻' }] })],
  ])('a missing glyph in %s', (_, block) => {
    expect(lay([{ ...block, origin }]).faults).toEqual([{ code: 'missing-glyph', what: '↻', origin }]);
  });

  test('the same fault of one origin is told once, of two origins twice', () => {
    const odd = (start: number): Block => text('↻ ↻ a↻', { origin: { start, end: start + 1 } });
    expect(lay([odd(1), odd(2)]).faults.map((fault) => fault.origin?.start)).toEqual([1, 2]);
  });
});

describe('odd content', () => {
  test.each<readonly [string, Block]>([
    ['an empty stack', { kind: 'stack', gap: 9, children: [], line: 'above', keep: true }],
    ['no columns', { kind: 'columns', gap: 9, columns: [] }],
    ['an empty grid', { kind: 'grid', columns: 3, gap: 9, rowGap: 9, cells: [] }],
    ['no turns', { kind: 'turns', groups: [] }],
    ['groups of nothing', { kind: 'turns', groups: [{ turns: [] }, { turns: [''], words: '' }] }],
    ['a text without spans', text('', { spans: [] })],
    ['negative white', { kind: 'space', height: -50 }],
    ['white that is no number', { kind: 'space', height: Number.NaN }],
    ['a drawing of no size', { kind: 'figure', width: 50, scene: { width: 0, height: 0, marks: [], description: '' } }],
    ['a drawing of no width', { kind: 'figure', width: Number.NaN, scene: scene('x') }],
  ])('%s takes no room', (_, block) => {
    const { pages, faults } = lay([text('a'), block, text('b')]);
    expect(faults).toEqual([]);
    const [a, b] = pages.frames[0]!.areas;
    expect(b!.y - a!.y).toBeCloseTo(leading, 2);
  });

  test('no columns asked of a grid is one column', () => {
    const { pages } = lay([{ kind: 'grid', columns: 0, gap: 9, rowGap: 0, cells: [text('a'), text('b')] }]);
    expect(pages.frames[0]!.areas.map((one) => one.x)).toEqual([45.35, 45.35]);
  });

  test('a text of a hundred thousand words', () => {
    const { pages, faults } = lay([text('word '.repeat(100_000))]);
    expect(faults).toEqual([]);
    expect(wordsOf(pages).split(' ').length).toBe(100_000);
  });

  test('a word of a hundred thousand letters', () => {
    expect(lay([text('w'.repeat(100_000))]).faults.map((fault) => fault.code)).toEqual(['word-too-wide']);
  });

  test('half a surrogate pair', () => {
    expect(lay([text('a\ud83d b')]).faults.map((fault) => fault.code)).toEqual(['missing-glyph']);
  });

  test('an accent of its own is placed over its letter', () => {
    const { pages, faults } = lay([text('e\u0301')]);
    expect(faults).toEqual([]);
    expect(strays(pages.frames[0]!, 'a4')).toEqual([]);
  });
});
