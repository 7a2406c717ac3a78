/** What a file of this folder has to give: one kind of exercise. */

import { afterTurns, solvedCube } from '../../cube/cube.ts';
import type { Turn } from '../../cube/turns.ts';
import type { ExerciseKind } from '../../lesson/practice.ts';
import type { Subject } from '../../steps/subject.ts';
import { setUpFor } from '../carry.ts';
import type { Exercise } from '../exercise.ts';
import type { Material, Taught } from '../material.ts';
import type { Random } from '../random.ts';

/** An exercise that could be made: cheap to list, so that one can be chosen before it is worked out. */
export interface Candidate {
  readonly key: string;
  readonly difficulty: number;
  readonly taught: Taught;
  /** What is asked about: as taught, or with more that need not be solved. */
  readonly subject: Subject;
  readonly isOpened: boolean;
}

export interface Kind {
  readonly candidates: (material: Material) => Candidate[];
  /** Undefined where this candidate gives none after all, for want of plausible wrong answers. */
  readonly make: (candidate: Candidate, material: Material, random: Random) => Exercise | undefined;
  /** Why a finished exercise may not be given, found without trusting what made it; undefined if it may. */
  readonly unsound: (exercise: Exercise) => string | undefined;
}

/** Of a case as it was taught. */
export const candidateOf = (taught: Taught, difficulty: number): Candidate => ({
  key: taught.key,
  difficulty,
  taught,
  subject: taught.subject,
  isOpened: false,
});

/**
 * A case set up, nothing asked yet. `avoid`: the answers that the set-up must not give away, if the exercise has any; it has
 * so many turns at least, where it is not to be the shorter answer.
 */
export function baseOf(
  kind: ExerciseKind,
  { key, difficulty, subject }: Candidate,
  avoid: readonly (readonly Turn[])[] = [],
  least = 0,
): Pick<Exercise, 'kind' | 'key' | 'difficulty' | 'setup' | 'subject'> {
  const setup = setUpFor(subject, avoid, least);
  return { kind, key, difficulty, setup, subject: { ...subject, cube: afterTurns(solvedCube(), setup) } };
}
