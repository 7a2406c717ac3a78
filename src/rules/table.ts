/**
 * Finding rules: a decision table with the fewest rules that is exact and costs at most so many turns over the shortest
 * solution anywhere.
 *
 * Rules are taken one after the other; one may be taken if some advice works for all sightings that it adds. Whatever can
 * be finished from some sightings covered can be finished in as many rules from more of them, so that of the rules that
 * could come next only those that add most need be tried: none that adds a part of what another adds. Tables of one rule
 * are tried first, then of two, and so on: the first that is found has the fewest rules. For the same reason there is a
 * table at all only if taking the rule that adds most, again and again, comes to an end with all covered; that one is
 * kept for where the search is stopped.
 */

import type { Face } from '../cube/faces.ts';
import { everySide } from '../cube/sides.ts';
import { TRIGGERS } from '../cube/triggers.ts';
import { inverse, type Turn, writeTurns } from '../cube/turns.ts';
import { type Advice, type Aim, follow, LIFTED_PIECES, WAYS } from '../steps/pair/advice.ts';
import { FAMILIES, type Family } from '../steps/pair/cases.ts';
import { FEATURE_NAMES, type FeatureName } from '../steps/pair/features.ts';
import { type Bits, bitsOf, both, isSame, isWithin, sizeOf, telling, without } from './narrow.ts';
import { type Condition, type Cost, proveTable, type Rule, type Seen, seenOf, shortestOf } from './rules.ts';

export interface TableOptions {
  /** No rule may cost more turns over the shortest solution, anywhere; the least that can be if left out. */
  readonly over?: number | undefined;
  /** What conditions may speak of; all features if left out. */
  readonly features?: readonly FeatureName[] | undefined;
  /** States of the search after which it ends with what it has. */
  readonly nodes?: number;
}

export interface FoundTable {
  readonly rules: readonly Rule[];
  /** Turns over the shortest that were allowed. */
  readonly over: number;
  readonly cost: Cost;
  /** No table of this kind has fewer rules than this; equal to the number of rules where that is proved. */
  readonly atLeast: number;
}

/** Why there is none: each is proved. */
export type NoTable =
  /** So many turns over the shortest would have to be allowed at least. */
  | { readonly lacks: 'turns'; readonly leastOver: number }
  /** Of the advice that is tried, for some sighting none works. */
  | { readonly lacks: 'advice' }
  /** One condition or two on these features do not tell apart what needs different advice. */
  | { readonly lacks: 'features' };

/** As in rules: the side faces, or those in front and behind. With any of four the student would still have to choose. */
const LIFTS: readonly (readonly Face[])[] = [
  ['R', 'L'],
  ['F', 'B'],
];
const ANY_FACE: readonly Face[] = ['R', 'L', 'F', 'B'];
/** No solution over a take-out is longer. */
const ANY_LENGTH = 30;

const READY: readonly Aim[] = [{ kind: 'joined' }, { kind: 'split' }];
const stuckIn = (family: Family): number => family.split('-').filter((where) => where !== 'top').length;
/** Families of which fewer pieces are stuck: going on from there is what another lesson teaches. */
const nearer = (families: readonly Family[]): Aim[] =>
  FAMILIES.filter((family) => families.every((one) => stuckIn(family) < stuckIn(one))).map((family) => ({
    kind: 'family',
    family,
  }));

/** Triggers and what undoes them; one of a single face is a lift like any other, and counts done twice. */
const BY: readonly (readonly Turn[])[] = Object.values(TRIGGERS)
  .flatMap((turns) => [turns, inverse(turns)].map((some) => (isOfOneFace(some) ? [...some, ...some] : some)))
  // Advice is tried from every side and in a mirror: one of two that are the same then is enough.
  .filter((turns, i, all) => all.findIndex((other) => sidesText(other) === sidesText(turns)) === i);

function sidesText(turns: readonly Turn[]): string {
  return everySide(turns)
    .map((side) => writeTurns(side))
    .sort()
    .join();
}

function isOfOneFace(turns: readonly Turn[]): boolean {
  return new Set(turns.map((t) => t.letter).filter((letter) => letter !== 'U')).size === 1;
}

/** What may be advised for the families, the plainest first. */
function advices(families: readonly Family[], aims: readonly Aim[]): Advice[] {
  const pieces = [undefined, ...(families.some((family) => stuckIn(family) > 1) ? LIFTED_PIECES : [])];
  const lifting = [undefined, ...WAYS].flatMap((way) =>
    pieces.flatMap((piece) =>
      aims.flatMap((aim) => LIFTS.map((lift): Advice => ({ aim, lift, piece, way, most: ANY_LENGTH }))),
    ),
  );
  const byTriggers = BY.flatMap((by) => READY.map((aim): Advice => ({ aim, lift: ANY_FACE, by, most: ANY_LENGTH })));
  return [...lifting, ...byTriggers];
}

interface Counselled {
  readonly advice: Advice;
  /** By sighting: turns over the shortest; infinite where the advice cannot be followed. */
  readonly over: readonly number[];
}

interface Choice {
  readonly when: readonly Condition[];
  readonly bits: Bits;
}

/** One condition or two, each set of sightings once, said in the fewest conditions. */
function choicesAmong(sightings: readonly Seen[], features: readonly FeatureName[]): Choice[] {
  const simple = telling(sightings, [], features);
  const known = new Map<string, Choice>();
  const offer = (bits: Bits, when: readonly Condition[]): void => {
    const key = bits.join();
    if (sizeOf(bits) > 0 && !known.has(key)) known.set(key, { when, bits });
  };
  for (const { condition, bits } of simple) offer(bits, [condition]);
  simple.forEach((one, i) => {
    for (const two of simple.slice(i + 1)) {
      if (one.condition.feature !== two.condition.feature)
        offer(both(one.bits, two.bits), [one.condition, two.condition]);
    }
  });
  return [...known.values()];
}

interface Step {
  readonly when: readonly Condition[];
  readonly gain: Bits;
}

/** What could come next, without those that add only part of what another adds; most first. */
function stepsFrom(covered: Bits, choices: readonly Choice[], good: readonly Bits[]): Step[] {
  const steps = choices
    .map(({ when, bits }) => ({ when, gain: without(bits, covered) }))
    .map((step) => ({ ...step, size: sizeOf(step.gain) }))
    .filter(({ gain, size }) => size > 0 && good.some((works) => isWithin(gain, works)))
    .sort((a, b) => b.size - a.size || a.when.length - b.when.length);
  const kept: (Step & { size: number })[] = [];
  for (const step of steps) if (!kept.some(({ gain }) => isWithin(step.gain, gain))) kept.push(step);
  return kept;
}

interface Search {
  readonly choices: readonly Choice[];
  /** By advice: for which sightings it is good enough. */
  readonly good: readonly Bits[];
  readonly all: Bits;
  nodes: number;
}

/** Steps that cover all in at most `rules` rules; undefined if there are none, or the search was stopped. */
function finish(search: Search, covered: Bits, rules: number, tried: Map<string, number>): Step[] | undefined {
  const rest = without(search.all, covered);
  if (search.good.some((works) => isWithin(rest, works))) return [{ when: [], gain: rest }];
  if (rules === 1 || search.nodes-- <= 0) return undefined;
  const key = covered.join();
  if ((tried.get(key) ?? 0) >= rules) return undefined;
  tried.set(key, rules);
  for (const step of stepsFrom(covered, search.choices, search.good)) {
    const further = finish(
      search,
      covered.map((word, i) => word | step.gain[i]!),
      rules - 1,
      tried,
    );
    if (further) return [step, ...further];
  }
  return undefined;
}

/** The advice for just these sightings: the cheapest on average, the plainest of those. */
function adviceFor(gain: Bits, counselled: readonly Counselled[], limit: number, sightings: readonly Seen[]): Advice {
  const own = sightings.flatMap((_, i) => ((gain[i >> 5]! >> (i & 31)) & 1 ? [i] : []));
  const ranked = counselled
    .filter(({ over }) => own.every((i) => over[i]! <= limit))
    .map(({ advice, over }) => ({ advice, sum: own.reduce((sum, i) => sum + over[i]!, 0), over }));
  const best = ranked.reduce((a, b) => (b.sum < a.sum ? b : a));
  return { ...best.advice, most: Math.max(...own.map((i) => shortestOf(sightings[i]!.address) + best.over[i]!)) };
}

/** By the rule that adds most, again and again; undefined if some sightings are left for which there is none. */
function byMostGain({ choices, good, all }: Search): Step[] | undefined {
  const steps: Step[] = [];
  let covered: Bits = all.map(() => 0);
  for (;;) {
    const rest = without(all, covered);
    if (good.some((works) => isWithin(rest, works))) return [...steps, { when: [], gain: rest }];
    const [step] = stepsFrom(covered, choices, good);
    if (!step) return undefined;
    steps.push(step);
    covered = covered.map((word, i) => word | step.gain[i]!);
  }
}

const MOST_NODES = 4000;
/** Once the search was stopped, for each number of rules more. */
const FURTHER_NODES = 200;

function counselledBy(all: readonly Advice[], sightings: readonly Seen[]): Counselled[] {
  return all
    .map((advice) => ({
      advice,
      over: sightings.map((s) => (follow(s, advice)?.length ?? Number.POSITIVE_INFINITY) - shortestOf(s.address)),
    }))
    .filter(({ over }) => over.some(Number.isFinite));
}

/** What advice costs where it costs most, if everywhere the best is taken. */
const leastOver = (counselled: readonly Counselled[], sightings: readonly Seen[]): number =>
  Math.max(...sightings.map((_, i) => Math.min(...counselled.map(({ over }) => over[i]!))));

/**
 * The table for these families, exact by proof; or the fewest turns over the shortest with which there is one. It aims
 * at joined and split, and at families with fewer pieces stuck only where those two cannot be had everywhere.
 */
export function findTable(families: readonly Family[], options: TableOptions): FoundTable | NoTable {
  const { features = FEATURE_NAMES, nodes = MOST_NODES } = options;
  const sightings = seenOf(families);
  let counselled = counselledBy(advices(families, READY), sightings);
  if (!Number.isFinite(leastOver(counselled, sightings))) {
    counselled = counselledBy(advices(families, [...READY, ...nearer(families)]), sightings);
  }
  const least = leastOver(counselled, sightings);
  const limit = options.over ?? least;
  if (!Number.isFinite(least)) return { lacks: 'advice' };
  if (least > limit) return { lacks: 'turns', leastOver: least };
  const good = counselled
    .map(({ over }) => bitsOf(sightings.length, (i) => over[i]! <= limit))
    .filter((bits, i, every) => every.findIndex((other) => isSame(other, bits)) === i);
  const search: Search = {
    choices: choicesAmong(sightings, features),
    good,
    all: bitsOf(sightings.length, () => true),
    nodes,
  };
  const none = bitsOf(sightings.length, () => false);
  const plain = byMostGain(search);
  if (!plain) return { lacks: 'features' };
  let steps = plain;
  let atLeast = 1;
  for (let rules = 1; rules < plain.length; rules++) {
    steps = finish(search, none, rules, new Map()) ?? plain;
    if (steps !== plain) break;
    if (search.nodes > 0 && atLeast === rules) atLeast = rules + 1;
    // Stopped: from here on the first table that is found is taken, without the others being tried.
    else search.nodes = FURTHER_NODES;
  }
  const table = steps.map(({ when, gain }): Rule => ({ when, counsel: adviceFor(gain, counselled, limit, sightings) }));
  return { rules: table, over: limit, cost: proveTable(families, table).cost!, atLeast };
}
