/** What a student handed in, before and after it is marked. */
import type { Place } from '../cube/spots.ts';

/** One answer as it was submitted, texts trimmed. */
export interface Submission {
  /** As it was named to us. */
  readonly file: string;
  /** The row as a spreadsheet counts it, the header being 1; the line of a text or YAML file. */
  readonly row: number;
  readonly student: string;
  readonly paper: string;
  readonly item: string;
  readonly answer: string;
  /** The coach's own mark: wins over the verdict. */
  readonly mark: string;
}

export const VERDICTS = [
  'solves',
  'solves-turned',
  'disturbs',
  'other-pair',
  'fails',
  'unreadable',
  'empty',
  'unmatched',
] as const;
export type Verdict = (typeof VERDICTS)[number];

export const isRight = (verdict: Verdict): boolean => verdict === 'solves' || verdict === 'solves-turned';

export type NearMissKind =
  | 'small-letters'
  | 'spelling'
  | 'u-first'
  | 'inverted'
  | 'mirrored'
  | 'other-side'
  | 'neighbour'
  | 'changed'
  | 'dropped'
  | 'added'
  | 'swapped';

export interface NearMiss {
  readonly kind: NearMissKind;
  /** Turns that solve, in ASCII; of a neighbouring item, the answer as it was given. */
  readonly answer: string;
  /** Which turn of the answer went wrong, from 1; one more than it has where the last is missing. */
  readonly turn: number;
  /** For the student; turns between backticks. */
  readonly says: string;
}

export interface MarkedRow extends Submission {
  /** The item that it was marked as: `3` or `K4T.7`; empty where none matches. */
  readonly matched: string;
  readonly verdict: Verdict;
  /** For the student; turns between backticks. */
  readonly says: string;
  /** Outer block turns; null where there are no turns to count. */
  readonly length: number | null;
  /** How many more than the shortest; null where it does not solve or the shortest is not known. */
  readonly over: number | null;
  /** Home places of the required pieces that are not home. */
  readonly broken: readonly Place[];
  /** The likeliest first. */
  readonly nearMisses: readonly NearMiss[];
  /** Which turn went wrong, from 1, and how, by the likeliest near miss; null where no turn can be named. */
  readonly slip: { readonly turn: number; readonly kind: NearMissKind | 'unknown' } | null;
  /** 1 right, 0 not; the coach's mark where there is one. */
  readonly points: number;
}

/** A text for a person without its backticks. */
export const plainSays = (says: string): string => says.replaceAll('`', '');
