/** CSV as spreadsheets save it, read by papaparse: cells, and where each stands in the text. */
import papaparse from 'papaparse';

/** Offsets into the text as it was given, in UTF-16 units. */
interface Place {
  readonly start: number;
  readonly end: number;
}

/** A file as read; whatever is in it gives rows. */
export interface Csv {
  readonly rows: readonly {
    readonly cells: readonly string[];
    /** Quotes that are never closed (`isOpen`), or stand inside a cell. */
    readonly quotes: readonly { readonly at: number; readonly isOpen: boolean }[];
    /** Of its cells; found when they are asked for. */
    readonly places: () => readonly Place[];
  }[];
  readonly delimiter: string;
  /** Whether its first line, `sep=;`, names the delimiter. */
  readonly named: boolean;
}

const DELIMITERS = [',', ';', '\t', '|'];

/** The delimiter of which the first line, the header, has most outside quotes: cells may hold any of them. */
function delimiterOf(text: string): string {
  const line = (/^[\s]*([^\n]*)/.exec(text)?.[1] ?? '').replaceAll(/"[^"]*"/g, '');
  const counts = DELIMITERS.map((sign) => line.split(sign).length);
  return DELIMITERS[counts.indexOf(Math.max(...counts))]!;
}

/** Line ends of any system, mixed ones too, are read as one: the library takes one kind for the whole file. */
export function readCsv(given: string): Csv {
  const shortened: number[] = [];
  const text = given.replaceAll(/\r\n?/g, (end: string, at: number) => {
    if (end.length > 1) shortened.push(at - shortened.length);
    return '\n';
  });
  const inGiven = (at: number): number => at + shortened.filter((end) => end < at).length;
  const named = /^sep=(.)\n/i.exec(text);
  const head = named?.[0].length ?? 0;
  const delimiter = named?.[1] ?? delimiterOf(text);
  const rows: Csv['rows'][number][] = [];
  let start = head;
  papaparse.parse<string[]>(text.slice(head), {
    delimiter,
    newline: '\n',
    step: ({ data, errors, meta }) => {
      const row = { start, line: text.slice(start, head + meta.cursor).replace(/\n$/, '') };
      start = head + meta.cursor;
      const quotes = errors
        .filter(({ type }) => type === 'Quotes')
        .map(({ code, index = 0 }) => {
          // It names a place just behind the quote.
          const at = Math.max(row.start, text.lastIndexOf('"', head + index));
          return { at: inGiven(at), isOpen: code === 'MissingQuotes' };
        });
      // A delimiter inside quotes is none.
      const places = (): Place[] => {
        let at = row.start;
        const outside = row.line.replaceAll(/"[^"]*("|$)/g, (quoted) => ' '.repeat(quoted.length));
        return outside.split(delimiter).map(({ length }) => {
          const place = { start: inGiven(at), end: inGiven(at + length) };
          at += length + 1;
          return place;
        });
      };
      rows.push({ cells: data, quotes, places });
    },
  });
  return { rows, delimiter, named: named !== null };
}
