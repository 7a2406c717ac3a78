/**
 * A scene is the one description of a drawing. Two thin backends write it: svg.js for SVG files (write-svg.ts)
 * and pdfkit for pages (src/layout/pdf.ts). Nothing in a scene knows about cubes.
 *
 * Units are the scene's own; the origin is at the top left, y grows downwards. A backend scales the whole to the
 * width it is given, lines and labels along with it.
 */
export interface Scene {
  readonly width: number;
  readonly height: number;
  /** Painted in this order: later marks cover earlier ones. */
  readonly marks: readonly Mark[];
  /** What the drawing shows, in words, for those who cannot see it. */
  readonly description: string;
}

/** In scene units. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The line around a mark, or along it. */
export interface Stroke {
  /** `#rrggbb`. */
  readonly colour: string;
  /** In scene units. */
  readonly width: number;
  /** Lengths of dash and gap in scene units; unbroken when left out. */
  readonly dash?: readonly [number, number];
}

/** A closed shape. Corners are joined round. */
export interface Polygon {
  readonly kind: 'polygon';
  readonly points: readonly Point[];
  /** `#rrggbb`; not filled when left out. */
  readonly fill?: string;
  readonly stroke?: Stroke;
}

/** An open line through its points, with round ends and joins. */
export interface Line {
  readonly kind: 'line';
  readonly points: readonly Point[];
  readonly stroke: Stroke;
}

/** A short text, centred on (x, y) both ways; set in the semibold sans of the page. */
export interface Label {
  readonly kind: 'label';
  readonly text: string;
  readonly x: number;
  readonly y: number;
  /** Font size in scene units. */
  readonly size: number;
  /** `#rrggbb`. */
  readonly colour: string;
}

export type Mark = Polygon | Line | Label;
