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
import { familiarIn } from '../familiar.ts';
import type { Material, Taught } from '../material.ts';
import type { Random } from '../random.ts';
import { baseOf, candidateOf, type Kind } from './kind.ts';

const CHECKING = 100;
const CHOICES = 4;
/** Where too few of a turn over the shortest are made of turns that students know. */
const LONGER = 2;

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

const isRotation = ({ kind }: Turn): boolean => kind === 'rotation';

/** Other solutions than the recommended one, of turns that students know, the easiest first. */
function othersFor({ subject, recommended }: Taught, setup: readonly Turn[], material: Material): Turn[][] {
  const isFamiliar = familiarIn(material);
  const upTo = (longer: number): (readonly Turn[])[] =>
    solutionsSeen(subject, longer).filter(
      (turns) => isFamiliar(turns) && writeTurns(turns) !== writeTurns(recommended) && !givesAway(setup, turns),
    );
  const near = upTo(1);
  return (near.length >= CHOICES - 1 ? near : upTo(LONGER))
    .map((turns) => ({ turns: [...turns], cost: doing(turns, material.leading) }))
    .sort((a, b) => a.cost - b.cost || (writeTurns(a.turns) < writeTurns(b.turns) ? -1 : 1))
    .map(({ turns }) => turns);
}

export const slip: Kind = {
  candidates: ({ taught, leading }) =>
    taught
      .filter(({ recommended }) => !recommended.some(isRotation))
      .map((one) => candidateOf(one, CHECKING + doing(one.recommended, leading) + seeing(one, leading))),
  make(one, material, random): ChoiceExercise | undefined {
    const { recommended } = one.taught;
    const base = baseOf('slip', one, [recommended]);
    const { cube, goal } = base.subject;
    const others = othersFor(one.taught, base.setup, material).slice(0, CHOICES - 1);
    const right = random.shuffled([recommended, ...others]);
    if (right.length < CHOICES || right.some((turns) => lengthOf(turns) < 3)) return undefined;
    const at = random.below(CHOICES);
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
