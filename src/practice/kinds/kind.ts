/** What a file of this folder has to give: one kind of exercise. */

import type { ExerciseKind } from '../../lesson/practice.ts';
import type { Slot } from '../../steps/pair/slots.ts';
import type { Exercise } from '../exercise.ts';
import type { Material, Seen } from '../material.ts';
import type { Random } from '../random.ts';

/** An exercise that could be made: cheap to list, so that one can be chosen before it is worked out. */
export interface Candidate {
  readonly key: string;
  readonly difficulty: number;
  readonly seen: Seen;
  /** Further slots that need not be solved. */
  readonly open: readonly Slot[];
}

export interface Kind {
  readonly kind: ExerciseKind;
  readonly candidates: (material: Material) => Candidate[];
  /** Undefined where this candidate gives none after all, for want of plausible wrong answers. */
  readonly make: (candidate: Candidate, material: Material, random: Random) => Exercise | undefined;
  /** Why a finished exercise may not be given, found without trusting what made it; undefined if it may. */
  readonly unsound: (exercise: Exercise) => string | undefined;
}
