/**
 * The catalogue: shortest lengths and numbers of solutions for many addresses and sets of kept slots, own slot FR. All
 * sets of one address are counted in one search: a word that brings cross and pair home solves the case for every set
 * of which it keeps all slots.
 */

import { homeSpot, pieceOf } from '../../../cube/cube.ts';
import { followersAmong } from '../../../cube/search/normal-form.ts';
import { CORNER_AFTER, EDGE_AFTER } from '../../../cube/spots.ts';
import { type Address, stuckSlots, writeAddress } from '../address.ts';
import { mirroredAddress, mirroredSlots } from '../mirrored.ts';
import { cubeWithPair } from '../place-pair.ts';
import { cornerOfSlot, SLOTS, type Slot } from '../slots.ts';
import { frameOf, keyIn } from './frame.ts';
import { type HalfWordIndex, halfWordIndex } from './half-word-index.ts';
import { HOME_KEY, KEY_PIECES, keyAfter, maskOfPieces } from './key.ts';
import { eachWord } from './words.ts';

export interface CatalogueRow {
  readonly address: Address;
  readonly kept: readonly Slot[];
  readonly shortest: number;
  /** How many solutions have the shortest length, and how many are longer, by as much as was asked for. */
  readonly solutions: number;
  readonly longer: number;
}

const OWN: Slot = 'FR';
const OTHERS: readonly Slot[] = SLOTS.filter((slot) => slot !== OWN);

/** Sets of kept slots as numbers: bit i stands for OTHERS[i]. */
type SlotSet = number;
const ALL: SlotSet = 2 ** OTHERS.length - 1;
const setOf = (slots: readonly Slot[]): SlotSet => slots.reduce((set, slot) => set | (1 << OTHERS.indexOf(slot)), 0);
const slotsIn = (set: SlotSet): Slot[] => OTHERS.filter((_, i) => set & (1 << i));
const isWithin = (set: SlotSet, other: SlotSet): boolean => (set & ~other) === 0;

const ANY_TURN = followersAmong(Array.from({ length: 18 }, (_, turn) => turn));
/** By the number of a slot in OTHERS: where its corner and its edge are while they are home. */
const CORNER_HOMES = OTHERS.map((slot) => homeSpot(pieceOf(cornerOfSlot(slot))));
const EDGE_HOMES = OTHERS.map((slot) => homeSpot(pieceOf(slot)));

function endsHome(table: Uint8Array, spot: number, word: Uint8Array, length: number): boolean {
  let at = spot;
  for (let i = 0; i < length; i++) at = table[24 * word[i]! + at]!;
  return at === spot;
}

/** Of these slots, those that are whole after the word's first `length` turns; all of them are whole before. */
function keptBy(word: Uint8Array, length: number, slots: SlotSet): SlotSet {
  let kept = slots;
  for (let i = 0; i < OTHERS.length; i++) {
    if ((slots & (1 << i)) === 0) continue;
    const isKept =
      endsHome(CORNER_AFTER, CORNER_HOMES[i]!, word, length) && endsHome(EDGE_AFTER, EDGE_HOMES[i]!, word, length);
    if (!isKept) kept &= ~(1 << i);
  }
  return kept;
}

interface Tally {
  shortest: number;
  solutions: number;
  longer: number;
}

/** Counts for one address and several sets of kept slots. */
function countSolutions(address: Address, sets: readonly SlotSet[], longer: number, index: HalfWordIndex): Tally[] {
  const start = keyIn(frameOf(OWN), cubeWithPair(address, OWN));
  const tallies = sets.map((): Tally => ({ shortest: -1, solutions: 0, longer: 0 }));
  const budget = { nodes: Number.POSITIVE_INFINITY, stop: () => false };
  if (start === HOME_KEY) return sets.map(() => ({ shortest: 0, solutions: 1, longer: 0 }));
  for (let length = 0; ; length++) {
    const open = sets
      .map((_, i) => i)
      .filter((i) => tallies[i]!.shortest < 0 || length <= tallies[i]!.shortest + longer);
    if (open.length === 0) return tallies;
    const some = open.reduce((set, i) => set | sets[i]!, 0);
    const each = open.reduce((set, i) => set & sets[i]!, ALL);
    eachWord(index, start, length, ANY_TURN, budget, (word, passes) => {
      const kept = keptBy(word, length, each);
      if (kept !== each) return false;
      const end = each | keptBy(word, length, some & ~each);
      // The sets for which the goal is reached before the end, one for each time that cross and pair are home.
      const before: SlotSet[] = [];
      if (passes) {
        let key = start;
        for (let i = 0; i + 1 < length; i++) {
          key = keyAfter(key, word[i]!);
          if (key === HOME_KEY) before.push(keptBy(word, i + 1, end));
        }
      }
      for (const i of open) {
        const set = sets[i]!;
        if (!isWithin(set, end) || before.some((b) => isWithin(set, b))) continue;
        const tally = tallies[i]!;
        if (tally.shortest < 0) tally.shortest = length;
        if (tally.shortest === length) tally.solutions++;
        else tally.longer++;
      }
      return false;
    });
  }
}

/** The consistent sets of kept slots, the one with all possible slots first, then by size and in the order of SLOTS. */
function setsFor(address: Address, everyKeep: boolean): SlotSet[] {
  const possible = ALL & ~setOf(stuckSlots(address, OWN));
  if (!everyKeep) return [possible];
  const sets = Array.from({ length: ALL + 1 }, (_, set) => set).filter((set) => isWithin(set, possible));
  return sets.sort((a, b) => slotsIn(b).length - slotsIn(a).length || a - b);
}

const tallyKey = (address: Address, set: SlotSet): string => `${writeAddress(address)} ${set}`;

/**
 * Rows for these addresses, own slot FR: with all possible slots kept, or with `everyKeep` a row for every consistent
 * set. `longer` counts the solutions of up to so many turns more than the shortest.
 */
export function catalogue(
  addresses: readonly Address[],
  { everyKeep = false, longer = 0 }: { everyKeep?: boolean; longer?: number } = {},
): CatalogueRow[] {
  const index = halfWordIndex(maskOfPieces(KEY_PIECES));
  const known = new Map<string, Tally>();
  return addresses.flatMap((address) => {
    const sets = setsFor(address, everyKeep);
    if (sets.some((set) => !known.has(tallyKey(address, set)))) {
      const mirrored = mirroredAddress(address);
      countSolutions(address, sets, longer, index).forEach((tally, i) => {
        known.set(tallyKey(address, sets[i]!), tally);
        known.set(tallyKey(mirrored, setOf(mirroredSlots(slotsIn(sets[i]!)))), tally);
      });
    }
    return sets.map((set) => ({ address, kept: slotsIn(set), ...known.get(tallyKey(address, set))! }));
  });
}
