/**
 * CSV, read and written by papaparse. What a spreadsheet would take for a formula is written with an apostrophe before
 * it, which is taken off again where we read: at the start of a cell, and where a spreadsheet that parts cells at another
 * sign than ours, or heeds no quotes, would begin one. papaparse's own guard sees only the start, and there misses a text
 * of several lines, signs after leading spaces, a line feed and full-width signs; ours has them, as OWASP's page "CSV
 * Injection" lists them (from memory).
 */
import papaparse from 'papaparse';
import { readCsv } from '../text/csv.ts';

/** What begins a formula, or would once a guard is taken off. */
const FORMULA = /^(?=[\s',;|"]*[=+\-@＝＋－＠]|'*[\t\r\n])/;
const GUARDED = /^'(?=[\s',;|"]*[=+\-@＝＋－＠]|'*[\t\r\n])/;
/** Signs that part cells or end a row, as far as a formula's sign comes after nothing but those, spaces, quotes and guards. */
const BEFORE_FORMULA = /(?<![\s',;|"])[\s',;|"]+(?=[=+\-@＝＋－＠])/g;

const guarded = (cell: string): string =>
  cell.replace(BEFORE_FORMULA, (signs) => signs.replaceAll(/\r\n|[\t\r\n,;|]/g, "$&'")).replace(FORMULA, "'");
const unguarded = (cell: string): string =>
  cell.replace(GUARDED, '').replace(BEFORE_FORMULA, (signs) => signs.replaceAll(/(\r\n|[\t\r\n,;|])'/g, '$1'));

/** Rows of cells as text. */
export type Cells = readonly (readonly string[])[];

export interface Table {
  readonly cells: Cells;
  readonly delimiter: string;
  /** Whether its first line, `sep=;`, names the delimiter. */
  readonly named: boolean;
  /** What is wrong with it, and in which row (from 1); a quote that is never closed, such as. */
  readonly faults: readonly { readonly row: number; readonly message: string }[];
}

const LOOSE_QUOTE = 'a quotation mark stands inside the cell: double it, or leave it out';

/** A CSV file with its delimiter and what is wrong with its quotes; never throws. */
export function readTable(text: string): Table {
  const { rows, delimiter, named } = readCsv(text);
  const cells = rows.map((row) => row.cells.map(unguarded));
  const shift = named ? 1 : 0;
  const faults = rows.flatMap(({ quotes }, i) =>
    quotes.map(({ isOpen }) => ({
      row: i + 1 + shift,
      message: isOpen ? 'a quotation mark is opened and never closed' : LOOSE_QUOTE,
    })),
  );
  return { cells: named ? [[], ...cells] : cells, delimiter, named, faults };
}

/**
 * With a byte-order mark, without which spreadsheets take a ′ for other signs, and line ends as RFC 4180 has them.
 * `named`: below a line that names the delimiter.
 */
export const writeTable = (cells: Cells, delimiter = ',', named = false): string =>
  `\ufeff${named ? `sep=${delimiter}\r\n` : ''}${papaparse.unparse(
    cells.map((row) => row.map(guarded)),
    { delimiter, newline: '\r\n' },
  )}\r\n`;
