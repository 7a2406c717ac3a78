/**
 * CSV, read and written by papaparse. What a spreadsheet would take for a formula is written with an apostrophe before
 * it, which is taken off again where we read. papaparse's own test for that misses a text of several lines (its pattern
 * stops at the first line's end), signs after leading spaces, a line feed and full-width signs; ours has them, as OWASP's
 * page "CSV Injection" lists them (from memory).
 */
import papaparse from 'papaparse';

const FORMULA = /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/;
const GUARDED = /^'(?=\s*[=+\-@＝＋－＠]|[\t\r\n])/;

export type Cells = readonly (readonly string[])[];

export interface Table {
  readonly cells: Cells;
  readonly delimiter: string;
  /** Whether its first line, `sep=;`, names the delimiter. */
  readonly named: boolean;
  /** What is wrong with it, and in which row (from 1); a quote that is never closed, such as. */
  readonly faults: readonly { readonly row: number; readonly message: string }[];
}

const DELIMITERS = [',', ';', '\t', '|'];

/** The delimiter of which the first line, the header, has most outside quotes: answers may hold any of them. */
function delimiterOf(text: string): string {
  const line = (/^[\s]*([^\n]*)/.exec(text)?.[1] ?? '').replaceAll(/"[^"]*"/g, '');
  const counts = DELIMITERS.map((sign) => line.split(sign).length);
  return DELIMITERS[counts.indexOf(Math.max(...counts))]!;
}

const LOOSE_QUOTE = 'a quotation mark stands inside the cell: double it, or leave it out';

/** Line ends of any system, mixed ones too, are read as one: the library takes one kind for the whole file. */
export function readTable(given: string): Table {
  const text = given.replaceAll(/\r\n?/g, '\n');
  // Spreadsheets may name the delimiter in a line of its own.
  const named = /^sep=(.)\n/i.exec(text);
  const body = named ? text.slice(named[0].length) : text;
  const delimiter = named?.[1] ?? delimiterOf(body);
  const { data, errors } = papaparse.parse<string[]>(body, { delimiter, newline: '\n', skipEmptyLines: false });
  const shift = named ? 1 : 0;
  const faults = errors
    .filter(({ type }) => type === 'Quotes')
    .map(({ code, row }) => ({
      row: (row ?? 0) + 1 + shift,
      message: code === 'MissingQuotes' ? 'a quotation mark is opened and never closed' : LOOSE_QUOTE,
    }));
  const cells = data.map((row) => row.map((cell) => cell.replace(GUARDED, '')));
  return { cells: named ? [[], ...cells] : cells, delimiter, named: named !== null, faults };
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
