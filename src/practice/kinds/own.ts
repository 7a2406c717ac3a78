/** Questions of the step's own: choices between words, about a case as it lies there. */
import type { OwnQuestion } from '../../steps/practice-part.ts';
import { stepOf } from '../../steps/steps.ts';
import { seeing } from '../difficulty.ts';
import type { ChoiceExercise, Exercise } from '../exercise.ts';
import type { Material } from '../material.ts';
import { baseOf, type Candidate, candidateOf, type Kind } from './kind.ts';

const READING = 20;

const questionNamed = (name: string, { subject }: Pick<Exercise, 'subject'>): OwnQuestion | undefined =>
  stepOf(subject).practice.questions.find((question) => question.name === name);

function candidates(name: string, { taught, leading }: Material): Candidate[] {
  return taught.flatMap((one) => {
    const question = questionNamed(name, one);
    if (question?.right(one.subject) === undefined) return [];
    return [candidateOf(one, READING + (question.seeing?.(one.subject, leading.hand) ?? seeing(one, leading)))];
  });
}

function make(name: string, one: Candidate): ChoiceExercise | undefined {
  const base = baseOf(name, one);
  const { answers, right } = questionNamed(name, base)!;
  const word = right(base.subject);
  if (word === undefined) return undefined;
  return {
    ...base,
    form: 'choice',
    options: answers.map((answer) => ({ says: 'word', word: answer })),
    right: [answers.indexOf(word)],
  };
}

function unsound(name: string, exercise: Exercise): string | undefined {
  if (exercise.form !== 'choice') return 'it offers no choice';
  const word = questionNamed(name, exercise)?.right(exercise.subject);
  const fitting = exercise.options.flatMap((o, i) => (o.says === 'word' && o.word === word ? [i] : []));
  if (word === undefined) return 'the question has no answer for this case';
  if (fitting.length !== 1) return `${fitting.length} choices say ${word}`;
  return exercise.right.join() === fitting.join() ? undefined : `the right choice is ${word}`;
}

export const own = (name: string): Kind => ({
  candidates: (material) => candidates(name, material),
  make: (one) => make(name, one),
  unsound: (exercise) => unsound(name, exercise),
});
