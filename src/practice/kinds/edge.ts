/** Good or bad edge. */
import { featuresOf } from '../../steps/pair/features.ts';
import { seeingEdge } from '../difficulty.ts';
import type { ChoiceExercise, Exercise } from '../exercise.ts';
import { baseOf } from './base.ts';
import type { Kind } from './kind.ts';
import { twoWords, unsoundWords } from './two-words.ts';

const READING = 20;
const wordFor = ({ address, slot }: Pick<Exercise, 'address' | 'slot'>) =>
  featuresOf({ address, seen: slot }).edge as 'good' | 'bad';

export const edge: Kind = {
  kind: 'edge',
  candidates: ({ seen, leading }) =>
    seen
      // An edge that is home cannot be asked for: the picture shows it solved or flipped.
      .filter((one) => one.edge.place !== one.slot)
      .map((one) => ({ key: one.key, difficulty: READING + seeingEdge(one, leading), seen: one, open: [] })),
  make(one, material): ChoiceExercise {
    const base = baseOf('edge', one, material);
    return { ...base, form: 'choice', ...twoWords(['good', 'bad'], wordFor(base)) };
  },
  unsound: (exercise) => unsoundWords(exercise, wordFor(exercise)),
};
