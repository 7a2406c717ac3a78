/** What an exercise is, before and after it is proved sound. How it is worded is the sheets' affair. */

import type { Cube } from '../cube/cube.ts';
import type { Face } from '../cube/faces.ts';
import type { Place } from '../cube/spots.ts';
import type { Turn } from '../cube/turns.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { ExerciseKind } from '../lesson/practice.ts';
import type { ProvedLessonRule } from '../lesson/prove-rules.ts';
import type { AskedPiece } from '../steps/practice-part.ts';
import type { Subject } from '../steps/subject.ts';

/** What a choice says. */
export type Option =
  | { readonly says: 'turns'; readonly turns: readonly Turn[] }
  /** An answer of one of the step's own questions. */
  | { readonly says: 'word'; readonly word: string }
  /** A row of a lesson's table of rules; `statements`: all that it must see to stand alone, as they are printed. */
  | {
      readonly says: 'rule';
      readonly rule: ProvedLessonRule;
      readonly lesson: Lesson;
      readonly statements: readonly string[];
    };

interface Common {
  readonly kind: ExerciseKind;
  /** Two exercises with one key are the same to a student. */
  readonly key: string;
  /** In points: see difficulty.ts. */
  readonly difficulty: number;
  /** On a cube where all that the case is set up on is solved. */
  readonly setup: readonly Turn[];
  /** After the set-up, from a solved cube. */
  readonly subject: Subject;
}

/** Turns that solve the case are asked for; any that do are right. */
export interface SolveExercise extends Common {
  readonly form: 'solve';
  readonly recommended: readonly Turn[];
  /** One of the fewest turns there are, the easiest of them; an exhaustive search found it. */
  readonly shortest: readonly Turn[];
}

/** One turn in a sequence that is wrong, from 1, and what it should have been. */
export interface Slip {
  readonly at: number;
  readonly was: Turn;
  readonly now: Turn;
}

/** A letter is asked for, or all letters in their order. */
export interface ChoiceExercise extends Common {
  readonly form: 'choice';
  readonly options: readonly Option[];
  /** Indices of the right options: one, or all of them in their order where they are to be put in order. */
  readonly right: readonly number[];
  /** Of the option that is right to name, where the question is which one is wrong. */
  readonly slip?: Slip;
}

/** Where a piece comes to by some turns is asked for. */
export interface PlaceExercise extends Common {
  readonly form: 'place';
  readonly asked: AskedPiece;
  /** Done after the set-up. */
  readonly turns: readonly Turn[];
  /** The cube after them. */
  readonly after: Cube;
  /** Where the piece is then, as the viewer names places. */
  readonly at: Place;
  /** Where its telling sticker looks: the one that is up or down at home, else the one in front or behind. */
  readonly faces: Face;
}

/** Told apart by `form`; what is asked is in `kind`. */
export type Exercise = SolveExercise | ChoiceExercise | PlaceExercise;
