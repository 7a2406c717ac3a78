/** What sheets say of a step beside what they say of any. */
import type { Words } from '../words/words.ts';
import type { Subject } from './subject.ts';

export interface SheetPart {
  /** What the lines of its pictures mean, a sentence each. */
  readonly signs: (words: Words) => readonly string[];
  /** What readers should know of some of the cases that are shown; undefined if it is true of none. */
  readonly remark: (shown: readonly Subject[], words: Words) => string | undefined;
  /** Of a case that leaves more open than others: what that is, as a student reads it. */
  readonly openSaid: (subject: Subject, words: Words) => string | undefined;
}
