/** What a claim says held against what the second checker finds. */

import { claimed } from './claimed.ts';
import type { SolutionClaim } from './claims-file.ts';
import { isAboutPair, pairFaults, sightedAt } from './pair-claims.ts';
import { isHome, type Place } from './places.ts';
import { isPlainSequence, readTurns } from './read-turns.ts';
import { isSolvedAlready, type Reproof, reprove, turnsOrFaults } from './reprove.ts';
import { afterTurns, againstCentres, type Stickers } from './stickers.ts';

// Which colours are where is manufacturing convention (from memory): the competition regulations leave it open.
const USUAL = 'white green red yellow blue orange';

/** The colour opposite to each, in six: up front right down back left; undefined where they are not six. */
function oppositesIn(scheme: string): ReadonlyMap<string, string> | undefined {
  const colours = scheme.split(' ');
  return colours.length === 6 && new Set(colours).size === 6 && !colours.includes('')
    ? new Map(colours.map((colour, i) => [colour, colours[(i + 3) % 6]!]))
    : undefined;
}

function textFaults(claim: SolutionClaim): string[] {
  const texts = { setup: claim.setup, solution: claim.solution };
  return Object.entries(texts)
    .filter(([, text]) => readTurns(text).ok && !isPlainSequence(text))
    .map(([field]) => `${field}: not written out turn by turn with single spaces and ASCII primes`);
}

function holdFaults({ hold, cross, scheme }: SolutionClaim): string[] {
  const opposite = oppositesIn(scheme ?? USUAL);
  if (!opposite) return [`scheme: '${scheme}' is not six colours`];
  const down = opposite.get(hold.up);
  if (down === undefined) return [`hold: '${hold.up}' is no colour of the cube`];
  if (!opposite.has(hold.front)) return [`hold: '${hold.front}' is no colour of the cube`];
  const beside = hold.front === hold.up || hold.front === down;
  return [
    ...(beside ? [`hold: '${hold.front}' cannot be in front with '${hold.up}' up`] : []),
    ...claimed('cross', down, cross),
  ];
}

function brokenFaults(broken: readonly Place[], said: readonly string[]): string[] {
  // The order of the places is left open, so the two are compared as sets; a place named twice is still a fault.
  const inOrder = (places: readonly string[]): string => [...places].sort().join(' ');
  return claimed('broken', inOrder(broken), inOrder(said));
}

function shortestFaults(claim: SolutionClaim, proof: Reproof): string[] {
  const { shortest } = claim;
  if (shortest === undefined || shortest === null || proof.setupFaults.length > 0) return [];
  const faults: string[] = [];
  // A search is not repeated here; two bounds need none. A wide turn is one face turn and a slice two, rotations free,
  // so a solution of this length is itself one of as many face turns.
  if (proof.verdict === 'solves' && shortest > proof.length) {
    faults.push(`shortest: the claim says '${shortest}', its own solution has ${proof.length}`);
  }
  if ((shortest === 0) !== isSolvedAlready(claim)) {
    faults.push(`shortest: the claim says '${shortest}' for ${claim.address}`);
  }
  return faults;
}

function phaseFaults(claim: SolutionClaim, proof: Reproof): string[] {
  const { phases } = claim;
  if (!phases || proof.setupFaults.length > 0 || proof.solutionFaults.length > 0) return [];
  const rejoined = phases.map(({ turns }) => turns).filter((turns) => turns !== '');
  if (rejoined.join(' ') !== claim.solution) return ['phases: their turns do not rejoin to the solution'];
  const faults: string[] = [];
  let stickers = afterTurns(turnsOrFaults('set-up', claim.setup).turns);
  for (const [i, phase] of phases.entries()) {
    const name = `phases[${i}]`;
    stickers = afterTurns(turnsOrFaults(name, phase.turns).turns, stickers);
    const state = againstCentres(stickers);
    const broken = claim.base.filter((place) => !isHome(state, place));
    if (broken.length > 0) faults.push(`${name}: the base is not whole after it: ${broken.join(' ')}`);
    if (isAboutPair(claim)) faults.push(...claimed(`${name}.address`, sightedAt(claim, state), phase.address));
  }
  return faults;
}

const QUARTERS = [1, 2, 3] as const;
const SUFFIX = ['', '', '2', "'"];

/** Addresses are known of pairs alone. */
const atOf = (claim: SolutionClaim, address: string): string => (isAboutPair(claim) ? ` at ${address}` : '');

/** Printed turns in which the base is whole though no printed moment shows it: number, both parts, address between. */
function hiddenMoments(claim: SolutionClaim): string[] {
  const found: string[] = [];
  const isWhole = (stickers: Stickers): boolean => claim.base.every((place) => isHome(againstCentres(stickers), place));
  let stickers = afterTurns(turnsOrFaults('set-up', claim.setup).turns);
  for (const [i, turn] of turnsOrFaults('solution', claim.solution).turns.entries()) {
    const after = afterTurns([turn], stickers);
    const isInside = !isWhole(stickers) && !isWhole(after);
    // Parts of a rotation leave the base as broken as it was.
    if (isInside && !'xyz'.includes(turn.layer)) {
      for (const first of QUARTERS) {
        const second = (turn.quarters - first + 4) % 4;
        const between = afterTurns([{ ...turn, quarters: first }], stickers);
        if (second === 0 || !isWhole(between)) continue;
        const parts = `${turn.layer}${SUFFIX[first]},${turn.layer}${SUFFIX[second]}`;
        found.push(`${i + 1} as ${parts}${atOf(claim, sightedAt(claim, againstCentres(between)))}`);
      }
    }
    stickers = after;
  }
  return found;
}

function mergeFaults(claim: SolutionClaim, proof: Reproof): string[] {
  const { merges } = claim;
  if (!merges || proof.setupFaults.length > 0 || proof.solutionFaults.length > 0) return [];
  // A wide turn may be spelt with a small letter.
  const spelt = (text: string): string =>
    turnsOrFaults('merges', text)
      .turns.map(({ layer, quarters }) => layer + SUFFIX[quarters])
      .join(' ');
  const said = merges.map(({ turn, as, address }) => `${turn} as ${as.map(spelt).join(',')}${atOf(claim, address)}`);
  const printed = claim.solution.split(' ');
  return [
    ...claimed('merges', hiddenMoments(claim).join('; '), said.join('; ')),
    ...merges.flatMap(({ turn, of }) => claimed(`merges, turn ${turn}`, printed[turn - 1], of)),
  ];
}

/** Every field of the claim that the reproof contradicts, one sentence each; empty when all is well. */
export function compare(claim: SolutionClaim): string[] {
  const proof = reprove(claim);
  return [
    ...proof.setupFaults,
    ...proof.solutionFaults,
    ...textFaults(claim),
    ...holdFaults(claim),
    ...(isAboutPair(claim) ? pairFaults(claim) : []),
    ...claimed('verdict', proof.verdict, claim.verdict),
    ...brokenFaults(proof.broken, claim.broken),
    ...claimed('length', proof.length, claim.length),
    ...shortestFaults(claim, proof),
    ...phaseFaults(claim, proof),
    ...mergeFaults(claim, proof),
  ];
}
