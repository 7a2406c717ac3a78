/**
 * Rules of thumb, proved: an ordered table of conditions on features and of advice, held against every sighting that it
 * speaks of. A rule holds for a sighting if the advice can be followed there within the turns that it allows.
 */

import { type Turn, turnOf } from '../cube/turns.ts';
import type { Advice, Followed, RuleWorld, Sighting, Ways } from './world.ts';

/** The feature has one of these values; never where it has no meaning. */
export interface Condition {
  readonly feature: string;
  readonly values: readonly string[];
}

/** What to do: follow the advice, or turn the whole cube a quarter and look at the table anew, within so many turns. */
export type Counsel<A extends Advice = Advice> = A | { readonly turnsTheCube: true; readonly most: number };

export interface Rule<A extends Advice = Advice> {
  /** All must hold; none: any sighting fits. */
  readonly when: readonly Condition[];
  readonly counsel: Counsel<A>;
}

export const meets = ({ features }: Pick<Sighting, 'features'>, { feature, values }: Condition): boolean => {
  const value = features[feature];
  return value !== undefined && values.includes(value);
};
export const fits = (sighting: Pick<Sighting, 'features'>, when: readonly Condition[]): boolean =>
  when.every((condition) => meets(sighting, condition));

export const turnsTheCube = (counsel: Counsel): counsel is Extract<Counsel, { turnsTheCube: true }> =>
  'turnsTheCube' in counsel;

/** Doing what a rule says: the cube turned first, if it is. */
export interface Done extends Followed {
  readonly first: readonly Turn[];
}

export interface Exception {
  readonly sighting: Sighting;
  /** Turns that bring it about on a solved cube, held as it is seen. */
  readonly setup: readonly Turn[];
  /** A shortest solution. */
  readonly best: readonly Turn[];
}

export interface ProvedRule {
  readonly rule: Rule;
  /** Those that fit its conditions, and those of no earlier rule. */
  readonly sightings: readonly Sighting[];
  /** By index in `sightings`: what was done; undefined where the rule fails. */
  readonly done: readonly (Done | undefined)[];
  readonly holds: number;
  readonly exceptions: readonly Exception[];
  /** Sightings of the families that its conditions exclude, and for how many of them the advice works all the same. */
  readonly excluded: number;
  readonly contrast: number;
  /** By index in the rule's conditions: the same of just those that fail this one and meet the others. */
  readonly contrasts: readonly Contrast[];
  /** Of all ways that its words allow, in all its sightings together, and how many work where fewest do. */
  readonly ways: Ways & { readonly least: number };
  /** Wherever it holds, every way that its words allow works. */
  readonly isEveryWay: boolean;
  /** Undefined where it holds nowhere. */
  readonly cost: Cost | undefined;
}

/** Sightings that fail one condition of a rule and meet its others, and for how many of them the advice works. */
export interface Contrast {
  readonly without: Condition;
  readonly sightings: number;
  readonly holds: number;
}

/** Turns over the shortest solution, where a rule holds; turns of one face that meet are one, as they are printed. */
export interface Cost {
  readonly mean: number;
  readonly worst: number;
}

export interface ProvedTable {
  readonly world: RuleWorld;
  readonly families: readonly string[];
  readonly rules: readonly ProvedRule[];
  /** All sightings of the families. */
  readonly sightings: readonly Sighting[];
  /** Those that no rule speaks of. */
  readonly uncovered: readonly Sighting[];
  /** Undefined if no rule holds anywhere. */
  readonly cost: Cost | undefined;
  /** The side from which cases are shown before others. */
  readonly front: string;
}

/** A quarter turn of the cube, either way. */
const QUARTER_TURNS = ([1, 3] as const).map((quarters) => ({ first: [turnOf('rotation', 'y', quarters)], quarters }));

/** What comes of a rule at a sighting. */
interface Outcome {
  /** Undefined where it fails. */
  readonly done: Done | undefined;
  readonly ways: Ways;
}

type Outcomes = (sighting: Sighting, rule: Rule) => Outcome;

/** A turn of the cube after which no rule says what to do. */
const NOTHING: Outcome = { done: undefined, ways: { allowed: 1, work: 0 } };

/** What each rule does at each sighting, looked up for its own ones, for contrast, and where the cube is turned first. */
function outcomes(world: RuleWorld, lookUp: (sighting: Sighting) => Rule | undefined): Outcomes {
  const known = new Map<Rule, Map<Sighting, Outcome>>();
  const doIt: Outcomes = (sighting, rule) => {
    const ofRule = known.get(rule) ?? new Map<Sighting, Outcome>();
    known.set(rule, ofRule);
    const found = ofRule.get(sighting) ?? outcome(sighting, rule);
    ofRule.set(sighting, found);
    return found;
  };
  const limited = withLimits();
  const outcome: Outcomes = (sighting, { counsel }) => {
    if (!turnsTheCube(counsel)) {
      const { followed, ways } = world.tries(sighting, counsel);
      return { done: followed && { ...followed, first: [] }, ways };
    }
    const turns = QUARTER_TURNS.map(({ first, quarters }) => {
      const turned = world.turned(sighting, quarters);
      const rule = lookUp(turned);
      // Turned once, the table must say something else than to turn it again.
      const { done, ways } = rule && !turnsTheCube(rule.counsel) ? doIt(turned, limited(rule, counsel.most)) : NOTHING;
      return { done: done && { ...done, first }, ways };
    });
    const [best] = turns.flatMap(({ done }) => done ?? []).sort((a, b) => a.length - b.length);
    return { done: best, ways: sumOf(turns.map(({ ways }) => ways)) };
  };
  return doIt;
}

/** Each rule within so many turns at most, one object for each. */
function withLimits(): (rule: Rule, most: number) => Rule {
  const known = new Map<Rule, Map<number, Rule>>();
  return (rule, most) => {
    if (rule.counsel.most <= most) return rule;
    const ofRule = known.get(rule) ?? new Map<number, Rule>();
    known.set(rule, ofRule);
    const found = ofRule.get(most) ?? { ...rule, counsel: { ...rule.counsel, most } };
    ofRule.set(most, found);
    return found;
  };
}

const sumOf = (all: readonly Ways[]): Ways => ({
  allowed: all.reduce((sum, { allowed }) => sum + allowed, 0),
  work: all.reduce((sum, { work }) => sum + work, 0),
});

function exceptionOf(world: RuleWorld, sighting: Sighting): Exception {
  const best = world.best(sighting);
  return { sighting, best, setup: world.setUp(sighting, [best]) };
}

interface FollowedAt {
  readonly sighting: Sighting;
  readonly done: Done;
}

const followedIn = ({ sightings, done }: Pick<ProvedRule, 'sightings' | 'done'>): FollowedAt[] =>
  sightings.flatMap((sighting, i) => (done[i] ? [{ sighting, done: done[i] }] : []));

function costOf(world: RuleWorld, followed: readonly FollowedAt[]): Cost | undefined {
  if (followed.length === 0) return undefined;
  const over = followed.map(({ sighting, done }) => done.printed - world.best(sighting).length);
  return { mean: over.reduce((sum, n) => sum + n, 0) / over.length, worst: Math.max(...over) };
}

/** Holds the table against every sighting of the families. `front`: the side from which cases are shown before others. */
export function proveTable(
  world: RuleWorld,
  families: readonly string[],
  rules: readonly Rule[],
  front = world.front('right'),
): ProvedTable {
  const sightings = world.sightings(families);
  const firstFit = new Map(sightings.map((s) => [s, rules.find(({ when }) => fits(s, when))]));
  const lookUp = (sighting: Sighting): Rule | undefined => firstFit.get(sighting);
  const doIt = outcomes(world, lookUp);
  const proved = rules.map((rule): ProvedRule => {
    const own = sightings.filter((s) => lookUp(s) === rule);
    const came = own.map((s) => doIt(s, rule));
    const done = came.map((one) => one.done);
    const ways = came.map((one) => one.ways);
    const excluded = sightings.filter((s) => !fits(s, rule.when));
    const works = new Set(excluded.filter((s) => doIt(s, rule).done !== undefined));
    const contrasts = rule.when.map((without): Contrast => {
      const turned = excluded.filter((s) => rule.when.every((c) => meets(s, c) === (c !== without)));
      return { without, sightings: turned.length, holds: turned.filter((s) => works.has(s)).length };
    });
    return {
      rule,
      sightings: own,
      done,
      holds: done.filter((d) => d !== undefined).length,
      exceptions: own.filter((_, i) => done[i] === undefined).map((s) => exceptionOf(world, s)),
      excluded: excluded.length,
      contrast: works.size,
      contrasts,
      ways: { ...sumOf(ways), least: ways.length > 0 ? Math.min(...ways.map(({ work }) => work)) : 0 },
      isEveryWay: done.every((one, i) => !one || ways[i]!.work === ways[i]!.allowed),
      cost: costOf(world, followedIn({ sightings: own, done })),
    };
  });
  const followed = proved.flatMap(followedIn);
  return {
    world,
    families,
    rules: proved,
    sightings,
    uncovered: sightings.filter((s) => lookUp(s) === undefined),
    cost: costOf(world, followed),
    front,
  };
}

/**
 * The outer block turns that the advice of a rule of the table takes at each of its sightings, however many they are; by
 * index in `sightings`, undefined where it does not work at all.
 */
export function lengthsNeeded({ world, rules }: ProvedTable, { rule, sightings }: ProvedRule): (number | undefined)[] {
  const firstFit = new Map(rules.flatMap((one) => one.sightings.map((s) => [s, one.rule] as const)));
  const doIt = outcomes(world, (sighting) => firstFit.get(sighting));
  const withoutLimit = { ...rule, counsel: { ...rule.counsel, most: Number.POSITIVE_INFINITY } };
  return sightings.map((s) => doIt(s, withoutLimit).done?.length);
}
