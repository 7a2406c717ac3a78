/**
 * Joined and split: the addresses that three turns insert, after a turn of U at most. Joined, the two pieces stand side by
 * side with their stickers matching; split, they stand apart. Eight of each.
 */

import { afterTurns } from '../../cube/cube.ts';
import { cornerOf, edgeOf } from '../../cube/spots.ts';
import { inverse, type Quarters, type Turn, turnOf } from '../../cube/turns.ts';
import { type Address, addressKey, addressOf, SOLVED_ADDRESS } from './address.ts';
import { cubeWithPair } from './place-pair.ts';

const AMOUNTS = [1, 2, 3] as const;
const U = AMOUNTS.map((quarters) => turnOf('face', 'U', quarters));

/** A face of the own slot brings it up, the top turns, the face goes back: `R U R'`, `F' U F` and so on. */
const INSERTS: readonly (readonly Turn[])[] = (
  [
    ['R', 1],
    ['F', 3],
  ] as const
).flatMap(([face, up]) => U.map((u) => [turnOf('face', face, up), u, turnOf('face', face, (4 - up) as Quarters)]));

/** By address: all that insert it, the shortest first. */
const insertsByAddress: ReadonlyMap<number, readonly (readonly Turn[])[]> = (() => {
  const known = new Map<number, (readonly Turn[])[]>();
  const solved = cubeWithPair(SOLVED_ADDRESS, 'FR');
  for (const onTop of [[], ...U.map((u) => [u])]) {
    for (const insert of INSERTS) {
      const turns = [...onTop, ...insert];
      const address = addressKey(addressOf(afterTurns(solved, inverse(turns)), 'FR')!);
      known.set(address, [...(known.get(address) ?? []), turns]);
    }
  }
  return known;
})();

const areSideBySide = ({ corner, edge }: Address): boolean =>
  [...edgeOf(edge)].every((f) => cornerOf(corner).includes(f));

/**
 * The three turns, and a turn of U before them where that is needed, that insert it: own slot FR, as its viewer turns
 * them, the shortest first. None if it is neither joined nor split.
 */
export const insertsOf = (address: Address): readonly (readonly Turn[])[] =>
  insertsByAddress.get(addressKey(address)) ?? [];

// What three turns insert side by side comes up side by side, with its stickers as they are in the slot: matching.
export const isJoined = (address: Address): boolean => insertsOf(address).length > 0 && areSideBySide(address);
export const isSplit = (address: Address): boolean => insertsOf(address).length > 0 && !areSideBySide(address);
