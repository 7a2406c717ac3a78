/** The walk at the heart of every search: all words of one length that bring the pieces of a key home. */

import { type Followers, MAY_FOLLOW, NO_TURN } from '../../../cube/search/normal-form.ts';
import type { FaceTurn } from '../../../cube/spots.ts';
import { bucketOf, type HalfWordIndex, mayEnd } from './half-word-index.ts';
import { HALF_LENGTH, type HalfWord, passesHome, readHalfWord } from './half-words.ts';
import { COORDINATE_BITS, COORDINATE_MASK, CROSS_AFTER, HOME_KEY, type Key, PAIR_AFTER } from './key.ts';

/** How much may still be done. One for a whole search, however many walks it takes. */
export interface Budget {
  /** Front halves still to be looked up. */
  nodes: number;
  /** Asked now and then; true ends the walk. */
  readonly stop: () => boolean;
}

/** Often enough to stop within a millisecond, seldom enough to cost nothing. */
const NODES_BETWEEN_STOPS = 2 ** 14;

/**
 * A word that brings home the pieces of a key, in one shared array: copy it to keep it. `passes` says whether they are
 * all home before its end, too. What returns true ends the walk.
 */
export type Visit = (word: Uint8Array, passes: boolean) => boolean;

/**
 * One walk. The functions below take it as an argument and are no closures over it: new closures for each of thousands
 * of short walks would be compiled again and again, which took a third of the catalogue's time.
 */
interface Walk {
  readonly index: HalfWordIndex;
  readonly home: Key;
  readonly followers: Followers;
  readonly budget: Budget;
  readonly visit: Visit;
  readonly word: Uint8Array;
  readonly frontLength: number;
  /** Half-words of the length wanted are from `first` to before `beyond`. */
  readonly first: HalfWord;
  readonly beyond: HalfWord;
  whole: boolean;
  untilStop: number;
}

function spend(w: Walk, nodes: number): void {
  w.budget.nodes -= nodes;
  if (w.budget.nodes < 0) w.whole = false;
  w.untilStop -= nodes;
  if (w.untilStop > 0) return;
  w.untilStop = NODES_BETWEEN_STOPS;
  if (w.budget.stop()) w.whole = false;
}

/** Visits the front half that stands in the word with each half-word that goes on from it and brings all home. */
function lookUp(w: Walk, masked: Key, last: FaceTurn, passed: boolean): void {
  const { word, frontLength, first, beyond } = w;
  const { begins, entries, stems, mask } = w.index;
  const bucket = bucketOf(masked);
  const end = 2 * begins[bucket + 1]!;
  for (let i = 2 * begins[bucket]!; i < end && w.whole; i += 2) {
    if (entries[i] !== masked) continue;
    const halfWord = entries[i + 1]!;
    if (halfWord < first || halfWord >= beyond || MAY_FOLLOW[18 * last + (halfWord % 18)] === 0) continue;
    readHalfWord(stems, halfWord, word, frontLength);
    if (w.visit(word, passed || passesHome(stems, halfWord, mask))) w.whole = false;
  }
}

/**
 * The last turn of the front half: where the time goes. Keys are walked as their three coordinates, each times 18, which
 * is quicker than turning them as a whole.
 */
function lastTurn(w: Walk, front: number, back: number, pair: number, last: FaceTurn, passed: boolean): void {
  const nexts = w.followers[last]!;
  const { mask, some } = w.index;
  spend(w, nexts.length);
  for (let i = 0; i < nexts.length && w.whole; i++) {
    const t = nexts[i]!;
    const cross = CROSS_AFTER[front + t]! | (CROSS_AFTER[back + t]! << COORDINATE_BITS);
    const masked = (cross | (PAIR_AFTER[pair + t]! << (2 * COORDINATE_BITS))) & mask;
    if (!mayEnd(some, masked)) continue;
    w.word[w.frontLength - 1] = t;
    lookUp(w, masked, t, passed || masked === w.home);
  }
}

function walkOn(
  w: Walk,
  front: number,
  back: number,
  pair: number,
  depth: number,
  last: FaceTurn,
  passed: boolean,
): void {
  if (depth === w.frontLength - 1) {
    lastTurn(w, 18 * front, 18 * back, 18 * pair, last, passed);
    return;
  }
  const nexts = w.followers[last]!;
  for (let i = 0; i < nexts.length && w.whole; i++) {
    const t = nexts[i]!;
    w.word[depth] = t;
    const a = CROSS_AFTER[18 * front + t]!;
    const b = CROSS_AFTER[18 * back + t]!;
    const c = PAIR_AFTER[18 * pair + t]!;
    const masked = (a | (b << COORDINATE_BITS) | (c << (2 * COORDINATE_BITS))) & w.index.mask;
    walkOn(w, a, b, c, depth + 1, t, passed || masked === w.home);
  }
}

/**
 * Visits, each once, the words in normal form of exactly this length that bring home the pieces of a key that the index
 * minds. The front half of a word is made of the turns among `followers`; its last five, looked up, may be any.
 * Returns whether the walk was whole: it is not if the budget ran out, a stop came, or a visit ended it.
 */
export function eachWord(
  index: HalfWordIndex,
  start: Key,
  length: number,
  followers: Followers,
  budget: Budget,
  visit: Visit,
): boolean {
  const frontLength = Math.max(0, length - HALF_LENGTH);
  const backLength = length - frontLength;
  const { starts } = index.stems;
  const w: Walk = {
    index,
    home: HOME_KEY & index.mask,
    followers,
    budget,
    visit,
    word: new Uint8Array(length),
    frontLength,
    first: 18 * (starts[backLength - 1] ?? 0),
    beyond: 18 * (starts[backLength] ?? 0),
    whole: true,
    untilStop: NODES_BETWEEN_STOPS,
  };
  const masked = start & index.mask;
  const isHome = masked === w.home;
  if (frontLength > 0) {
    const back = (start >> COORDINATE_BITS) & COORDINATE_MASK;
    walkOn(w, start & COORDINATE_MASK, back, start >> (2 * COORDINATE_BITS), 0, NO_TURN, isHome);
    return w.whole;
  }
  spend(w, 1);
  if (!w.whole) return false;
  if (length > 0) lookUp(w, masked, NO_TURN, isHome);
  else if (isHome && visit(w.word, false)) return false;
  return w.whole;
}
