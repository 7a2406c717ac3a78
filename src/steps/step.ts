/**
 * A step of the solve: what a lesson can be about. A step is a folder beside this file and a line in steps.ts; nothing above
 * this floor knows what it is made of. Each room that asks something of a step asks it by a part of its own.
 */

import type { Face } from '../cube/faces.ts';
import type { Answer } from '../cube/search/answer.ts';
import type { Place } from '../cube/spots.ts';
import type { Turn } from '../cube/turns.ts';
import type { Language } from '../words/languages.ts';
import type { FindPart } from './find-part.ts';
import type { LessonPart } from './lesson-part.ts';
import type { MarkingPart } from './marking-part.ts';
import type { PhasesPart } from './phases-part.ts';
import type { PracticePart } from './practice-part.ts';
import type { RulePart } from './rule-part.ts';
import type { SheetPart } from './sheet-part.ts';
import type { Subject, Where } from './subject.ts';

/** Why a set-up gives no case of the step. */
export type SetUpFault =
  /** Ends with another centre down. */
  | { readonly fault: 'rotates'; readonly down: Face }
  /** Leaves what is asked about where the step cannot name it. */
  | { readonly fault: 'hides' }
  /** Leaves pieces of the base unsolved: their home places. */
  | { readonly fault: 'breaks-base'; readonly broken: readonly Place[] };

/** Whether a set-up gives no case. */
export const isFault = (done: Subject | SetUpFault): done is SetUpFault => 'fault' in done;

/** What a step of the solve tells the rooms above it. */
export interface Step {
  /** As a lesson writes it after `step:`. */
  readonly name: string;
  /** In the order in which they are listed. */
  readonly families: readonly string[];
  /** What is printed of this step alone: a table a language, which the step alone reads (languages.ts). */
  readonly words: Readonly<Record<Language, unknown>>;
  /** What the lesson format has of it. */
  readonly lesson: LessonPart;
  /** What practice papers ask of it. */
  readonly practice: PracticePart;
  /** What marking asks of it. */
  readonly marking: MarkingPart;
  /** Why its solutions work, if it can tell. */
  readonly phases?: PhasesPart;
  /** What sheets say of it. */
  readonly sheets: SheetPart;
  /** What the commands that search ask of it. */
  readonly find: FindPart;
  /** Rules of thumb for it; left out: lessons about it have none. */
  readonly rules?: RulePart;
  /** What a lesson that says nothing of it means. */
  readonly usual: Where;
  /** The case that turns give on a solved cube; the one place where a set-up is done. */
  readonly after: (setup: readonly Turn[], where: Where) => Subject | SetUpFault;
  /** The case at an address, all that is not asked about as solved as can be; undefined if it is none of the step. */
  readonly at: (address: string, where: Where) => Subject | undefined;
  /** The cases of a family, in order, the solved one left out, seen as usual; undefined if there are too many to list. */
  readonly cases: (family: string) => readonly Subject[] | undefined;
  /** The case after each turn of the top, itself first; one for each that looks different. */
  readonly upToTop: (subject: Subject) => readonly Subject[];
  /** The same case as it is seen once the cube has been turned by quarter turns about U: own slot FR, FL, BL, BR. */
  readonly turned: (subject: Subject, quarters: number) => Subject;
  /** In a mirror at the left or right. */
  readonly mirrored: (subject: Subject) => Subject;
  /** All shortest solutions, and those of up to `longer` turns more; searched once for each subject. */
  readonly solutions: (subject: Subject, longer: number) => Answer;
  /** The fewest face turns, and whether the search was whole. */
  readonly shortest: (subject: Subject) => { readonly shortest: number | undefined; readonly proved: boolean };
  /** Turns that bring the case about and give none of `avoid` away; none known: not a shortest solution. */
  readonly setUp: (subject: Subject, avoid: readonly (readonly Turn[])[], wanted?: SetUpWanted) => readonly Turn[];
}

export interface SetUpWanted {
  /** Those that may be taken back for it, of up to so many turns over the shortest; left out: all, as searched. */
  readonly solutions?: (longer: number) => readonly (readonly Turn[])[];
  /** It has so many outer block turns, where a set-up as long can be made. */
  readonly least?: number;
}
