/** What a view of the cube is: where each sticker that it shows lies on paper. */
import type { Face } from '../cube/faces.ts';
import type { Point } from './scene.ts';
import { clockwise, inset, middle, unionOutline } from './shapes.ts';

export interface Tile {
  readonly outline: readonly Point[];
  /** The outline moved inwards: a sticker of the pair, with black around it. */
  readonly inner: readonly Point[];
  readonly middle: Point;
  /** Size of a letter that stands well inside. */
  readonly letterSize: number;
}

export interface Projection {
  readonly width: number;
  readonly height: number;
  /** Index: 3 * row + column, as stickersOf counts; no entry for a face that cannot be seen. */
  readonly tiles: Readonly<Partial<Record<Face, readonly Tile[]>>>;
  /** One outline a face: the edges of the cube, as far as they are seen. */
  readonly faces: readonly (readonly Point[])[];
}

/** How far a sticker of the pair stays inside its place. */
const GAP = 0.95;

/** The nine tiles of a face, from a function that gives the upper left corner of the sticker at (row, column). */
export const tilesOf = (at: (row: number, column: number) => Point, letterSize: (row: number) => number): Tile[] =>
  Array.from({ length: 9 }, (_, i) => {
    const [row, column] = [Math.floor(i / 3), i % 3];
    const outline = clockwise([at(row, column), at(row, column + 1), at(row + 1, column + 1), at(row + 1, column)]);
    return { outline, inner: inset(outline, GAP), middle: middle(outline), letterSize: letterSize(row) };
  });

export const projectionOf = (width: number, height: number, tiles: Projection['tiles']): Projection => ({
  width,
  height,
  tiles,
  faces: Object.values(tiles).flatMap((face) => unionOutline(face.map((t) => t.outline))),
});
