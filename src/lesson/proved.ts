/** What a ProvedLesson (prove.ts) is made of. */

import type { Cube } from '../cube/cube.ts';
import type { Address } from '../steps/pair/address.ts';
import type { Family } from '../steps/pair/cases.ts';
import type { PairGoal } from '../steps/pair/slots.ts';
import type { Phases } from '../steps/phases-part.ts';
import type { Subject } from '../steps/subject.ts';
import type { SolutionClaim } from './claim.ts';
import type { Case, Part, Solution } from './lesson.ts';

export interface ProvedSolution {
  readonly solution: Solution;
  readonly claim: SolutionClaim;
  /** Undefined if it fails. */
  readonly phases: Phases | undefined;
}

export interface ProvedCase {
  readonly case: Case;
  /** The cube after the set-up. */
  readonly cube: Cube;
  readonly goal: PairGoal;
  readonly subject: Subject;
  readonly address: Address;
  readonly family: Family;
  readonly solutions: readonly ProvedSolution[];
}

export interface ProvedPart {
  readonly part: Part;
  readonly cases: readonly ProvedCase[];
}
