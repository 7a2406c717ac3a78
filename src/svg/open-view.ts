/**
 * The open view: looking straight down, U in the middle, the four side faces folded outwards as flaps that flare until
 * they meet along the diagonals. All but the bottom is seen, and a piece on two or three faces stays in one piece.
 */
import type { Face } from '../cube/faces.ts';
import { type Projection, projectionOf, tilesOf } from './projection.ts';
import type { Point } from './scene.ts';
import { point } from './shapes.ts';

const SIZE = 100;
/**
 * Distances of the rows' borders from the middle: U ends at the first, each flap has three rows beyond. Rows grow
 * outwards, since the bottom row is where pieces are stuck and lies farthest from where the eye begins.
 */
const BORDERS = [20.7, 29.7, 38.9, 48.6] as const;

/** Where the flap's own "outwards" and "along its row" point to on paper. Columns count as one looks at that face. */
const FLAPS: Readonly<Partial<Record<Face, { out: Point; along: Point }>>> = {
  F: { out: { x: 0, y: 1 }, along: { x: 1, y: 0 } },
  B: { out: { x: 0, y: -1 }, along: { x: -1, y: 0 } },
  R: { out: { x: 1, y: 0 }, along: { x: 0, y: -1 } },
  L: { out: { x: -1, y: 0 }, along: { x: 0, y: 1 } },
};

const onTop = (row: number, column: number): Point => {
  const third = (n: number): number => SIZE / 2 + BORDERS[0] * ((2 * n) / 3 - 1);
  return point(third(column), third(row));
};

const onFlap = ({ out, along }: { out: Point; along: Point }, row: number, column: number): Point => {
  const from = BORDERS[row]!;
  const aside = from * ((2 * column) / 3 - 1);
  return point(SIZE / 2 + out.x * from + along.x * aside, SIZE / 2 + out.y * from + along.y * aside);
};

const squareOf = (at: (row: number, column: number) => Point) => (row: number, column: number) => [
  at(row, column),
  at(row, column + 1),
  at(row + 1, column + 1),
  at(row + 1, column),
];

const FLAP_LETTER = 0.78;
const flap = (face: Face) =>
  tilesOf(
    squareOf((row, column) => onFlap(FLAPS[face]!, row, column)),
    (row) => (BORDERS[row + 1]! - BORDERS[row]!) * FLAP_LETTER,
  );

export const OPEN_VIEW: Projection = projectionOf(SIZE, SIZE, {
  U: tilesOf(squareOf(onTop), () => 9),
  F: flap('F'),
  R: flap('R'),
  B: flap('B'),
  L: flap('L'),
});
