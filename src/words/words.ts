/**
 * Every fixed word that is printed or described, as one table a language. Sentences are functions, so that each
 * language can put its words in its own order. English is the table that others have the form of.
 */
import type { english } from './english.ts';

export type CommonWords = typeof english;
export type MarkingWords = CommonWords['marking'];
export type MarkingSheetWords = CommonWords['markingSheets'];

/** All words of a language, with the tables of the steps. */
export interface Words extends CommonWords {
  /** By its name, the table of each step, which the step alone reads. */
  readonly steps: Readonly<Record<string, unknown>>;
}
