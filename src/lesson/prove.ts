/** Lesson -> ProvedLesson: every set-up and every solution is done on the cube. */
import { createHash } from 'node:crypto';
import { type Address, addressOf, stuckSlots, writeAddress } from '../cube/address.ts';
import { caseOf, type Family, familyOf } from '../cube/cases.ts';
import { afterTurns, type Cube, homeOf, isHome, solvedCube } from '../cube/cube.ts';
import { type Goal, goalOf, SLOTS, type Slot, slotOfPlace } from '../cube/goal.ts';
import { type Proof, prove } from '../cube/solves.ts';
import type { Place } from '../cube/spots.ts';
import { lengthOf, writeTurns } from '../cube/turns.ts';
import { centreAt } from '../cube/view.ts';
import type { SolutionClaim } from './claim.ts';
import type { Case, Lesson, Part, Solution } from './lesson.ts';
import { listed } from './likely.ts';
import { type Problem, severityOf } from './problem.ts';
import { positionAt } from './source.ts';

export interface ProvedSolution {
  readonly solution: Solution;
  readonly claim: SolutionClaim;
}

export interface ProvedCase {
  readonly case: Case;
  /** The cube after the set-up. */
  readonly cube: Cube;
  readonly goal: Goal;
  readonly address: Address;
  readonly family: Family;
  readonly solutions: readonly ProvedSolution[];
}

export interface ProvedPart {
  readonly part: Part;
  readonly cases: readonly ProvedCase[];
}

/** Only the prover makes one, so that nothing unproved can be handed to a sheet. */
export class ProvedLesson {
  readonly lesson: Lesson;
  readonly parts: readonly ProvedPart[];
  /** Names what was proved: two handouts with one edition say the same. */
  readonly edition: string;

  private constructor(lesson: Lesson, parts: readonly ProvedPart[]) {
    this.lesson = lesson;
    this.parts = parts;
    this.edition = editionOf(lesson);
  }

  get cases(): ProvedCase[] {
    return this.parts.flatMap((p) => p.cases);
  }

  get claims(): SolutionClaim[] {
    return claimsOf(this.parts);
  }

  /**
   * `proved` is there when nothing is wrong. The claims are those of all set-ups that give a case, failing ones among
   * them. A lesson that was read with problems must not be proved as if it were whole: hand them in.
   */
  static prove(lesson: Lesson, whileReading: readonly Problem[]): Outcome {
    const problems: Problem[] = [...whileReading];
    const parts = lesson.parts.map((part) => ({
      part,
      cases: part.cases.map((c) => proveCase(c, lesson, problems)).filter((c) => c !== undefined),
    }));
    const claims = claimsOf(parts);
    if (problems.some(isError)) return { proved: undefined, claims, problems };
    return { proved: new ProvedLesson(lesson, parts), claims, problems };
  }
}

export interface Outcome {
  readonly proved: ProvedLesson | undefined;
  readonly claims: readonly SolutionClaim[];
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

/** "the edge FL", "the corner DFR" */
const pieceName = (place: Place): string => `the ${place.length === 3 ? 'corner' : 'edge'} ${place}`;

function checkSetup(c: Case, cube: Cube, problems: Problem[]): { address: Address; goal: Goal } | undefined {
  const span = c.setupSpan;
  if (centreAt(cube.view, 'U') !== 'U') {
    const message = `the set-up ends with ${c.colours[centreAt(cube.view, 'D')]} down instead of ${c.colours.D}`;
    const hint = `turn the cube back at its end, or leave the rotation out; y, y' and y2 are fine`;
    problems.push({ code: 'setup-rotates', span, message, hint });
    return undefined;
  }
  const address = addressOf(cube, c.slot);
  if (!address) {
    const message = `after the set-up the edge of slot ${c.slot} is in the bottom layer`;
    problems.push({ code: 'setup-hides-pair', span, message, hint: 'mend the set-up so that the cross is whole' });
    return undefined;
  }
  const stuck = stuckSlots(address, c.slot);
  const goal = goalOf(
    c.slot,
    SLOTS.filter((s) => !stuck.includes(s) && !c.open.includes(s)),
  );
  const broken = goal.base.filter((piece) => !isHome(cube, piece)).map(homeOf);
  if (broken.length > 0) {
    const slots = SLOTS.filter((s) => broken.some((place) => slotOfPlace(place) === s));
    const cross = broken.filter((place) => slotOfPlace(place) === undefined);
    const message = `the set-up leaves ${listed(broken.map(pieceName)).replace(' or ', ' and ')} unsolved`;
    const hint =
      cross.length > 0
        ? 'the cross must be whole after the set-up: look for a turn that is missing or the wrong way round'
        : `mend the set-up, or say that ${slots.length > 1 ? 'these slots are' : 'this slot is'} open: open: [${slots.join(', ')}]`;
    problems.push({ code: 'setup-breaks-base', span, message, hint });
    return undefined;
  }
  return { address, goal };
}

function proveCase(c: Case, lesson: Lesson, problems: Problem[]): ProvedCase | undefined {
  const cube = afterTurns(solvedCube(), c.setup);
  const checked = checkSetup(c, cube, problems);
  if (!checked) return undefined;
  const { address, goal } = checked;
  const family = familyOf(address);
  const strays = lesson.families.length > 0 && !lesson.families.includes(family);
  if (strays) problems.push(otherFamily(c, family, lesson.families, cube));
  const solutions = c.solutions.map((solution, i) => {
    const proof = prove(cube, solution.turns, goal);
    // With a set-up of another family the solutions cannot but fail: only the set-up is told.
    if (proof.verdict === 'fails' && !strays) problems.push(failing(solution, proof));
    return { solution, claim: claimOf(lesson, c, i, { address, family, goal, proof }) };
  });
  return { case: c, cube, goal, address, family, solutions };
}

function otherFamily(c: Case, family: Family, wanted: readonly Family[], cube: Cube): Problem {
  const others = SLOTS.filter((slot: Slot) => {
    const address = slot === c.slot ? undefined : addressOf(cube, slot);
    return address && wanted.includes(familyOf(address));
  });
  const hint =
    others.length > 0
      ? `the pair of slot ${listed(others)} is ${listed(wanted)}: write slot: ${others[0]}`
      : `mend the set-up, or write family: ${family} if all cases are`;
  const message = `the set-up gives a case of ${family}; this lesson is about ${listed(wanted)}`;
  return { code: 'setup-other-family', span: c.setupSpan, message, hint };
}

function failing(solution: Solution, proof: Proof): Problem {
  const left = listed(proof.broken.map(pieceName)).replace(' or ', ' and ');
  const whole = proof.baseLastWhole;
  const turn = solution.turns[whole]?.text;
  const hint =
    whole === solution.turns.length
      ? 'cross and kept slots are whole at the end; the pair is not in its slot'
      : whole === 0
        ? `cross and kept slots are never whole after the first turn, ${turn}`
        : `cross and kept slots were last whole after turn ${whole}, before ${turn}`;
  return { code: 'solution-fails', span: solution.span, message: `the solution leaves ${left} unsolved`, hint };
}

interface Proved {
  readonly address: Address;
  readonly family: Family;
  readonly goal: Goal;
  readonly proof: Proof;
}

function claimOf(lesson: Lesson, c: Case, index: number, { address, family, goal, proof }: Proved): SolutionClaim {
  const solution = c.solutions[index]!;
  return {
    id: `${c.number}.${index + 1}`,
    kind: 'solution',
    file: lesson.source.file,
    line: positionAt(lesson.source.text, solution.span.start).line,
    hold: c.hold,
    setup: writeTurns(c.setup),
    solution: writeTurns(solution.turns),
    cross: c.colours.D,
    pair: c.slot,
    kept: goal.kept,
    address: writeAddress(address),
    case: writeAddress(caseOf(address)),
    family,
    verdict: proof.verdict,
    broken: proof.broken,
    length: lengthOf(solution.turns),
  };
}
