/** Proving a claim anew on the stickers, from its printed text alone. */
import type { SolutionClaimText } from './claims-file.ts';
import { addressText, CROSS, caseSight, cornerOf, familyOf, isHome, PLACES, type Place, pairSight } from './places.ts';
import { lengthOf, readTurns } from './read-turns.ts';
import { afterTurns, againstCentres, type Stickers, type Turn } from './stickers.ts';

const TOP_CENTRE = 49;

export interface Reproof {
  readonly verdict: 'solves' | 'fails';
  /** Home places of the required pieces that are not home, corners first. */
  readonly broken: readonly Place[];
  /** Address, case and family are empty where the set-up cannot be read or leaves the pair's edge in the cross. */
  readonly address: string;
  readonly case: string;
  readonly family: string;
  readonly setupFaults: readonly string[];
  readonly solutionFaults: readonly string[];
  readonly length: number;
}

/** The cross and the kept slots. */
export function basePlaces(kept: SolutionClaimText['kept']): Place[] {
  const places = new Set<Place>([...CROSS, ...kept.flatMap((slot) => [cornerOf(slot), slot])]);
  return PLACES.filter((place) => places.has(place));
}

/** What is wrong with a sequence as text, and the turns it reads as (none where it cannot be read). */
export function turnsOrFaults(name: string, text: string): { turns: readonly Turn[]; faults: string[] } {
  const read = readTurns(text);
  if (read.ok) return { turns: read.turns, faults: [] };
  return { turns: [], faults: [`${name} cannot be read at character ${read.at + 1}: ${read.fault}`] };
}

function setupFaults(claim: SolutionClaimText, afterSetup: Stickers): string[] {
  const faults: string[] = [];
  // The centre that was on top is there again, and so the one below it too.
  if (afterSetup[TOP_CENTRE] !== TOP_CENTRE) {
    faults.push('set-up ends in a rotation that is not about the vertical axis');
  }
  const state = againstCentres(afterSetup);
  const broken = basePlaces(claim.kept).filter((place) => !isHome(state, place));
  if (broken.length > 0) faults.push(`set-up breaks the base: ${broken.join(' ')}`);
  return faults;
}

/**
 * Proves a claim anew from the printed text alone: a solved cube, the set-up, the solution, nothing between.
 * Faces, slots and places are named by the centres before the first turn and travel with them.
 */
export function reprove(claim: SolutionClaimText): Reproof {
  const setup = turnsOrFaults('set-up', claim.setup);
  const solution = turnsOrFaults('solution', claim.solution);
  if (setup.faults.length > 0) {
    return {
      verdict: 'fails',
      broken: [],
      address: '',
      case: '',
      family: '',
      setupFaults: setup.faults,
      solutionFaults: solution.faults,
      length: lengthOf(solution.turns),
    };
  }
  const afterSetup = afterTurns(setup.turns);
  const end = againstCentres(afterTurns(solution.turns, afterSetup));
  const required = new Set([...basePlaces(claim.kept), cornerOf(claim.pair), claim.pair]);
  const broken = PLACES.filter((place) => required.has(place) && !isHome(end, place));
  const sight = pairSight(againstCentres(afterSetup), claim.pair);
  const family = familyOf(sight);
  return {
    verdict: broken.length === 0 && solution.faults.length === 0 ? 'solves' : 'fails',
    broken,
    address: family === undefined ? '' : addressText(sight),
    case: family === undefined ? '' : addressText(caseSight(sight)),
    family: family ?? '',
    setupFaults: setupFaults(claim, afterSetup),
    solutionFaults: solution.faults,
    length: lengthOf(solution.turns),
  };
}
