/** What a claim about a pair says besides: its own slot, kept slots, address, case and family. */
import { claimed } from './claimed.ts';
import type { PairText, SolutionClaim } from './claims-file.ts';
import {
  addressText,
  CROSS,
  caseSight,
  cornerOf,
  familyOf,
  PLACES,
  type Place,
  pairSight,
  placeOf,
  type Slot,
} from './places.ts';
import { turnsOrFaults } from './reprove.ts';
import { afterTurns, againstCentres, type Stickers } from './stickers.ts';

type PairClaim = SolutionClaim & PairText;

export const isAboutPair = (claim: SolutionClaim): claim is PairClaim =>
  claim.pair !== undefined && claim.kept !== undefined;

/** Where the pair is, as an address; empty for a claim that is not about one. */
export const sightedAt = ({ pair }: SolutionClaim, state: Stickers): string =>
  pair === undefined ? '' : addressText(pairSight(state, pair));

/** The cross and the kept slots. */
export const basePlaces = (kept: readonly Slot[]): Place[] => {
  const slots = kept.flatMap((slot): Place[] => [cornerOf(slot), slot]);
  return PLACES.filter((place) => CROSS.includes(place) || slots.includes(place));
};

const inOrder = (places: readonly Place[]): string => PLACES.filter((place) => places.includes(place)).join(' ');

function keptFaults({ pair, kept }: PairText, state: Stickers): string[] {
  const faults: string[] = [];
  if (new Set(kept).size < kept.length) faults.push('kept: names a slot twice');
  if (kept.includes(pair)) faults.push(`kept: ${pair} is the pair's own slot`);
  const [corner, edge] = [placeOf(state, cornerOf(pair)), placeOf(state, pair)];
  for (const slot of kept) {
    const stuck = slot !== pair && (corner === cornerOf(slot) || edge === slot);
    if (stuck) faults.push(`kept: a piece of the pair is stuck in ${slot}`);
  }
  return faults;
}

/** Address, case and family are empty where the set-up cannot be read or leaves the pair's edge in the cross. */
export function sightOf({
  pair,
  setup,
}: Pick<PairClaim, 'pair' | 'setup'>): Record<'address' | 'case' | 'family', string> {
  const { turns, faults } = turnsOrFaults('set-up', setup);
  const sight = pairSight(againstCentres(afterTurns(turns)), pair);
  const family = faults.length > 0 ? undefined : familyOf(sight);
  if (family === undefined) return { address: '', case: '', family: '' };
  return { address: addressText(sight), case: addressText(caseSight(sight)), family };
}

/** The base of pairs is the cross and the kept slots; a solution brings home the corner and the edge. */
export function pairFaults(claim: PairClaim): string[] {
  const { pair, kept, base, goal } = claim;
  const sight = sightOf(claim);
  return [
    ...keptFaults(claim, againstCentres(afterTurns(turnsOrFaults('set-up', claim.setup).turns))),
    ...claimed('base', basePlaces(kept).join(' '), inOrder(base)),
    ...claimed(
      'goal',
      inOrder([cornerOf(pair), pair]),
      [inOrder(goal.home), ...goal.top, goal.free ?? ''].join(' ').trim(),
    ),
    ...(['address', 'case', 'family'] as const).flatMap((field) => claimed(field, sight[field], claim[field])),
  ];
}
