/** Case -> ProvedCase: its set-up and its solutions are done on the cube. */

import { type Proof, prove } from '../cube/solves.ts';
import { lengthOf, writeTurns } from '../cube/turns.ts';
import type { Phases } from '../steps/phases-part.ts';
import { isFault, type Step } from '../steps/step.ts';
import type { Subject } from '../steps/subject.ts';
import { addressFields, goalFields, ownFields, phaseClaims, setUpFields } from './case-claim.ts';
import type { SolutionClaim } from './claim.ts';
import type { Case, Lesson } from './lesson.ts';
import type { Problem } from './problem.ts';
import { failing, inPieces, otherFamily, setupProblem } from './proof-problems.ts';
import type { ProvedCase } from './proved.ts';

/**
 * Does the set-up and every solution. What is wrong is added to `problems`; undefined if the set-up gives no case.
 * `sheet` tells claims of a further sheet from those of the handout: `rules:3.1`.
 */
export function proveCase(c: Case, lesson: Lesson, problems: Problem[], sheet = ''): ProvedCase | undefined {
  const { step, families } = lesson;
  const subject = step.after(c.setup, c.where);
  if (isFault(subject)) {
    problems.push(setupProblem(c, subject, lesson));
    return undefined;
  }
  const { cube, goal, family } = subject;
  const strays = families.length > 0 && !families.includes(family);
  if (strays) problems.push(otherFamily(c, subject, lesson));
  const fewest = c.solutions.length > 0 ? step.shortest(subject) : undefined;
  const proofs = c.solutions.map((solution) => prove(cube, solution.turns, goal));
  const pieces = inPieces(c, subject, proofs);
  // With a set-up of another family the solutions cannot but fail: only the set-up is told.
  if (pieces) problems.push(pieces);
  else if (!strays) {
    c.solutions.forEach((solution, i) => {
      if (proofs[i]!.verdict === 'fails') problems.push(failing(solution, proofs[i]!, subject));
    });
  }
  const solutions = c.solutions.map((solution, i) => {
    const proof = proofs[i]!;
    const phases = proof.verdict === 'solves' ? step.phases?.of(subject, solution.turns, lesson.triggers) : undefined;
    return { solution, phases, claim: claimOf(lesson, c, i, { subject, proof, phases, fewest: fewest!, sheet }) };
  });
  return { case: c, subject, solutions };
}

interface Proved {
  readonly subject: Subject;
  readonly proof: Proof;
  readonly phases: Phases | undefined;
  readonly fewest: ReturnType<Step['shortest']>;
  readonly sheet: string;
}

function claimOf(
  lesson: Lesson,
  c: Case,
  index: number,
  { subject, proof, phases, fewest, sheet }: Proved,
): SolutionClaim {
  const solution = c.solutions[index]!;
  const item = `${sheet}${c.number}`;
  return {
    id: `${item}.${solution.number}`,
    kind: 'solution',
    ...setUpFields(lesson, { ...c, span: solution.span }, lesson.wide),
    solution: writeTurns(solution.turns, lesson.wide),
    ...ownFields(subject, c.colours),
    ...addressFields(subject),
    verdict: proof.verdict,
    broken: proof.broken,
    length: lengthOf(solution.turns),
    ...(fewest.shortest !== undefined && { shortest: fewest.shortest }),
    proved: fewest.proved,
    ...(phases && phaseClaims(phases, lesson.wide)),
    ...goalFields(subject, { item, nth: solution.number }),
  };
}
