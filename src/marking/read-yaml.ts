/**
 * Submissions in YAML: a list of tables with student, item and answer, or a table by student and item,
 *
 *   K7:
 *     paper: K4T
 *     1: R U R'
 *
 * Texts are taken as they are written: item 3.10 is no number.
 */
import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type LineCounter,
  LineCounter as Lines,
  type Pair,
  parseDocument,
} from 'yaml';
import { tooDeepAt } from '../lesson/yaml-depth.ts';
import { type Field, fieldOf, type RowFault, type SubmissionsRead, submissionOf, type Unreadable } from './fields.ts';
import type { Submission } from './submission.ts';

/** The text of a scalar as written; undefined for anything else. */
function textOf(node: unknown): string | undefined {
  if (node === null || node === undefined) return '';
  if (!isScalar(node)) return undefined;
  if (typeof node.value === 'string') return node.value;
  return node.value === null ? '' : (node.source ?? String(node.value));
}

interface Reader {
  readonly file: string;
  readonly lines: LineCounter;
  readonly rows: Submission[];
  readonly faults: RowFault[];
}

function lineOf(node: unknown, { lines }: Reader): number {
  const range = (node as { range?: readonly number[] | null } | null)?.range;
  return range ? lines.linePos(range[0]!).line : 1;
}

/** What is no text where a text should be: told, and read as empty. */
function told(node: unknown, row: number, what: string, { faults }: Reader): string {
  const text = textOf(node);
  if (text !== undefined) return text;
  const is = isAlias(node) ? 'a reference' : isSeq(node) ? 'a list' : 'a table';
  faults.push({ row, message: `${what} is ${is}: write it as a text` });
  return '';
}

function readEntry(entry: unknown, reader: Reader): void {
  const row = lineOf(entry, reader);
  const fields: Partial<Record<Field, string>> = {};
  if (!isMap(entry)) {
    reader.faults.push({ row, message: 'this entry is no table with student, item and answer' });
  } else {
    for (const pair of entry.items) {
      const field = fieldOf(textOf(pair.key) ?? '');
      if (field) fields[field] = told(pair.value, row, field, reader);
    }
  }
  reader.rows.push(submissionOf(reader.file, row, fields, reader.faults));
}

function readStudent({ key, value }: Pair, reader: Reader): void {
  const student = told(key, lineOf(key, reader), 'the code of a student', reader);
  if (!isMap(value)) {
    const row = lineOf(value ?? key, reader);
    reader.faults.push({ row, message: `${student || 'this entry'} has no table of items and answers` });
    reader.rows.push(submissionOf(reader.file, row, { student, answer: textOf(value) ?? '' }, reader.faults));
    return;
  }
  const isPaper = (pair: Pair): boolean => textOf(pair.key)?.trim().toLowerCase() === 'paper';
  const paperPair = value.items.find(isPaper);
  const paper = paperPair ? told(paperPair.value, lineOf(paperPair.key, reader), 'paper', reader) : '';
  for (const pair of value.items) {
    if (isPaper(pair)) continue;
    const row = lineOf(pair.key, reader);
    const item = told(pair.key, row, 'an item', reader);
    const answer = told(pair.value, row, 'the answer', reader);
    reader.rows.push(submissionOf(reader.file, row, { student, paper, item, answer }, reader.faults));
  }
}

export function readYaml(file: string, text: string): SubmissionsRead | Unreadable {
  const lines = new Lines();
  const deep = tooDeepAt(text);
  if (deep !== undefined) {
    return { unreadable: 'its lists and tables are nested too deep', row: text.slice(0, deep).split('\n').length };
  }
  const document = parseDocument(text, {
    lineCounter: lines,
    prettyErrors: false,
    uniqueKeys: false,
    logLevel: 'silent',
  });
  const [error] = document.errors;
  if (error) {
    const { line, col } = lines.linePos(error.pos[0]);
    return { unreadable: `not YAML at column ${col}: ${error.message}`, row: line };
  }
  const root: unknown = document.contents;
  const reader: Reader = { file, lines, rows: [], faults: [] };
  if (isSeq(root)) for (const entry of root.items) readEntry(entry, reader);
  else if (isMap(root)) for (const pair of root.items) readStudent(pair, reader);
  else if (textOf(root) !== '') {
    return { unreadable: 'it is neither a list of answers nor a table by student', row: 1 };
  }
  const { rows, faults } = reader;
  return { rows, blank: 0, faults };
}
