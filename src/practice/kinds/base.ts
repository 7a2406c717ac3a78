/** What exercises of every kind begin with: a case set up, nothing asked yet. */

import { afterTurns, solvedCube } from '../../cube/cube.ts';
import type { Turn } from '../../cube/turns.ts';
import type { ExerciseKind } from '../../lesson/practice.ts';
import { goalAt } from '../../steps/pair/address.ts';
import { pairSubject } from '../../steps/pair/subject.ts';
import type { Exercise } from '../exercise.ts';
import type { Material } from '../material.ts';
import type { Candidate } from './kind.ts';

type Base = Pick<
  Exercise,
  'kind' | 'key' | 'difficulty' | 'setup' | 'slot' | 'open' | 'address' | 'cube' | 'goal' | 'subject'
>;

/** `avoid`: the answers that the set-up must not give away, if the exercise has any. */
export function baseOf(
  kind: ExerciseKind,
  { key, difficulty, seen, open }: Candidate,
  material: Material,
  avoid: readonly (readonly Turn[])[] = [],
): Base {
  const { address, slot } = seen;
  const setup = material.setUps.setUp(address, slot, avoid);
  const cube = afterTurns(solvedCube(), setup);
  const subject = pairSubject(address, { slot, open }, cube);
  return { kind, key, difficulty, setup, slot, open, address, cube, subject, goal: goalAt(address, slot, open) };
}
