/** Making a set-up for a case: short, easy to turn, and not the answer taken back. */

import { givesAway } from '../../cube/gives-away.ts';
import { cornerOf, edgeOf } from '../../cube/spots.ts';
import { inverse, isTurnOfTop, type Turn, writeTurns } from '../../cube/turns.ts';
import { type Address, goalAt } from './address.ts';
import { cubeWithPair } from './place-pair.ts';
import { findSolutions } from './search/find.ts';
import type { Slot } from './slots.ts';

/** What a turn asks of someone who sets up many cases in a row: faces at the back and below cost most. Our own figures. */
const EFFORT: Readonly<Record<string, number>> = { U: 1, R: 1, L: 1.2, F: 1.4, B: 2.6, D: 2.2 };
const HALF_TURN = 0.3;

/** Of a set-up, for the one who has to do it. */
const effortOf = (turns: readonly Turn[]): number =>
  turns.reduce((sum, t) => sum + (EFFORT[t.letter] ?? 3) + (t.quarters === 2 ? HALF_TURN : 0), 0);

/** Turns of faces that solve an address of a slot, all slots kept that can be, up to `longer` turns over the shortest; the shorter first. */
export type SolutionsUpTo = (address: Address, slot: Slot, longer: number) => readonly (readonly Turn[])[];

const searched: SolutionsUpTo = (address, slot, longer) =>
  findSolutions(cubeWithPair(address, slot), goalAt(address, slot), { longer }).solutions.map(({ turns }) => turns);

/** A pair that three turns insert has only its answer, with turns of U, among those of a turn or two more. */
const LONGER = [1, 2, 3, 4];

const isOnTop = ({ corner, edge }: Address): boolean =>
  cornerOf(corner).startsWith('U') || edgeOf(edge).startsWith('U');

/**
 * Turns that bring the pair of `slot` to an address, from any cube whose first two layers are solved. They give none of
 * the answers in `avoid` away; where none is known, not a shortest one. No turn of U stands where it does nothing: at the
 * beginning, or at the end with both pieces in slots. Empty for the solved pair.
 */
export function setUpFor(
  address: Address,
  slot: Slot,
  avoid: readonly (readonly Turn[])[],
  solutionsUpTo: SolutionsUpTo = searched,
): Turn[] {
  const isIdle = (turns: readonly Turn[]): boolean =>
    isTurnOfTop(turns.at(-1)) || (!isOnTop(address) && isTurnOfTop(turns[0]));
  for (const longer of LONGER) {
    const all = solutionsUpTo(address, slot, longer);
    const shortest = all[0]!;
    if (shortest.length === 0) return [];
    const answers = avoid.length > 0 ? avoid : all.filter(({ length }) => length === shortest.length);
    const ranked = all
      .filter((turns) => !isIdle(turns))
      .map((turns) => ({ turns: inverse(turns), effort: effortOf(inverse(turns)) }))
      .sort((a, b) => a.effort - b.effort || (writeTurns(a.turns) < writeTurns(b.turns) ? -1 : 1));
    const hiding = ranked.find(({ turns }) => !answers.some((answer) => givesAway(turns, answer)));
    if (hiding) return hiding.turns;
  }
  throw new Error('every set-up within four turns over the shortest gives an answer away');
}
