/**
 * Following advice: the ways to do what a rule says, all of them tried.
 *
 * A take-out is: turns of U, one quarter turn of the lifting face that brings the stuck piece up, turns of U, the same
 * face back, the base whole after it. With `by` it is: turns of U, then those turns, as seen from any side or in a
 * mirror, in the course of which the piece comes up. A turn of U that they begin or end with is one printed turn with
 * the one before or after it, of whatever amount; where the two would come to nothing it could not be seen, and the turns
 * were not done. What it aims at stands between two printed turns: the way on never begins with the face that the
 * take-out ended with, since nobody prints `R R`.
 *
 * All is tried with the own slot at FR, and seen from there or from another side only when it is told: the same
 * address from four sides is one piece of work.
 */

import { afterTurns, type Cube, isOnTop, type Piece, pieceOf, placeOf } from '../../cube/cube.ts';
import { FACES, type Face } from '../../cube/faces.ts';
import { areHome } from '../../cube/goal.ts';
import { everySide, faceFromTheSide, fromTheSide, SIDES } from '../../cube/sides.ts';
import { isTurnOfTop, lengthOf, mirror, type Quarters, type Turn, turnOf, writeTurns } from '../../cube/turns.ts';
import type { Advice, Followed } from '../../rules/world.ts';
import { type Address, addressKey, addressOf, goalAt, writeAddress } from './address.ts';
import { caseOf, type Family, familyOf } from './cases.ts';
import { insertsOf, isJoined, isSplit } from './joined-split.ts';
import { cubeWithPair } from './place-pair.ts';
import { findSolutions } from './search/find.ts';
import type { PairSighting } from './sighting.ts';
import type { PairGoal } from './slots.ts';
import { QUARTERS_FROM_FRONT_RIGHT, type Slot, slotOfPlace } from './slots.ts';

/**
 * Where the piece that is not lifted goes while the other one is. hidden: the lifting face takes it out of the top;
 * together: that face carries it along on top, or both come up at once; direct: the face does not touch it.
 */
export const WAYS = ['hidden', 'direct', 'together'] as const;
export type Way = (typeof WAYS)[number];
export const LIFTED_PIECES = ['corner', 'edge', 'both'] as const;
export type LiftedPiece = (typeof LIFTED_PIECES)[number];

export type Aim =
  | { readonly kind: 'joined' | 'split' }
  | { readonly kind: 'family'; readonly family: Family }
  | { readonly kind: 'case'; readonly case: Address }
  /** Solved by a turn of U at most and these turns, seen from any side or in a mirror. */
  | { readonly kind: 'insert'; readonly turns: readonly Turn[] };

/** It says where to get to, and leaves the way on from there to what students know. */
export const leadsOn = ({ kind }: Aim): boolean => kind === 'family' || kind === 'case';

export interface PairAdvice extends Advice {
  readonly aim: Aim;
  /** The viewer's faces of which one does the lifting; with neither them nor `by` nothing is taken out first. */
  readonly lift: readonly Face[];
  /** Undefined: any piece that is away; where none is, one that is home; where none is, none need come up. */
  readonly piece?: LiftedPiece | undefined;
  readonly way?: Way | undefined;
  /** In place of lifting with one turn. */
  readonly by?: readonly Turn[] | undefined;
}

const OWN: Slot = 'FR';
const [CORNER, EDGE]: readonly [Piece, Piece] = [pieceOf('DFR'), pieceOf('FR')];
const AMOUNTS = [1, 2, 3] as const;

const turn = (face: Face, quarters: Quarters): Turn => turnOf('face', face, quarters);
const back = (quarters: Quarters): Quarters => (4 - quarters) as Quarters;
/** None, or a turn of U. */
const TOP_TURNED: readonly (readonly Turn[])[] = AMOUNTS.map((quarters) => [turn('U', quarters)]);
const TURNS_ON_TOP: readonly (readonly Turn[])[] = [[], ...TOP_TURNED];

const slotOf = (cube: Cube, piece: Piece): Slot | undefined => slotOfPlace(placeOf(cube, piece));

/** A take-out from an address, own slot FR, and what it leaves. */
interface TakeOut {
  readonly turns: readonly Turn[];
  readonly face: Face;
  /** Which pieces came up. */
  readonly raised: readonly Piece[];
  /** Of those that did not come up, what the lifting turn did with each. */
  readonly ways: readonly Way[];
  readonly address: Address;
}

/** How a turn treats a piece that it does not lift. */
function wayOf(before: Cube, after: Cube, piece: Piece): Way {
  if (before.spots[piece] === after.spots[piece]) return 'direct';
  return isOnTop(after, piece) ? 'together' : 'hidden';
}

function takeOutsByLifting(address: Address): TakeOut[] {
  const { base } = goalAt(address, OWN);
  const found: TakeOut[] = [];
  const start = cubeWithPair(address, OWN);
  const isStuck = [CORNER, EDGE].some((p) => !isOnTop(start, p));
  for (const onTop of TURNS_ON_TOP) {
    const before = afterTurns(start, onTop);
    for (const face of FACES) {
      for (const quarters of SIDES.includes(face) ? ([1, 3] as const) : []) {
        const up = turn(face, quarters);
        const lifted = afterTurns(before, [up]);
        const raised = [CORNER, EDGE].filter((p) => !isOnTop(before, p) && isOnTop(lifted, p));
        // No advice lifts what is not stuck while something is.
        if (isStuck && raised.length === 0) continue;
        const others = [CORNER, EDGE].filter((p) => !raised.includes(p));
        const ways = others.map((p) => wayOf(before, lifted, p));
        for (const amount of AMOUNTS) {
          const rest = [turn('U', amount), turn(face, back(quarters))];
          const cube = afterTurns(lifted, rest);
          const after = addressOf(cube, OWN);
          if (!after || !areHome(cube, base)) continue;
          found.push({ turns: [...onTop, up, ...rest], face, raised, ways, address: after });
        }
      }
    }
  }
  return found;
}

/** Rules ask for the same addresses again and again. */
const knownTakeOuts = new Map<number, readonly TakeOut[]>();

function liftsFrom(address: Address): readonly TakeOut[] {
  const key = addressKey(address);
  const known = knownTakeOuts.get(key) ?? takeOutsByLifting(address);
  knownTakeOuts.set(key, known);
  return known;
}

/** The lists of pieces of which one has to come up in full; none if nothing is stuck. */
function stuckPieces(cube: Cube, piece: LiftedPiece | undefined): readonly (readonly Piece[])[] {
  if (piece) return [{ corner: [CORNER], edge: [EDGE], both: [CORNER, EDGE] }[piece]];
  const inSlots = [CORNER, EDGE].filter((p) => slotOf(cube, p) !== undefined);
  const away = inSlots.filter((p) => slotOf(cube, p) !== OWN);
  return (away.length > 0 ? away : inSlots).map((p) => [p]);
}

type Outcome = Pick<TakeOut, 'turns' | 'address'>;

function byLifting(address: Address, { piece, way }: PairAdvice, faces: readonly Face[]): Outcome[] {
  const stuck = stuckPieces(cubeWithPair(address, OWN), piece);
  return liftsFrom(address).filter(
    ({ face, raised, ways }) =>
      faces.includes(face) &&
      (stuck.length === 0 || stuck.some((pieces) => pieces.every((p) => raised.includes(p)))) &&
      (way === undefined || ways.includes(way) || (way === 'together' && ways.length === 0)),
  );
}

interface Side extends Outcome {
  /** The first side face that turns: the one that lifts. */
  readonly face: Face;
}

/** Whether one of the lists of pieces is below at first, and each of it on top at some time. */
function comeUp(start: Cube, turns: readonly Turn[], lists: readonly (readonly Piece[])[]): boolean {
  const onTop = new Set<Piece>();
  let cube = start;
  for (const one of turns) {
    cube = afterTurns(cube, [one]);
    for (const p of [CORNER, EDGE]) if (isOnTop(cube, p)) onTop.add(p);
  }
  return lists.some((pieces) => pieces.every((p) => !isOnTop(start, p) && onTop.has(p)));
}

/** With a turn of U before them, or where they begin with one with whatever turn of U it becomes: one that is seen. */
const afterAnyTop = (turns: readonly Turn[]): readonly (readonly Turn[])[] =>
  isTurnOfTop(turns[0])
    ? TOP_TURNED.map((first) => [...first, ...turns.slice(1)])
    : TURNS_ON_TOP.map((first) => [...first, ...turns]);

/** Where they end with a turn of U, with whatever turn of U it becomes together with what follows: one that is seen. */
const beforeAnyTop = (turns: readonly Turn[]): readonly (readonly Turn[])[] =>
  isTurnOfTop(turns.at(-1)) ? TOP_TURNED.map((last) => [...turns.slice(0, -1), ...last]) : [turns];

/** From those sides from which the turns touch only faces of the stuck piece's slot. */
function sidesOf(address: Address, by: readonly Turn[], piece: LiftedPiece | undefined): Side[] {
  const start = cubeWithPair(address, OWN);
  const { base } = goalAt(address, OWN);
  const lists = stuckPieces(start, piece);
  const slots = lists.flatMap((pieces) => pieces.map((p) => slotOf(start, p)));
  return everySide(by).flatMap((some) => {
    const touched = some.map((t) => t.letter as Face).filter((face) => face !== 'U');
    const isAtStuck = slots.length === 0 || slots.some((slot) => touched.every((face) => slot?.includes(face)));
    if (!isAtStuck || touched[0] === undefined) return [];
    return afterAnyTop(some)
      .flatMap(beforeAnyTop)
      .flatMap((turns): Side[] => {
        if (lists.length > 0 && !comeUp(start, turns, lists)) return [];
        const cube = afterTurns(start, turns);
        const after = addressOf(cube, OWN);
        return after && areHome(cube, base) ? [{ turns, address: after, face: touched[0]! }] : [];
      });
  });
}

/** By the turns of an advice, then by piece and address: each is asked for from four sides and by every table. */
const knownSides = new WeakMap<readonly Turn[], Map<string, readonly Side[]>>();

function byTurns(
  address: Address,
  by: readonly Turn[],
  { piece }: PairAdvice,
  faces: readonly Face[],
): readonly Side[] {
  const known = knownSides.get(by) ?? new Map<string, readonly Side[]>();
  knownSides.set(by, known);
  const key = `${piece} ${addressKey(address)}`;
  const sides = known.get(key) ?? sidesOf(address, by, piece);
  known.set(key, sides);
  return sides.filter(({ face }) => faces.includes(face));
}

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

/** The ways to begin as the advice says, own slot FR, whatever they lead to. */
function beginnings({ at: address, side }: PairSighting, advice: PairAdvice): readonly Outcome[] {
  const faces = advice.lift.map((face) => faceFromTheSide(face, -QUARTERS_FROM_FRONT_RIGHT[side]));
  if (advice.by) return byTurns(address, advice.by, advice, faces);
  return advice.lift.length > 0 ? byLifting(address, advice, faces) : [{ turns: [], address }];
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

const halfTurns = (turns: readonly Turn[]): number => turns.filter(({ quarters }) => quarters === 2).length;

/** Turns with the own slot at FR, as they are for the case that lies there in a mirror. */
const inMirror = (turns: readonly Turn[]): readonly Turn[] => fromTheSide(mirror(turns), 3);

/** The same for turns and for their mirror image, so that what is chosen by it is chosen for either hand. */
const eitherHand = (turns: readonly Turn[]): string => [writeTurns(turns), writeTurns(inMirror(turns))].sort()[0]!;

/** Of ways of as many turns the one with fewer half turns. */
function isPlainer(a: Done, b: Done): boolean {
  const [one, other] = [a, b].map(({ takeOut, rest }) => [...takeOut, ...rest]) as [Turn[], Turn[]];
  const more = halfTurns(one) - halfTurns(other);
  return more < 0 || (more === 0 && eitherHand(one) < eitherHand(other));
}

/** A shortest way to do what the advice says within as many turns as it allows; undefined if there is none. */
export function follow(sighting: PairSighting, advice: PairAdvice): Followed | undefined {
  const goal = goalAt(sighting.at, OWN);
  let best: (Done & { readonly length: number }) | undefined;
  let printed = Number.POSITIVE_INFINITY;
  for (const { turns, address: after } of beginnings(sighting, advice)) {
    for (const rest of waysOn(after, goal, advice.aim)) {
      printed = Math.min(printed, printedLength(turns, rest));
      const length = turns.length + rest.length;
      if (length > advice.most || (best && length > best.length) || !canFollow(turns, rest)) continue;
      const way = { takeOut: turns, rest, length };
      if (!best || length < best.length || isPlainer(way, best)) best = way;
    }
  }
  return best && asSeen(best, printed, sighting);
}

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
