/** Solve it: a set-up, and lines to write a solution on. */

import { givesAway } from '../../cube/gives-away.ts';
import { prove } from '../../cube/solves.ts';
import { lengthOf, writeTurns } from '../../cube/turns.ts';
import type { ExerciseKind } from '../../lesson/practice.ts';
import { stuckSlots } from '../../steps/pair/address.ts';
import { shortestLength } from '../../steps/pair/search/find.ts';
import { SLOTS } from '../../steps/pair/slots.ts';
import { doing, seeing } from '../difficulty.ts';
import type { SolveExercise } from '../exercise.ts';
import type { Material, Seen } from '../material.ts';
import { hashOf } from '../random.ts';
import { baseOf } from './base.ts';
import type { Candidate, Kind } from './kind.ts';

const candidate = (seen: Seen, { recommended, leading }: Material, open: Candidate['open']): Candidate => ({
  key: [seen.key, ...open].join(' '),
  difficulty: doing(recommended(seen, open), leading) + seeing(seen, leading, open),
  seen,
  open,
});

/** With a search for each, more would take longer than all the rest of a paper. */
const MOST_OPENED = 96;

/** With one further open slot, by no order that shows: some of the sightings, where there are many. */
function opened(material: Material): Candidate[] {
  const { seen } = material;
  const oneIn = Math.ceil(seen.length / MOST_OPENED);
  return seen.flatMap((one) => {
    const hash = hashOf(one.key);
    const closed = SLOTS.filter((s) => s !== one.slot && !stuckSlots(one.address, one.slot).includes(s));
    const slot = closed[hash % closed.length];
    return slot && Math.floor(hash / 64) % oneIn === 0 ? [candidate(one, material, [slot])] : [];
  });
}

/** Solve it and drill are the same to prove. */
export function solving(kind: ExerciseKind & ('solve' | 'drill')): Pick<Kind, 'make' | 'unsound'> {
  return {
    make(one, material): SolveExercise {
      const recommended = material.recommended(one.seen, one.open);
      const shortest = material.shortest(one.seen, one.open);
      return { ...baseOf(kind, one, material, [recommended, shortest]), form: 'solve', recommended, shortest };
    },
    unsound(exercise): string | undefined {
      if (exercise.form !== 'solve') return 'it asks for no solution';
      const { cube, goal, recommended, shortest, setup } = exercise;
      for (const turns of [recommended, shortest]) {
        if (prove(cube, turns, goal).verdict === 'fails') return `${writeTurns(turns)} does not solve it`;
        if (givesAway(setup, turns)) return 'the set-up taken back is an answer';
      }
      const found = shortestLength(cube, goal);
      if (!found.proved) return 'no shortest solution is proved';
      const said = lengthOf(shortest);
      return found.shortest === said ? undefined : `the shortest has ${found.shortest} turns, not ${said}`;
    },
  };
}

export const solve: Kind = {
  kind: 'solve',
  candidates(material) {
    const wantsOpen = (material.lesson.practice?.open ?? 0) > 0;
    return [...material.seen.map((seen) => candidate(seen, material, [])), ...(wantsOpen ? opened(material) : [])];
  },
  ...solving('solve'),
};
