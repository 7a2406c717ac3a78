/** What sheets say of a step beside what they say of any. */
import type { Words } from '../words/words.ts';
import type { Subject } from './subject.ts';

/** What a coach says of any case of the step. */
export interface PlanWordsOfStep {
  /** To begin with. */
  readonly open: string;
  /** Before a case is solved. */
  readonly ask: string;
}

export interface SheetPart {
  /** What the lines of its pictures mean, a sentence each. */
  readonly signs: (words: Words) => readonly string[];
  /** What readers should know of some of the cases that are shown; undefined if it is true of none. */
  readonly remark: (shown: readonly Subject[], words: Words) => string | undefined;
  /** In a running order; `{cross}` as in words of rules. */
  readonly plan: (words: Words) => PlanWordsOfStep;
  /** Of a case that leaves more open than others: what that is, as a student reads it. */
  readonly openSaid: (subject: Subject, words: Words) => string | undefined;
}
