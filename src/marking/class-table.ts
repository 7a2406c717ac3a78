/** The class as a table, and the marks that a coach wrote into it: a row for each submission, for a spreadsheet and for other programs. */
import { groupedBy } from '../text/grouped.ts';
import { nameKey } from './items.ts';
import { type MarkedRow, plainSays, pointsOf, type Submission } from './submission.ts';
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

/** The marks that a coach wrote into the table: they win, and are kept from run to run. */
export interface KeptMarks {
  readonly rows: readonly Submission[];
  /** Marked rows of the table that none of the rows is: of work marked another time. */
  readonly others: readonly Submission[];
  /** For the coach: marks that stand on a changed answer, that contradict another, or that are of no row here. */
  readonly notes: readonly string[];
}

/** Written with a sign that no code has, since tidied codes hold no control characters. */
const keyOf = (parts: readonly string[]): string => parts.join('\u0001');
const placeKey = ({ student, paper, item }: Submission): string =>
  keyOf([nameKey(student), nameKey(paper), nameKey(item)]);
const answerKey = (row: Submission): string => keyOf([placeKey(row), row.answer]);

const named = ({ student, paper, item }: Submission): string =>
  [student || 'no code', paper, item].filter((part) => part !== '').join(' ');

/** Rows of now with the marks of the table. First those with the same answer; what is left goes to the same item. */
export function withKeptMarks(rows: readonly Submission[], table: readonly Submission[]): KeptMarks {
  const marked = table.filter(({ mark }) => mark !== '');
  const same = groupedBy(marked, answerKey);
  const notes: string[] = [];
  const exact = rows.map((row) => same.get(answerKey(row))?.shift());
  const left = groupedBy([...same.values()].flat(), placeKey);
  const kept = rows.map((row, i) => {
    const found = exact[i] ?? left.get(placeKey(row))?.shift();
    if (!found) return row;
    if (!exact[i])
      notes.push(`${named(row)}: the mark ${found.mark} was for another answer, ${found.answer || 'none'}`);
    if (row.mark !== '' && row.mark !== found.mark) {
      notes.push(
        `${named(row)}: marked ${found.mark} in the class table and ${row.mark} in ${row.file}; the table counts`,
      );
    }
    return { ...row, mark: found.mark };
  });
  const others = [...left.values()].flat();
  for (const one of others) {
    notes.push(`${named(one)}: marked ${one.mark} in the class table, and not handed in here; the table keeps it`);
  }
  return { rows: kept, others, notes };
}
