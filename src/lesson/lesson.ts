/** A lesson as read: complete in itself, every text and every turn understood, nothing yet proved. */

import type { Colour, FaceColours, Hold } from '../cube/colours.ts';
import type { HandModel } from '../cube/search/hands.ts';
import type { TriggerList } from '../cube/triggers.ts';
import type { Turn, WideSpelling } from '../cube/turns.ts';
import type { Condition, Counsel, Rule } from '../rules/rules.ts';
import type { OwnPromise } from '../steps/lesson-part.ts';
import type { Step } from '../steps/step.ts';
import type { Where } from '../steps/subject.ts';
import type { LeadingHand } from './leading-hand.ts';
import type { PracticeRequest } from './practice.ts';
import type { Span } from './problem.ts';
import type { Source } from './source.ts';

/** The mark on a sentence that says facts of the lesson; all its phrases bear the same object. */
export interface FactMark {
  /** Of the facts, as the lesson names them. */
  readonly names: readonly string[];
  /** Of the sentence. */
  readonly span: Span;
}

/** A stretch of text of one kind. */
export type Phrase = { readonly says?: FactMark } & (
  | { readonly kind: 'plain' | 'strong'; readonly text: string }
  | { readonly kind: 'colour'; readonly colour: Colour; readonly capital: boolean; readonly strong?: boolean }
  | { readonly kind: 'turns'; readonly turns: readonly Turn[] }
);

/** A paragraph, heading or item of a list, as a coach writes it. */
export interface Paragraph {
  readonly kind: 'heading' | 'paragraph' | 'item';
  readonly phrases: readonly Phrase[];
  readonly span: Span;
}
/** Texts of a coach, paragraph by paragraph. */
export type Prose = readonly Paragraph[];

/** One line of text: a title, a name. */
export interface TextLine {
  readonly phrases: readonly Phrase[];
  readonly span: Span;
}

export interface Solution {
  /** From 1, in the order of the file. */
  readonly number: number;
  /** By the engine, not by the coach. */
  readonly chosen: boolean;
  readonly turns: readonly Turn[];
  readonly remark: Prose;
  readonly span: Span;
}

/** A solution that the engine chose. */
export const chosenSolution = (number: number, turns: readonly Turn[], span: Span): Solution => ({
  number,
  chosen: true,
  turns,
  remark: [],
  span,
});

/** What is written of a case, or said of it by an address. */
interface CaseSaid {
  /** From 1, in the order of the file; what is printed. */
  readonly number: number;
  readonly name: TextLine | undefined;
  readonly hold: Hold;
  /** The colours of the viewer's faces in that hold. */
  readonly colours: FaceColours;
  readonly where: Where;
  readonly setupSpan: Span;
  /** None: the panel has a line to write on. */
  readonly solutions: readonly Solution[];
  readonly watch: Prose;
  readonly span: Span;
}

/** A case as read, with the solutions that are listed. */
export interface CaseRead extends CaseSaid {
  /** Turns that bring it about, or its address as it is for the right hand: completing the case makes turns for it. */
  readonly from: { readonly setup: readonly Turn[] } | { readonly address: string };
  /** All its solutions could be read. */
  readonly isWhole: boolean;
}

/** A case of which nothing is written but where it lies. */
export const plainCase = (number: number, held: Pick<CaseSaid, 'hold' | 'colours' | 'where'>, span: Span) => ({
  number,
  name: undefined,
  hold: held.hold,
  colours: held.colours,
  where: held.where,
  setupSpan: span,
  watch: [],
  span,
});

/** How a solution is chosen for a case that lists none: none with `none`. */
export const CHOICES = ['rules', 'easiest', 'shortest', 'none'] as const;

/** A case with a set-up, and with the solutions that were chosen for it. */
export interface Case extends CaseSaid {
  readonly setup: readonly Turn[];
  /** Made by the tool for an address, not written by the coach. */
  readonly made: boolean;
}

/** What the lesson promises as a whole, each with its place. */
export type LessonClaim = { readonly span: Span } & (
  | { readonly claim: 'cases'; readonly is: 'all' | 'selection' }
  | { readonly claim: 'turns'; readonly most: number }
  | { readonly claim: 'rotations' }
  | { readonly claim: 'own'; readonly promise: OwnPromise }
);

export interface LessonRule {
  /** From 1, in the order of the file. */
  readonly number: number;
  readonly rule: Rule;
  readonly say: Prose;
  readonly span: Span;
}

/** In how many of the sightings that it speaks of a fact holds; some: in one at least, and not in all. */
export const FACT_SHARES = ['all', 'none', 'half', 'some'] as const;
export type FactShare = (typeof FACT_SHARES)[number];

/** What holds of the cases of the families, for sentences of a text to say. */
export interface LessonFact {
  /** The coach's own, by which sentences are marked. */
  readonly name: string;
  /** Of which sightings it speaks. */
  readonly when: readonly Condition[];
  /** What is done, and found to work; a turn of the cube only leads to what is seen then. Undefined: nothing is done. */
  readonly counsel: Counsel | undefined;
  /** What is seen then. */
  readonly is: readonly Condition[];
  readonly share: FactShare;
  readonly span: Span;
}

/** Cases under one heading; those before the first heading have none. */
export interface Part {
  readonly heading: TextLine | undefined;
  /** Its cases were listed before. */
  readonly again: boolean;
  readonly text: Prose;
  readonly cases: readonly CaseRead[];
  readonly span: Span;
}

/** A lesson as read. Nothing is done on a cube or searched for yet: see ProvedLesson (prove.ts). */
export interface Lesson {
  readonly source: Source;
  /** Undefined only where a lesson without one was read with problems. */
  readonly title: TextLine | undefined;
  readonly club: TextLine | undefined;
  readonly course: TextLine | undefined;
  readonly audience: TextLine | undefined;
  readonly step: Step;
  readonly language: 'en';
  /** The colours of the cubes, held one fixed way. */
  readonly scheme: FaceColours;
  readonly hold: Hold;
  readonly colours: FaceColours;
  /** left: to be printed mirrored. */
  readonly hand: LeadingHand;
  readonly wide: WideSpelling;
  /** The club's words for some of ours. */
  readonly clubWords: Readonly<Record<string, string>>;
  readonly shows: { readonly undo: boolean; readonly states: boolean; readonly why: boolean };
  /** Ours, and those of the club in their place or beside them. */
  readonly triggers: TriggerList;
  readonly hands: HandModel;
  /** How solutions are chosen for cases that list none. */
  readonly choose: (typeof CHOICES)[number];
  /** Whether a shortest solution is added where none is listed. */
  readonly addShortest: boolean;
  readonly claims: readonly LessonClaim[];
  /** Empty where the lesson names none. */
  readonly families: readonly string[];
  /** Where they are named. */
  readonly familySpan: Span;
  /** In the order in which they apply. */
  readonly rules: readonly LessonRule[];
  readonly facts: readonly LessonFact[];
  /** Undefined if no cards are wanted; else over which edge the paper is turned. */
  readonly cards: 'long' | 'short' | undefined;
  /** Undefined if no running order is wanted. */
  readonly plan: { readonly minutes: number; readonly span: Span } | undefined;
  readonly text: Prose;
  readonly watch: Prose;
  readonly parts: readonly Part[];
  /** Undefined: no practice paper is made. */
  readonly practice: PracticeRequest | undefined;
}

/** Every text of a lesson, in the order of its parts. */
export const textsOf = (lesson: Lesson): (TextLine | Paragraph)[] =>
  [
    lesson.title,
    ...lesson.text,
    ...lesson.watch,
    ...lesson.rules.flatMap(({ say }) => say),
    ...lesson.parts.flatMap((part) => [
      part.heading,
      ...part.text,
      ...part.cases.flatMap((c) => [c.name, ...c.watch, ...c.solutions.flatMap((s) => s.remark)]),
    ]),
  ].filter((text) => text !== undefined);
