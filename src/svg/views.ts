/** The two views of a cube: where each sticker lies on paper. */
import { cross, type Face, NORMAL, scaled, sum, type Vector } from '../cube/faces.ts';
import { type Projection, projectionOf, tilesOf } from './projection.ts';
import type { Point } from './scene.ts';
import { point } from './shapes.ts';

const WIDTH = 100;
/** Keeps the heaviest line inside the drawing. */
const MARGIN = 1.6;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;
/** How far the cube is turned to the left, and how far down one looks. */
const TURNED = radians(40);
const LOOKING_DOWN = radians(33);

const ACROSS = Math.cos(TURNED) + Math.sin(TURNED);
const CELL = (WIDTH - 2 * MARGIN) / (3 * ACROSS);
const HEIGHT = 3 * CELL * (ACROSS * Math.sin(LOOKING_DOWN) + Math.cos(LOOKING_DOWN)) + 2 * MARGIN;

/** Space to paper: the cube's middle at (0, 0, 0), a sticker 1 wide. */
function project([x, y, z]: Vector): Point {
  const right = x * Math.cos(TURNED) - z * Math.sin(TURNED);
  const near = x * Math.sin(TURNED) + z * Math.cos(TURNED);
  const down = near * Math.sin(LOOKING_DOWN) - y * Math.cos(LOOKING_DOWN);
  return point(WIDTH / 2 + right * CELL, HEIGHT / 2 + down * CELL);
}

/** `below`: which way is down on the face, as it is looked at. */
function faceTowards(name: Face, below: Face) {
  const down = NORMAL[below];
  const right = cross(NORMAL[name], down);
  return tilesOf(
    (row, column) => project(sum(scaled(NORMAL[name], 1.5), scaled(down, row - 1.5), scaled(right, column - 1.5))),
    () => (name === 'U' ? 10 : 12),
  );
}

/**
 * Distances of the rows' borders from the middle of the open view: U ends at the first, each flap has three rows beyond.
 * Rows grow outwards, since the bottom row is where pieces are stuck and lies farthest from where the eye begins.
 */
const BORDERS = [20.7, 29.7, 38.9, 48.6] as const;
const third = (border: number, n: number): number => border * ((2 * n) / 3 - 1);

const FLAP_LETTER = 0.78;

/** Where the flap's own "outwards" and "along its row" point to on paper. Columns count as one looks at that face. */
const flap = (out: Point, along: Point) =>
  tilesOf(
    (row, column) => {
      const from = BORDERS[row]!;
      const aside = third(from, column);
      return point(WIDTH / 2 + out.x * from + along.x * aside, WIDTH / 2 + out.y * from + along.y * aside);
    },
    (row) => (BORDERS[row + 1]! - BORDERS[row]!) * FLAP_LETTER,
  );

export const VIEWS = ['corner', 'open'] as const;
export type ViewName = (typeof VIEWS)[number];

/**
 * corner: the faces U, F and R, in parallel projection. The cube is turned a little less than half to the left, so that F
 * is wider than R and one sees at once which of them is the front. open: looking straight down, U in the middle, the four
 * side faces folded outwards as flaps that flare until they meet along the diagonals. All but the bottom is seen, and a
 * piece on two or three faces stays in one piece.
 */
export const PROJECTIONS: Readonly<Record<ViewName, Projection>> = {
  corner: projectionOf(WIDTH, Math.ceil(HEIGHT), {
    U: faceTowards('U', 'F'),
    F: faceTowards('F', 'D'),
    R: faceTowards('R', 'D'),
  }),
  open: projectionOf(WIDTH, WIDTH, {
    U: tilesOf(
      (row, column) => point(WIDTH / 2 + third(BORDERS[0], column), WIDTH / 2 + third(BORDERS[0], row)),
      () => 9,
    ),
    F: flap({ x: 0, y: 1 }, { x: 1, y: 0 }),
    R: flap({ x: 1, y: 0 }, { x: 0, y: -1 }),
    B: flap({ x: 0, y: -1 }, { x: -1, y: 0 }),
    L: flap({ x: -1, y: 0 }, { x: 0, y: 1 }),
  }),
};
