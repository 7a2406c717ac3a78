/**
 * What blocks become once measured: a list of pieces, one below the other. A strip is never parted; glue is white
 * that vanishes where a page ends. Pages end only after a strip that is not glued to what follows.
 */
import type { Block, Pt } from './blocks.ts';
import type { Area, Face, Item } from './frames.ts';
import { inks, type TypeStyle } from './type.ts';

/** Where a strip's marks go when it is placed: the page being filled. */
export interface Sink {
  readonly items: Item[];
  readonly areas: Area[];
  readonly claims: Set<string>;
}

/** Draws with the top left corner at (x, y); `height` is the room given, never less than the box's own height. */
export type Place = (sink: Sink, x: Pt, y: Pt, height: Pt) => void;

export interface Box {
  readonly height: Pt;
  readonly place: Place;
}

export interface Strip extends Box {
  readonly kind: 'strip';
  /** The next strip must stand on the same page. */
  readonly glued: boolean;
  /** Named if the strip fits no page. */
  readonly block: Block;
}

export interface Glue {
  readonly kind: 'glue';
  readonly height: Pt;
  /** Draws through the white, where a line beside it goes on. */
  readonly place?: Place;
}

/** An empty page. */
export const emptySink = (items: Item[] = []): Sink => ({ items, areas: [], claims: new Set() });

/** Sums of many fractions are never exact: what is too long by less still fits. */
export const slack = 0.01;

/** A length that is negative or no number counts as none. */
export const length = (n: Pt): Pt => (Number.isFinite(n) && n > 0 ? n : 0);

export type Piece = Strip | Glue;

export const glue = (height: Pt): Glue => ({ kind: 'glue', height });

export const strip = (block: Block, height: Pt, place: Place, glued = false): Strip => ({
  kind: 'strip',
  height,
  place,
  glued,
  block,
});

/** All the pieces as one box, glue kept. */
export const solid = (pieces: readonly Piece[]): Box => ({
  height: pieces.reduce((sum, piece) => sum + piece.height, 0),
  place: (sink, x, y) => {
    let top = y;
    for (const piece of pieces) {
      piece.place?.(sink, x, top, piece.height);
      top += piece.height;
    }
  },
});

/** Two decimals of a point, 3.5 micrometres: finer than any printer, and a fifth smaller files than in full. */
export const round = (n: Pt): Pt => Math.round(n * 100) / 100;

export const area = (x: Pt, y: Pt, width: Pt, height: Pt): Area => ({
  x: round(x),
  y: round(y),
  width: round(width),
  height: round(height),
});

export const faceOf = ({ font, size, ink }: TypeStyle): Face => ({ font, size, colour: inks[ink] });

/** `y` is the baseline. Without a part it is decoration. */
export const textAt = (face: Face, text: string, x: Pt, y: Pt, part?: number): Item => {
  const { font, size, colour } = face;
  return { kind: 'text', x: round(x), y: round(y), text, font, size, colour, ...(part !== undefined && { part }) };
};

export const lineAt = (
  x1: Pt,
  y1: Pt,
  x2: Pt,
  y2: Pt,
  line: { readonly width: Pt; readonly colour: string },
): Item => ({
  kind: 'line',
  x1: round(x1),
  y1: round(y1),
  x2: round(x2),
  y2: round(y2),
  ...line,
});
