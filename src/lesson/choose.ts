/** Solutions chosen for a case by the engine: the same from run to run. */

import { easiestOf } from '../cube/search/for-hands.ts';
import { costAsWritten, type HandModel } from '../cube/search/hands.ts';
import { type Turn, writeTurns } from '../cube/turns.ts';
import { findSolutions } from '../steps/pair/search/find.ts';
import type { SetUp } from '../steps/pair/set-up.ts';

export type Choice = 'easiest' | 'shortest';

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
  const all = solutions.map(({ turns }) => turns);
  if (choice === 'easiest') return easiestOf(all, model, { withoutTurningTheCube })?.turns;
  const ranked = all.map((turns) => ({ turns, cost: costAsWritten(turns, model) })).sort(byCost);
  return ranked[0]?.turns.length ? ranked[0].turns : undefined;
}
