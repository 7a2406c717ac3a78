/** What both ways of marking share: the claims that are marked against, and what is said at the terminal. */
import type { ClaimsText } from '../marking/claims-file.ts';
import { nameOfClaims, proveClaims } from '../marking/gather-items.ts';
import { type Items, nameKey } from '../marking/items.ts';
import { isTimed, type MarkedRow, plainSays, pointsOf } from '../marking/submission.ts';
import { wordsIn } from '../steps/languages.ts';
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

/** Whether a word names one of the papers, or a handout by its file, and is no item itself. */
export function paperNames(items: Items, claims: readonly ClaimsText[]): (word: string) => boolean {
  const known = new Set([...items.papers, ...claims.map(({ file }) => nameOfClaims(file))].map(nameKey));
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
