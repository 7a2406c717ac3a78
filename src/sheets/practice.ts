/** The practice papers of a lesson and their keys, all papers in one file and all keys in another. */

import type { PracticePaper } from '../practice/papers.ts';
import type { Ink } from '../svg/palette.ts';
import { classKey } from './class-key.ts';
import { makingOf } from './making.ts';
import { practiceClaims } from './practice-claims.ts';
import { practiceKey } from './practice-key.ts';
import { practicePaper } from './practice-paper.ts';
import type { LessonSheet } from './sheets.ts';

/** Of the sheets for which papers have to be made. */
export const PRACTICE_SUFFIXES = ['-practice', '-key', '-class-key'] as const;

/** None without papers; the key for the class only where there is one. */
export function practiceSheets(papers: readonly PracticePaper[], ink: Ink): LessonSheet[] {
  if (papers.length === 0) return [];
  const making = (paper: PracticePaper) => makingOf(paper.student.proved, ink);
  const [first] = papers;
  const ofClass: LessonSheet[] =
    papers.length < 2
      ? []
      : [{ suffix: PRACTICE_SUFFIXES[2], make: () => [classKey(papers, making(first!))], claims: () => [] }];
  return [
    {
      suffix: PRACTICE_SUFFIXES[0],
      make: () => papers.map((paper) => practicePaper(paper, making(paper))),
      claims: () => [],
    },
    {
      suffix: PRACTICE_SUFFIXES[1],
      make: () => papers.map((paper) => practiceKey(paper, making(paper))),
      claims: () => papers.flatMap((paper) => practiceClaims(paper, making(paper))),
    },
    ...ofClass,
  ];
}
