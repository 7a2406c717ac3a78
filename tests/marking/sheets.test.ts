/** Slips and report: they come out on every paper, whatever was handed in, and say what they should. */
import { describe, expect, it } from 'vitest';
import { USUAL_SCHEME } from '../../src/cube/colours.ts';
import type { Pages } from '../../src/layout/frames.ts';
import { layOut } from '../../src/layout/layout.ts';
import { byCode } from '../../src/marking/by-student.ts';
import type { MarkedRow } from '../../src/marking/submission.ts';
import { summaryOf } from '../../src/marking/summary.ts';
import { reportSheet } from '../../src/sheets/report-sheet.ts';
import { slipsSheet } from '../../src/sheets/slips-sheet.ts';
import { wordsIn } from '../../src/steps/languages.ts';
import { randomFrom } from '../random.ts';
import { claimsOf, fileOf, marked, onPaper, proved } from './class.ts';

const english = wordsIn('en');

const EDGE_AWAY = claimsOf('edge-away');
const CHOICE = {
  ...EDGE_AWAY[0]!,
  ...onPaper('K4T', 1),
  kind: 'choice',
  asks: 'rule',
  options: ['lift with R', 'lift with L'],
  sees: [['cross colour: up'], ['cross colour: sideways']],
  answer: 'B',
};
const { items } = proved(fileOf([...EDGE_AWAY, CHOICE], 'The edge away'));
const making = { words: english, ink: 'colour', paper: 'a4', lesson: 'The edge away', scheme: USUAL_SCHEME } as const;

const textOf = (pages: Pages): string =>
  pages.frames
    .flatMap((frame) =>
      frame.items.map((item) => (item.kind === 'text' ? item.text : item.kind === 'scene' ? ' (picture) ' : '')),
    )
    .join(' ')
    .replaceAll(/\s+/g, ' ');

const CLASS: MarkedRow[] = [
  ['B2', '1', "L' U L R U R'"],
  ['B2', '2', "L U L' R U R"],
  ['B2', '13', "F2 R' F2 R"],
  ['B10', '1', ''],
  ['B10', '2', "L U L' R U R"],
  ['B10', '99', 'R'],
  ['B10', 'K4T.1', 'A'],
  ['C1', '1', 'Li U L R U R'],
  ['C1', '2', "L U L' R U R'"],
  ['C1', '2', 'R'],
].map(([student, item, answer]) => marked(items, item!, answer!, { student: student! }));

describe('times', () => {
  const rows = [
    marked(items, '1', "L' U L R U R'"),
    marked(items, '2', '12.4'),
    marked(items, '3', '9.8', { mark: '0.5' }),
    marked(items, '5', ''),
  ];

  it('count in no figure, unless the coach marks them', () => {
    const summary = summaryOf(rows, items.items);
    expect([summary.answered, summary.points]).toEqual([3, 1.5]);
    expect(summary.items.map(({ item }) => item.id).sort()).toEqual(['1', '3', '5']);
    const { pages } = layOut(slipsSheet(summary.students, items.items, making), { paper: 'a4' });
    expect(textOf(pages)).toMatch(/K7 · 1\.5 of 3 right.*Not answered: 3, 5 Times, not marked: 2/);
  });
});

describe('slips', () => {
  const { students } = summaryOf(CLASS, items.items);
  const { pages, faults } = layOut(slipsSheet(students, items.items, making), { paper: 'a4' });
  const text = textOf(pages);

  it('are one a student, in the order of their codes', () => {
    expect(faults).toEqual([]);
    expect(students.map(({ student }) => student)).toEqual(['B2', 'B10', 'C1']);
    expect(text).toMatch(/B2 · 2 of 3 right.*B10 · 0 of 3 right.*C1 · 0 of 2 right/);
    expect(['K10', 'K9', 'K', '', 'k1', 'K09a'].sort(byCode)).toEqual(['', 'K', 'K09a', 'K9', 'K10', 'k1']);
  });

  it('show where it went wrong, and what is right', () => {
    expect(text).toContain('Before your turn 6');
    expect(text).toMatch(/With R ?′ instead of R as turn 6 it solves/);
    expect(text).toMatch(/Right: 1, 13/);
    expect(text).toContain('Not answered: 1');
    expect(text).toContain('Not marked, since it is not clear which item they belong to: 99');
    expect(text.match(/\(picture\)/g)).toHaveLength(4);
  });

  it('have no picture rather than one in wrong colours', () => {
    const scheme = { ...USUAL_SCHEME, U: 'red', R: 'white' } as const;
    const sheet = slipsSheet(students, items.items, { ...making, scheme });
    expect(textOf(layOut(sheet, { paper: 'a4' }).pages)).not.toContain('(picture)');
  });

  it('count the second answer to an item in place of the first', () => {
    expect(students[2]!.rows.map(({ answer }) => answer)).toEqual(['Li U L R U R', 'R']);
  });
});

describe('the report', () => {
  const summary = summaryOf(CLASS, items.items);

  it('has the items by success, the hardest first', () => {
    expect(summary.items.map(({ item, points, answered }) => [item.id, points, answered])).toEqual([
      ['2', 0, 3],
      ['K4T.1', 0, 1],
      ['1', 1, 3],
      ['13', 1, 1],
    ]);
  });

  it('has the commonest slips, what was asked, who needs it again, what beats the sheet, what is not marked', () => {
    expect(summary.slips[0]).toMatchObject({ slip: 'amount', count: 2 });
    expect(summary.asked).toEqual([{ asks: 'rule', answered: 1, points: 0 }]);
    expect(summary.choices[0]!.chosen).toEqual([{ letter: 'A', option: 'lift with R', count: 1 }]);
    expect(summary.again).toMatchObject([
      { lesson: 'The edge away', students: [{ student: 'B10' }, { student: 'C1' }] },
    ]);
    expect(summary.shorter.map(({ row, key }) => [row.student, row.length, key])).toEqual([['B2', 4, 7]]);
    expect(summary.notMarked.map(({ item }) => item)).toEqual(['99']);
    const { pages, faults } = layOut(reportSheet(summary, making), { paper: 'a4' });
    expect(faults).toEqual([]);
    const text = textOf(pages);
    expect(text).toMatch(/Which rule holds : 0 of 1 right.* Item K4T\.1: 1 chose A, lift with R/);
    expect(text).toMatch(/B2, item 13: 4 turns.*the sheet has 7/);
    // Case 1 was tried three times, and solved once: by hand of CLASS.
    expect(summary.cases.map(({ points, answered }) => [points, answered])).toEqual([
      [0, 3],
      [1, 3],
      [1, 1],
    ]);
  });

  it("goes by the coach's marks", () => {
    const rows = [marked(items, '1', 'R', { mark: 'right' }), marked(items, '2', 'R', { mark: '0.5' })];
    const found = summaryOf(rows, items.items);
    expect(found.points).toBe(1.5);
    expect(found.slips.map(({ count }) => count)).toEqual([1]);
    expect(found.again[0]!.students).toEqual([]);
  });

  it('of nothing is a page', () => {
    const { pages, faults } = layOut(reportSheet(summaryOf([], []), making), { paper: 'a4' });
    expect([faults, pages.frames.length]).toEqual([[], 1]);
  });
});

describe('whatever was handed in', () => {
  const SEED = 5;
  const ODD = ['K', '7', ' ', '壁', '🙂', '\ud83d', '(', 'W', 'مر', '`', '\u202e', "'", 'é', '…'];
  /** Nearly no room to break a line, and the widest letters there are. */
  const WIDE = ['W', 'M', 'm', 'w', '@', '%', '—', '…', 'Œ', 'Æ', '‰', '½', '-', '′', 'i'];

  it.each([
    ['a4', ODD],
    ['letter', ODD],
    ['a5', ODD],
    ['a4', WIDE],
    ['letter', WIDE],
    ['a5', WIDE],
  ] as const)(`comes out on %s, of %j (seed ${SEED})`, (paper, signs) => {
    const r = randomFrom(SEED);
    const odd = (): string => {
      const some = r.chance(0.3) ? [r.pick(signs)] : signs;
      return Array.from({ length: r.below(200) }, () => r.pick(some)).join('');
    };
    const longest = 60;
    const rows = Array.from({ length: 120 }, (_, i) => {
      const item = r.pick([odd().slice(0, longest), String(1 + r.below(26)), 'K4T.1']);
      const turns = Array.from({ length: 1 + r.below(120) }, () => r.pick(['R', "U'", 'F2', 'Rw2', "M'", 'y'])).join(
        ' ',
      );
      const rest = {
        student: i % 3 === 0 ? odd().slice(0, longest) : `K${i % 11}`,
        mark: r.chance(0.1) ? odd().slice(0, longest) : '',
      };
      return marked(items, item, r.pick([odd(), turns, 'R U', 'r i', '']), { ...rest, file: `${odd()}.csv` });
    });
    const summary = summaryOf(rows, items.items);
    const lesson = odd();
    for (const sheet of [
      slipsSheet(summary.students, items.items, { ...making, paper, lesson }),
      reportSheet(summary, { ...making, paper, lesson }),
    ]) {
      expect(layOut(sheet, { paper }).faults).toEqual([]);
    }
  });
});
