/** Solve it: a set-up, and lines to write a solution on. Drill: cases to be set up and solved against the clock. */

import { givesAway } from '../../cube/gives-away.ts';
import { prove } from '../../cube/solves.ts';
import { lengthOf, writeTurns } from '../../cube/turns.ts';
import type { SharedKind } from '../../lesson/practice.ts';
import { stepOf } from '../../steps/steps.ts';
import { doing, seeing } from '../difficulty.ts';
import type { SolveExercise } from '../exercise.ts';
import { type Material, shortestFor } from '../material.ts';
import { hashOf } from '../random.ts';
import { baseOf, type Candidate, candidateOf, type Kind } from './kind.ts';

const candidates = ({ taught, leading }: Material): Candidate[] =>
  taught.map((one) => candidateOf(one, doing(one.recommended, leading) + seeing(one, leading)));

/** With a search for each, more would take longer than all the rest of a paper. */
const MOST_OPENED = 96;

/** With one thing more open, by no order that shows: some of what was taught, where there is much. */
function opened({ taught, leading }: Material): Candidate[] {
  const oneIn = Math.ceil(taught.length / MOST_OPENED);
  return taught.flatMap((one) => {
    const hash = hashOf(one.key);
    const more = stepOf(one.subject).practice.opened?.(one.subject, hash);
    if (!more || Math.floor(hash / 64) % oneIn !== 0) return [];
    const { subject, open } = more;
    const difficulty = doing(shortestFor(subject, leading), leading) + seeing({ ...one, subject }, leading);
    return [{ key: `${one.key} ${open}`, difficulty, taught: one, subject, isOpened: true }];
  });
}

/** Solve it and drill are the same to prove. */
const solving = (kind: SharedKind & ('solve' | 'drill')): Pick<Kind, 'make' | 'unsound'> => ({
  make(one, { leading }): SolveExercise {
    const shortest = shortestFor(one.subject, leading);
    // With more open there may be shorter ways than the coach's.
    const recommended = one.isOpened ? shortest : one.taught.recommended;
    return {
      ...baseOf(kind, one, [recommended, shortest], lengthOf(recommended)),
      form: 'solve',
      recommended,
      shortest,
    };
  },
  unsound(exercise): string | undefined {
    if (exercise.form !== 'solve') return 'it asks for no solution';
    const { subject, recommended, shortest, setup } = exercise;
    for (const turns of [recommended, shortest]) {
      if (prove(subject.cube, turns, subject.goal).verdict === 'fails') return `${writeTurns(turns)} does not solve it`;
      if (givesAway(setup, turns)) return 'the set-up taken back is an answer';
    }
    if (lengthOf(setup) < lengthOf(recommended)) return 'the set-up taken back is a shorter answer';
    const found = stepOf(subject).shortest(subject);
    if (!found.proved) return 'no shortest solution is proved';
    const said = lengthOf(shortest);
    return found.shortest === said ? undefined : `the shortest has ${found.shortest} turns, not ${said}`;
  },
});

export const solve: Kind = {
  candidates(material) {
    const wantsOpen = (material.lesson.practice?.open ?? 0) > 0;
    return [...candidates(material), ...(wantsOpen ? opened(material) : [])];
  },
  ...solving('solve'),
};

export const drill: Kind = { candidates, ...solving('drill') };
