/**
 * CSV, read and written by papaparse. What a spreadsheet would take for a formula is written with an apostrophe before
 * it, which is taken off again where we read. papaparse's own test for that misses a text of several lines (its pattern
 * stops at the first line's end), signs after leading spaces, a line feed and full-width signs; ours has them, as OWASP's
 * page "CSV Injection" lists them (from memory).
 */
import papaparse from 'papaparse';
import { readCsv } from '../text/csv.ts';

const FORMULA = /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/;
const GUARDED = /^'(?=\s*[=+\-@＝＋－＠]|[\t\r\n])/;

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
  const cells = rows.map((row) => row.cells.map((cell) => cell.replace(GUARDED, '')));
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
    cells.map((row) => [...row]),
    { delimiter, newline: '\r\n', escapeFormulae: FORMULA },
  )}\r\n`;
