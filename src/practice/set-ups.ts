/**
 * Set-ups for exercises: short, easy to turn, from any cube whose first two layers are solved, and not the answer taken
 * back. Solutions are searched once an address and seen from all four slots, since a paper asks for many.
 */
import { type Address, goalAt, writeAddress } from '../cube/address.ts';
import type { Slot } from '../cube/goal.ts';
import { cubeWithPair } from '../cube/place-pair.ts';
import { findSolutions } from '../cube/search/find.ts';
import { effortOf } from '../cube/search/set-up-for.ts';
import { inverse, type Turn, writeTurns } from '../cube/turns.ts';
import { forSlot } from './carry.ts';
import { givesAway } from './gives-away.ts';

export interface SetUps {
  /** All solutions up to one turn longer than the shortest, all slots kept that can be; the shorter first. */
  readonly solutions: (address: Address, slot: Slot) => readonly (readonly Turn[])[];
  /** Not the inverse of any of `avoid`, nor of a shortest solution where none is named. */
  readonly setUp: (address: Address, slot: Slot, avoid: readonly (readonly Turn[])[]) => readonly Turn[];
}

/** A pair that three turns insert has only its answer, with turns of U, among those of a turn or two more. */
const LONGER = [1, 2, 3, 4];

const isU = (turn: Turn | undefined): boolean => turn?.letter === 'U';

export function startSetUps(): SetUps {
  const found = new Map<string, readonly (readonly Turn[])[]>();

  const atFrontRight = (address: Address, longer: number): readonly (readonly Turn[])[] => {
    const key = `${longer} ${writeAddress(address)}`;
    const known = found.get(key);
    if (known) return known;
    const { solutions } = findSolutions(cubeWithPair(address, 'FR'), goalAt(address, 'FR'), { longer });
    const turns = solutions.map((s) => s.turns);
    found.set(key, turns);
    return turns;
  };
  // A search finds turns of faces only, which can always be renamed.
  const seen = (address: Address, slot: Slot, longer: number): readonly (readonly Turn[])[] =>
    atFrontRight(address, longer).map((turns) => forSlot(turns, slot)!);

  const setUp: SetUps['setUp'] = (address, slot, avoid) => {
    for (const longer of LONGER) {
      const all = seen(address, slot, longer);
      const shortest = all[0]!.length;
      const ranked = all
        .filter((turns) => !isU(turns.at(-1)) && (avoid.length > 0 || turns.length > shortest))
        .map((turns) => ({ turns: inverse(turns), effort: effortOf(inverse(turns)) }))
        .filter(({ turns }) => !avoid.some((answer) => givesAway(turns, answer)))
        .sort((a, b) => a.effort - b.effort || (writeTurns(a.turns) < writeTurns(b.turns) ? -1 : 1));
      if (ranked[0]) return ranked[0].turns;
    }
    return [];
  };
  return { solutions: (address, slot) => seen(address, slot, 1), setUp };
}
