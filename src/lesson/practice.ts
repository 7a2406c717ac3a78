/** What a lesson asks of its practice papers, as read. */

import type { Condition } from '../rules/rules.ts';
import type { OwnFilter } from '../steps/practice-part.ts';
import type { Step } from '../steps/step.ts';
import type { LeadingHand } from './leading-hand.ts';
import type { Span } from './problem.ts';

/** Asked of every step, in the order in which they stand on a paper: what has letters first. */
export const SHARED_KINDS = ['rule', 'picture', 'slip', 'order', 'place', 'solve', 'drill'] as const;
/** A kind that every step has. */
export type SharedKind = (typeof SHARED_KINDS)[number];
/** One of these, or of a step's own questions. */
export type ExerciseKind = SharedKind | (string & Record<never, never>);

/** Whether it is one of those that every step has. */
export const isShared = (kind: ExerciseKind): kind is SharedKind => SHARED_KINDS.some((one) => one === kind);

/** In the order in which they stand on a paper. */
export const exerciseKinds = ({ practice }: Step): readonly ExerciseKind[] => [
  ...practice.questions.map(({ name }) => name),
  ...SHARED_KINDS,
];

/** How hard a paper is, of what was taught. */
export const LEVELS = ['easy', 'middle', 'hard'] as const;
/** How hard a paper is. */
export type Level = (typeof LEVELS)[number];

/** A line under `items`. */
export interface AskedItems {
  readonly kind: ExerciseKind;
  readonly count: number;
  /** Of the line that asks for them. */
  readonly span: Span;
}

/** Which of the cases taught are practised; an empty list leaves all. */
export interface PracticeFilter {
  readonly families: readonly string[];
  /** In keys of the step. */
  readonly own: OwnFilter;
  /** Numbers of the lesson's rules: cases to which one of these applies, the cube held as it is. */
  readonly rules: readonly number[];
  /** What is seen of them, as in a rule. */
  readonly see: readonly Condition[];
  /** Whose side is turned first in what is recommended: R or L. */
  readonly hand: LeadingHand | undefined;
  /** Cases whose recommended solution has no more turns than this. */
  readonly turns: number | undefined;
}

/** The key `practice` of a lesson. */
export interface PracticeRequest {
  readonly seed: number;
  readonly level: Level;
  /** In the order in which they stand on a paper, none with a count of 0. */
  readonly asked: readonly AskedItems[];
  /** So many of the items to solve have something more open. */
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
