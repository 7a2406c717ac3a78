/** The bytes of a file of submissions -> its rows, by what its name says it is. */
import { decode } from '../text/decode.ts';
import { isUnreadable, type SubmissionsRead, type Unreadable } from './fields.ts';
import { MOST_ROWS } from './limits.ts';
import { readCsv } from './read-csv.ts';
import { type IsPaper, readText } from './read-text.ts';
import { readYaml } from './read-yaml.ts';

/** Endings of the files that are taken from a folder. */
export const SUBMISSION_FILES = /\.(?:csv|tsv|ya?ml|txt)$/i;

function readBy(file: string, text: string, isPaper: IsPaper): SubmissionsRead | Unreadable {
  if (/\.[ct]sv$/i.test(file)) return readCsv(file, text);
  return /\.(?:ya?ml|json)$/i.test(file) ? readYaml(file, text) : readText(file, text, isPaper);
}

/**
 * `file` is the name by which rows and messages call it. `isPaper` tells in a line of text, which has no columns, a paper
 * from an item. Never throws.
 */
export function readSubmissions(
  file: string,
  bytes: Uint8Array,
  isPaper: IsPaper = () => false,
): SubmissionsRead | Unreadable {
  const { text, guessed } = decode(bytes);
  if (text.includes('\0')) return { unreadable: 'it is not a text file' };
  const read = readBy(file, text, isPaper);
  if (isUnreadable(read)) return read;
  if (read.rows.length > MOST_ROWS) {
    return { unreadable: `it has more than ${MOST_ROWS} rows: mark one class at a time` };
  }
  if (!guessed || read.rows.length === 0) return read;
  const message = 'the file is not UTF-8 and was read as Windows-1252: check signs such as primes';
  return { ...read, faults: [{ row: 1, message }, ...read.faults] };
}
