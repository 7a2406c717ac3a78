/**
 * What is written for a spreadsheet. A cell that begins with = + - @, a tab or a carriage return can run as a formula
 * there (OWASP, "CSV Injection"; the line feed and the full-width signs from memory).
 */

import papaparse from 'papaparse';
import { describe, expect, it } from 'vitest';
import { classCsv, withKeptMarks } from '../../src/marking/class-table.ts';
import { readSubmissions } from '../../src/marking/read-submissions.ts';
import { readTable, writeTable } from '../../src/marking/table.ts';
import { randomFrom } from '../random.ts';
import { claimsOf, fileOf, marked, proved, submission } from './class.ts';

const { items } = proved(fileOf(claimsOf('edge-away')));
const DANGEROUS = [
  '=1+1',
  '+1',
  '-1',
  '@SUM(A1)',
  '\t=1',
  '\r=1',
  '\n=1',
  '  =1',
  '=1\n2',
  '=HYPERLINK("a","b")\nx',
  '＝1',
  '＋1',
  '－1',
  '＠a',
  'x;=1+1;',
  'x,\t"=1',
  'R U\n=1',
  'R U\r\n  +1',
  "x|'=1",
  ';\n=1',
  'x\t\t@a',
];

/** Cells as a spreadsheet may see them that parts them at a sign of its own, heeds quotes or does not, and skips spaces. */
const cellsSeen = (text: string): string[] =>
  [',', ';', '\t', '|'].flatMap((delimiter) => [
    ...papaparse.parse<string[]>(text, { delimiter }).data.flat(),
    ...text.split(/[\r\n]/).flatMap((line) => line.split(delimiter)),
    ...text.split(/[\r\n]/).flatMap((line) => line.split(delimiter).map((cell) => cell.replace(/^\s*"+/, ''))),
  ]);
const isFormula = (cell: string): boolean => /^\s*[=+\-@＝＋－＠]/.test(cell);

describe('a table', () => {
  it.each(DANGEROUS)('holds %j as a text, and reads it back', (cell) => {
    for (const delimiter of [',', ';', '\t']) {
      const text = writeTable(
        [
          ['student', 'answer', 'mark'],
          ['K7', cell, 'R'],
          [cell, 'K7', 'R'],
        ],
        delimiter,
      ).slice(1);
      expect(cellsSeen(text).filter(isFormula)).toEqual([]);
      const { cells } = readTable(text);
      const read = cell.replaceAll(/\r\n?/g, '\n');
      expect([cells[1]![1], cells[2]![0]]).toEqual([read, read]);
    }
  });

  it('reads back what it wrote, also what has apostrophes of its own: 5,000 cells from seed 77', () => {
    const random = randomFrom(77);
    for (let i = 0; i < 5000; i++) {
      const cell = Array.from({ length: random.below(8) }, () => '\',;|\t\n "=+a'[random.below(11)]).join('');
      const text = writeTable([
        ['a', 'b'],
        ['x', cell],
        [cell, 'x'],
      ]).slice(1);
      const { cells } = readTable(text);
      expect([cells[1]![1], cells[2]![0]]).toEqual([cell, cell]);
      expect(cellsSeen(text).filter(isFormula)).toEqual([]);
    }
  });

  it('is hardened where the library alone is not: a formula of several lines', () => {
    expect(papaparse.unparse([['=1\n2']], { escapeFormulae: true })).toBe('"=1\n2"');
    expect(writeTable([['=1\n2']])).toBe('\ufeff"\'=1\n2"\r\n');
  });

  it('leaves turns alone', () => {
    expect(writeTable([["R U R'", "U' R"]])).toBe("\ufeffR U R',U' R\r\n");
  });

  it('of a class writes no cell that is a formula, whatever was handed in', () => {
    const rows = DANGEROUS.map((text) =>
      marked(items, text, text, { student: text, paper: text, mark: text, file: text }),
    );
    expect(cellsSeen(classCsv(rows).slice(1)).filter(isFormula)).toEqual([]);
  });

  it('of a class can be marked again, marks kept, and is the same', () => {
    const given = [submission('1', "L' U L R U R", { mark: 'right' }), submission('2', '=1', { student: '-x' })];
    const first = given.map((row) => marked(items, row.item, row.answer, row));
    const read = readSubmissions('c.csv', new TextEncoder().encode(classCsv(first)));
    if (!('rows' in read)) throw new Error(read.unreadable);
    const again = read.rows.map((row) => marked(items, row.item, row.answer, { ...row, file: 'a.csv', row: 2 }));
    expect(classCsv(again)).toBe(classCsv(first));
  });
});

describe("marks in the coach's table", () => {
  const row = (student: string, item: string, answer: string, mark = '') => submission(item, answer, { student, mark });

  it('go to the same answer, and win', () => {
    const { rows, notes } = withKeptMarks(
      [row('A', '1', 'R'), row('B', '1', 'R'), row('A', '2', 'L', '0')],
      [row('A', '2', 'L', '1'), row('A', '1', 'R', '0.5'), row('B', '1', 'R')],
    );
    expect(rows.map(({ mark }) => mark)).toEqual(['0.5', '', '1']);
    expect(notes).toEqual(['A 2: marked 1 in the class table and 0 in a.csv; the table counts']);
  });

  it('of an answer that was changed stay with the item, and that is told', () => {
    const { rows, notes } = withKeptMarks([row('A', '1', 'U')], [row('A', '1', 'R', '1')]);
    expect(rows[0]!.mark).toBe('1');
    expect(notes).toEqual(['A 1: the mark 1 was for another answer, R']);
  });

  it('of two answers to one item go each to its own', () => {
    const { rows } = withKeptMarks(
      [row('A', '1', 'U'), row('A', '1', 'R')],
      [row('A', '1', 'R', '1'), row('A', '1', 'U', '0')],
    );
    expect(rows.map(({ mark }) => mark)).toEqual(['0', '1']);
  });

  it('of work that is not handed in here stay in the table, and that is told', () => {
    const table = [row('A', '1', 'R', '1'), row('B', '1', 'R')];
    const { others, notes } = withKeptMarks([row('C', '1', 'R')], table);
    expect(others).toEqual([table[0]]);
    expect(notes).toEqual(['A 1: marked 1 in the class table, and not handed in here; the table keeps it']);
  });
});
