/** Submissions as a spreadsheet saves them: a row names the columns, in any order; columns of other names are left alone. */
import { joined } from '../text/likely.ts';
import {
  FIELDS,
  type Field,
  fieldOf,
  likelyField,
  type RowFault,
  type SubmissionsRead,
  submissionOf,
  type Unreadable,
} from './fields.ts';
import type { Submission } from './submission.ts';
import { readTable } from './table.ts';

const NEEDED: readonly Field[] = ['student', 'item', 'answer'];

const isBlank = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === '');

/** Which column has which field: the first of several with one name. */
export function columnsOf(header: readonly string[]): Map<Field, number> {
  const columns = new Map<Field, number>();
  header.forEach((name, i) => {
    const field = fieldOf(name);
    if (field && !columns.has(field)) columns.set(field, i);
  });
  return columns;
}

function headerFault(header: readonly string[], columns: ReadonlyMap<Field, number>): string {
  const missing = NEEDED.filter((field) => !columns.has(field));
  const likely = header.flatMap((name) => {
    const field = fieldOf(name) ? undefined : likelyField(name.trim());
    return field && missing.includes(field as Field) ? [`"${name.trim()}" for ${field}`] : [];
  });
  const hint = likely.length > 0 ? `; ${joined(likely)}?` : '';
  return `the first row has no column ${joined(missing)}: it names the columns ${joined(NEEDED)}, and if you like paper and mark${hint}`;
}

export function readCsv(file: string, text: string): SubmissionsRead | Unreadable {
  const { cells, faults: ofTable } = readTable(text);
  const at = cells.findIndex((row) => !isBlank(row));
  if (at < 0) return { rows: [], blank: 0, faults: [] };
  const columns = columnsOf(cells[at]!);
  if (NEEDED.some((field) => !columns.has(field))) {
    return { unreadable: headerFault(cells[at]!, columns), row: at + 1 };
  }
  const faults: RowFault[] = [...ofTable];
  const rows: Submission[] = [];
  let blank = 0;
  cells.forEach((row, i) => {
    if (i <= at) return;
    // A line end at the end of the file opens no row.
    if (isBlank(row)) blank += i === cells.length - 1 ? 0 : 1;
    else {
      const fields = Object.fromEntries(FIELDS.map((field) => [field, row[columns.get(field) ?? -1] ?? '']));
      rows.push(submissionOf(file, i + 1, fields, faults));
    }
  });
  return { rows, blank, faults, columns: new Set(columns.keys()) };
}
