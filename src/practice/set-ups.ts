/** Solutions and set-ups for exercises, searched once an address and seen from all four slots, since a paper asks for many. */

import { fromTheSide } from '../cube/sides.ts';
import type { Turn } from '../cube/turns.ts';
import { type Address, goalAt, writeAddress } from '../steps/pair/address.ts';
import { cubeWithPair } from '../steps/pair/place-pair.ts';
import { findSolutions } from '../steps/pair/search/find.ts';
import { type SolutionsUpTo, setUpFor } from '../steps/pair/set-up-for.ts';
import type { Slot } from '../steps/pair/slots.ts';
import { QUARTERS_FROM_FRONT_RIGHT } from '../steps/pair/slots.ts';

export interface SetUps {
  /** All solutions up to one turn longer than the shortest, all slots kept that can be; the shorter first. */
  readonly solutions: (address: Address, slot: Slot) => readonly (readonly Turn[])[];
  /** As setUpFor. */
  readonly setUp: (address: Address, slot: Slot, avoid: readonly (readonly Turn[])[]) => readonly Turn[];
}

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
  const upTo: SolutionsUpTo = (address, slot, longer) =>
    atFrontRight(address, longer).map((turns) => fromTheSide(turns, QUARTERS_FROM_FRONT_RIGHT[slot]));

  return {
    solutions: (address, slot) => upTo(address, slot, 1),
    setUp: (address, slot, avoid) => setUpFor(address, slot, avoid, upTo),
  };
}
