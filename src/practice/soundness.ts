/** Soundness, as composers of problems know it: what is asked has the answer that the key gives, and no other. */

import { writeTurns } from '../cube/turns.ts';
import { STRAIGHT } from '../cube/view.ts';
import { goalAt, writeAddress } from '../steps/pair/address.ts';
import { doSetUp } from '../steps/pair/set-up.ts';
import type { Exercise } from './exercise.ts';
import { KINDS } from './kinds/kinds.ts';

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
    const reason = unsoundSetUp(exercise) ?? KINDS[exercise.kind].unsound(exercise);
    return reason === undefined ? { sound: new ProvedExercise(exercise) } : { unsound: reason };
  }
}

/** What every exercise has to be: a set-up that gives the case, from any cube with two layers solved. */
function unsoundSetUp(exercise: Exercise): string | undefined {
  const { setup, slot, open, address } = exercise;
  // Done with nothing open but what the case opens: the slots named open are as good as solved before it.
  const done = doSetUp(setup, slot, []);
  if ('fault' in done) return `the set-up ${writeTurns(setup)} gives no case: ${done.fault}`;
  if (done.cube.view !== STRAIGHT) return `the set-up ${writeTurns(setup)} ends in another hold`;
  if (writeAddress(done.address) !== writeAddress(address)) {
    return `the set-up ${writeTurns(setup)} gives ${writeAddress(done.address)}, not ${writeAddress(address)}`;
  }
  const { kept } = goalAt(address, slot, open);
  return kept.join() === exercise.goal.kept.join() ? undefined : 'the slots said to be kept are not those that can be';
}
