/** The rows of a class by student, in the order of their codes. */
import { groupedBy } from '../text/grouped.ts';
import { nameKey } from './items.ts';
import type { MarkedRow } from './submission.ts';

/** All answers of one student. */
export interface StudentRows {
  readonly student: string;
  readonly rows: readonly MarkedRow[];
}

/** By characters, numbers in them by their value: K7 before K10, whatever the machine's language. */
export function byCode(a: string, b: string): number {
  const parts = (code: string): string[] => code.match(/\d+|\D+/g) ?? [];
  const [as, bs] = [parts(a), parts(b)];
  for (let i = 0; i < Math.min(as.length, bs.length); i++) {
    const [x, y] = [as[i]!, bs[i]!];
    if (x === y) continue;
    const difference = /^\d/.test(x) && /^\d/.test(y) ? Number(x) - Number(y) : 0;
    return difference || (x < y ? -1 : 1);
  }
  return as.length - bs.length;
}

/**
 * Who answered an item twice handed in the second answer in place of the first: of each item the last row counts. All
 * rows that match no item are kept.
 */
function lastOfEach(rows: readonly MarkedRow[]): MarkedRow[] {
  const last = new Map(rows.map((row) => [row.matched, row]));
  return rows.filter((row) => row.matched === '' || last.get(row.matched) === row);
}

/** Codes that differ by capitals and spaces alone are one student's, called as in the first row. */
export function byStudent(rows: readonly MarkedRow[]): StudentRows[] {
  return [...groupedBy(rows, ({ student }) => nameKey(student)).values()]
    .map((all) => ({ student: all[0]!.student, rows: lastOfEach(all) }))
    .sort((a, b) => byCode(a.student, b.student));
}
