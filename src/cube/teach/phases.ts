/**
 * Phases: why a solution works, cut into stretches between moments at which cross and kept slots are whole. Moments are
 * those between printed turns. A turn of U belongs to what it prepares; a turn of the whole cube stands alone.
 */
import { type Address, addressOf, isSolvedAddress } from '../address.ts';
import { afterTurns, type Cube, doTurn, isOnTop, type Piece, pieceOf } from '../cube.ts';
import { areHome, cornerOfSlot, type Goal } from '../goal.ts';
import { everySide } from '../sides.ts';
import { inverse, type Quarters, type Turn, turnOf } from '../turns.ts';
import { isJoined, isSplit } from './joined-split.ts';
import { TRIGGERS, type TriggerList } from './triggers.ts';

/**
 * What a stretch does, from where the pair is before and after it.
 *
 *   turn-cube                        the whole cube, nothing else
 *   turn-top                         turns of U with nothing after them that they prepare
 *   edge-out corner-out both-out     these come from slots to the top
 *   edge-in corner-in both-in        these go from the top into slots, the pair unsolved
 *   join split                       both on top before and after, now joined or split
 *   regroup                          both on top before and after, now neither
 *   insert                           both on top before, the pair solved after
 *   solve                            the pair solved after, a piece in a slot before: lift and insert in one
 *   shift                            anything else: pieces change slots
 */
export const DEEDS = [
  'turn-cube',
  'turn-top',
  'edge-out',
  'corner-out',
  'both-out',
  'edge-in',
  'corner-in',
  'both-in',
  'join',
  'split',
  'regroup',
  'insert',
  'solve',
  'shift',
] as const;
export type Deed = (typeof DEEDS)[number];

/** How the pair stands after a stretch, if that has a name. */
export type Standing = 'joined' | 'split' | 'solved';

export interface Phase {
  /** As printed. */
  readonly turns: readonly Turn[];
  /** More than one where a phase's end and the next one's start were merged into one turn. */
  readonly does: readonly Deed[];
  readonly stands: Standing | undefined;
  /** The piece that was on top, out of the way while another came up, and is on top again. */
  readonly hides: 'corner' | 'edge' | undefined;
  readonly address: Address;
  readonly trigger: NamedTrigger | undefined;
}

/** Two turns of one face that became one: the last of a phase and the first of the next. */
export interface Merge {
  /** Which printed turn of the solution, from 1. */
  readonly turn: number;
  readonly of: Turn;
  readonly as: readonly [Turn, Turn];
  /** Of the pair, between the two. */
  readonly address: Address;
}

export interface Phases {
  readonly phases: readonly Phase[];
  readonly merges: readonly Merge[];
}

export interface NamedTrigger {
  readonly name: string;
  /** Done backwards. */
  readonly undone: boolean;
  readonly times: number;
}

const isU = (turn: Turn): boolean => turn.letter === 'U' && turn.kind === 'face';

interface Pair {
  readonly corner: Piece;
  readonly edge: Piece;
}

/** What the turns between two moments do. */
function deedOf(before: Cube, after: Cube, goal: Goal, pair: Pair, turns: readonly Turn[]): Deed {
  if (turns.every((turn) => turn.kind === 'rotation')) return 'turn-cube';
  if (turns.every((turn) => isU(turn) || turn.kind === 'rotation')) return 'turn-top';
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

const standingOf = (cube: Cube, goal: Goal): Standing | undefined => standingAt(addressAfter(cube, goal));

export function standingAt(address: Address): Standing | undefined {
  if (isSolvedAddress(address)) return 'solved';
  return isJoined(address) ? 'joined' : isSplit(address) ? 'split' : undefined;
}

/** With the cross whole no edge of a pair is in the bottom layer. */
const addressAfter = (cube: Cube, { slot }: Goal): Address => addressOf(cube, slot)!;

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

/** Where to cut: after which of the turns the base is whole, the last one among them. */
function moments(start: Cube, turns: readonly Turn[], goal: Goal): number[] {
  const cube = afterTurns(start, []);
  return turns.flatMap((turn, i) => {
    doTurn(cube, turn);
    return areHome(cube, goal.base) || i === turns.length - 1 ? [i + 1] : [];
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

/** The turn as two of its kind with the base whole between them, neither of them at a moment that is printed. */
function mergeIn(before: Cube, of: Turn, turn: number, goal: Goal): Merge | undefined {
  if (of.kind !== 'face' || isU(of)) return undefined;
  for (const [one, two] of PARTS) {
    if ((one + two) % 4 !== of.quarters) continue;
    const as = [turnOf('face', of.letter, one), turnOf('face', of.letter, two)] as const;
    const between = afterTurns(before, [as[0]]);
    if (areHome(between, goal.base)) return { turn, of, as, address: addressAfter(between, goal) };
  }
  return undefined;
}

/** The turns of U that a stretch begins with do not tell what it is. */
const withoutTop = (turns: readonly Turn[]): readonly Turn[] => turns.slice(turns.findIndex((turn) => !isU(turn)));
const text = (turns: readonly Turn[]): string => turns.map((turn) => turn.text).join(' ');

const isOfOneFace = (turns: readonly Turn[]): boolean =>
  new Set(turns.filter((turn) => !isU(turn)).map(({ letter }) => letter)).size === 1;

/**
 * From any side and in a mirror, forwards or backwards, once or twice; `undefined` if it is none of the list. Turns of one
 * face and the top are an ordinary lift or insert, and a trigger only when done twice.
 */
export function triggerIn(turns: readonly Turn[], triggers: TriggerList = TRIGGERS): NamedTrigger | undefined {
  const said = [text(turns), text(withoutTop(turns))];
  for (const [name, trigger] of Object.entries(triggers)) {
    for (const undone of [false, true]) {
      const one = undone ? inverse(trigger) : trigger;
      for (const times of isOfOneFace(one) ? [2] : [1, 2]) {
        const all = Array.from({ length: times }, () => one).flat();
        if (everySide(all).some((some) => said.includes(text(some)))) return { name, undone, times };
      }
    }
  }
  return undefined;
}

/** The phases of a solution from a cube whose base is whole; turns that leave it otherwise are one stretch at the end. */
export function phasesOf(start: Cube, turns: readonly Turn[], goal: Goal, triggers: TriggerList = TRIGGERS): Phases {
  const pair: Pair = { corner: pieceOf(cornerOfSlot(goal.slot)), edge: pieceOf(goal.slot) };
  const phases: Phase[] = [];
  const merges: Merge[] = [];
  let from = 0;
  let before = afterTurns(start, []);
  for (const to of moments(start, turns, goal)) {
    const stretch = turns.slice(from, to);
    const preparesNext = stretch.every(isU) && to < turns.length && turns[to]!.kind !== 'rotation';
    if (preparesNext) continue;
    const found: Merge[] = [];
    const cube = afterTurns(before, []);
    stretch.forEach((turn, i) => {
      // At a moment that is printed nothing is hidden in the turn.
      const merge = i > 0 && i < stretch.length - 1 ? mergeIn(cube, turn, from + i + 1, goal) : undefined;
      if (merge) found.push(merge);
      doTurn(cube, turn);
    });
    phases.push({
      turns: stretch,
      does: deedsOf(before, stretch, found, from, goal, pair),
      stands: standingOf(cube, goal),
      hides: hiddenIn(before, stretch, pair),
      address: addressAfter(cube, goal),
      trigger: triggerIn(stretch, triggers),
    });
    merges.push(...found);
    before = cube;
    from = to;
  }
  return { phases, merges };
}

/** One deed, or one for each part that merges hide. */
function deedsOf(
  start: Cube,
  stretch: readonly Turn[],
  merges: readonly Merge[],
  from: number,
  goal: Goal,
  pair: Pair,
): Deed[] {
  const parts: Turn[][] = [[]];
  stretch.forEach((turn, i) => {
    const merge = merges.find((m) => m.turn === from + i + 1);
    parts.at(-1)!.push(merge ? merge.as[0] : turn);
    if (merge) parts.push([merge.as[1]]);
  });
  let before = start;
  return parts.map((part) => {
    const after = afterTurns(before, part);
    const deed = deedOf(before, after, goal, pair, part);
    before = after;
    return deed;
  });
}
