/**
 * Following advice: what comes of each way to begin as it says.
 *
 * What it aims at stands between two printed turns: the way on never begins with the face that the take-out ended with,
 * since nobody prints `R R`.
 */

import { afterTurns } from '../../cube/cube.ts';
import { areHome } from '../../cube/goal.ts';
import { everySide, fromTheSide } from '../../cube/sides.ts';
import { lengthOf, mirror, type Turn, writeTurns } from '../../cube/turns.ts';
import type { Followed, Tried } from '../../rules/world.ts';
import { type Address, addressKey, goalAt, writeAddress } from './address.ts';
import type { Aim, PairAdvice } from './advice.ts';
import { caseOf, familyOf } from './cases.ts';
import { insertsOf, isJoined, isSplit } from './joined-split.ts';
import { cubeWithPair } from './place-pair.ts';
import { findSolutions } from './search/find.ts';
import type { PairSighting } from './sighting.ts';
import { type PairGoal, QUARTERS_FROM_FRONT_RIGHT } from './slots.ts';
import { afterAnyTop, beginnings, liftsFrom, OWN } from './take-outs.ts';

/** The ways on from an address that is aimed at, the shortest first, one of them at least with another beginning. */
function waysOn(address: Address, goal: PairGoal, aim: Aim): readonly (readonly Turn[])[] {
  switch (aim.kind) {
    case 'joined':
      return isJoined(address) ? insertsOf(address) : [];
    case 'split':
      return isSplit(address) ? insertsOf(address) : [];
    case 'insert': {
      const cube = cubeWithPair(address, OWN);
      return everySide(aim.turns)
        .flatMap(afterAnyTop)
        .filter((turns) => areHome(afterTurns(cube, turns), goal.pieces))
        .sort((a, b) => a.length - b.length);
    }
    case 'family':
      return familyOf(address) === aim.family ? shortestFrom(address, goal) : [];
    case 'case':
      return writeAddress(caseOf(address)) === writeAddress(caseOf(aim.case)) ? shortestFrom(address, goal) : [];
  }
}

const knownShortest = new Map<string, readonly (readonly Turn[])[]>();

function shortestFrom(address: Address, goal: PairGoal): readonly (readonly Turn[])[] {
  const key = `${writeAddress(address)} ${goal.kept}`;
  let known = knownShortest.get(key);
  for (let longer = 0; !known; longer++) {
    const { solutions } = findSolutions(cubeWithPair(address, OWN), goal, { longer });
    const beginnings = new Set(solutions.map(({ turns }) => turns[0]?.letter));
    if (beginnings.size > 1 || beginnings.has(undefined)) known = solutions.map(({ turns }) => turns);
  }
  knownShortest.set(key, known);
  return known;
}

/** Nobody prints `R R`. */
const canFollow = (before: readonly Turn[], after: readonly Turn[]): boolean =>
  before.length === 0 || before.at(-1)!.letter !== after[0]?.letter;

/** How many turns the two are, those of one face that meet made one. */
function printedLength(before: readonly Turn[], after: readonly Turn[]): number {
  let met = 0;
  while (met < before.length && met < after.length) {
    const [last, next] = [before[before.length - 1 - met]!, after[met]!];
    if (last.letter !== next.letter) break;
    if ((last.quarters + next.quarters) % 4 !== 0) return before.length + after.length - 2 * met - 1;
    met++;
  }
  return before.length + after.length - 2 * met;
}

type Done = Pick<Followed, 'takeOut' | 'rest'>;

const asSeen = ({ takeOut, rest }: Done, printed: number, { side }: PairSighting): Followed => {
  const quarters = QUARTERS_FROM_FRONT_RIGHT[side];
  return {
    takeOut: fromTheSide(takeOut, quarters),
    rest: fromTheSide(rest, quarters),
    length: lengthOf(takeOut) + lengthOf(rest),
    printed,
  };
};

const halfTurns = ({ takeOut, rest }: Done): number =>
  [takeOut, rest].reduce((sum, turns) => sum + turns.filter(({ quarters }) => quarters === 2).length, 0);

/** Turns with the own slot at FR, as they are for the case that lies there in a mirror. */
const inMirror = (turns: readonly Turn[]): readonly Turn[] => fromTheSide(mirror(turns), 3);

/** The same for turns and for their mirror image, so that what is chosen by it is chosen for either hand. */
function eitherHand({ takeOut, rest }: Done): string {
  const turns = [...takeOut, ...rest];
  return [writeTurns(turns), writeTurns(inMirror(turns))].sort()[0]!;
}

/** Of ways of as many turns the one with fewer half turns. */
function isPlainer(a: Done, b: Done): boolean {
  const more = halfTurns(a) - halfTurns(b);
  return more < 0 || (more === 0 && eitherHand(a) < eitherHand(b));
}

/**
 * All ways to do what the advice says. A way works if what is aimed at stands after it, and from there on the whole is
 * done within as many turns as the advice allows, as it is printed.
 */
export function tried(sighting: PairSighting, advice: PairAdvice): Tried {
  const goal = goalAt(sighting.at, OWN);
  const all = beginnings(sighting, advice);
  let best: (Done & { readonly length: number }) | undefined;
  let printed = Number.POSITIVE_INFINITY;
  let work = 0;
  for (const { turns, address: after } of all) {
    let least = Number.POSITIVE_INFINITY;
    for (const rest of waysOn(after, goal, advice.aim)) {
      least = Math.min(least, printedLength(turns, rest));
      const length = turns.length + rest.length;
      if (length > advice.most || (best && length > best.length) || !canFollow(turns, rest)) continue;
      const way = { takeOut: turns, rest, length };
      if (!best || length < best.length || isPlainer(way, best)) best = way;
    }
    printed = Math.min(printed, least);
    if (least <= advice.most) work++;
  }
  return { followed: best && asSeen(best, printed, sighting), ways: { allowed: all.length, work } };
}

/** A shortest way to do what the advice says within as many turns as it allows; undefined if there is none. */
export const follow = (sighting: PairSighting, advice: PairAdvice): Followed | undefined =>
  tried(sighting, advice).followed;

const turnsBehindOrBelow = (turns: readonly Turn[]): number =>
  turns.filter(({ letter }) => 'BD'.includes(letter)).length;

const knownSteps = new Map<number, readonly (readonly Turn[])[]>();

/** From an address on by one lift to joined or split and the insert, or by the insert alone. */
function stepsFrom(address: Address): readonly (readonly Turn[])[] {
  const key = addressKey(address);
  const steps = knownSteps.get(key) ?? [
    ...insertsOf(address),
    ...liftsFrom(address).flatMap(({ turns, address: ready }) =>
      insertsOf(ready)
        .filter((insert) => canFollow(turns, insert))
        .map((insert) => [...turns, ...insert]),
    ),
  ];
  knownSteps.set(key, steps);
  return steps;
}

/**
 * The same for advice that only leads on: from there in steps that are taught, a lift and an insert, rather than by the
 * fewest turns. Undefined if no such way is within as many turns as the advice allows.
 */
export function followInSteps(sighting: PairSighting, advice: PairAdvice): Followed | undefined {
  const goal = goalAt(sighting.at, OWN);
  let best: Followed | undefined;
  let bestEffort = Number.POSITIVE_INFINITY;
  for (const { turns, address: after } of beginnings(sighting, advice)) {
    if (waysOn(after, goal, advice.aim).length === 0) continue;
    for (const rest of stepsFrom(after)) {
      const length = lengthOf(turns) + lengthOf(rest);
      if (length > advice.most || !canFollow(turns, rest)) continue;
      const followed = asSeen({ takeOut: turns, rest }, printedLength(turns, rest), sighting);
      const effort = 100 * length + turnsBehindOrBelow([...followed.takeOut, ...followed.rest]);
      if (effort < bestEffort) [best, bestEffort] = [followed, effort];
    }
  }
  return best;
}
