/** What a lesson promises as a whole, held against its cases: nothing is listed twice, nothing promised is missing. */

import { lengthOf, writeTurns } from '../cube/turns.ts';
import { isSolvedAddress, writeAddress } from '../steps/pair/address.ts';
import { CASES, caseOf, casesOf, type Family } from '../steps/pair/cases.ts';
import { setUpFor } from '../steps/pair/set-up-for.ts';
import { SLOTS } from '../steps/pair/slots.ts';
import { joined } from '../text/likely.ts';
import type { Lesson, LessonClaim } from './lesson.ts';
import type { Problem } from './problem.ts';
import type { ProvedCase, ProvedPart } from './proved.ts';
import { positionAt } from './source.ts';

const caseText = ({ address }: ProvedCase): string => writeAddress(caseOf(address));

/** Cases of the families that the lesson does not have; the solved pair is none that can be taught. */
function missingCases(families: readonly Family[], cases: readonly ProvedCase[]): string[] {
  const there = new Set(cases.map(caseText));
  const all = families.flatMap((family) =>
    casesOf(family)
      .filter((a) => !isSolvedAddress(a))
      .map(writeAddress),
  );
  return all.filter((text) => !there.has(text));
}

/** The same case, seen from another side or after a turn of U, is the same case. */
export function casesTwice(parts: readonly ProvedPart[], lesson: Lesson): Problem[] {
  const first = new Map<string, ProvedCase>();
  const problems: Problem[] = [];
  for (const { part, cases } of parts) {
    for (const one of cases) {
      const before = first.get(caseText(one));
      if (!before) first.set(caseText(one), one);
      else if (!part.again) {
        const line = positionAt(lesson.source, before.case.span.start).line;
        const otherSide = before.case.slot === one.case.slot ? '' : ', seen from another side';
        const message = `case ${one.case.number} is case ${before.case.number} again (line ${line})${otherSide}`;
        const hint = 'take one out, or put it under a heading with again: true';
        problems.push({ code: 'case-twice', span: one.case.span, message, hint });
      }
    }
  }
  return problems;
}

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
      const missing = missingCases(lesson.families, cases);
      if (missing.length === 0) return undefined;
      const setUp = setUpOf(missing[0]!);
      const more =
        missing.length > 6 ? `${missing.slice(0, 6).join(', ')} and ${missing.length - 6} more` : joined(missing);
      const message = `not all cases of ${joined(lesson.families)} are here: ${more} missing`;
      return {
        code: 'claim-cases',
        message,
        hint: `add them (the first by setup: ${setUp}), or claim cases: selection`,
      };
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
    case 'slots': {
      const shown = SLOTS.filter((s) => cases.some((c) => c.case.slot === s));
      const lacking = claim.slots.filter((s) => !shown.includes(s));
      const extra = shown.filter((s) => !claim.slots.includes(s));
      if (lacking.length === 0 && extra.length === 0) return undefined;
      const parts = [
        ...(lacking.length > 0 ? [`no pair of slot ${joined(lacking)} is shown`] : []),
        ...(extra.length > 0 ? [`pairs of slot ${joined(extra)} are shown too`] : []),
      ];
      return { code: 'claim-slots', message: joined(parts), hint: `add cases, or claim slots: [${shown.join(', ')}]` };
    }
    case 'kept': {
      const opening = cases.filter((c) => c.case.open.length > 0).map((c) => `case ${c.case.number}`);
      if (opening.length === 0) return undefined;
      const message = `a further slot is open in ${joined(opening)}`;
      return { code: 'claim-kept', message, hint: 'take "open" out there, or take the claim out' };
    }
  }
}

function setUpOf(caseAddress: string): string {
  const address = CASES.find((a) => writeAddress(a) === caseAddress)!;
  return writeTurns(setUpFor(address, 'FR', []));
}

export function brokenClaims(lesson: Lesson, cases: readonly ProvedCase[]): Problem[] {
  return lesson.claims.flatMap((claim) => {
    const problem = broken(claim, lesson, cases);
    return problem ? [{ ...problem, span: claim.span }] : [];
  });
}
