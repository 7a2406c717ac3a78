/** Lesson -> ProvedLesson: every set-up and every solution is done on the cube. */
import { createHash } from 'node:crypto';
import { type Address, writeAddress } from '../cube/address.ts';
import { caseOf, type Family, familyOf } from '../cube/cases.ts';
import type { Goal } from '../cube/goal.ts';
import { shortestLength } from '../cube/search/find.ts';
import { type Proof, prove } from '../cube/solves.ts';
import { type Phases, phasesOf } from '../cube/teach/phases.ts';
import { lengthOf, writeTurns } from '../cube/turns.ts';
import type { RuleClaim, SolutionClaim } from './claim.ts';
import type { Case, Lesson } from './lesson.ts';
import { brokenClaims, casesTwice, emptyParts } from './lesson-claims.ts';
import { misnamed } from './misnamed.ts';
import { phaseClaims } from './phase-claims.ts';
import { type Problem, severityOf } from './problem.ts';
import { failing, inPieces, otherFamily, setupProblem } from './proof-problems.ts';
import { type ProvedRules, proveRules } from './prove-rules.ts';
import type { ProvedCase, ProvedPart } from './proved.ts';
import { doSetUp } from './set-up.ts';
import { positionAt } from './source.ts';

/** Only the prover makes one, so that nothing unproved can be handed to a sheet. */
export class ProvedLesson {
  /** Makes the type one of a kind: an object that merely looks like it does not pass for it. */
  readonly #proved = true;
  readonly lesson: Lesson;
  readonly parts: readonly ProvedPart[];
  /** Undefined if the lesson has no rules. */
  readonly rules: ProvedRules | undefined;
  /** Names what was proved: two handouts with one edition say the same. */
  readonly edition: string;

  private constructor(lesson: Lesson, parts: readonly ProvedPart[], rules: ProvedRules | undefined) {
    this.lesson = lesson;
    this.parts = parts;
    this.rules = rules;
    this.edition = editionOf(lesson);
  }

  static isProved(value: object): value is ProvedLesson {
    return #proved in value && value.#proved;
  }

  get cases(): ProvedCase[] {
    return this.parts.flatMap((p) => p.cases);
  }

  /** How many different cases are shown: one seen from four sides counts once. */
  get differentCases(): number {
    return new Set(this.cases.map((c) => writeAddress(caseOf(c.address)))).size;
  }

  /** Of its solutions; those of its rules stand with them. */
  get claims(): SolutionClaim[] {
    return claimsOf(this.parts);
  }

  /**
   * `proved` is there when nothing is wrong, nor was while the lesson was read. The claims are those of all set-ups that
   * give a case, failing ones among them.
   */
  static prove({ lesson, problems: whileReading }: { lesson: Lesson; problems: readonly Problem[] }): Outcome {
    const problems: Problem[] = [...whileReading];
    // A lesson that could not be read whole would seem to break promises that it keeps.
    const isWhole = whileReading.every((p) => severityOf(p) !== 'error');
    const parts = lesson.parts.map((part) => ({
      part,
      cases: part.cases.map((c) => proveCase(c, lesson, problems)).filter((c) => c !== undefined),
    }));
    const rules = proveRules(lesson, isWhole);
    const claims = claimsOf(parts);
    const ruleClaims = (rules.proved?.rules ?? []).map(({ claim }) => claim);
    const cases = parts.flatMap((p) => p.cases);
    problems.push(...casesTwice(parts, lesson), ...misnamed(cases), ...emptyParts(lesson), ...rules.problems);
    if (isWhole) problems.push(...brokenClaims(lesson, cases));
    if (problems.some(isError)) return { proved: undefined, claims, ruleClaims, problems };
    return { proved: new ProvedLesson(lesson, parts, rules.proved), claims, ruleClaims, problems };
  }
}

export interface Outcome {
  readonly proved: ProvedLesson | undefined;
  /** Of solutions. */
  readonly claims: readonly SolutionClaim[];
  readonly ruleClaims: readonly RuleClaim[];
  readonly problems: readonly Problem[];
}

const isError = (p: Problem): boolean => severityOf(p) === 'error';

const claimsOf = (parts: readonly ProvedPart[]): SolutionClaim[] =>
  parts.flatMap((p) => p.cases.flatMap((c) => c.solutions.map((s) => s.claim)));

/** Of what is printed, not of how the file spells it: comments and spaces do not make another edition. */
function editionOf(lesson: Lesson): string {
  const { source: _, ...said } = lesson;
  const digest = createHash('sha256')
    .update(JSON.stringify(said, (key, value) => (key === 'span' || key === 'setupSpan' ? undefined : value)))
    .digest('hex');
  return `${digest.slice(0, 4)}-${digest.slice(4, 8)}`;
}

/** A case whose base is whole never comes near it; a search stopped there is told as not proved. */
const MOST_NODES = 50_000_000;

function proveCase(c: Case, lesson: Lesson, problems: Problem[]): ProvedCase | undefined {
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
      claim: claimOf(lesson, c, i, { address, family, goal, proof, phases, fewest: fewest! }),
    };
  });
  return { case: c, cube, goal, address, family, solutions };
}

interface Proved {
  readonly address: Address;
  readonly family: Family;
  readonly goal: Goal;
  readonly proof: Proof;
  readonly phases: Phases | undefined;
  readonly fewest: ReturnType<typeof shortestLength>;
}

function claimOf(
  lesson: Lesson,
  c: Case,
  index: number,
  { address, family, goal, proof, phases, fewest }: Proved,
): SolutionClaim {
  const solution = c.solutions[index]!;
  return {
    id: `${c.number}.${solution.number}`,
    kind: 'solution',
    file: lesson.source.file,
    line: positionAt(lesson.source, solution.span.start).line,
    hold: c.hold,
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
