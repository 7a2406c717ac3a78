/** A proved lesson laid out as its sheets: pages and claims, or what keeps them from being printed. */

import { bound } from '../layout/bind.ts';
import type { Paper } from '../layout/blocks.ts';
import type { Pages } from '../layout/frames.ts';
import { layOut } from '../layout/layout.ts';
import type { Claim } from '../lesson/claim.ts';
import type { Problem } from '../lesson/problem.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import { makePapers, type PracticePaper, type Student } from '../practice/papers.ts';
import { writeAddress } from '../steps/pair/address.ts';
import { caseOf } from '../steps/pair/cases.ts';
import type { Ink } from '../svg/palette.ts';
import { problemOfFault } from './faults.ts';
import { makingOf } from './making.ts';
import { practiceSheets } from './practice.ts';
import { type LessonSheet, sheetsOf } from './sheets.ts';

export interface PrintedSheet {
  readonly suffix: LessonSheet['suffix'];
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
}

function practisedIn(papers: readonly PracticePaper[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { exercise } of papers.flatMap(({ items }) => items)) {
    const key = writeAddress(caseOf(exercise.address));
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

export function printLesson(proved: ProvedLesson, { paper, ink, students }: Printing): Printed {
  const { practice } = proved.lesson;
  const made = practice
    ? makePapers(practice, students ?? [{ code: undefined, proved, level: undefined }])
    : { papers: [], problems: [] };
  const sheets = [...sheetsOf(proved, makingOf(proved, ink)), ...practiceSheets(made.papers, ink)];
  const laidOut = sheets.map(({ suffix, sheet, more = [], claims }) => {
    const volumes = [sheet, ...more].map((one) => layOut(one, { paper }));
    const faults = volumes.flatMap((volume) => volume.faults);
    return { suffix, pages: bound(volumes.map((volume) => volume.pages)), claims, faults };
  });
  return {
    sheets: laidOut,
    practised: practisedIn(made.papers),
    problems: [...made.problems, ...laidOut.flatMap(({ faults }) => faults.map(problemOfFault))],
  };
}
