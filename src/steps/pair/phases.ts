/**
 * Phases: why a solution works, cut into stretches between moments at which cross and kept slots are whole. Moments are
 * those between printed turns. A turn of the top belongs to what it prepares; a turn of the whole cube stands alone.
 */

import { afterTurns, type Cube, doTurn, isOnTop, type Piece, pieceOf } from '../../cube/cube.ts';
import { areHome } from '../../cube/goal.ts';
import { TRIGGERS, type TriggerList, triggerIn } from '../../cube/triggers.ts';
import { type Quarters, type Turn, turnOf } from '../../cube/turns.ts';
import { effect, type View } from '../../cube/view.ts';
import type { Merge, Phase, Phases, PhasesPart } from '../phases-part.ts';
import { type Address, addressOf, isSolvedAddress, writeAddress } from './address.ts';
import { isJoined, isSplit } from './joined-split.ts';
import type { Deed } from './said.ts';
import type { PairGoal } from './slots.ts';
import { cornerOfSlot } from './slots.ts';
import { asPair } from './subject.ts';
import { pairWords } from './words.ts';

/** How the pair stands after a stretch, if that has a name. */
export type Standing = 'joined' | 'split' | 'solved';

export type { Phases } from '../phases-part.ts';

/** Turns of the face U are the first three. */
const TOP_TURNS = 3;

/**
 * Whether nothing but the top turns, by the centres: `Dw` turns the top and the viewer, and after `x` the viewer's B is the
 * top. A rotation turns nothing.
 */
function areOfTop(turns: readonly Turn[], from: View): boolean {
  let view = from;
  return turns.every((turn) => {
    const { faceTurns, view: next } = effect(turn, view);
    view = next;
    return faceTurns.every((t) => t < TOP_TURNS);
  });
}

const isRotation = ({ kind }: Turn): boolean => kind === 'rotation';

interface Pair {
  readonly corner: Piece;
  readonly edge: Piece;
}

/** What the turns between two moments do. */
function deedOf(before: Cube, after: Cube, goal: PairGoal, pair: Pair, turns: readonly Turn[]): Deed {
  if (turns.every(isRotation)) return 'turn-cube';
  if (areOfTop(turns, before.view)) return 'turn-top';
  const { corner, edge } = pair;
  const [wasCornerUp, wasEdgeUp] = [isOnTop(before, corner), isOnTop(before, edge)];
  const [isCornerUp, isEdgeUp] = [isOnTop(after, corner), isOnTop(after, edge)];
  if (areHome(after, goal.pieces)) return wasCornerUp && wasEdgeUp ? 'insert' : 'solve';
  const out = [!wasCornerUp && isCornerUp, !wasEdgeUp && isEdgeUp];
  const into = [wasCornerUp && !isCornerUp, wasEdgeUp && !isEdgeUp];
  if (!into.includes(true) && out.includes(true)) return out[0] ? (out[1] ? 'both-out' : 'corner-out') : 'edge-out';
  if (!out.includes(true) && into.includes(true)) return into[0] ? (into[1] ? 'both-in' : 'corner-in') : 'edge-in';
  if (!isCornerUp || !isEdgeUp) return 'shift';
  const standing = standingOf(after, goal);
  return standing === 'joined' ? 'join' : standing === 'split' ? 'split' : 'regroup';
}

const standingOf = (cube: Cube, goal: PairGoal): Standing | undefined => standingAt(addressAfter(cube, goal));

function standingAt(address: Address): Standing | undefined {
  if (isSolvedAddress(address)) return 'solved';
  return isJoined(address) ? 'joined' : isSplit(address) ? 'split' : undefined;
}

/** With the cross whole no edge of a pair is in the bottom layer. */
const addressAfter = (cube: Cube, { slot }: PairGoal): Address => addressOf(cube, slot)!;

/** The piece on top before and after, and not between. */
function hiddenIn(before: Cube, turns: readonly Turn[], pair: Pair): Phase['hides'] {
  const cube = afterTurns(before, []);
  const isHidden = { corner: false, edge: false };
  for (const turn of turns) {
    doTurn(cube, turn);
    for (const name of ['corner', 'edge'] as const) if (!isOnTop(cube, pair[name])) isHidden[name] = true;
  }
  return (['corner', 'edge'] as const).find(
    (name) => isHidden[name] && isOnTop(before, pair[name]) && isOnTop(cube, pair[name]),
  );
}

/** Where to cut: after which of the turns the base is whole. */
function moments(start: Cube, turns: readonly Turn[], goal: PairGoal): number[] {
  const cube = afterTurns(start, []);
  return turns.flatMap((turn, i) => {
    doTurn(cube, turn);
    return areHome(cube, goal.base) ? [i + 1] : [];
  });
}

const PARTS: readonly (readonly [Quarters, Quarters])[] = [
  [1, 1],
  [3, 3],
  [1, 2],
  [2, 1],
  [2, 3],
  [3, 2],
];

/** A merge before the phases that share it are named. */
type Seam = Omit<Merge, 'does'>;

/** The turn as two of its kind with the base whole between them, neither of them at a moment that is printed. */
function seamIn(before: Cube, of: Turn, turn: number, goal: PairGoal): Seam | undefined {
  if (isRotation(of)) return undefined;
  for (const [one, two] of PARTS) {
    if ((one + two) % 4 !== of.quarters) continue;
    const as = [turnOf(of.kind, of.letter, one), turnOf(of.kind, of.letter, two)] as const;
    const between = afterTurns(before, [as[0]]);
    if (areHome(between, goal.base)) return { turn, of, as, address: writeAddress(addressAfter(between, goal)) };
  }
  return undefined;
}

/** The phases of a solution. The base is whole before its first turn and after its last, or it is an error of ours. */
export function phasesOf(
  start: Cube,
  turns: readonly Turn[],
  goal: PairGoal,
  triggers: TriggerList = TRIGGERS,
): Phases {
  const pair: Pair = { corner: pieceOf(cornerOfSlot(goal.slot)), edge: pieceOf(goal.slot) };
  const cuts = moments(start, turns, goal);
  if ((cuts.at(-1) ?? 0) !== turns.length) throw new RangeError('the base is not whole after the last turn');
  const phases: Phase[] = [];
  const merges: Merge[] = [];
  let from = 0;
  let before = afterTurns(start, []);
  for (const to of cuts) {
    const stretch = turns.slice(from, to);
    const next = turns[to];
    const preparesNext = next && ![...stretch, next].some(isRotation) && areOfTop(stretch, before.view);
    if (preparesNext) continue;
    const seams: Seam[] = [];
    const cube = afterTurns(before, []);
    stretch.forEach((turn, i) => {
      // At a moment that is printed nothing is hidden in the turn.
      const isInside = !cuts.includes(from + i) && !cuts.includes(from + i + 1);
      const seam = isInside && i > 0 ? seamIn(cube, turn, from + i + 1, goal) : undefined;
      if (seam) seams.push(seam);
      doTurn(cube, turn);
    });
    const does = deedsOf(before, stretch, seams, from, goal, pair);
    phases.push({
      turns: stretch,
      does,
      stood: standingOf(before, goal),
      stands: standingOf(cube, goal),
      hides: hiddenIn(before, stretch, pair),
      address: writeAddress(addressAfter(cube, goal)),
      trigger: triggerIn(stretch, triggers),
    });
    merges.push(...seams.map((seam, i) => ({ ...seam, does: [does[i]!, does[i + 1]!] as const })));
    before = cube;
    from = to;
  }
  return { phases, merges };
}

/** One deed, or one for each part that merges hide. */
function deedsOf(
  start: Cube,
  stretch: readonly Turn[],
  seams: readonly Seam[],
  from: number,
  goal: PairGoal,
  pair: Pair,
): Deed[] {
  const parts: Turn[][] = [[]];
  stretch.forEach((turn, i) => {
    const seam = seams.find((one) => one.turn === from + i + 1);
    parts.at(-1)!.push(seam ? seam.as[0] : turn);
    if (seam) parts.push([seam.as[1]]);
  });
  let before = start;
  return parts.map((part) => {
    const after = afterTurns(before, part);
    const deed = deedOf(before, after, goal, pair, part);
    before = after;
    return deed;
  });
}

export const pairPhases: PhasesPart = {
  of: (subject, turns, triggers) => {
    const { cube, goal } = asPair(subject);
    return phasesOf(cube, turns, goal, triggers);
  },
  said: ({ does, stood }, words) =>
    pairWords(words).cases.phase(
      does as readonly Deed[],
      stood === 'solved' ? undefined : (stood as 'joined' | 'split' | undefined),
    ),
};
