/** Making a set-up for a case: short, easy to turn, and not the answer taken back. */
import { type Address, goalAt } from '../address.ts';
import type { Slot } from '../goal.ts';
import { cubeWithPair } from '../place-pair.ts';
import { inverse, type Turn, writeTurns } from '../turns.ts';
import { findSolutions } from './find.ts';

/** What a turn asks of someone who sets up many cases in a row: faces at the back and below cost most. Our own figures. */
const EFFORT: Readonly<Record<string, number>> = { U: 1, R: 1, L: 1.2, F: 1.4, B: 2.6, D: 2.2 };
const HALF_TURN = 0.3;

/** Of a set-up, for the one who has to do it. */
export const effortOf = (turns: readonly Turn[]): number =>
  turns.reduce((sum, t) => sum + (EFFORT[t.letter] ?? 3) + (t.quarters === 2 ? HALF_TURN : 0), 0);

const isU = (turn: Turn | undefined): boolean => turn?.kind === 'face' && turn.letter === 'U';

/** Without turns of U at its ends: they hide nothing of an answer. */
function core(turns: readonly Turn[]): string {
  let [from, to] = [0, turns.length];
  while (from < to && isU(turns[from])) from++;
  while (to > from && isU(turns[to - 1])) to--;
  return writeTurns(turns.slice(from, to));
}

/**
 * Turns that bring the pair of `slot` to an address, from any cube whose first two layers are solved. They are not the
 * inverse of any of the answers in `avoid`; where none is known, not that of a shortest one. Empty for the solved pair.
 */
export function setUpFor(address: Address, slot: Slot, avoid: readonly (readonly Turn[])[]): Turn[] {
  const goal = goalAt(address, slot);
  const cube = cubeWithPair(address, slot);
  const answers = new Set(avoid.map(core));
  let best: Turn[] = [];
  for (const longer of [1, 2]) {
    const { solutions, shortest } = findSolutions(cube, goal, { longer });
    const ranked = solutions
      .filter(({ turns }) => !isU(turns.at(-1)))
      .map(({ turns, length }) => ({ turns: inverse(turns), length, answer: core(turns) }))
      .sort((a, b) => effortOf(a.turns) - effortOf(b.turns) || (writeTurns(a.turns) < writeTurns(b.turns) ? -1 : 1));
    const hiding = ranked.filter(({ answer, length }) =>
      avoid.length > 0 ? !answers.has(answer) : length > (shortest ?? 0),
    );
    best = (hiding[0] ?? ranked[0])?.turns ?? [];
    if (hiding.length > 0) break;
  }
  return best;
}
