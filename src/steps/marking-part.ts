/** What marking asks of a step: the case that a claim speaks of, and what turns that do not solve it did in its place. */
import type { Place } from '../cube/spots.ts';
import type { Turn } from '../cube/turns.ts';
import type { Words } from '../words/words.ts';
import type { Subject } from './subject.ts';

/** What turns do that do not solve. */
export interface Failed {
  /** `disturbs`: what was asked for is done, and something is lost that was to stay; `fails`; or one of the step's own. */
  readonly verdict: string;
  readonly says: (words: Words) => string;
}

/** What is said of this step alone, in one language. */
export interface MarkingWordsOfStep {
  /** In a class's report: by verdict, of those that `failed` gives besides `fails`. */
  readonly slips: { readonly [verdict: string]: string };
  /** To an answer that is no place of a piece. */
  readonly noPlace: string;
}

export interface MarkingPart {
  /** The case after a set-up, by the fields of a claim that are this step's own, which may be anything; or why it is none. */
  readonly subjectOfClaim: (
    claim: Readonly<Record<string, unknown>>,
    setup: readonly Turn[],
  ) => Subject | { readonly why: string };
  /** `broken`: home places of what has to be home after `turns` and is not. */
  readonly failed: (subject: Subject, broken: readonly Place[], turns: readonly Turn[]) => Failed;
  readonly words: (words: Words) => MarkingWordsOfStep;
}
