/** Rows of the catalogue, for tests: own slot FR. */

import type { Cube } from '../../../../src/cube/cube.ts';
import { type Address, readAddress, stuckSlots, writeAddress } from '../../../../src/steps/pair/address.ts';
import { ADDRESSES } from '../../../../src/steps/pair/cases.ts';
import { cubeWithPair } from '../../../../src/steps/pair/place-pair.ts';
import type { PairGoal } from '../../../../src/steps/pair/slots.ts';
import { goalOf, type Slot } from '../../../../src/steps/pair/slots.ts';

const OTHERS: readonly Slot[] = ['FL', 'BL', 'BR'];

export interface Row {
  readonly address: Address;
  readonly kept: readonly Slot[];
  readonly cube: Cube;
  readonly goal: PairGoal;
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
