/** Like or unlike: the corner's top colour against the edge's, where the lesson's rules begin. */
import { seeing } from '../difficulty.ts';
import type { ChoiceExercise } from '../exercise.ts';
import { cubeOf } from '../material.ts';
import { likenessOf } from '../sighting.ts';
import { baseOf } from './base.ts';
import type { Kind } from './kind.ts';
import { twoWords, unsoundWords } from './two-words.ts';

const READING = 20;

export const likeness: Kind = {
  kind: 'likeness',
  candidates: ({ seen, leading }) =>
    seen.flatMap((one) =>
      likenessOf(cubeOf(one.address, one.slot).cube, one.slot)
        ? [{ key: one.key, difficulty: READING + seeing(one, leading), seen: one, open: [] }]
        : [],
    ),
  make(one, material): ChoiceExercise | undefined {
    const base = baseOf('likeness', one, material);
    const word = likenessOf(base.cube, base.slot);
    return word && { ...base, form: 'choice', ...twoWords(['like', 'unlike'], word) };
  },
  unsound: (exercise) => unsoundWords(exercise, likenessOf(exercise.cube, exercise.slot)),
};
