/** A lesson as read: complete in itself, every text and every turn understood, nothing yet proved. */
import type { Family } from '../cube/cases.ts';
import type { Colour, FaceColours, Hold } from '../cube/colours.ts';
import type { Slot } from '../cube/goal.ts';
import type { Turn } from '../cube/turns.ts';
import type { Span } from './problem.ts';
import type { Source } from './source.ts';

export type Phrase =
  | { readonly kind: 'plain' | 'strong'; readonly text: string }
  | { readonly kind: 'colour'; readonly colour: Colour }
  | { readonly kind: 'turns'; readonly turns: readonly Turn[] };

export interface Paragraph {
  readonly kind: 'heading' | 'paragraph' | 'item';
  readonly phrases: readonly Phrase[];
  readonly span: Span;
}
export type Prose = readonly Paragraph[];

export interface Solution {
  readonly turns: readonly Turn[];
  readonly remark: Prose;
  readonly span: Span;
}

export interface Case {
  /** From 1, in the order of the file; what is printed. */
  readonly number: number;
  readonly name: string | undefined;
  readonly hold: Hold;
  /** The colours of the viewer's faces in that hold. */
  readonly colours: FaceColours;
  readonly slot: Slot;
  readonly open: readonly Slot[];
  readonly setup: readonly Turn[];
  readonly setupSpan: Span;
  readonly solutions: readonly Solution[];
  readonly watch: Prose;
  readonly span: Span;
}

/** Cases under one heading; those before the first heading have none. */
export interface Part {
  readonly heading: string | undefined;
  readonly text: Prose;
  readonly cases: readonly Case[];
  readonly span: Span;
}

export interface Lesson {
  readonly source: Source;
  readonly title: string;
  readonly club: string | undefined;
  readonly course: string | undefined;
  readonly audience: string | undefined;
  readonly language: 'en';
  readonly hold: Hold;
  readonly colours: FaceColours;
  /** Empty where the lesson names none. */
  readonly families: readonly Family[];
  readonly text: Prose;
  readonly watch: Prose;
  readonly parts: readonly Part[];
}
