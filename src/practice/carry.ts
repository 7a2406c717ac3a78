/** A solution taught for one slot, as it is for another: the same turns seen from another side. */

import { fromTheSide } from '../cube/sides.ts';
import { cornerOf, edgeOf } from '../cube/spots.ts';
import { type Quarters, type Turn, turnOf } from '../cube/turns.ts';
import { type Address, writeAddress } from '../steps/pair/address.ts';
import { upToU } from '../steps/pair/cases.ts';
import type { Slot } from '../steps/pair/slots.ts';
import { QUARTERS_FROM_FRONT_RIGHT } from '../steps/pair/slots.ts';

/** Quarter turns of U, clockwise, that bring a pair from one address to another of the same case. */
function quartersBetween(from: Address, to: Address): number {
  // upToU goes on by one turn of U at a time, from the address it is given.
  return upToU(from).findIndex((a) => writeAddress(a) === writeAddress(to));
}

const isOnTop = ({ corner, edge }: Address): boolean =>
  cornerOf(corner).startsWith('U') || edgeOf(edge).startsWith('U');

/** `turns` with that many quarter turns of U before, as one turn with a turn of U that they begin with. */
function afterU(turns: readonly Turn[], quarters: number): Turn[] {
  const [first, ...rest] = turns;
  const begins = first?.kind === 'face' && first.letter === 'U';
  const all = (quarters + (begins ? first.quarters : 0)) % 4;
  return [...(all === 0 ? [] : [turnOf('face', 'U', all as Quarters)]), ...(begins ? rest : turns)];
}

export interface Taught {
  readonly address: Address;
  readonly slot: Slot;
  readonly turns: readonly Turn[];
}

/** The turns for the same case at another address and slot. Not proved here. */
export function carried({ address, slot, turns }: Taught, to: { address: Address; slot: Slot }): Turn[] {
  const round = QUARTERS_FROM_FRONT_RIGHT[to.slot] - QUARTERS_FROM_FRONT_RIGHT[slot];
  const seen = fromTheSide(turns, (round + 4) % 4);
  const quarters = isOnTop(address) ? quartersBetween(address, to.address) : 0;
  return afterU(seen, (4 - quarters) % 4);
}
