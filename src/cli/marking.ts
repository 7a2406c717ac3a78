/** What both ways of marking share: the claims that are marked against, and what is said at the terminal. */
import { severityOf } from '../lesson/problem.ts';
import { positionAt, sourceOf } from '../lesson/source.ts';
import type { ClaimsText } from '../marking/claims-file.ts';
import { nameOfClaims, proveClaims, sheetNames } from '../marking/gather-items.ts';
import { type Items, nameKey } from '../marking/items.ts';
import { type Owners, ownersOf } from '../marking/owners.ts';
import { isTimed, type MarkedRow, plainSays, pointsOf } from '../marking/submission.ts';
import { readRoster } from '../practice/roster.ts';
import { wordsIn } from '../steps/languages.ts';
import { decode } from '../text/decode.ts';
import { readBytes } from './files.ts';
import type { Io } from './io.ts';
import type { MarkOptions } from './options.ts';
import { counted, harmless } from './report.ts';
import { type FileProblem, readClaims } from './submission-files.ts';

export interface ProvedClaims {
  readonly items: Items;
  readonly claims: readonly ClaimsText[];
  /** What the files are called after: the first one. */
  readonly name: string;
}

/** The items of the claims files; claims that do not hold are told, and the rest is marked. */
export async function loadItems(
  { claims: files }: MarkOptions,
  io: Io,
  problems: FileProblem[],
): Promise<ProvedClaims> {
  const claims = await readClaims(io.folder, files, problems);
  const { items, falseClaims } = proveClaims(claims);
  for (const { file, claim, why } of falseClaims) {
    problems.push({ severity: 'error', file, claim, message: `${why}; its item is not marked: build the sheet again` });
  }
  return { items, claims, name: nameOfClaims(files[0]!) };
}

/** Whose paper is whose, where a roster is named; what is wrong with it is told. */
export async function loadOwners(
  { roster }: MarkOptions,
  items: Items,
  io: Io,
  problems: FileProblem[],
): Promise<Owners | undefined> {
  if (roster === undefined) return undefined;
  const bytes = await readBytes(io.folder, roster);
  if ('unreadable' in bytes) {
    problems.push({ severity: 'error', file: roster, message: bytes.unreadable });
    return undefined;
  }
  const source = sourceOf(roster, decode(bytes).text);
  const { rows, problems: wrong } = readRoster(source);
  for (const problem of wrong) {
    const { span, message, hint } = problem;
    const { line } = positionAt(source, span.start);
    const severity = severityOf(problem) === 'error' ? 'error' : 'warning';
    problems.push({ severity, file: roster, row: line, message: `${message}: ${hint}` });
  }
  if (rows.length === 0 || wrong.some((problem) => severityOf(problem) === 'error')) return undefined;
  const owners = ownersOf(rows, items);
  if (!owners) {
    const message = `it has ${counted(rows.length, 'student')}, and the claims ${counted(new Set(items.items.filter(({ onPaper }) => onPaper).map(({ paper }) => paper)).size, 'paper')}: name the roster that the papers were built with`;
    problems.push({ severity: 'error', file: roster, message });
  }
  return owners;
}

/** Whether a word names one of the papers, or a handout by its file, and is no item itself. */
export function paperNames(items: Items, claims: readonly ClaimsText[]): (word: string) => boolean {
  const known = new Set([...items.papers, ...claims.flatMap(sheetNames)].map(nameKey));
  return (word) => known.has(nameKey(word)) && !items.byName.has(nameKey(word));
}

export function tellProblems(problems: readonly FileProblem[], io: Io): void {
  for (const { severity, file, row, claim, message } of problems) {
    const where = [file, row, claim && `claim ${claim}`].filter((part) => part !== undefined).join(':');
    io.err(`${harmless(`${where}: ${severity}: ${message}`)}\n`);
  }
}

/** What is said to the student, the coach's mark before it. */
export function saidOf({ mark, says }: MarkedRow): string {
  return mark === '' ? plainSays(says) : `${wordsIn('en').marking.marked(mark)} ${plainSays(says)}`;
}

export function summaryLine(rows: readonly MarkedRow[]): string {
  const isMarked = ({ mark }: MarkedRow): boolean => pointsOf(mark) !== undefined;
  const marked = rows.filter(isMarked);
  const byVerdict = rows.filter((row) => !isMarked(row));
  const count = (...verdicts: MarkedRow['verdict'][]): number =>
    byVerdict.filter(({ verdict }) => verdicts.includes(verdict)).length;
  const times = byVerdict.filter(isTimed).length;
  const others = [
    `${count('unreadable')} unreadable`,
    `${count('empty') - times} empty`,
    counted(times, 'time'),
    `${count('unmatched')} unmatched`,
  ].filter((said) => !said.startsWith('0 '));
  const points = Math.round(100 * marked.reduce((sum, row) => sum + row.points, 0)) / 100;
  const parts = [
    `${count('solves', 'solves-turned')} right`,
    `${byVerdict.length - count('solves', 'solves-turned', 'unreadable', 'empty', 'unmatched')} wrong`,
    ...others,
    ...(marked.length > 0 ? [`${marked.length} marked by you, worth ${points}`] : []),
  ];
  const students = new Set(rows.map(({ student }) => nameKey(student))).size;
  return `${counted(rows.length, 'answer')} of ${counted(students, 'student')}: ${parts.join(', ')}\n`;
}
