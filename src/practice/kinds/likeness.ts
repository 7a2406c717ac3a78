/** Like or unlike: the corner's top colour against the edge's, where the lesson's rules begin. */
import { topsLike } from '../../steps/pair/features.ts';
import { seeing } from '../difficulty.ts';
import type { ChoiceExercise, Exercise } from '../exercise.ts';
import { baseOf } from './base.ts';
import type { Kind } from './kind.ts';
import { twoWords, unsoundWords } from './two-words.ts';

const READING = 20;

const wordFor = ({ address, slot }: Pick<Exercise, 'address' | 'slot'>) =>
  topsLike({ address, seen: slot }) as 'like' | 'unlike' | undefined;

export const likeness: Kind = {
  kind: 'likeness',
  candidates: ({ seen, leading }) =>
    seen.flatMap((one) =>
      topsLike({ address: one.address, seen: one.slot })
        ? [{ key: one.key, difficulty: READING + seeing(one, leading), seen: one, open: [] }]
        : [],
    ),
  make(one, material): ChoiceExercise | undefined {
    const base = baseOf('likeness', one, material);
    const word = wordFor(base);
    return word && { ...base, form: 'choice', ...twoWords(['like', 'unlike'], word) };
  },
  unsound: (exercise) => unsoundWords(exercise, wordFor(exercise)),
};
