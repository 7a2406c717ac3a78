/** Turns that a student wrote, done on the cube. The key is not asked: whatever solves is right. */
import { afterTurns, type Cube } from '../cube/cube.ts';
import { areHome } from '../cube/goal.ts';
import { prove } from '../cube/solves.ts';
import type { Place } from '../cube/spots.ts';
import { lengthOf, type Turn } from '../cube/turns.ts';
import { effect, type View } from '../cube/view.ts';
import { cornerOfSlot, edgeOfSlot, goalOf, SLOTS, type Slot, slotOfPlace } from '../steps/pair/slots.ts';
import type { SolutionItem } from './items.ts';

export interface Judgement {
  readonly verdict: 'solves' | 'solves-turned' | 'disturbs' | 'other-pair' | 'fails';
  readonly length: number;
  /** How many more than the shortest, of turns that solve. */
  readonly over: number | undefined;
  readonly broken: readonly Place[];
  /** Kept slots with a piece that is not home. */
  readonly disturbed: readonly Slot[];
  /** Slots that were not solved before, need not be, and are now. */
  readonly others: readonly Slot[];
  /** After how many turns cross and kept slots were last whole. */
  readonly baseLastWhole: number;
}

const viewAfter = (from: View, turns: readonly Turn[]): View =>
  turns.reduce((view, turn) => effect(turn, view).view, from);

/** With rotations of the whole cube, or wide turns and slices that leave it turned. */
const turnsTheCube = (from: View, turns: readonly Turn[]): boolean =>
  turns.some((turn) => turn.kind === 'rotation') || viewAfter(from, turns) !== from;

const isSolvedPair = (cube: Cube, slot: Slot): boolean => areHome(cube, goalOf(slot, []).pieces.slice(-2));

function otherPairs({ cube, goal }: SolutionItem, turns: readonly Turn[]): Slot[] {
  const free = SLOTS.filter((s) => s !== goal.slot && !goal.kept.includes(s) && !isSolvedPair(cube, s));
  if (free.length === 0) return [];
  const end = afterTurns(cube, turns);
  return free.filter((slot) => isSolvedPair(end, slot));
}

export function judge(item: SolutionItem, turns: readonly Turn[]): Judgement {
  const { cube, goal, shortest } = item;
  const { verdict, broken, baseLastWhole } = prove(cube, turns, goal);
  const length = lengthOf(turns);
  const common = { length, broken, baseLastWhole };
  if (verdict === 'solves') {
    const over = shortest === undefined ? undefined : length - shortest;
    const turned = turnsTheCube(cube.view, turns) ? 'solves-turned' : 'solves';
    return { ...common, verdict: turned, over, disturbed: [], others: [] };
  }
  const disturbed = goal.kept.filter((slot) => broken.some((place) => slotOfPlace(place) === slot));
  const ownHome = !broken.includes(cornerOfSlot(goal.slot)) && !broken.includes(edgeOfSlot(goal.slot));
  const baseWhole = broken.every((place) => slotOfPlace(place) === goal.slot);
  const others = baseWhole ? otherPairs(item, turns) : [];
  const said = ownHome && disturbed.length > 0 ? 'disturbs' : others.length > 0 ? 'other-pair' : 'fails';
  return { ...common, verdict: said, over: undefined, disturbed, others };
}
