/** What sheets say of a step beside what they say of any. */
import type { Words } from '../words/words.ts';
import type { Subject } from './subject.ts';

/** What sheets say of this step alone, in one language. */
export interface SheetWordsOfStep {
  /** What the lines of its pictures mean, a sentence each. */
  readonly signs: readonly string[];
  /** A family, for a coach. */
  readonly family: (family: string) => string;
  /** All families together, as a title. */
  readonly allCases: string;
  /** How the booklet of its cases is read. */
  readonly booklet: string;
  /** Which cases a course's chart has, as a sentence without its stop. */
  readonly chart: string;
  /** What a coach says of any case, in a running order: to begin with, and before it is solved. `{cross}` as in words of rules. */
  readonly plan: { readonly open: string; readonly ask: string };
}

export interface SheetPart {
  readonly words: (words: Words) => SheetWordsOfStep;
  /** What readers should know of some of the cases that are shown; undefined if it is true of none. */
  readonly remark: (shown: readonly Subject[], words: Words) => string | undefined;
  /** Of a case that leaves more open than others: what that is, as a student reads it. */
  readonly openSaid: (subject: Subject, words: Words) => string | undefined;
}
