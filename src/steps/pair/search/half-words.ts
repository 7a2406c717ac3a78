/**
 * Half-words: all sequences of up to five turns that can end a solution. A search walks the first turns of a solution
 * and looks up the rest, instead of walking all of it: this doubles its depth.
 *
 * A half-word is one turn before a stem; a stem is a half-word of up to four turns, or empty. Each is one number:
 *
 *   half-word = 18 * stem + turn, the turn taken back; reading it gives the inverse of the turn, then the stem's turns
 *   stem 0 is empty; of stem s, turn[s] and parent[s] are the turn and the stem that it is made of as a half-word,
 *   and key[s] is the key of the cube that it solves: of the solved cube after all its turns, last first, taken back
 *
 * Stems are numbered by length: those of k turns are starts[k] .. starts[k + 1] - 1.
 */

import { inverseOf, MAY_FOLLOW, NO_TURN } from '../../../cube/search/normal-form.ts';
import { HOME_KEY, type Key, keyAfter } from './key.ts';

/**
 * Five: 624,123 half-words, indexed in 40 ms from a cold start and in 6 MB. One turn more or less is 13 times as much or
 * as little of both: with four, nine and ten turns, the longest searches of the catalogue, would take 13 times as long;
 * with six, the index would take longer than all the searches.
 */
export const HALF_LENGTH = 5;

export interface Stems {
  readonly turn: Uint8Array;
  readonly parent: Uint16Array;
  readonly key: Int32Array;
  readonly starts: readonly number[];
}

export type HalfWord = number;

/** Sequences of n turns in normal form, n = 0, 1, 2 …: a(n) = 12 a(n-1) + 18 a(n-2), from n = 3 on (OEIS A333298). */
function sequencesOf(length: number): number {
  if (length < 3) return [1, 18, 243][length]!;
  return 12 * sequencesOf(length - 1) + 18 * sequencesOf(length - 2);
}

/**
 * PRECEDES[18 * turn + t]: 1 where the turn that `t` takes back may stand before the one that `turn` takes back. A turn
 * and its inverse are of one face, so that it is the rule for the turns themselves, the other way round.
 */
export const PRECEDES: Uint8Array = Uint8Array.from({ length: 19 * 18 }, (_, i) => {
  const [turn, t] = [Math.floor(i / 18), i % 18];
  return turn === NO_TURN ? 1 : MAY_FOLLOW[18 * t + turn]!;
});

export function buildStems(): Stems {
  const starts = [0];
  for (let length = 0; length < HALF_LENGTH; length++) starts.push(starts[length]! + sequencesOf(length));
  const count = starts[HALF_LENGTH]!;
  const turn = new Uint8Array(count);
  const parent = new Uint16Array(count);
  const key = new Int32Array(count);
  turn[0] = NO_TURN;
  key[0] = HOME_KEY;
  let next = 1;
  for (let stem = 0; next < count; stem++) {
    for (let t = 0; t < 18; t++) {
      if (PRECEDES[18 * turn[stem]! + t] === 0) continue;
      turn[next] = t;
      parent[next] = stem;
      key[next] = keyAfter(key[stem]!, t);
      next++;
    }
  }
  return { turn, parent, key, starts };
}

/** Writes the turns of a half-word into `word`, which it fills to its end from `at` on. */
export function readHalfWord(stems: Stems, halfWord: HalfWord, word: Uint8Array, at: number): void {
  let stem = Math.floor(halfWord / 18);
  word[at] = inverseOf(halfWord - 18 * stem);
  for (let i = at + 1; i < word.length; i++) {
    word[i] = inverseOf(stems.turn[stem]!);
    stem = stems.parent[stem]!;
  }
}

/** Whether a half-word passes through a state in which the masked pieces of the key are home, before its end. */
export function passesHome(stems: Stems, halfWord: HalfWord, mask: Key): boolean {
  for (let stem = Math.floor(halfWord / 18); stem > 0; stem = stems.parent[stem]!) {
    if (((stems.key[stem]! ^ HOME_KEY) & mask) === 0) return true;
  }
  return false;
}
