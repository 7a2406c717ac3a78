/** Claims: what is printed and can be false, in the form that files carry. */
import type { Family } from '../cube/cases.ts';
import type { Colour, Hold } from '../cube/colours.ts';
import type { Slot } from '../cube/goal.ts';
import type { Place } from '../cube/spots.ts';

/**
 * Hold a solved cube as `hold` says, do `setup`, then `solution`, nothing between. Faces, slots and places are named by
 * that cube's centres before the first turn and travel with them.
 */
export interface SolutionClaim {
  /** `3.1`: the first solution of the third case. */
  readonly id: string;
  readonly kind: 'solution';
  readonly file: string;
  /** Line of the solution in the lesson file, from 1. */
  readonly line: number;
  readonly hold: Hold;
  /** Turns in normal form as printed, wide ones spelt as the club does; as `solution`. */
  readonly setup: string;
  readonly solution: string;
  /** The colour of the cross. */
  readonly cross: Colour;
  /** The pair's own slot. */
  readonly pair: Slot;
  readonly kept: readonly Slot[];
  readonly address: string;
  readonly case: string;
  readonly family: Family;
  readonly verdict: 'solves' | 'fails';
  /** Home places of the required pieces that are not home. */
  readonly broken: readonly Place[];
  /** Outer block turns. */
  readonly length: number;
  /** The fewest face turns from the state after the set-up, rotations free. Left out where the search found none. */
  readonly shortest?: number;
  /** Whether an exhaustive search found it. */
  readonly proved: boolean;
}

export type Claim = SolutionClaim;

/** A claim as it came to stand on paper. */
export type PrintedClaim = Claim & {
  /** Name of the PDF file. */
  readonly sheet: string;
  /** Physical page, from 1. */
  readonly page: number;
};
