/**
 * What blocks become once measured: a list of pieces, one below the other. A strip is never parted; glue is white
 * that vanishes where a page ends. Pages end only after a strip that is not glued to what follows.
 */
import type { Block, Pt } from './blocks.ts';
import type { Area, Item } from './frames.ts';

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

/** The pieces with something more done wherever a strip of them is placed. */
export const onPlacing = (pieces: readonly Piece[], act: (sink: Sink) => void): readonly Piece[] =>
  pieces.map((piece) =>
    piece.kind === 'glue'
      ? piece
      : {
          ...piece,
          place: (sink, x, y, height) => {
            act(sink);
            piece.place(sink, x, y, height);
          },
        },
  );

/** Two decimals of a point, 3.5 micrometres: finer than any printer, and a fifth smaller files than in full. */
export const round = (n: Pt): Pt => Math.round(n * 100) / 100;

export const area = (x: Pt, y: Pt, width: Pt, height: Pt): Area => ({
  x: round(x),
  y: round(y),
  width: round(width),
  height: round(height),
});
