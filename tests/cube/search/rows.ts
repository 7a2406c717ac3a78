/** Rows of the catalogue, for tests: own slot FR. */
import { type Address, readAddress, stuckSlots, writeAddress } from '../../../src/cube/address.ts';
import { ADDRESSES } from '../../../src/cube/cases.ts';
import type { Cube } from '../../../src/cube/cube.ts';
import { type Goal, goalOf, type Slot } from '../../../src/cube/goal.ts';
import { cubeWithPair } from '../../../src/cube/place-pair.ts';

const OTHERS: readonly Slot[] = ['FL', 'BL', 'BR'];

export interface Row {
  readonly address: Address;
  readonly kept: readonly Slot[];
  readonly cube: Cube;
  readonly goal: Goal;
}

export const rowOf = (address: Address, kept: readonly Slot[]): Row => ({
  address,
  kept,
  cube: cubeWithPair(address, 'FR'),
  goal: goalOf('FR', kept),
});

export const rowAt = (address: string, kept: readonly Slot[]): Row => rowOf(readAddress(address)!, kept);

/** Every address with every set of slots that hold no stuck piece. */
export const ROWS: readonly Row[] = ADDRESSES.flatMap((address) => {
  const stuck = stuckSlots(address, 'FR');
  const sets = Array.from({ length: 8 }, (_, set) => OTHERS.filter((_, i) => set & (1 << i)));
  return sets.filter((kept) => !kept.some((slot) => stuck.includes(slot))).map((kept) => rowOf(address, kept));
});

export const nameOf = ({ address, kept }: Pick<Row, 'address' | 'kept'>): string =>
  `${writeAddress(address)} | ${kept.join(' ')}`;
