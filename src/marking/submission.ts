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

/** Those that any answer may get; steps have more of their own (`MarkingPart.failed`). */
export const VERDICTS = ['solves', 'solves-turned', 'fails', 'unreadable', 'empty', 'unmatched'] as const;
/** One of these, or one of a step. */
export type Verdict = string;

export const isRight = (verdict: Verdict): boolean => verdict === 'solves' || verdict === 'solves-turned';

/** How an answer that does not solve is close to one that does. */
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

/** An answer with its verdict. */
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

const RIGHT = /^(?:right|correct|ok|yes|y|r|✓|✔)$/i;
const WRONG = /^(?:wrong|no|n|w|✗|✘)$/i;

/** Of the coach's own mark 0 to 1; undefined for no mark, or one that is neither a word for right or wrong nor such a number. */
export function pointsOf(mark: string): number | undefined {
  const word = mark.trim();
  if (RIGHT.test(word)) return 1;
  if (WRONG.test(word)) return 0;
  // A comma, as half of the world writes it.
  if (!/^\d*[.,]?\d+$/.test(word)) return undefined;
  const points = Number(word.replace(',', '.'));
  return points <= 1 ? points : undefined;
}

const TIME = /^(?:\d{1,2}:)?\d{1,3}(?:[.,]\d{1,3})?(?:s|sec|seconds)?[.,]?$/i;
const LONGEST = 200;

/**
 * Times in place of turns, as the boxes of a drill ask for, are not marked, and no figure counts them: `12.4`, `12,4 s`, `1:02.3`; also several of them, with spaces or strokes between.
 */
export function isTimes(answer: string): boolean {
  if (answer.length > LONGEST) return false;
  const parts = answer
    .trim()
    .replaceAll(/\s+(?=s(?:ec(?:onds)?)?\b)/gi, '')
    .split(/[\s;/|]+/);
  return parts.every((part) => TIME.test(part));
}

/** A row that is not marked since its answer is a time; the coach's own mark counts all the same. */
export const isTimed = ({ verdict, answer, mark }: MarkedRow): boolean =>
  verdict === 'empty' && isTimes(answer) && pointsOf(mark) === undefined;

/** How a small letter counts where it makes the difference: as the regulations' wide turn, or as the outer layer. */
export const SMALL_LETTERS = ['wide', 'outer'] as const;
/** What small letters mean: wide turns, or the outer layer. */
export type SmallLetters = (typeof SMALL_LETTERS)[number];
