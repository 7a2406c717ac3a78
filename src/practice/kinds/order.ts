/** Put the phases in order: the stretches of a solution are given, shuffled; only one order of them solves the case. */
import { prove } from '../../cube/solves.ts';
import { type Turn, writeTurns } from '../../cube/turns.ts';
import type { Phase } from '../../steps/phases-part.ts';
import { stepOf } from '../../steps/steps.ts';
import { seeing } from '../difficulty.ts';
import type { ChoiceExercise, Exercise } from '../exercise.ts';
import type { Material, Taught } from '../material.ts';
import { baseOf, candidateOf, type Kind } from './kind.ts';

const ORDERING = 50;
const FEWEST = 3;
/** Of more there are too many orders to try in one's head. */
const MOST = 5;

function phasesFor({ subject, recommended }: Taught, { lesson }: Material): readonly Phase[] {
  return stepOf(subject).phases?.of(subject, recommended, lesson.triggers).phases ?? [];
}

function orders<T>(items: readonly T[]): T[][] {
  if (items.length < 2) return [[...items]];
  return items.flatMap((item, i) => orders(items.toSpliced(i, 1)).map((rest) => [item, ...rest]));
}

function unsound(exercise: Exercise): string | undefined {
  if (exercise.form !== 'choice') return 'there is nothing to put in order';
  const { options, right } = exercise;
  const { cube, goal } = exercise.subject;
  const parts = options.map((o): readonly Turn[] => (o.says === 'turns' ? o.turns : []));
  if (parts.some((turns) => turns.length === 0)) return 'a part has no turns';
  if (new Set(parts.map((turns) => writeTurns(turns))).size !== parts.length) return 'two parts are the same';
  const solving = orders(parts.map((_, i) => i)).filter(
    (order) =>
      prove(
        cube,
        order.flatMap((i) => parts[i]!),
        goal,
      ).verdict === 'solves',
  );
  if (solving.length !== 1) return `${solving.length} orders of the parts solve the case`;
  return solving[0]!.join() === right.join() ? undefined : 'another order solves the case';
}

export const order: Kind = {
  candidates: (material) =>
    material.taught.flatMap((one) => {
      const { length } = phasesFor(one, material);
      if (length < FEWEST || length > MOST) return [];
      const difficulty = ORDERING + 10 * length + seeing(one, material.leading);
      return [candidateOf(one, difficulty)];
    }),
  make(one, material): ChoiceExercise {
    const phases = phasesFor(one.taught, material);
    return {
      ...baseOf('order', one, [one.taught.recommended]),
      form: 'choice',
      options: phases.map(({ turns }) => ({ says: 'turns', turns })),
      right: phases.map((_, i) => i),
    };
  },
  unsound,
};
