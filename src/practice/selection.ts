/**
 * Which exercises stand on which paper. For each place on a paper (its first item to solve, its second …) there is a
 * shelf of candidates of nearly one difficulty; every paper takes one from each shelf, what was used least so far and
 * not what the paper before has in that place. So all papers cover what was taught evenly and are equally hard.
 */

import type { Level } from '../lesson/practice.ts';
import { stepOf } from '../steps/steps.ts';
import type { Subject } from '../steps/subject.ts';
import type { Candidate } from './kinds/kind.ts';
import type { Random } from './random.ts';

/** Shares of the candidates of a kind, from the easiest to the hardest: where a level begins and ends. In hundredths. */
const WINDOW: Readonly<Record<Level, readonly [from: number, to: number]>> = {
  easy: [0, 55],
  middle: [20, 80],
  hard: [45, 100],
};

const byDifficulty = (a: Candidate, b: Candidate): number => a.difficulty - b.difficulty || (a.key < b.key ? -1 : 1);

/** A shelf with fewer could not keep neighbours apart for long. */
const LEAST_ON_A_SHELF = 4;

export type Shelf = readonly Candidate[];

/** `count` shelves from easy to hard; fewer candidates than `LEAST_ON_A_SHELF` for each make shelves share. */
export function shelvesOf(candidates: readonly Candidate[], level: Level, count: number): Shelf[] {
  const sorted = [...candidates].sort(byDifficulty);
  const [from, to] = WINDOW[level].map((share) => Math.round((sorted.length * share) / 100));
  const wanted = Math.min(sorted.length, count * LEAST_ON_A_SHELF);
  // A window too small is widened at both ends, as far as there are candidates.
  const missing = Math.max(0, wanted - (to! - from!));
  const begin = Math.max(0, Math.min(from! - (missing >> 1), sorted.length - wanted));
  const window = sorted.slice(begin, Math.max(to!, begin + wanted));
  const size = Math.max(window.length / count, Math.min(LEAST_ON_A_SHELF, window.length));
  return Array.from({ length: count }, (_, i) => {
    const start = Math.round(count === 1 ? 0 : (i * (window.length - size)) / (count - 1));
    return window.slice(start, start + Math.ceil(size));
  });
}

/** How often each thing taught is used, on one paper or on all. */
export class Uses {
  readonly #used = new Map<string, number>();

  /** Less is better: what a candidate would repeat. */
  repeats(candidate: Candidate): number {
    const weights = spreadOf(candidate);
    return weights.reduce((sum, [thing, weight]) => sum + weight * (this.#used.get(thing) ?? 0), 0);
  }

  add(candidate: Candidate): void {
    for (const [thing] of spreadOf(candidate)) this.#used.set(thing, (this.#used.get(thing) ?? 0) + 1);
  }
}

type Spread = readonly (readonly [thing: string, weight: number])[];
/** Asked for each candidate of a shelf and each paper. */
const spreads = new WeakMap<Subject, Spread>();

/** What is to be spread evenly, the case first. */
function spreadOf({ subject }: Candidate): Spread {
  const known = spreads.get(subject) ?? [
    [`case ${subject.caseAddress}`, 8],
    [`side ${subject.side}`, 2],
    ...stepOf(subject)
      .practice.spread(subject)
      .map((thing) => [thing, 1] as const),
  ];
  spreads.set(subject, known);
  return known;
}

/** A repeat on one paper is worse than one among all papers. */
const ON_ONE_PAPER = 16;

/** The candidates of a shelf, the best for this paper first; those of `not` are left out. */
export function ranked(
  shelf: Shelf,
  { paper, all }: { readonly paper: Uses; readonly all: Uses },
  not: ReadonlySet<string>,
  random: Random,
): Candidate[] {
  return random
    .shuffled(shelf)
    .filter((one) => !not.has(one.key))
    .map((one) => ({ one, repeats: ON_ONE_PAPER * paper.repeats(one) + all.repeats(one) }))
    .sort((a, b) => a.repeats - b.repeats)
    .map(({ one }) => one);
}

/** In points: the difficulty in the middle of a shelf; of an empty one 0. */
export const middleOf = (shelf: Shelf): number => shelf[shelf.length >> 1]?.difficulty ?? 0;

/** In points: what a paper of these shelves should come to. */
export const targetOf = (shelves: readonly Shelf[]): number => shelves.reduce((sum, shelf) => sum + middleOf(shelf), 0);

/**
 * How many evenings ago the lessons were that come back, of so many earlier ones: 1, 2, 4, 8 … Distances that grow keep
 * what was learnt with the fewest repeats (spaced practice; common practice, no source).
 */
export function distancesOf(earlier: number): number[] {
  const distances: number[] = [];
  for (let distance = 1; distance <= earlier; distance *= 2) distances.push(distance);
  return distances;
}
