import { describe, expect, test } from 'vitest';
import { readPdf } from '../../src/audit/pdf-text.ts';
import { printedRuns } from '../../src/audit/printed-runs.ts';
import { type Mark, smallPdf } from './small-pdf.ts';

test('text, title, language and figures come out of a finished PDF', async () => {
  const pdf = await readPdf(
    await smallPdf(
      [
        [
          { x: 50, y: 50, label: 'Set up' },
          { x: 50, y: 62, turns: "R U' R'" },
        ],
        [{ x: 50, y: 50, label: 'Nothing but words' }],
      ],
      ['Corner on top', 'Edge in the slot'],
    ),
  );
  expect(pdf.pages.map(({ text }) => text)).toEqual(["Set up R U' R'", 'Nothing but words']);
  expect(pdf).toMatchObject({ title: 'Tuesday evening', language: 'en-GB' });
  expect(pdf.figures).toEqual([
    { page: 1, alt: 'Corner on top' },
    { page: 2, alt: 'Edge in the slot' },
  ]);
});

test('bytes that are no PDF are rejected, and the bytes given stay as they were', async () => {
  await expect(readPdf(new TextEncoder().encode('no pdf'))).rejects.toThrow();
  const bytes = await smallPdf([[{ x: 50, y: 50, turns: 'R' }]]);
  const before = bytes.length;
  await readPdf(bytes);
  expect(bytes).toHaveLength(before);
});

async function runsOf(marks: readonly Mark[]): Promise<string[]> {
  const { pages } = await readPdf(await smallPdf([marks]));
  return printedRuns(pages[0]!.items);
}

describe('runs of turns', () => {
  const rows: [string, Mark[], string[]][] = [
    ['one item', [{ x: 50, y: 50, turns: "R U R'" }], ["R U R'"]],
    [
      'each turn drawn by itself',
      [
        { x: 50, y: 50, turns: 'R' },
        { x: 65, y: 50, turns: 'U2' },
        { x: 85, y: 50, turns: "R'" },
      ],
      ["R U2 R'"],
    ],
    [
      'labels and a length around it',
      [
        { x: 50, y: 40, label: 'Solve' },
        { x: 50, y: 50, turns: "R U R'" },
        { x: 180, y: 50, label: '3' },
      ],
      ["R U R'"],
    ],
    [
      'a set-up with its solution straight below and a label between',
      [
        { x: 50, y: 50, turns: "R U' R'" },
        { x: 50, y: 64, label: 'Solve' },
        { x: 50, y: 74, turns: "R U R'" },
      ],
      ["R U' R'", "R U R'"],
    ],
    [
      'wrapped',
      [
        { x: 50, y: 50, turns: 'R U R2' },
        { x: 50, y: 66, turns: "F R F'" },
      ],
      ["R U R2 F R F'"],
    ],
    [
      'phases with a label under each',
      [
        { x: 50, y: 50, turns: "R' U2 R" },
        { x: 50, y: 64, label: 'edge out' },
        { x: 115, y: 50, turns: "F' U' F" },
        { x: 115, y: 64, label: 'insert' },
      ],
      ["R' U2 R F' U' F"],
    ],
    [
      'phases, all turns before all labels, and a second line',
      [
        { x: 50, y: 50, turns: "R' U2 R" },
        { x: 115, y: 50, turns: "F' U' F" },
        { x: 50, y: 78, turns: "L U L'" },
        { x: 50, y: 64, label: 'edge out' },
        { x: 115, y: 64, label: 'insert' },
      ],
      ["R' U2 R F' U' F L U L'"],
    ],
    [
      'two columns',
      [
        { x: 50, y: 50, turns: "R U R'" },
        { x: 300, y: 50, turns: "F' U F" },
      ],
      ["R U R'", "F' U F"],
    ],
    [
      'a small one beside a large one',
      [
        { x: 50, y: 50, turns: 'R U' },
        { x: 85, y: 50, turns: 'F D', size: 7 },
      ],
      ['R U', 'F D'],
    ],
    [
      'a turn named in the face for words',
      [
        { x: 50, y: 40, label: 'Lift it with R' },
        { x: 50, y: 52, turns: "R U R'" },
      ],
      ['R', "R U R'"],
    ],
    [
      'the same in the size of the turns',
      [
        { x: 50, y: 36, label: 'R', size: 11 },
        { x: 50, y: 52, turns: "R U R'" },
      ],
      ['R', "R U R'"],
    ],
    ['a word between turns', [{ x: 50, y: 50, turns: "R U or R' F" }], ['R U', "R' F"]],
    [
      'a word between turns, drawn by itself',
      [
        { x: 50, y: 50, turns: 'R U' },
        { x: 75, y: 50, turns: 'or' },
        { x: 95, y: 50, turns: "R' F" },
      ],
      ['R U', "R' F"],
    ],
    [
      'a length between turns',
      [
        { x: 50, y: 50, turns: 'R U' },
        { x: 75, y: 53, label: '3' },
        { x: 87, y: 50, turns: "R' F" },
      ],
      ['R U', "R' F"],
    ],
    [
      'one below that starts beyond the end',
      [
        { x: 50, y: 50, turns: "R U R'" },
        { x: 110, y: 66, turns: 'F U' },
      ],
      ["R U R'", 'F U'],
    ],
    [
      'one far below',
      [
        { x: 50, y: 50, turns: "R U R'" },
        { x: 50, y: 100, turns: 'F U' },
      ],
      ["R U R'", 'F U'],
    ],
    ['letters that are a slot', [{ x: 50, y: 50, turns: "FR R U R'" }], ["R U R'"]],
    ['bracketed turns are no sequence, nor is what touches them', [{ x: 50, y: 50, turns: "(R U R' U')3 F U F'" }], []],
    ['turns run together', [{ x: 50, y: 50, turns: "RU R' U'" }], []],
    ['a sentence', [{ x: 50, y: 50, turns: "Try R U R', then F' U' F now" }], ["F' U' F"]],
    [
      'a prime left behind on the line above',
      [
        { x: 50, y: 50, turns: 'R U R' },
        { x: 50, y: 64, turns: "'" },
      ],
      ['R U R'],
    ],
    ['words that read as turns', [{ x: 50, y: 50, label: 'Full bud R U' }], ['R U']],
    [
      'rotated by a half turn and wrapped',
      [
        { x: 400, y: 500, turns: "R U R'", rotate: 180 },
        { x: 400, y: 484, turns: 'F2', rotate: 180 },
      ],
      ["R U R' F2"],
    ],
    [
      'rotated by a quarter beside an upright one',
      [
        { x: 50, y: 340, turns: 'F2' },
        // Its baseline is as far from the left edge as a next line would be from the foot of the page.
        { x: 470, y: 100, turns: "R U R'", rotate: 90 },
      ],
      ['F2', "R U R'"],
    ],
  ];
  test.each(rows)('%s', async (_, marks, runs) => expect(await runsOf(marks)).toEqual(runs));
});
