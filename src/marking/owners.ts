/** Whose paper is whose: the papers of a class were printed in the order of its roster. */
import { editionSuffix, type Variation } from '../lesson/vary.ts';
import { groupedBy } from '../text/grouped.ts';
import { type Items, nameKey } from './items.ts';
import type { MarkedRow, Submission } from './submission.ts';

export interface Owners {
  /** By student, the code of a paper for each lesson. Keys are what names are compared with, see nameKey; values as printed. */
  readonly papersOf: ReadonlyMap<string, readonly string[]>;
  /** By paper. */
  readonly studentOf: ReadonlyMap<string, string>;
  /** What the files of a student's edition are called after the lesson's name: `-left`. */
  readonly editionOf: ReadonlyMap<string, string>;
}

/** A student of the roster. */
interface Student {
  readonly code: string | undefined;
  /** What is other for this student. */
  readonly variation: Variation;
}

/** Students in the order of the roster. Undefined if there are papers, and no lesson has one for each of them. */
export function ownersOf(students: readonly Student[], { items }: Items): Owners | undefined {
  const ofPapers = items.filter(({ onPaper }) => onPaper);
  const byLesson = [...groupedBy(ofPapers, ({ lessonFile, lesson }) => `${lessonFile}|${lesson}`).values()]
    .map((of) => [...new Set(of.map(({ paper }) => paper))])
    .filter((papers) => papers.length === students.length);
  if (byLesson.length === 0 && ofPapers.length > 0) return undefined;
  const named = students.flatMap(({ code, variation }, i) => (code === undefined ? [] : [{ code, variation, i }]));
  const owned = byLesson.flatMap((papers) => named.map(({ code, i }) => ({ paper: papers[i]!, code })));
  return {
    papersOf: new Map(
      [...groupedBy(owned, ({ code }) => nameKey(code))].map(([key, own]) => [key, own.map(({ paper }) => paper)]),
    ),
    studentOf: new Map(owned.map(({ paper, code }) => [nameKey(paper), code])),
    editionOf: new Map(named.map(({ code, variation }) => [nameKey(code), editionSuffix(variation)])),
  };
}

/** Rows that name a paper and no student are given to whom the paper belongs. */
export const withStudents = (rows: readonly Submission[], { studentOf }: Owners): Submission[] =>
  rows.map((row) =>
    row.student === '' && row.paper !== '' ? { ...row, student: studentOf.get(nameKey(row.paper)) ?? '' } : row,
  );

/** A student of whom something does not fit the roster, for the coach: told once, at the first row. */
export interface Misfit {
  readonly file: string;
  readonly row: number;
  readonly message: string;
}

/** Papers that came back under another's code, and students of whom the roster has nothing. */
export function misfitsOf(rows: readonly MarkedRow[], items: Items, { studentOf, editionOf }: Owners): Misfit[] {
  const papers = new Map(items.items.map(({ id, paper }) => [id, paper]));
  const found = new Map<string, Misfit>();
  for (const { file, row, student, matched, paper: named } of rows) {
    if (student === '') continue;
    const paper = papers.get(matched) || named;
    const owner = studentOf.get(nameKey(paper));
    const isStranger = !editionOf.has(nameKey(student));
    const isOthers = owner !== undefined && nameKey(owner) !== nameKey(student);
    const message = isOthers
      ? `paper ${paper} is ${owner}'s, and ${student} is named: one of the two is wrong`
      : isStranger
        ? `the roster has no student ${student}`
        : undefined;
    if (message !== undefined && !found.has(message)) found.set(message, { file, row, message });
  }
  return [...found.values()];
}
