/** Solutions chosen for a case by the engine: the same from run to run. */
import { findSolutions } from '../cube/search/find.ts';
import { costAsWritten, easiest, type HandModel } from '../cube/search/hands.ts';
import { type Turn, writeTurns } from '../cube/turns.ts';
import type { SetUp } from './set-up.ts';

export type Choice = 'easiest' | 'shortest';

/** Of so many solutions the cheapest execution is worked out; the others are too hard as written to come first. */
const MOST_WORKED_OUT = 12;

interface Ranked {
  readonly turns: readonly Turn[];
  readonly cost: number;
}

const byCost = (a: Ranked, b: Ranked): number =>
  a.cost - b.cost || (writeTurns(a.turns) < writeTurns(b.turns) ? -1 : 1);

/** Undefined for a pair that is solved already. */
export function chosenSolution(
  { cube, goal }: SetUp,
  choice: Choice,
  model: HandModel,
  withoutTurningTheCube: boolean,
): readonly Turn[] | undefined {
  const { solutions } = findSolutions(cube, goal, { longer: choice === 'easiest' ? 1 : 0 });
  const ranked = solutions.map(({ turns }) => ({ turns, cost: costAsWritten(turns, model) })).sort(byCost);
  if (choice === 'shortest') return ranked[0]?.turns.length ? ranked[0].turns : undefined;
  const best = ranked
    .slice(0, MOST_WORKED_OUT)
    .map(({ turns }): Ranked => easiest(turns, model, { withoutTurningTheCube }))
    .sort(byCost)[0];
  return best?.turns.length ? best.turns : undefined;
}
