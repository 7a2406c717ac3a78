/** Turns that a student wrote, done on the cube. The key is not asked: whatever solves is right. */
import { prove } from '../cube/solves.ts';
import type { Place } from '../cube/spots.ts';
import { lengthOf, type Turn } from '../cube/turns.ts';
import { effect, type View } from '../cube/view.ts';
import type { Failed } from '../steps/marking-part.ts';
import { stepOf } from '../steps/steps.ts';
import type { SolutionItem } from './items.ts';
import type { Verdict } from './submission.ts';

export interface Judgement {
  readonly verdict: Verdict;
  readonly length: number;
  /** How many more than the shortest, of turns that solve. */
  readonly over: number | undefined;
  readonly broken: readonly Place[];
  /** After how many turns what should stay was last whole. */
  readonly baseLastWhole: number;
  /** Of turns that do not solve. */
  readonly failed: Failed | undefined;
}

const viewAfter = (from: View, turns: readonly Turn[]): View =>
  turns.reduce((view, turn) => effect(turn, view).view, from);

/** With rotations of the whole cube, or wide turns and slices that leave it turned. */
const turnsTheCube = (from: View, turns: readonly Turn[]): boolean =>
  turns.some((turn) => turn.kind === 'rotation') || viewAfter(from, turns) !== from;

export function judge({ subject, shortest }: SolutionItem, turns: readonly Turn[]): Judgement {
  const { cube, goal } = subject;
  const { verdict, broken, baseLastWhole } = prove(cube, turns, goal);
  const length = lengthOf(turns);
  if (verdict === 'fails') {
    const failed = stepOf(subject).marking.failed(subject, broken, turns);
    return { verdict: failed.verdict, length, over: undefined, broken, baseLastWhole, failed };
  }
  const over = shortest === undefined ? undefined : length - shortest;
  const turned = turnsTheCube(cube.view, turns) ? 'solves-turned' : 'solves';
  return { verdict: turned, length, over, broken, baseLastWhole, failed: undefined };
}
