/** Soundness, as composers of problems know it: what is asked has the answer that the key gives, and no other. */

import { writeTurns } from '../cube/turns.ts';
import { STRAIGHT } from '../cube/view.ts';
import { isFault } from '../steps/step.ts';
import { stepOf } from '../steps/steps.ts';
import type { Exercise } from './exercise.ts';
import { kindNamed } from './kinds/kinds.ts';

/** `unsound` says why it may not be given. */
export type Soundness = { readonly sound: ProvedExercise } | { readonly unsound: string };

/** Only soundness makes one, so that nothing unproved can come to stand on a paper. */
export class ProvedExercise {
  /** Makes the type one of a kind: an object that merely looks like it does not pass for it. */
  readonly #sound = true;
  readonly exercise: Exercise;

  private constructor(exercise: Exercise) {
    this.exercise = exercise;
  }

  static isProved(value: object): value is ProvedExercise {
    return #sound in value && value.#sound;
  }

  static prove(exercise: Exercise): Soundness {
    const reason = unsoundSetUp(exercise) ?? kindNamed(exercise.kind).unsound(exercise);
    return reason === undefined ? { sound: new ProvedExercise(exercise) } : { unsound: reason };
  }
}

/** What every exercise has to be: a set-up that gives the case, from any cube on which all that it stands on is solved. */
function unsoundSetUp({ setup, subject }: Exercise): string | undefined {
  const turns = writeTurns(setup);
  const done = stepOf(subject).after(setup, subject.where);
  if (isFault(done)) return `the set-up ${turns} gives no case: ${done.fault}`;
  if (done.cube.view !== STRAIGHT) return `the set-up ${turns} ends in another hold`;
  if (done.address !== subject.address) return `the set-up ${turns} gives ${done.address}, not ${subject.address}`;
  const isSame = done.goal.base.join() === subject.goal.base.join();
  return isSame ? undefined : 'what is said to stay solved is not what can';
}
