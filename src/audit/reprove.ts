/** Proving a claim anew on the stickers, from its printed text alone, whichever step of the solve it is about. */
import type { SolutionClaimText } from './claims-file.ts';
import { faceletsOf, faceOf, isHome, PLACES, type Place } from './places.ts';
import { lengthOf, readTurns } from './read-turns.ts';
import { afterTurns, againstCentres, type Stickers, type Turn } from './stickers.ts';

const TOP_CENTRE = 49;
const TURNS_OF_THE_TOP = ['', 'U', 'U2', "U'"];

export interface Reproof {
  readonly verdict: 'solves' | 'fails';
  /** Home places of the required pieces that are not home, corners first; then places of the top that show another colour. */
  readonly broken: readonly Place[];
  readonly setupFaults: readonly string[];
  readonly solutionFaults: readonly string[];
  readonly length: number;
}

/** What is wrong with a sequence as text, and the turns it reads as (none where it cannot be read). */
export function turnsOrFaults(name: string, text: string): { turns: readonly Turn[]; faults: string[] } {
  const read = readTurns(text);
  if (read.ok) return { turns: read.turns, faults: [] };
  return { turns: [], faults: [`${name} cannot be read at character ${read.at + 1}: ${read.fault}`] };
}

function setupFaults({ base }: SolutionClaimText, afterSetup: Stickers): string[] {
  const faults: string[] = [];
  // The centre that was on top is there again, and so the one below it too.
  if (afterSetup[TOP_CENTRE] !== TOP_CENTRE) {
    faults.push('set-up ends in a rotation that is not about the vertical axis');
  }
  const state = againstCentres(afterSetup);
  const broken = PLACES.filter((place) => base.includes(place) && !isHome(state, place));
  if (broken.length > 0) faults.push(`set-up breaks the base: ${broken.join(' ')}`);
  return faults;
}

/** Whether the sticker on the top face of this place of the top layer has the colour of the top's centre. */
function showsTop(state: Stickers, place: Place): boolean {
  const [top] = faceletsOf(place);
  return faceOf(state.indexOf(top!)) === 'U';
}

/**
 * What is not as it has to be: `base` and `home` are to be home, those of them in the top layer up to one turn of it where
 * `free` is "U", and the stickers on the top face of the places `top` are to have its centre's colour.
 */
function broken({ base, goal }: SolutionClaimText, end: Stickers): Place[] {
  const required = new Set([...base, ...goal.home]);
  const turns = goal.free === 'U' ? TURNS_OF_THE_TOP : [''];
  const each = turns.map((text) => {
    const state = againstCentres(afterTurns(turnsOrFaults('top', text).turns, end));
    return PLACES.filter((place) => required.has(place) && !isHome(state, place));
  });
  const fewest = each.reduce((a, b) => (b.length < a.length ? b : a));
  return [...fewest, ...goal.top.filter((place) => !showsTop(end, place))];
}

/**
 * Proves a claim anew from the printed text alone: a solved cube, the set-up, the solution, nothing between.
 * Faces and places are named by the centres before the first turn and travel with them.
 */
export function reprove(claim: SolutionClaimText): Reproof {
  const setup = turnsOrFaults('set-up', claim.setup);
  const solution = turnsOrFaults('solution', claim.solution);
  const length = lengthOf(solution.turns);
  if (setup.faults.length > 0) {
    return { verdict: 'fails', broken: [], setupFaults: setup.faults, solutionFaults: solution.faults, length };
  }
  const afterSetup = afterTurns(setup.turns);
  const left = broken(claim, againstCentres(afterTurns(solution.turns, afterSetup)));
  return {
    verdict: left.length === 0 && solution.faults.length === 0 ? 'solves' : 'fails',
    broken: left,
    setupFaults: setupFaults(claim, afterSetup),
    solutionFaults: solution.faults,
    length,
  };
}

/** Nothing is left to do after the set-up. */
export const isSolvedAlready = (claim: SolutionClaimText): boolean =>
  broken(claim, againstCentres(afterTurns(turnsOrFaults('set-up', claim.setup).turns))).length === 0;
