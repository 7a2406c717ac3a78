/** Which solutions of a case hands do best, held one way or another: by the cost model of hands.ts. */
import { fromTheSide } from '../sides.ts';
import { mirror, type Turn } from '../turns.ts';
import { byEase, type Execution, easiest, type HandModel, heldForHands } from './hands.ts';

/** A solution as hands do it. */
export interface Handled extends Execution {
  /** The turns of the six faces that it does, as the viewer calls them before the first. */
  readonly solution: readonly Turn[];
}

/** Of so many solutions all that is allowed is tried; the others are too hard as written to come first. */
const MOST_WORKED_OUT = 12;

/** As hands do them, the easiest first; without the empty one, and where more than turns of faces is allowed without the hardest. */
export function byHands(solutions: readonly (readonly Turn[])[], model: HandModel): Handled[] {
  const held = solutions
    .filter((solution) => solution.length > 0)
    .map((solution): Handled => ({ solution, ...heldForHands(solution, model) }))
    .sort(byEase(model));
  if (model.allow.length === 0) return held;
  const likely = held.slice(0, MOST_WORKED_OUT);
  return likely.map(({ solution }): Handled => ({ solution, ...easiest(solution, model) })).sort(byEase(model));
}

/** The easiest ways to turn any of some solutions. */
export interface ForHands {
  /** With all that is allowed. */
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
  const held: HandModel = { ...model, allow: [], still: true };
  const [best] = byHands(solutions, model);
  const [still] = byHands(solutions, held);
  const [behind] = byHands(
    solutions.map((turns) => fromTheSide(turns, 2)),
    held,
  );
  const [left] = byHands(solutions.map(mirror), model);
  if (!best || !still || !behind || !left) return undefined;
  return {
    best,
    still,
    behind: { ...behind, solution: fromTheSide(behind.solution, 2) },
    left: { turns: mirror(left.turns), cost: left.cost, solution: mirror(left.solution) },
  };
}
