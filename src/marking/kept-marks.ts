/** The marks that a coach wrote into the class table: they win, and are kept from run to run. */
import { groupedBy } from '../text/grouped.ts';
import { nameKey } from './items.ts';
import type { Submission } from './submission.ts';

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
