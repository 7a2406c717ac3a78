/** The fields of a submission, whatever file it stands in. */
import { likelyWord } from '../text/likely.ts';
import { LONGEST_CODE } from './limits.ts';
import type { Submission } from './submission.ts';

/** What a row of answers has, as columns are called. */
export const FIELDS = ['student', 'paper', 'item', 'answer', 'mark'] as const;
export type Field = (typeof FIELDS)[number];

/** What forms and spreadsheets call the fields. */
const NAMES: Readonly<Record<string, Field>> = {
  student: 'student',
  code: 'student',
  initials: 'student',
  who: 'student',
  paper: 'paper',
  sheet: 'paper',
  item: 'item',
  question: 'item',
  number: 'item',
  case: 'item',
  answer: 'answer',
  turns: 'answer',
  solution: 'answer',
  mark: 'mark',
};

export const fieldOf = (name: string): Field | undefined => {
  const key = name.trim().toLowerCase();
  // Not by a look-up alone: "constructor" is no field.
  return Object.hasOwn(NAMES, key) ? NAMES[key] : undefined;
};

export const likelyField = (name: string): string | undefined =>
  name.length < 3 ? undefined : likelyWord(name, [...FIELDS]);

/** A fault in a file of submissions: told to the coach, while the row is marked as far as it goes. */
export interface RowFault {
  readonly row: number;
  readonly message: string;
}

/** What was found in one file. Rows and blanks together are all that the file has. */
export interface SubmissionsRead {
  readonly rows: readonly Submission[];
  /** Rows with nothing in them, and lines that are comments. */
  readonly blank: number;
  readonly faults: readonly RowFault[];
  /** The columns of a table; undefined where a file has no columns. */
  readonly columns?: ReadonlySet<Field>;
}

/** Why no row of a file can be read, and where, if that is known. */
export interface Unreadable {
  readonly unreadable: string;
  readonly row?: number;
}

/** Whether reading failed; `unreadable` says why. */
export const isUnreadable = (read: SubmissionsRead | Unreadable): read is Unreadable => 'unreadable' in read;

/** White space, and signs that would steer a terminal or hide, as single spaces. */
const tidy = (text: string): string => text.replaceAll(/[\s\p{Cc}\p{Cf}]+/gu, ' ').trim();

/** Several lines stay several; signs that no one sees would spoil the files that are written. */
export const withoutControls = (text: string): string => text.replaceAll(/[^\P{Cc}\n\r\t]/gu, ' ');

/** One submission; a code that is too long is cut, and told. */
export function submissionOf(
  file: string,
  row: number,
  fields: Partial<Record<Field, string>>,
  faults: RowFault[],
): Submission {
  const short = (field: Field): string => {
    const text = tidy(fields[field] ?? '');
    if (text.length <= LONGEST_CODE) return text;
    faults.push({ row, message: `${field} is longer than ${LONGEST_CODE} characters and was cut` });
    return `${text.slice(0, LONGEST_CODE - 1)}…`;
  };
  return {
    file,
    row,
    student: short('student'),
    paper: short('paper'),
    item: short('item'),
    answer: withoutControls(fields.answer ?? '').trim(),
    mark: short('mark'),
  };
}
