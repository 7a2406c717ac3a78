/**
 * Rules of thumb, proved: an ordered table of conditions on features and of advice, held against every sighting that it
 * speaks of. A rule holds for a sighting if the advice can be followed there within the turns that it allows.
 */

import { fromTheSide } from '../cube/sides.ts';
import { type Turn, turnOf } from '../cube/turns.ts';
import { type Address, addressKey, goalAt } from '../steps/pair/address.ts';
import { type Advice, type Followed, follow } from '../steps/pair/advice.ts';
import type { Family } from '../steps/pair/cases.ts';
import { type FeatureName, featuresOf } from '../steps/pair/features.ts';
import { cubeWithPair } from '../steps/pair/place-pair.ts';
import { findSolutions } from '../steps/pair/search/find.ts';
import { setUpFor } from '../steps/pair/set-up-for.ts';
import { type Sighting, sightingsOf } from '../steps/pair/sighting.ts';
import { QUARTERS_FROM_FRONT_RIGHT, SLOTS, type Slot } from '../steps/pair/slots.ts';

/** The feature has one of these values; never where it has no meaning. */
export interface Condition {
  readonly feature: FeatureName;
  readonly values: readonly string[];
}

/** What to do: follow the advice, or turn the whole cube a quarter and look at the table anew, within so many turns. */
export type Counsel = Advice | { readonly turnsTheCube: true; readonly most: number };

export interface Rule {
  /** All must hold; none: any sighting fits. */
  readonly when: readonly Condition[];
  readonly counsel: Counsel;
}

/** A sighting with its features, looked up once. */
export interface Seen extends Sighting {
  readonly features: Readonly<Partial<Record<FeatureName, string>>>;
}

export const seenOf = (families: readonly Family[]): Seen[] =>
  sightingsOf(families).map((sighting) => ({ ...sighting, features: featuresOf(sighting) }));

export const meets = ({ features }: Seen, { feature, values }: Condition): boolean => {
  const value = features[feature];
  return value !== undefined && values.includes(value);
};
export const fits = (seen: Seen, when: readonly Condition[]): boolean =>
  when.every((condition) => meets(seen, condition));

export const turnsTheCube = (counsel: Counsel): counsel is Exclude<Counsel, Advice> => 'turnsTheCube' in counsel;

/** Doing what a rule says: the cube turned first, if it is. */
export interface Done extends Followed {
  readonly first: readonly Turn[];
}

export interface Exception {
  readonly sighting: Seen;
  /** Turns that bring it about on a solved cube, held as it is seen. */
  readonly setup: readonly Turn[];
  /** A shortest solution. */
  readonly best: readonly Turn[];
}

export interface ProvedRule {
  readonly rule: Rule;
  /** Those that fit its conditions, and those of no earlier rule. */
  readonly sightings: readonly Seen[];
  /** By index in `sightings`: what was done; undefined where the rule fails. */
  readonly done: readonly (Done | undefined)[];
  readonly holds: number;
  readonly exceptions: readonly Exception[];
  /** Sightings of the families that its conditions exclude, and for how many of them the advice works all the same. */
  readonly excluded: number;
  readonly contrast: number;
}

/** Turns over the shortest solution. */
export interface Cost {
  readonly mean: number;
  readonly worst: number;
}

export interface ProvedTable {
  readonly families: readonly Family[];
  readonly rules: readonly ProvedRule[];
  /** All sightings of the families. */
  readonly sightings: readonly Seen[];
  /** Those that no rule speaks of. */
  readonly uncovered: readonly Seen[];
  /** Undefined if no rule holds anywhere. */
  readonly cost: Cost | undefined;
  /** Where an own slot is shown before others: FR, or FL to those who lead with the left hand. */
  readonly front: Slot;
}

/** How the own slot is seen after a quarter turn of the cube: y brings front right to front left. */
export const AFTER_Y: Readonly<Record<Slot, Slot>> = { FR: 'FL', FL: 'BL', BL: 'BR', BR: 'FR' };
const AFTER_Y_BACK: Readonly<Record<Slot, Slot>> = { FL: 'FR', BL: 'FL', BR: 'BL', FR: 'BR' };
const QUARTER_TURNS = [
  { first: [turnOf('rotation', 'y', 1)], after: AFTER_Y },
  { first: [turnOf('rotation', 'y', 3)], after: AFTER_Y_BACK },
] as const;

const keyOf = ({ address, seen }: Sighting): number => 4 * addressKey(address) + SLOTS.indexOf(seen);

/** What each rule does at each sighting, looked up for its own ones, for contrast, and where the cube is turned first. */
function outcomes(lookUp: (sighting: Sighting) => Rule | undefined): (seen: Sighting, rule: Rule) => Done | undefined {
  const known = new Map<Rule, Map<number, Done | undefined>>();
  const doIt = (seen: Sighting, rule: Rule): Done | undefined => {
    const ofRule = known.get(rule) ?? new Map<number, Done | undefined>();
    known.set(rule, ofRule);
    const key = keyOf(seen);
    if (!ofRule.has(key)) ofRule.set(key, outcome(seen, rule));
    return ofRule.get(key);
  };
  const outcome = (seen: Sighting, { counsel }: Rule): Done | undefined => {
    if (!turnsTheCube(counsel)) {
      const followed = follow(seen, counsel);
      return followed && { ...followed, first: [] };
    }
    let best: Done | undefined;
    for (const { first, after } of QUARTER_TURNS) {
      const turned = { address: seen.address, seen: after[seen.seen] };
      const rule = lookUp(turned);
      // Turned once, the table must say something else than to turn it again.
      const done = rule && !turnsTheCube(rule.counsel) ? doIt(turned, rule) : undefined;
      const most = Math.min(counsel.most, (best?.length ?? Number.POSITIVE_INFINITY) - 1);
      if (done && done.length <= most) best = { ...done, first };
    }
    return best;
  };
  return doIt;
}

/** Shortest solutions by address, own slot FR: every view of it has the same, otherwise called. */
const knownBest = new Map<number, readonly Turn[]>();

function bestOf(address: Address): readonly Turn[] {
  const key = addressKey(address);
  const known =
    knownBest.get(key) ?? findSolutions(cubeWithPair(address, 'FR'), goalAt(address, 'FR')).solutions[0]!.turns;
  knownBest.set(key, known);
  return known;
}

/** Face turns of the shortest solution. */
export const shortestOf = (address: Address): number => bestOf(address).length;

function exceptionOf(sighting: Seen): Exception {
  const best = fromTheSide(bestOf(sighting.address), QUARTERS_FROM_FRONT_RIGHT[sighting.seen]);
  return { sighting, best, setup: setUpFor(sighting.address, sighting.seen, [best]) };
}

function costOf(pairs: readonly { readonly sighting: Seen; readonly done: Done }[]): Cost | undefined {
  if (pairs.length === 0) return undefined;
  const over = pairs.map(({ sighting, done }) => done.length - shortestOf(sighting.address));
  return { mean: over.reduce((sum, n) => sum + n, 0) / over.length, worst: Math.max(...over) };
}

/** Holds the table against every sighting of the families. */
export function proveTable(families: readonly Family[], rules: readonly Rule[], front: Slot = 'FR'): ProvedTable {
  const sightings = seenOf(families);
  const firstFit = new Map(sightings.map((s) => [keyOf(s), rules.find(({ when }) => fits(s, when))]));
  const lookUp = (sighting: Sighting): Rule | undefined => firstFit.get(keyOf(sighting));
  const doIt = outcomes(lookUp);
  const proved = rules.map((rule): ProvedRule => {
    const own = sightings.filter((s) => lookUp(s) === rule);
    const done = own.map((s) => doIt(s, rule));
    const excluded = sightings.filter((s) => !fits(s, rule.when));
    return {
      rule,
      sightings: own,
      done,
      holds: done.filter((d) => d !== undefined).length,
      exceptions: own.filter((_, i) => done[i] === undefined).map(exceptionOf),
      excluded: excluded.length,
      contrast: excluded.filter((s) => doIt(s, rule) !== undefined).length,
    };
  });
  const followed = proved.flatMap(({ sightings: own, done }) =>
    own.flatMap((sighting, i) => (done[i] ? [{ sighting, done: done[i] }] : [])),
  );
  return {
    families,
    rules: proved,
    sightings,
    uncovered: sightings.filter((s) => lookUp(s) === undefined),
    cost: costOf(followed),
    front,
  };
}

/**
 * The outer block turns that the advice of a rule of the table takes at each of its sightings, however many they are; by
 * index in `sightings`, undefined where it does not work at all.
 */
export function lengthsNeeded({ rules }: ProvedTable, { rule, sightings }: ProvedRule): (number | undefined)[] {
  const firstFit = new Map(rules.flatMap((one) => one.sightings.map((s) => [keyOf(s), one.rule] as const)));
  const doIt = outcomes((sighting) => firstFit.get(keyOf(sighting)));
  const withoutLimit = { ...rule, counsel: { ...rule.counsel, most: Number.POSITIVE_INFINITY } };
  return sightings.map((s) => doIt(s, withoutLimit)?.length);
}

/** The turns by which a rule solves a sighting; where none holds, a shortest solution. As the viewer turns them. */
export function solutionAt({ rules }: ProvedTable, sighting: Seen): readonly Turn[] {
  for (const { sightings, done } of rules) {
    const found = done[sightings.indexOf(sighting)];
    if (found) return [...found.first, ...found.takeOut, ...found.rest];
  }
  return fromTheSide(bestOf(sighting.address), QUARTERS_FROM_FRONT_RIGHT[sighting.seen]);
}
