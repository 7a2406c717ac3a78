/** A proved lesson laid out as its handout: pages and claims, or what keeps it from being printed. */
import type { Paper } from '../layout/blocks.ts';
import type { Pages } from '../layout/frames.ts';
import { layOut } from '../layout/layout.ts';
import type { Problem } from '../lesson/problem.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { Ink } from '../svg/palette.ts';
import { problemOfFault } from './faults.ts';
import { handout } from './handout.ts';
import { makingOf } from './making.ts';

export interface Printed {
  readonly pages: Pages;
  /** With any of them the pages are not to be written. */
  readonly problems: readonly Problem[];
}

export function printHandout(proved: ProvedLesson, { paper, ink }: { paper: Paper; ink: Ink }): Printed {
  const { pages, faults } = layOut(handout(proved, makingOf(proved, ink)), { paper });
  return { pages, problems: faults.map(problemOfFault) };
}
