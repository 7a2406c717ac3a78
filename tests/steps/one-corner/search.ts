/**
 * Every shortest way to bring the corner of DFR home under a whole cross, and those a few turns longer: by trying all
 * sequences of face turns in normal form, cut where the cross or the corner alone would need more turns than are left.
 */

import { FACES } from '../../../src/cube/faces.ts';
import type { Answer } from '../../../src/cube/search/answer.ts';
import { followersAmong, NO_TURN } from '../../../src/cube/search/normal-form.ts';
import { CORNER_AFTER, cornerSpot, EDGE_AFTER, edgeSpot } from '../../../src/cube/spots.ts';
import { type Turn, turnOf } from '../../../src/cube/turns.ts';

const FOLLOWERS = followersAmong(Array.from({ length: 18 }, (_, turn) => turn));
const HOME = cornerSpot('DFR', 'D');
const CROSS = [edgeSpot('DF', 'D'), edgeSpot('DL', 'D'), edgeSpot('DB', 'D'), edgeSpot('DR', 'D')];

type Spots = readonly number[];
const keyOf = (spots: Spots): number => spots.reduce((key, spot) => 24 * key + spot, 0);
const moved = (spots: Spots, turn: number): number[] => spots.map((spot) => EDGE_AFTER[24 * turn + spot]!);

/** By key: the fewest turns that make it whole again. Each is its own mirror in time, so it is filled from the whole one. */
function distances(start: Spots, after: (spots: Spots, turn: number) => number[]): Uint8Array {
  const far = new Uint8Array(24 ** start.length).fill(255);
  far[keyOf(start)] = 0;
  let edge: Spots[] = [start];
  for (let turns = 1; edge.length > 0; turns++) {
    const next: Spots[] = [];
    for (const spots of edge) {
      for (let turn = 0; turn < 18; turn++) {
        const one = after(spots, turn);
        if (far[keyOf(one)]! < 255) continue;
        far[keyOf(one)] = turns;
        next.push(one);
      }
    }
    edge = next;
  }
  return far;
}

let crossFar: Uint8Array | undefined;
const cornerFar = distances([HOME], (spots, turn) => spots.map((spot) => CORNER_AFTER[24 * turn + spot]!));

const turnNumbered = (turn: number): Turn =>
  turnOf('face', FACES[Math.floor(turn / 3)]!, ((turn % 3) + 1) as 1 | 2 | 3);

/** All words of exactly so many turns that solve and do not solve before their end. */
function words(corner: number, length: number): number[][] {
  crossFar ??= distances(CROSS, moved);
  const found: number[][] = [];
  const walk = (at: number, cross: Spots, left: number, word: readonly number[]): void => {
    const isWhole = at === HOME && crossFar![keyOf(cross)] === 0;
    if (isWhole || left === 0) {
      if (isWhole && left === 0) found.push([...word]);
      return;
    }
    for (const turn of FOLLOWERS[word.at(-1) ?? NO_TURN]!) {
      const [next, crossNext] = [CORNER_AFTER[24 * turn + at]!, moved(cross, turn)];
      if (cornerFar[next]! < left && crossFar![keyOf(crossNext)]! < left)
        walk(next, crossNext, left - 1, [...word, turn]);
    }
  };
  walk(corner, CROSS, length, []);
  return found;
}

const known = new Map<string, Answer>();

/** `corner`: where the cross colour's sticker of the corner of DFR is, the cross whole. */
export function solutionsFrom(corner: number, longer: number): Answer {
  const key = `${corner} ${longer}`;
  const before = known.get(key);
  if (before) return before;
  let shortest: number | undefined;
  const solutions: Turn[][] = [];
  for (let length = 0; shortest === undefined || length <= shortest + longer; length++) {
    const found = words(corner, length);
    if (found.length > 0) shortest ??= length;
    solutions.push(...found.map((word) => word.map(turnNumbered)));
  }
  const answer: Answer = {
    shortest,
    solutions: solutions.map((turns) => ({ turns, length: turns.length })),
    searched: shortest + longer,
    proved: true,
  };
  known.set(key, answer);
  return answer;
}
