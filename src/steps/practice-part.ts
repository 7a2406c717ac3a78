/** What practice papers ask of a step: questions of its own, what makes a case hard to read, what is taken for it. */
import type { Colour } from '../cube/colours.ts';
import type { Piece } from '../cube/cube.ts';
import type { Face } from '../cube/faces.ts';
import type { Place } from '../cube/spots.ts';
import type { KindWords } from '../words/said.ts';
import type { Words } from '../words/words.ts';
import type { Subject } from './subject.ts';

type Hand = 'right' | 'left';

/** A choice between words, about a case as it lies there. */
export interface OwnQuestion {
  /** As a lesson asks for it: `likeness`. */
  readonly name: string;
  /** What editors say of it. */
  readonly about: string;
  /** What there is to choose from; claims name them so. */
  readonly answers: readonly string[];
  /** The right one of them; undefined where the question is none for the case. */
  readonly right: (subject: Subject) => string | undefined;
  /** Points for what has to be seen of the case; left out: for all of it. */
  readonly seeing?: (subject: Subject, hand: Hand) => number;
}

/** What a lesson writes under `practice: only` in keys of the step, and their values. */
export type OwnFilter = Readonly<Record<string, unknown>>;

/** A piece that can be asked for: where is it after some turns? */
export interface AskedPiece {
  /** As claims name it: `corner`. */
  readonly name: string;
  readonly piece: Piece;
}

/** Where a piece is, and where its sticker of one colour looks, as the viewer sees it. */
export interface PieceAt {
  readonly name: string;
  readonly at: Place;
  readonly colour: Colour;
  readonly faces: Face;
}

/** What papers and keys say of a step alone, in one language. */
export interface PracticeWordsOfStep {
  /** Heading and question of each kind of its own, and of `solve`. */
  readonly kinds: { readonly [kind: string]: KindWords };
  /** Answers of its own questions. */
  readonly answers: { readonly [answer: string]: string };
  /** Of each piece that is asked for: what stands at the empty picture, and describes it. */
  readonly pieces: { readonly [name: string]: { readonly mark: string; readonly blank: string } };
  /** How every set-up begins. */
  readonly start: string;
  /** What every right answer to an item to solve has in common. */
  readonly common: string;
}

/** A case with something more that need not be solved. */
export interface Opened {
  readonly subject: Subject;
  /** What that is: `BL`. */
  readonly open: string;
}

/** What papers are made of besides cases and solutions. */
export interface PracticePart {
  /** In the order in which they stand on a paper; before those that all steps share. */
  readonly questions: readonly OwnQuestion[];
  readonly words: (words: Words) => PracticeWordsOfStep;
  /** Points for finding and reading the case; ten are one easy turn of the top. */
  readonly seeing: (subject: Subject, hand: Hand) => number;
  /** What papers should have of each kind, besides cases and sides: `corner top`. */
  readonly spread: (subject: Subject) => readonly string[];
  /** What a hasty look takes for it, a turn of the top apart: the nearest, as plausible each; then others, in order. */
  readonly lookAlikes: (subject: Subject) => { readonly near: readonly Subject[]; readonly far: readonly Subject[] };
  readonly pieces: (subject: Subject) => readonly AskedPiece[];
  readonly pieceSaid: (piece: PieceAt, words: Words) => string;
  /** Sides that are practised; none named: those that the lesson shows. */
  readonly sidesWanted: (filter: OwnFilter) => readonly string[];
  readonly isWanted: (subject: Subject, filter: OwnFilter) => boolean;
  readonly mirroredFilter: (filter: OwnFilter) => OwnFilter;
  /** With one thing more open, the `pick`th (as often round as need be); undefined if nothing can be. */
  readonly opened?: (subject: Subject, pick: number) => Opened | undefined;
}
