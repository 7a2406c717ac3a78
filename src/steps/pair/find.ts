/** Pairs for the commands `find` and `cases`: an address or a set-up, and which slots are kept. */
import { afterTurns, pieceOf, solvedCube } from '../../cube/cube.ts';
import { areHome } from '../../cube/goal.ts';
import { cornerOf, edgeOf } from '../../cube/spots.ts';
import type { Turn } from '../../cube/turns.ts';
import { centreAt } from '../../cube/view.ts';
import { joined, listed } from '../../text/likely.ts';
import type { FindPart, Misused, OwnOptions, Sought } from '../find-part.ts';
import { addressOf, readAddress, stuckSlots, writeAddress } from './address.ts';
import { casesOf, type Family, familyOf, upToU } from './cases.ts';
import { cubeWithPair } from './place-pair.ts';
import { catalogue } from './search/catalogue.ts';
import { findSolutions } from './search/find.ts';
import { cornerOfSlot, goalOf, type PairGoal, SLOTS, type Slot, slotOfPlace } from './slots.ts';

/** The address is undefined while the pair's edge is in the bottom layer. */
interface Case extends Pick<Sought, 'cube'> {
  readonly slot: Slot;
  readonly address: string | undefined;
  readonly stuck: readonly Slot[];
}

const isMisused = (found: object): found is Misused => 'usage' in found;

function caseAt(text: string): Case | Misused {
  const address = readAddress(text);
  if (!address) {
    return {
      usage:
        `"${text}" is not a pair address: the corner's place and the face of its cross-colour sticker, then the edge's ` +
        'place and the face of its F-coloured sticker, as in --pair "UFR:R UB:U"',
    };
  }
  const [cube, stuck] = [cubeWithPair(address, 'FR'), stuckSlots(address, 'FR')];
  return { cube, slot: 'FR', address: writeAddress(address), stuck };
}

function caseAfter(setup: readonly Turn[], word: string): Case | Misused {
  const slot = SLOTS.find((s) => s === word);
  if (!slot) return { usage: `--slot is ${listed(SLOTS)}, not "${word}"` };
  const cube = afterTurns(solvedCube(), setup);
  if (centreAt(cube.view, 'U') !== 'U') {
    return { usage: '--setup leaves the cube turned: another face is up than before; end it with the rotation back' };
  }
  const corner = cornerOf(cube.spots[pieceOf(cornerOfSlot(slot))]!);
  const places = [corner, edgeOf(cube.spots[pieceOf(slot)]!)].map(slotOfPlace);
  const stuck = SLOTS.filter((s) => s !== slot && places.includes(s));
  const address = addressOf(cube, slot);
  return { cube, slot, address: address && writeAddress(address), stuck };
}

/** `FL,BL` or `none`; left out, every slot that can be kept. */
function goalFor({ slot, stuck }: Case, keep: string | undefined): PairGoal | Misused {
  const possible = SLOTS.filter((s) => s !== slot && !stuck.includes(s));
  if (keep === undefined) return goalOf(slot, possible);
  if (keep === 'none') return goalOf(slot, []);
  const kept: Slot[] = [];
  for (const word of keep.split(',').map((w) => w.trim())) {
    const found = SLOTS.find((s) => s === word);
    if (!found) return { usage: `--keep is slots with commas between them, or none: ${joined(SLOTS)}; not "${word}"` };
    if (found === slot) return { usage: `--keep: ${slot} is the pair's own slot and cannot be kept` };
    if (stuck.includes(found)) {
      const rest = possible.length === 0 ? 'none' : possible.join(',');
      return { usage: `--keep: a piece of the pair sits in ${found}, so it cannot be kept; at most --keep ${rest}` };
    }
    kept.push(found);
  }
  return goalOf(slot, kept);
}

function brokenBefore({ cube }: Case, goal: PairGoal): string[] {
  const cross = goalOf(goal.slot, []).base;
  const slots = goal.kept.filter((slot) => !areHome(cube, goalOf(goal.slot, [slot]).base.slice(cross.length)));
  return [...(areHome(cube, cross) ? [] : ['the cross']), ...slots];
}

function sought(start: string | readonly Turn[], { slot, keep }: OwnOptions): Sought | Misused {
  if (typeof start === 'string' && slot !== undefined) {
    return { usage: '--pair is written with its own slot at FR; --slot goes with --setup' };
  }
  const found = typeof start === 'string' ? caseAt(start) : caseAfter(start, String(slot ?? 'FR'));
  if (isMisused(found)) return found;
  const goal = goalFor(found, keep as string | undefined);
  if (isMisused(goal)) return goal;
  const kept = goal.kept.length === 0 ? 'no other slot kept' : `${joined(goal.kept)} kept`;
  return {
    cube: found.cube,
    goal,
    said: `${found.address ? `${found.address}, ` : ''}own slot ${found.slot}, ${kept}`,
    fields: { address: found.address ?? null, keep: goal.kept },
    broken: brokenBefore(found, goal),
  };
}

export const pairFind: FindPart = {
  address: ['pair', 'UFR:R UB:U'],
  options: {
    find: { pair: 'string', slot: 'string', keep: 'string' },
    cases: { 'every-address': 'boolean', 'every-keep': 'boolean' },
  },
  sought,
  search: ({ cube, goal }, options) => findSolutions(cube, goal as PairGoal, options),
  columns: ['family', 'kept'],
  catalogue: (families, longer, own) => {
    const standing = (families as readonly Family[]).flatMap(casesOf);
    const addresses = own['every-address'] ? standing.flatMap(upToU) : standing;
    return catalogue(addresses, { everyKeep: own['every-keep'] === true, longer }).map(
      ({ address, kept, ...counts }) => {
        const family = familyOf(address);
        const cells = [family, kept.join(' ') || 'none'];
        return { ...counts, address: writeAddress(address), fields: { family, keep: kept }, cells };
      },
    );
  },
};
