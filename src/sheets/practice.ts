/** The practice papers of a lesson and their keys, all papers in one file and all keys in another. */

import type { PracticePaper } from '../practice/papers.ts';
import type { Ink } from '../svg/palette.ts';
import { makingOf } from './making.ts';
import { practiceClaims } from './practice-claims.ts';
import { practiceKey } from './practice-key.ts';
import { practicePaper } from './practice-paper.ts';
import type { LessonSheet } from './sheets.ts';

export function practiceSheets(papers: readonly PracticePaper[], ink: Ink): LessonSheet[] {
  if (papers.length === 0) return [];
  const made = papers.map((paper) => {
    const making = makingOf(paper.student.proved, ink);
    return {
      paper: practicePaper(paper, making),
      key: practiceKey(paper, making),
      claims: practiceClaims(paper, making),
    };
  });
  const [first, ...others] = made;
  return [
    { suffix: '-practice', sheet: first!.paper, more: others.map((m) => m.paper), claims: [] },
    { suffix: '-key', sheet: first!.key, more: others.map((m) => m.key), claims: made.flatMap((m) => m.claims) },
  ];
}
