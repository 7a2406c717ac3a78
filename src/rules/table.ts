/**
 * Finding rules: a decision table with the fewest rules that is exact and costs at most so many turns over the shortest
 * solution anywhere.
 *
 * Rules are taken one after the other; one may be taken if some advice works for all sightings that it adds. Whatever can
 * be finished from some sightings covered can be finished in as many rules from more of them, so that of the rules that
 * could come next only those that add most need be tried: none that adds a part of what another adds. Tables of one rule
 * are tried first, then of two, and so on: the first that is found has the fewest rules. For the same reason there is a
 * table at all only if taking the rule that adds most, again and again, comes to an end with all covered; that one is
 * kept for where the search is stopped. Rules are found by advice of which some way works; the fewest words with which
 * every way does are added in the end, where there are any.
 */

import { withEveryWay } from './every-way.ts';
import { type Bits, bitsOf, both, isSame, isWithin, sizeOf, telling, without } from './narrow.ts';
import { type Condition, type Cost, proveTable, type Rule } from './rules.ts';
import type { Advice, RuleWorld, Sighting } from './world.ts';

export interface TableOptions {
  /** No rule may cost more turns over the shortest solution, anywhere; the least that can be if left out. */
  readonly over?: number | undefined;
  /** What conditions may speak of; all features if left out. */
  readonly features?: readonly string[] | undefined;
  /** Only rules of which every way works that their words allow, rather than some way. */
  readonly everyWay?: boolean;
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
function choicesAmong(world: RuleWorld, sightings: readonly Sighting[], features?: readonly string[]): Choice[] {
  const simple = telling(world, sightings, [], features);
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
function adviceFor(gain: Bits, counselled: readonly Counselled[], limit: number, shortest: readonly number[]): Advice {
  const own = shortest.flatMap((_, i) => ((gain[i >> 5]! >> (i & 31)) & 1 ? [i] : []));
  const ranked = counselled
    .filter(({ over }) => own.every((i) => over[i]! <= limit))
    .map(({ advice, over }) => ({ advice, sum: own.reduce((sum, i) => sum + over[i]!, 0), over }));
  const best = ranked.reduce((a, b) => (b.sum < a.sum ? b : a));
  return { ...best.advice, most: Math.max(...own.map((i) => shortest[i]! + best.over[i]!)) };
}

/** For turns that a way takes more than the shortest. */
const MORE_TURNS = 4;

/** With words that leave only ways that work and cost no more than is allowed; as it is if there are none. */
const completed = (world: RuleWorld, own: readonly Sighting[], advice: Advice, limit: number): Advice =>
  withEveryWay(world, own, advice, {
    turns: MORE_TURNS,
    suits: (sighting, { followed }) => followed !== undefined && followed.length - world.best(sighting).length <= limit,
  }) ?? advice;

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

function counselledBy(
  world: RuleWorld,
  all: readonly Advice[],
  sightings: readonly Sighting[],
  everyWay: boolean,
): Counselled[] {
  const overAt = (sighting: Sighting, advice: Advice): number => {
    const { followed, ways } = world.tries(sighting, advice);
    const works = followed && (!everyWay || ways.work === ways.allowed);
    return works ? followed.length - world.best(sighting).length : Number.POSITIVE_INFINITY;
  };
  return all
    .map((advice) => ({ advice, over: sightings.map((s) => overAt(s, advice)) }))
    .filter(({ over }) => over.some(Number.isFinite));
}

/** What advice costs where it costs most, if everywhere the best is taken. */
const leastOver = (counselled: readonly Counselled[], sightings: readonly Sighting[]): number =>
  Math.max(...sightings.map((_, i) => Math.min(...counselled.map(({ over }) => over[i]!))));

/**
 * Advice enough for all sightings, of the plainest kind that is: the lists of plain advice one after the other, where every
 * way has to work each with words more if plain words leave too many ways. What is tried last, if nothing is enough.
 */
function counsel(
  world: RuleWorld,
  families: readonly string[],
  sightings: readonly Sighting[],
  everyWay: boolean,
): Counselled[] {
  const isEnough = (some: readonly Counselled[]): boolean => Number.isFinite(leastOver(some, sightings));
  let counselled: Counselled[] = [];
  for (const [i, plain] of world.advices(families, false).entries()) {
    counselled = counselledBy(world, plain, sightings, false);
    if (!isEnough(counselled)) continue;
    if (!everyWay) return counselled;
    counselled = counselledBy(world, plain, sightings, true);
    if (isEnough(counselled)) return counselled;
    counselled = counselledBy(world, world.advices(families, true)[i]!, sightings, true);
    if (isEnough(counselled)) return counselled;
  }
  return counselled;
}

/** The table for these families, exact by proof; or the fewest turns over the shortest with which there is one. */
export function findTable(world: RuleWorld, families: readonly string[], options: TableOptions): FoundTable | NoTable {
  const { features, nodes = MOST_NODES, everyWay = false } = options;
  const sightings = world.sightings(families);
  const counselled = counsel(world, families, sightings, everyWay);
  const least = leastOver(counselled, sightings);
  const limit = options.over ?? least;
  if (!Number.isFinite(least)) return { lacks: 'advice' };
  if (least > limit) return { lacks: 'turns', leastOver: least };
  const good = counselled
    .map(({ over }) => bitsOf(sightings.length, (i) => over[i]! <= limit))
    .filter((bits, i, every) => every.findIndex((other) => isSame(other, bits)) === i);
  const search: Search = {
    choices: choicesAmong(world, sightings, features),
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
  const shortest = sightings.map((s) => world.best(s).length);
  const table = steps.map(({ when, gain }): Rule => {
    const own = sightings.filter((_, i) => (gain[i >> 5]! >> (i & 31)) & 1);
    return { when, counsel: completed(world, own, adviceFor(gain, counselled, limit, shortest), limit) };
  });
  return { rules: table, over: limit, cost: proveTable(world, families, table).cost!, atLeast };
}
