/** What two items of one paper may not have in common, and what neighbours may not have in one place. */
import { prove } from '../cube/solves.ts';
import type { Turn } from '../cube/turns.ts';
import type { ExerciseKind } from '../lesson/practice.ts';
import type { Exercise, SolveExercise } from './exercise.ts';
import type { Candidate } from './kinds/kind.ts';

/** Exercises that print turns: what brings a case about or solves it in one is seen in another of the same case. */
const WITH_TURNS: ReadonlySet<ExerciseKind> = new Set(['rule', 'picture', 'order', 'slip', 'solve', 'drill']);

/** One case from one side, whatever the turns of U: to a neighbour the same exercise. */
export const isSameCase = ({ seen: a }: Candidate, { seen: b }: Candidate): boolean =>
  a.caseText === b.caseText && a.slot === b.slot;

interface Item {
  readonly kind: ExerciseKind;
  readonly candidate: Candidate;
}

export const areAlike = (a: Item, b: Item): boolean =>
  WITH_TURNS.has(a.kind) && WITH_TURNS.has(b.kind) && isSameCase(a.candidate, b.candidate);

/** Solutions, and parts of some, among the choices. */
const linesOf = (e: Exercise): (readonly Turn[])[] =>
  e.form === 'choice' && (e.kind === 'slip' || e.kind === 'order')
    ? e.options.flatMap((o) => (o.says === 'turns' ? [o.turns] : []))
    : [];

const isAnswered = ({ cube, goal }: SolveExercise, by: Exercise): boolean =>
  linesOf(by).some((turns) => prove(cube, turns, goal).verdict === 'solves');

/** Whether one prints what solves the other as it stands. */
export const showsAnswer = (a: Exercise, b: Exercise): boolean =>
  (a.form === 'solve' && isAnswered(a, b)) || (b.form === 'solve' && isAnswered(b, a));
