/**
 * Frames: finished pages, every item placed. The closed set that a writer has to know; it lays out nothing itself.
 * x and y are points from the top left corner of the page; y of a text is its baseline.
 */
import type { Scene } from '../svg/scene.ts';
import type { Origin, Pt, TextRole } from './blocks.ts';

/** The font files of a page. */
export type FontName = 'sans' | 'sans-strong' | 'mono';

/** A part of the document's structure, for the tagged file. Items name the part they belong to by its number. */
export interface Part {
  readonly role: 'Document' | TextRole | 'Figure' | 'Span';
  readonly parent: number | undefined;
  /** Alternative text (figures), or the text to be spoken instead (spans). */
  readonly alt?: string;
  /** An entry of the file's outline that leads to this part. */
  readonly bookmark?: string;
}

interface Placed {
  /** Index into Pages.parts; without it the item is decoration that a screen reader passes over. */
  readonly part?: number;
}

/** How letters look. */
export interface Face {
  readonly font: FontName;
  readonly size: Pt;
  readonly colour: string;
}

export interface PlacedText extends Placed, Face {
  readonly kind: 'text';
  readonly x: Pt;
  readonly y: Pt;
  readonly text: string;
}

export interface PlacedLine extends Placed {
  readonly kind: 'line';
  readonly x1: Pt;
  readonly y1: Pt;
  readonly x2: Pt;
  readonly y2: Pt;
  readonly width: Pt;
  readonly colour: string;
}

/** A box with rounded corners. */
export interface PlacedBox extends Placed, Area {
  readonly kind: 'box';
  readonly radius: Pt;
  readonly fill?: string;
  readonly line?: { readonly colour: string; readonly width: Pt };
}

export interface PlacedScene extends Placed, Area {
  readonly kind: 'scene';
  readonly scene: Scene;
}

export type Item = PlacedText | PlacedLine | PlacedBox | PlacedScene;

/** The area that one whole block or line of text came to fill: what the tests measure overlaps with. */
export interface Area {
  readonly x: Pt;
  readonly y: Pt;
  readonly width: Pt;
  readonly height: Pt;
}

export interface Frame {
  readonly items: readonly Item[];
  /** Areas of the leaf blocks (texts by line, turns, figures, write-lines, rules) on this page. */
  readonly areas: readonly Area[];
  /** Claims printed on this page. */
  readonly claims: readonly string[];
}

/** Pages laid out: everything has its place, in points of 1/72 inch. */
export interface Pages {
  readonly title: string;
  readonly language: string;
  readonly width: Pt;
  readonly height: Pt;
  readonly frames: readonly Frame[];
  /** Part 0 is the document. A parent stands before its children, which stand in reading order. */
  readonly parts: readonly Part[];
}

/** What could not be laid out as asked. A sheet with faults is not written. */
export interface LayoutFault {
  readonly code: 'word-too-wide' | 'missing-glyph' | 'block-too-tall' | 'block-too-wide';
  /** The word, the character or the first words of the block. */
  readonly what: string;
  readonly origin?: Origin;
}
