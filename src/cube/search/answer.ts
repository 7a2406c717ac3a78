/** What a search is asked and what it answers, whichever step it belongs to. */
import type { Turn } from '../turns.ts';
import type { Limits, StopConditions } from './limits.ts';

/** What is searched for, and when the search stops. */
export interface FindOptions extends Limits, StopConditions {
  /** Solutions up to so many turns longer than the shortest are found too; none if left out. */
  readonly longer?: number;
}

/** A solution as face turns, as the viewer of the cube turns them. */
export interface Solution {
  readonly turns: readonly Turn[];
  readonly length: number;
}

/** What a search found, and how much of it is proved. */
export interface Answer {
  /**
   * Length of the shortest solution among those that obey the limits; undefined if none was found. Once there is one it
   * is exact, stopped or not: all shorter lengths had been searched in full.
   */
  readonly shortest: number | undefined;
  /** By length, then by turn in the order U U2 U' D D2 D' R … B'. */
  readonly solutions: readonly Solution[];
  /** Every length up to this one was searched in full, under the limits; -1 if none was. */
  readonly searched: number;
  /**
   * Whether `shortest` is the shortest and `solutions` are all there are up to `longer` more, under the limits. Never
   * true if none was found: then there is none of up to `searched` turns, and nothing is known beyond.
   */
  readonly proved: boolean;
}
