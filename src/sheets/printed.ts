/** A proved lesson laid out as its sheets: pages and claims, or what keeps them from being printed. */
import type { Paper } from '../layout/blocks.ts';
import type { Pages } from '../layout/frames.ts';
import { layOut } from '../layout/layout.ts';
import type { Claim } from '../lesson/claim.ts';
import type { Problem } from '../lesson/problem.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { Ink } from '../svg/palette.ts';
import { problemOfFault } from './faults.ts';
import { makingOf } from './making.ts';
import { type LessonSheet, sheetsOf } from './sheets.ts';

export interface PrintedSheet {
  readonly suffix: LessonSheet['suffix'];
  readonly pages: Pages;
  readonly claims: readonly Claim[];
}

export interface Printed {
  /** The handout first. */
  readonly sheets: readonly PrintedSheet[];
  /** With any of them the pages are not to be written. */
  readonly problems: readonly Problem[];
}

export function printLesson(proved: ProvedLesson, { paper, ink }: { paper: Paper; ink: Ink }): Printed {
  const laidOut = sheetsOf(proved, makingOf(proved, ink)).map(({ suffix, sheet, claims }) => {
    const { pages, faults } = layOut(sheet, { paper });
    return { suffix, pages, claims, faults };
  });
  return { sheets: laidOut, problems: laidOut.flatMap(({ faults }) => faults.map(problemOfFault)) };
}
