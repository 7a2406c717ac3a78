/** Case -> ProvedCase: its set-up and its solutions are done on the cube. */

import { type Proof, prove } from '../cube/solves.ts';
import { lengthOf, writeTurns } from '../cube/turns.ts';
import { familyOf } from '../steps/pair/cases.ts';
import { type Phases, phasesOf } from '../steps/pair/phases.ts';
import { shortestLength } from '../steps/pair/search/find.ts';
import { doSetUp } from '../steps/pair/set-up.ts';
import { pairSubject } from '../steps/pair/subject.ts';
import type { Subject } from '../steps/subject.ts';
import { addressFields, goalFields, ownFields, setUpFields } from './case-claim.ts';
import type { SolutionClaim } from './claim.ts';
import type { Case, Lesson } from './lesson.ts';
import { phaseClaims } from './phase-claims.ts';
import type { Problem } from './problem.ts';
import { failing, inPieces, otherFamily, setupProblem } from './proof-problems.ts';
import type { ProvedCase } from './proved.ts';

/** A case whose base is whole never comes near it; a search stopped there is told as not proved. */
const MOST_NODES = 50_000_000;

/**
 * Does the set-up and every solution. What is wrong is added to `problems`; undefined if the set-up gives no case.
 * `sheet` tells claims of a further sheet from those of the handout: `rules:3.1`.
 */
export function proveCase(c: Case, lesson: Lesson, problems: Problem[], sheet = ''): ProvedCase | undefined {
  const setUp = doSetUp(c.setup, c.slot, c.open);
  if ('fault' in setUp) {
    problems.push(setupProblem(c, setUp, lesson.families));
    return undefined;
  }
  const { cube, address, goal } = setUp;
  const family = familyOf(address);
  const strays = lesson.families.length > 0 && !lesson.families.includes(family);
  if (strays) problems.push(otherFamily(c, family, lesson.families));
  const fewest = c.solutions.length > 0 ? shortestLength(cube, goal, { nodes: MOST_NODES }) : undefined;
  const proofs = c.solutions.map((solution) => prove(cube, solution.turns, goal));
  const pieces = inPieces(c, setUp, proofs);
  // With a set-up of another family the solutions cannot but fail: only the set-up is told.
  if (pieces) problems.push(pieces);
  else if (!strays) {
    c.solutions.forEach((solution, i) => {
      if (proofs[i]!.verdict === 'fails') problems.push(failing(solution, proofs[i]!, setUp));
    });
  }
  const subject = pairSubject(address, { slot: c.slot, open: c.open }, cube);
  const solutions = c.solutions.map((solution, i) => {
    const proof = proofs[i]!;
    const phases = proof.verdict === 'solves' ? phasesOf(cube, solution.turns, goal, lesson.triggers) : undefined;
    return { solution, phases, claim: claimOf(lesson, c, i, { subject, proof, phases, fewest: fewest!, sheet }) };
  });
  return { case: c, cube, goal, subject, address, family, solutions };
}

interface Proved {
  readonly subject: Subject;
  readonly proof: Proof;
  readonly phases: Phases | undefined;
  readonly fewest: ReturnType<typeof shortestLength>;
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
