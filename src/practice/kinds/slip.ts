/** Find the slip: of four solutions one has a wrong turn, and only that turn can mend it. */

import type { Cube } from '../../cube/cube.ts';
import { givesAway } from '../../cube/gives-away.ts';
import type { Goal } from '../../cube/goal.ts';
import { oneTurnAway } from '../../cube/mend.ts';
import { prove } from '../../cube/solves.ts';
import { lengthOf, type Quarters, type Turn, turnOf, writeTurns } from '../../cube/turns.ts';
import { solutionsSeen } from '../carry.ts';
import { doing, seeing } from '../difficulty.ts';
import type { ChoiceExercise, Exercise, Slip } from '../exercise.ts';
import type { Random } from '../random.ts';
import { baseOf, candidateOf, type Kind } from './kind.ts';

const CHECKING = 100;
const CHOICES = 4;

const solves = (cube: Cube, goal: Goal, turns: readonly Turn[]): boolean =>
  prove(cube, turns, goal).verdict === 'solves';

/** All changes of one turn that make it right, each result once. */
function mends(cube: Cube, goal: Goal, turns: readonly Turn[]) {
  const right = oneTurnAway(turns).filter((change) => solves(cube, goal, change.turns));
  return [...new Map(right.map((change) => [writeTurns(change.turns), change])).values()];
}

/** A prime forgotten or put, a half turn for a quarter: what hands and pens get wrong. */
function slipsOf(turns: readonly Turn[]): { turns: readonly Turn[]; slip: Slip }[] {
  return turns.flatMap((now, i) =>
    ([1, 2, 3] as const)
      .filter((quarters) => quarters !== now.quarters)
      .map((quarters) => {
        const was = turnOf(now.kind, now.letter, quarters as Quarters);
        return { turns: turns.with(i, was), slip: { at: i + 1, was, now } };
      }),
  );
}

function oneSlip(cube: Cube, goal: Goal, turns: readonly Turn[], random: Random) {
  for (const one of random.shuffled(slipsOf(turns))) {
    if (!solves(cube, goal, one.turns) && mends(cube, goal, one.turns).length === 1) return one;
  }
  return undefined;
}

function unsound(exercise: Exercise): string | undefined {
  if (exercise.form !== 'choice' || !exercise.slip) return 'it names no slip';
  const { options, right, slip, setup } = exercise;
  const { cube, goal } = exercise.subject;
  const lines = options.map((o) => (o.says === 'turns' ? o.turns : []));
  if (new Set(lines.map((turns) => writeTurns(turns))).size !== lines.length) return 'two solutions are the same';
  const failing = lines.flatMap((turns, i) => (solves(cube, goal, turns) ? [] : [i]));
  if (failing.length !== 1) return `${failing.length} of the solutions are wrong, not one`;
  if (right.join() !== failing.join()) return 'another solution is the wrong one';
  if (lines.some((turns) => givesAway(setup, turns))) return 'a solution is the set-up taken back';
  const wrong = lines[failing[0]!]!;
  if (wrong.some((turn) => turn.kind === 'rotation'))
    return 'the number of its turn is in doubt: a rotation stands there';
  const found = mends(cube, goal, wrong);
  if (found.length !== 1) return `${found.length} changes of one turn mend it, not one`;
  const [mend] = found;
  const isThat = mend!.at === slip.at - 1 && mend!.was === slip.was && mend!.now === slip.now;
  return isThat ? undefined : `the mend is at turn ${mend!.at + 1}`;
}

export const slip: Kind = {
  candidates: ({ taught, leading }) =>
    taught.map((one) => candidateOf(one, CHECKING + doing(one.recommended, leading) + seeing(one, leading))),
  make(one, material, random): ChoiceExercise | undefined {
    const { recommended } = one.taught;
    const base = baseOf('slip', one, [recommended]);
    const { cube, goal } = base.subject;
    const others = solutionsSeen(one.subject, 1)
      .filter((turns) => writeTurns(turns) !== writeTurns(recommended) && !givesAway(base.setup, turns))
      .map((turns) => ({ turns, cost: doing(turns, material.leading) }))
      .sort((a, b) => a.cost - b.cost || (writeTurns(a.turns) < writeTurns(b.turns) ? -1 : 1))
      .slice(0, CHOICES - 1)
      .map(({ turns }) => turns);
    const right = random.shuffled([recommended, ...others]);
    if (right.length < CHOICES || right.some((turns) => lengthOf(turns) < 3)) return undefined;
    // With a rotation in the line it would be open whether it counts as a turn.
    const countable = right.flatMap((turns, i) => (turns.some((t) => t.kind === 'rotation') ? [] : [i]));
    if (countable.length === 0) return undefined;
    const at = random.pick(countable);
    const slipped = oneSlip(cube, goal, right[at]!, random);
    if (!slipped) return undefined;
    const lines = right.with(at, slipped.turns);
    return {
      ...base,
      form: 'choice',
      options: lines.map((turns) => ({ says: 'turns', turns })),
      right: [at],
      slip: slipped.slip,
    };
  },
  unsound,
};
