/** A proved lesson laid out as its sheets: pages and claims, or what keeps them from being printed. */

import { bound } from '../layout/bind.ts';
import type { Paper } from '../layout/blocks.ts';
import type { Pages } from '../layout/frames.ts';
import { layOut } from '../layout/layout.ts';
import type { Claim } from '../lesson/claim.ts';
import type { Problem } from '../lesson/problem.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import { type PracticePaper, papersOf, type Student } from '../practice/papers.ts';
import type { Ink } from '../svg/palette.ts';
import { groupedBy } from '../text/grouped.ts';
import { problemOfFault } from './faults.ts';
import { makingOf } from './making.ts';
import { PRACTICE_SUFFIXES, practiceSheets } from './practice.ts';
import { type Suffix, sheetsOf } from './sheets.ts';

/** A sheet laid out, with the claims that it bears. */
export interface PrintedSheet {
  readonly suffix: Suffix;
  readonly pages: Pages;
  readonly claims: readonly Claim[];
}

export interface Printed {
  /** The handout first. */
  readonly sheets: readonly PrintedSheet[];
  /** By case: how many items of the practice papers are about it. */
  readonly practised: ReadonlyMap<string, number>;
  /** With any of them the pages are not to be written. */
  readonly problems: readonly Problem[];
}

export interface Printing {
  readonly paper: Paper;
  readonly ink: Ink;
  /** Who gets a practice paper, in the order in which they sit; one paper for nobody in particular if left out. */
  readonly students?: readonly Student[];
  /** By suffix, the sheets that are wanted; all if left out. */
  readonly only?: readonly Suffix[];
}

function practisedIn(papers: readonly PracticePaper[]): Map<string, number> {
  const items = papers.flatMap((paper) => paper.items);
  const byCase = groupedBy(items, ({ exercise }) => exercise.subject.caseAddress);
  return new Map([...byCase].map(([address, ofCase]) => [address, ofCase.length]));
}

/** The sheets that are wanted, laid out volume by volume; papers are made if a sheet of theirs is among them. */
function laidOut(proved: ProvedLesson, { paper, ink, students, only }: Printing) {
  const isWanted = ({ suffix }: { readonly suffix: Suffix }): boolean => only?.includes(suffix) ?? true;
  const { papers, problems } = PRACTICE_SUFFIXES.some((suffix) => isWanted({ suffix }))
    ? papersOf(proved, students)
    : { papers: [], problems: [] };
  const wanted = [...sheetsOf(proved, makingOf(proved, ink)), ...practiceSheets(papers, ink)].filter(isWanted);
  const sheets = wanted.map((sheet) => ({ ...sheet, volumes: sheet.make().map((one) => layOut(one, { paper })) }));
  const faults = sheets.flatMap(({ volumes }) => volumes.flatMap((volume) => volume.faults));
  return { papers, sheets, problems: [...problems, ...faults.map(problemOfFault)] };
}

/**
 * All sheets of a lesson, or those named in `only`: of the others nothing is made, and no papers unless a sheet of theirs
 * is wanted.
 */
export function printLesson(proved: ProvedLesson, printing: Printing): Printed {
  const { papers, sheets, problems } = laidOut(proved, printing);
  return {
    sheets: sheets.map(({ suffix, volumes, claims }) => ({
      suffix,
      pages: bound(volumes.map((volume) => volume.pages)),
      claims: claims(),
    })),
    practised: practisedIn(papers),
    problems,
  };
}

/** What keeps a lesson from being printed: no volume is bound for it, and nothing claimed. */
export const printProblems = (proved: ProvedLesson, printing: Printing): readonly Problem[] =>
  laidOut(proved, printing).problems;
