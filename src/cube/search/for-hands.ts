/** Which solutions of a case hands do best, held one way or another: by the cost model of hands.ts. */
import { fromTheSide } from '../sides.ts';
import { mirror, type Turn, writeTurns } from '../turns.ts';
import { costAsWritten, type Execution, easiest, type HandLimits, type HandModel } from './hands.ts';

/** A solution as hands do it. */
export interface Handled extends Execution {
  /** The turns of the six faces that it does, as the viewer calls them before the first. */
  readonly solution: readonly Turn[];
}

/** Of so many solutions the cheapest execution is worked out; the others are too hard as written to come first. */
export const MOST_WORKED_OUT = 12;

const byCost = (a: { cost: number; turns: readonly Turn[] }, b: typeof a): number =>
  a.cost - b.cost || (writeTurns(a.turns) < writeTurns(b.turns) ? -1 : 1);

/** The easiest of these solutions; undefined if there are none, or only the empty one. */
export function easiestOf(
  solutions: readonly (readonly Turn[])[],
  model: HandModel,
  { workedOut = MOST_WORKED_OUT, ...limits }: HandLimits & { readonly workedOut?: number } = {},
): Handled | undefined {
  return solutions
    .filter((solution) => solution.length > 0)
    .map((solution) => ({ solution, turns: solution, cost: costAsWritten(solution, model) }))
    .sort(byCost)
    .slice(0, workedOut)
    .map(({ solution }): Handled => ({ solution, ...easiest(solution, model, limits) }))
    .sort(byCost)[0];
}

/** The easiest ways to turn any of some solutions. */
export interface ForHands {
  /** With rotations of the cube, wide turns and slices wherever they make it easier. */
  readonly best: Handled;
  /** The cube stays as it is held. */
  readonly still: Handled;
  /** Turned by y2 first, which is not counted: as someone does it who sees the pair from the other side. */
  readonly behind: Handled;
  /** As those do it who lead with the left hand. */
  readonly left: Handled;
}

/** The easiest of these solutions in each way; undefined if there are none, or the pair is solved. */
export function forHands(solutions: readonly (readonly Turn[])[], model: HandModel): ForHands | undefined {
  const best = easiestOf(solutions, model);
  const still = easiestOf(solutions, model, { withoutTurningTheCube: true });
  const behind = easiestOf(
    solutions.map((turns) => fromTheSide(turns, 2)),
    model,
    { withoutTurningTheCube: true },
  );
  const left = easiestOf(solutions.map(mirror), model);
  if (!best || !still || !behind || !left) return undefined;
  return {
    best,
    still,
    behind: { ...behind, solution: fromTheSide(behind.solution, 2) },
    left: { turns: mirror(left.turns), cost: left.cost, solution: mirror(left.solution) },
  };
}
