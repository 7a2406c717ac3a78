/** What the lesson format has of a step: keys of its own, what they mean, and what is wrong in the words of a coach. */
import type { z } from 'zod';
import type { Place } from '../cube/spots.ts';
import type { ProblemKind } from '../text/problem-kind.ts';
import type { Words } from '../words/words.ts';
import type { Subject, Where } from './subject.ts';

/** Something wrong: message and hint as a problem has them. */
export interface Said {
  readonly message: string;
  readonly hint: string;
}

/** Of a code of `LessonPart.problems`. */
export interface Told extends Said {
  readonly code: string;
}

/** Keys that a lesson writes in one of its tables, and their values, as far as they fit the schema. */
export type OwnFields = Readonly<Record<string, unknown>>;

/** What a lesson promises of all its cases in keys of the step. */
export interface OwnPromise {
  /** The key: `slots`. */
  readonly claim: string;
}

/** Of a case, as promises are held against it. */
export interface Numbered {
  readonly number: number;
  readonly subject: Subject;
}

export interface LessonPart {
  /** Keys beside those that all steps share: of a case, of `every`, of `claims`, of `practice: only`. */
  readonly fields: Readonly<Record<'case' | 'every' | 'claims' | 'only', z.ZodRawShape>>;
  /** What editors say of `family` and of `address`, with an example each. */
  readonly about: Readonly<Record<'family' | 'address', readonly [description: string, example: string]>>;
  /** Words of ours for what the step is about, which a club may have others for. */
  readonly terms: readonly string[];
  /** Kinds of problems that the step tells of, by code. */
  readonly problems: Readonly<Record<string, ProblemKind>>;

  /** What the keys of a case mean; `tell` takes what is wrong with one of them, and the place in its list. */
  readonly whereOf: (fields: OwnFields, tell: (told: Told, ...path: (string | number)[]) => void) => Where;
  readonly mirroredWhere: (where: Where) => Where;
  /** Others that a coach may have meant, as a lesson names them: "the pair of slot FL", "slot: FL". */
  readonly likelyWhere: (
    where: Where,
  ) => readonly { readonly where: Where; readonly said: string; readonly write: string }[];

  /** A text that is no address. */
  readonly wrongAddress: (text: string) => Said;
  /** The family that was likely meant, said in full; `others` are words that would be right too. */
  readonly likelyFamily: (written: string, others?: readonly string[]) => string | undefined;
  /** All families with what they mean. */
  readonly familiesSaid: string;
  /** One of `words` that was likely meant, where the step's own way of saying it was written. */
  readonly likelyWord: (written: string, words: readonly string[]) => string | undefined;

  /** What has to be whole meanwhile: "cross and kept slots". */
  readonly baseSaid: string;
  /** What pieces that are not home have in common, by their home places: "the pair and the cross at DR". */
  readonly unsolvedSaid: (broken: readonly Place[], where: Where) => string;
  /** What to write so that they need not be home; undefined if nothing can be. */
  readonly excusing: (broken: readonly Place[]) => string | undefined;
  /** After a set-up that hides what is asked about (`SetUpFault`). */
  readonly hidden: (where: Where) => Said;
  /** A name of a case that speaks of another part of the cube. */
  readonly misnamed: (name: string, subject: Subject) => Said | undefined;

  readonly promises: (fields: OwnFields) => readonly OwnPromise[];
  readonly mirroredPromise: (promise: OwnPromise) => OwnPromise;
  /** Undefined if the cases keep it. */
  readonly broken: (promise: OwnPromise, cases: readonly Numbered[]) => Told | undefined;
  /** As it is printed under the title. */
  readonly promiseSaid: (promise: OwnPromise, words: Words) => string;
}
