/**
 * Submissions as plain lines: `K7 3 R U R'`, the student code, the item and the answer, or `K7 39C 1 O` with the paper
 * before the item, parted by spaces, a colon, a comma, a semicolon or a bar. A line that begins with # is a comment.
 */
import { type RowFault, type SubmissionsRead, submissionOf } from './fields.ts';
import type { Submission } from './submission.ts';

export type IsPaper = (word: string) => boolean;

const WORD = /^\s*([^\s,;|]*?)(?:\s*[,;|]\s*|:?\s+|:?$)/u;

/** The first word, and what is left. */
function split(text: string): [string, string] {
  const match = WORD.exec(text);
  return match ? [match[1]!, text.slice(match[0].length)] : [text.trim(), ''];
}

/** `isPaper`: whether a word names a paper or a handout. */
export function readText(file: string, text: string, isPaper: IsPaper): SubmissionsRead {
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
