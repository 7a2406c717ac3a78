/** The bytes of a file of submissions -> its rows, by what its name says it is. */
import { decode } from '../text/decode.ts';
import { isUnreadable, type RowFault, type SubmissionsRead, submissionOf, type Unreadable } from './fields.ts';
import { MOST_ROWS } from './limits.ts';
import { readCsv } from './read-csv.ts';
import { readYaml } from './read-yaml.ts';
import type { Submission } from './submission.ts';

/** Endings of the files that are taken from a folder. */
export const SUBMISSION_FILES = /\.(?:csv|tsv|ya?ml|txt)$/i;

/** Whether a word names a paper or a handout. */
export type IsPaper = (word: string) => boolean;

const WORD = /^\s*([^\s,;|]*?)(?:\s*[,;|]\s*|:?\s+|:?$)/u;

/** The first word, and what is left. */
function split(text: string): [string, string] {
  const match = WORD.exec(text);
  return match ? [match[1]!, text.slice(match[0].length)] : [text.trim(), ''];
}

/**
 * A file as plain lines: `K7 3 R U R'`, the student code, the item and the answer, or `K7 39C 1 O` with the paper before the
 * item, parted by spaces, a colon, a comma, a semicolon or a bar. A line that begins with # is a comment.
 */
function readText(file: string, text: string, isPaper: IsPaper): SubmissionsRead {
  const rows: Submission[] = [];
  const faults: RowFault[] = [];
  let blank = 0;
  const lines = text.split(/\r\n|\r|\n/);
  if (lines.at(-1) === '') lines.pop();
  lines.forEach((line, i) => {
    if (/^\s*(?:#|$)/.test(line)) {
      blank++;
      return;
    }
    const [student, rest] = split(line);
    const [second, afterSecond] = split(rest);
    const paper = isPaper(second) ? second : '';
    const [item, answer] = paper === '' ? [second, afterSecond] : split(afterSecond);
    rows.push(submissionOf(file, i + 1, { student, paper, item, answer }, faults));
  });
  return { rows, blank, faults };
}

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
