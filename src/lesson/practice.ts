/** What a lesson asks of its practice papers, as read. */

import type { Condition } from '../rules/rules.ts';
import type { Family } from '../steps/pair/cases.ts';
import type { Slot } from '../steps/pair/slots.ts';
import type { LeadingHand } from './leading-hand.ts';
import type { Span } from './problem.ts';

/** In the order in which they stand on a paper: what has letters first. Each is a file in src/practice/kinds. */
export const EXERCISE_KINDS = [
  'likeness',
  'edge',
  'rule',
  'picture',
  'slip',
  'order',
  'place',
  'solve',
  'drill',
] as const;
export type ExerciseKind = (typeof EXERCISE_KINDS)[number];

export const LEVELS = ['easy', 'middle', 'hard'] as const;
export type Level = (typeof LEVELS)[number];

export interface AskedItems {
  readonly kind: ExerciseKind;
  readonly count: number;
  /** Of the line that asks for them. */
  readonly span: Span;
}

/** Which of the cases taught are practised; an empty list leaves all. */
export interface PracticeFilter {
  readonly families: readonly Family[];
  /** The pair's own slot. */
  readonly slots: readonly Slot[];
  /** A foreign slot that a piece is stuck in, as the viewer sees it. */
  readonly stuck: readonly Slot[];
  /** Numbers of the lesson's rules: cases to which one of these applies, the cube held as it is. */
  readonly rules: readonly number[];
  /** What is seen of them, as in a rule. */
  readonly see: readonly Condition[];
  /** Whose side is turned first in what is recommended: R or L. */
  readonly hand: LeadingHand | undefined;
  /** Cases whose recommended solution has no more turns than this. */
  readonly turns: number | undefined;
}

export interface PracticeRequest {
  readonly seed: number;
  readonly level: Level;
  /** In the order of EXERCISE_KINDS, none with a count of 0. */
  readonly asked: readonly AskedItems[];
  /** So many of the items to solve have a further slot open. */
  readonly open: number;
  readonly only: PracticeFilter;
  /** Undefined if all that was taught is practised. */
  readonly onlyAt: Span | undefined;
  /** Files of earlier lessons, the latest first, as the lesson names them: from its own folder. */
  readonly earlier: readonly { readonly file: string; readonly span: Span }[];
  /** Check words in capitals; undefined: our own list. */
  readonly words: readonly string[] | undefined;
  /** Of the words where the lesson lists some. */
  readonly wordsAt: { readonly span: Span };
  readonly span: Span;
}
