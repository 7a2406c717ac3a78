/** The class as a table: a row for each submission, for a spreadsheet and for other programs. */
import { pointsOf } from './points.ts';
import { type MarkedRow, plainSays } from './submission.ts';
import { writeTable } from './table.ts';

/** The first five are those of submissions, so that the table can be marked again. */
const COLUMNS: readonly (readonly [string, (row: MarkedRow) => string])[] = [
  ['student', (row) => row.student],
  ['paper', (row) => row.paper],
  ['item', (row) => row.item],
  ['answer', (row) => row.answer],
  ['mark', (row) => row.mark],
  ['right', (row) => String(row.points)],
  ['verdict', (row) => row.verdict],
  ['length', (row) => String(row.length ?? '')],
  ['over', (row) => String(row.over ?? '')],
  ['wrong turn', (row) => String(row.slip?.turn ?? '')],
  ['slip', (row) => row.slip?.kind ?? ''],
  ['near miss', (row) => row.nearMisses[0]?.answer ?? ''],
  ['says', (row) => plainSays(row.says)],
  ['file', (row) => row.file],
  ['row', (row) => String(row.row)],
];

/** Where a row was handed in: not known of one that only the table has. */
const OF_THE_FILE: readonly string[] = ['file', 'row'];

/** `others`: rows that are kept from an earlier table for the coach's marks on them. */
export const classCsv = (rows: readonly MarkedRow[], others: readonly MarkedRow[] = []): string =>
  writeTable([
    COLUMNS.map(([name]) => name),
    ...rows.map((row) => COLUMNS.map(([, cell]) => cell(row))),
    ...others.map((row) => COLUMNS.map(([name, cell]) => (OF_THE_FILE.includes(name) ? '' : cell(row)))),
  ]);

/** Rows as JSON has them: texts for people without backticks. */
export const jsonRow = (row: MarkedRow): MarkedRow => ({
  ...row,
  nearMisses: row.nearMisses.map((miss) => ({ ...miss, says: plainSays(miss.says) })),
  says: plainSays(row.says),
});

/** Marks that are neither a word for right or wrong nor a number from 0 to 1: kept, but the verdict counts. */
export const unclearMarks = (rows: readonly MarkedRow[]): MarkedRow[] =>
  rows.filter(({ mark }) => mark !== '' && pointsOf(mark) === undefined);
