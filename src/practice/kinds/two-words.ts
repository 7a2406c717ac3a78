/** Choices between two words. */
import type { ChoiceExercise, Exercise, Option } from '../exercise.ts';

type Word = (Option & { readonly says: 'word' })['word'];

export const twoWords = (words: readonly [Word, Word], right: Word): Pick<ChoiceExercise, 'options' | 'right'> => ({
  options: words.map((word) => ({ says: 'word', word })),
  right: [words.indexOf(right)],
});

/** `word`: what the cube says, worked out anew. */
export function unsoundWords(exercise: Exercise, word: Word | undefined): string | undefined {
  if (exercise.form !== 'choice') return 'it offers no choice';
  const fitting = exercise.options.flatMap((o, i) => (o.says === 'word' && o.word === word ? [i] : []));
  if (word === undefined) return 'the question has no answer for this case';
  if (fitting.length !== 1) return `${fitting.length} choices say ${word}`;
  return exercise.right.join() === fitting.join() ? undefined : `the right choice is ${word}`;
}
