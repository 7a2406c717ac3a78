/** What a ProvedLesson (prove.ts) is made of. */

import type { Phases } from '../steps/phases-part.ts';
import type { Subject } from '../steps/subject.ts';
import type { SolutionClaim } from './claim.ts';
import type { Case, Part, Solution } from './lesson.ts';

/** A solution that was done on the cube. */
export interface ProvedSolution {
  readonly solution: Solution;
  readonly claim: SolutionClaim;
  /** Undefined if it fails. */
  readonly phases: Phases | undefined;
}

/** A case that was set up, and its solutions. */
export interface ProvedCase {
  readonly case: Case;
  /** As it lies after the set-up. */
  readonly subject: Subject;
  readonly solutions: readonly ProvedSolution[];
}

/** The cases under one heading. */
export interface ProvedPart {
  readonly part: Part;
  readonly cases: readonly ProvedCase[];
}
