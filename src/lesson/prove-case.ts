/** Case -> ProvedCase: its set-up and its solutions are done on the cube. */

import { type Proof, prove } from '../cube/solves.ts';
import { lengthOf, writeTurns } from '../cube/turns.ts';
import { type Address, writeAddress } from '../steps/pair/address.ts';
import { caseOf, type Family, familyOf } from '../steps/pair/cases.ts';
import { type Phases, phasesOf } from '../steps/pair/phases.ts';
import { shortestLength } from '../steps/pair/search/find.ts';
import { doSetUp } from '../steps/pair/set-up.ts';
import type { PairGoal } from '../steps/pair/slots.ts';
import { pairSubject } from '../steps/pair/subject.ts';
import type { SolutionClaim } from './claim.ts';
import type { Case, Lesson } from './lesson.ts';
import { phaseClaims } from './phase-claims.ts';
import type { Problem } from './problem.ts';
import { failing, inPieces, otherFamily, setupProblem } from './proof-problems.ts';
import type { ProvedCase } from './proved.ts';
import { schemeField } from './scheme-field.ts';
import { positionAt } from './source.ts';

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
  const solutions = c.solutions.map((solution, i) => {
    const proof = proofs[i]!;
    const phases = proof.verdict === 'solves' ? phasesOf(cube, solution.turns, goal, lesson.triggers) : undefined;
    return {
      solution,
      phases,
      claim: claimOf(lesson, c, i, { address, family, goal, proof, phases, fewest: fewest!, sheet }),
    };
  });
  const subject = pairSubject(address, { slot: c.slot, open: c.open }, cube);
  return { case: c, cube, goal, subject, address, family, solutions };
}

interface Proved {
  readonly address: Address;
  readonly family: Family;
  readonly goal: PairGoal;
  readonly proof: Proof;
  readonly phases: Phases | undefined;
  readonly fewest: ReturnType<typeof shortestLength>;
  readonly sheet: string;
}

function claimOf(
  lesson: Lesson,
  c: Case,
  index: number,
  { address, family, goal, proof, phases, fewest, sheet }: Proved,
): SolutionClaim {
  const solution = c.solutions[index]!;
  return {
    id: `${sheet}${c.number}.${solution.number}`,
    kind: 'solution',
    file: lesson.source.file,
    line: positionAt(lesson.source, solution.span.start).line,
    hold: c.hold,
    ...schemeField(lesson.scheme),
    setup: writeTurns(c.setup, lesson.wide),
    solution: writeTurns(solution.turns, lesson.wide),
    cross: c.colours.D,
    pair: c.slot,
    kept: goal.kept,
    address: writeAddress(address),
    case: writeAddress(caseOf(address)),
    family,
    verdict: proof.verdict,
    broken: proof.broken,
    length: lengthOf(solution.turns),
    ...(fewest.shortest !== undefined && { shortest: fewest.shortest }),
    proved: fewest.proved,
    ...(phases && phaseClaims(phases, lesson.wide)),
  };
}
