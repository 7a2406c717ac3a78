/** A solution taught for one slot, as it is for another: the same turns seen from another side. */

import { type Address, writeAddress } from '../cube/address.ts';
import { upToU } from '../cube/cases.ts';
import type { Slot } from '../cube/goal.ts';
import { cornerOf, edgeOf } from '../cube/spots.ts';
import { type Quarters, type Turn, turnOf } from '../cube/turns.ts';

/** One step round the cube, against the clock from above: what is at FR comes to FL. */
const NEXT: Readonly<Partial<Record<Turn['letter'], Turn['letter']>>> = { R: 'F', F: 'L', L: 'B', B: 'R' };
const STEPS: Readonly<Record<Slot, number>> = { FR: 0, FL: 3, BL: 2, BR: 1 };

function roundOnce(turns: readonly Turn[]): Turn[] | undefined {
  // Slices and rotations about x and z change their direction with the side; nobody writes them often enough to care.
  if (turns.some((t) => t.kind === 'slice' || t.letter === 'x' || t.letter === 'z')) return undefined;
  return turns.map((t) => turnOf(t.kind, NEXT[t.letter] ?? t.letter, t.quarters));
}

/** Turns for a pair of FR as they are for one of another slot; undefined where they cannot be renamed. */
export const forSlot = (turns: readonly Turn[], slot: Slot): Turn[] | undefined => round(turns, (4 - STEPS[slot]) % 4);

function round(turns: readonly Turn[], times: number): Turn[] | undefined {
  let done: Turn[] | undefined = [...turns];
  for (let i = 0; i < times && done; i++) done = roundOnce(done);
  return done;
}

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

/** The turns for the same case at another address and slot; undefined where they cannot be renamed. Not proved here. */
export function carried({ address, slot, turns }: Taught, to: { address: Address; slot: Slot }): Turn[] | undefined {
  const seen = round(turns, (STEPS[slot] - STEPS[to.slot] + 4) % 4);
  if (!seen) return undefined;
  const quarters = isOnTop(address) ? quartersBetween(address, to.address) : 0;
  return afterU(seen, (4 - quarters) % 4);
}
