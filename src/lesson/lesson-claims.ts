/** What a lesson promises as a whole, held against its cases: nothing is listed twice, nothing promised is missing. */

import { lengthOf, writeTurns } from '../cube/turns.ts';
import type { Subject } from '../steps/subject.ts';
import { joined } from '../text/likely.ts';
import type { Lesson, LessonClaim } from './lesson.ts';
import type { Problem } from './problem.ts';
import type { ProvedCase, ProvedPart } from './proved.ts';
import { positionAt } from './source.ts';

/** Cases of the families that the lesson does not have, by address; undefined if one has too many to be listed. */
function missingCases({ step, families }: Lesson, cases: readonly ProvedCase[]): Subject[] | undefined {
  const there = new Set(cases.map(({ subject }) => subject.caseAddress));
  const all = families.map(step.cases);
  if (all.includes(undefined)) return undefined;
  return all.flatMap((of) => of ?? []).filter(({ caseAddress }) => !there.has(caseAddress));
}

/** The same case, seen from another side or after a turn of U, is the same case. */
export function casesTwice(parts: readonly ProvedPart[], lesson: Lesson): Problem[] {
  const first = new Map<string, ProvedCase>();
  const problems: Problem[] = [];
  for (const { part, cases } of parts) {
    for (const one of cases) {
      const before = first.get(one.subject.caseAddress);
      if (!before) first.set(one.subject.caseAddress, one);
      else if (!part.again) {
        const line = positionAt(lesson.source, before.case.span.start).line;
        const otherSide = before.subject.side === one.subject.side ? '' : ', seen from another side';
        const message = `case ${one.case.number} is case ${before.case.number} again (line ${line})${otherSide}`;
        const hint = 'take one out, or put it under a heading with again: true';
        problems.push({ code: 'case-twice', span: one.case.span, message, hint });
      }
    }
  }
  return problems;
}

/** Names of cases that speak of another part of the cube. */
export const misnamed = (cases: readonly ProvedCase[], { step }: Lesson): Problem[] =>
  cases.flatMap(({ case: { name }, subject }) => {
    const said = name?.phrases.map((p) => ('text' in p ? p.text : '')).join(' ');
    const wrong = said === undefined ? undefined : step.lesson.misnamed(said, subject);
    return wrong ? [{ code: 'name-elsewhere', span: name!.span, ...wrong }] : [];
  });

/** Headings with nothing below them. */
export const emptyParts = ({ parts }: Lesson): Problem[] =>
  parts
    .filter((part) => part.heading && part.cases.length === 0 && part.text.length === 0)
    .map(({ heading, span }) => ({
      code: 'part-empty',
      span: heading?.span ?? span,
      message: 'there are no cases under this heading',
      hint: 'add some, or take it out',
    }));

/** "3.1 (line 40)" of every solution for which the test holds, the first three. */
function solutionsNamed(
  cases: readonly ProvedCase[],
  lesson: Lesson,
  test: (one: ProvedCase['solutions'][number]) => boolean,
): string | undefined {
  const found = cases.flatMap((c) => c.solutions.filter(test));
  if (found.length === 0) return undefined;
  const named = found.slice(0, 3).map(({ claim, solution }) => {
    const { line } = positionAt(lesson.source, solution.span.start);
    return `${claim.id} (line ${line}, ${claim.length} turns)`;
  });
  return joined(found.length > 3 ? [...named, `${found.length - 3} more`] : named);
}

function broken(claim: LessonClaim, lesson: Lesson, cases: readonly ProvedCase[]): Omit<Problem, 'span'> | undefined {
  switch (claim.claim) {
    case 'cases': {
      if (claim.is !== 'all') return undefined;
      const missing = missingCases(lesson, cases);
      if (!missing) {
        const message = `${joined(lesson.families)}: there are too many cases for all to be here`;
        return { code: 'claim-cases', message, hint: 'claim cases: selection' };
      }
      const [first] = missing;
      if (!first) return undefined;
      const named = missing.slice(0, 6).map(({ address }) => address);
      const more = missing.length > 6 ? `${named.join(', ')} and ${missing.length - 6} more` : joined(named);
      const message = `not all cases of ${joined(lesson.families)} are here: ${more} missing`;
      const setUp = writeTurns(lesson.step.setUp(first, []));
      const hint = `add them (the first by setup: ${setUp}), or claim cases: selection`;
      return { code: 'claim-cases', message, hint };
    }
    case 'turns': {
      const longer = solutionsNamed(cases, lesson, ({ solution }) => lengthOf(solution.turns) > claim.most);
      if (!longer) return undefined;
      const most = Math.max(...cases.flatMap((c) => c.solutions.map((s) => s.claim.length)));
      const message = `longer than the ${claim.most} turns claimed: solution ${longer}`;
      return { code: 'claim-turns', message, hint: `shorten what is longer, or claim turns: ${most}` };
    }
    case 'rotations': {
      const turning = solutionsNamed(cases, lesson, ({ solution }) =>
        solution.turns.some((t) => t.kind === 'rotation'),
      );
      if (!turning) return undefined;
      const message = `the cube is turned in solution ${turning}`;
      return { code: 'claim-rotations', message, hint: 'write it without x, y and z, or take the claim out' };
    }
    case 'own':
      return lesson.step.lesson.broken(
        claim.promise,
        cases.map(({ case: { number }, subject }) => ({ number, subject })),
      );
  }
}

export function brokenClaims(lesson: Lesson, cases: readonly ProvedCase[]): Problem[] {
  return lesson.claims.flatMap((claim) => {
    const problem = broken(claim, lesson, cases);
    return problem ? [{ ...problem, span: claim.span }] : [];
  });
}
