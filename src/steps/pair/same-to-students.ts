/** Sightings that are one to a student: a case seen from one side, whatever the turn of the top. */
import { writeAddress } from './address.ts';
import { caseOf } from './cases.ts';
import type { Sighting } from './sighting.ts';

export const caseAndSide = ({ address, seen }: Sighting): string => `${writeAddress(caseOf(address))} ${seen}`;

/** In the order of the first of each. */
export function byCaseAndSide<T>(items: readonly T[], sightingOf: (item: T) => Sighting): (readonly T[])[] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = caseAndSide(sightingOf(item));
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  return [...groups.values()];
}
