/** A course laid out as its chart: pages and claims, or what keeps it from being printed. */
import type { Pages } from '../layout/frames.ts';
import { layOut } from '../layout/layout.ts';
import type { CoverageClaim } from '../lesson/claim.ts';
import type { Course } from '../lesson/course.ts';
import type { Problem } from '../lesson/problem.ts';
import { courseChart, coverageClaims, type TaughtEvening } from './course-chart.ts';
import { problemOfFault } from './faults.ts';
import type { Printing } from './printed.ts';

export interface PrintedCourse {
  readonly pages: Pages;
  readonly claims: readonly CoverageClaim[];
  /** With any of them the pages are not to be written. */
  readonly problems: readonly Problem[];
}

/** `taught`: each evening of the course. */
export function printCourse(
  course: Course,
  taught: readonly TaughtEvening[],
  { paper, ink }: Pick<Printing, 'paper' | 'ink'>,
): PrintedCourse {
  const claims = coverageClaims(course, taught);
  const { pages, faults } = layOut(courseChart(course, taught, claims, ink), { paper });
  return { pages, claims, problems: faults.map(problemOfFault) };
}
