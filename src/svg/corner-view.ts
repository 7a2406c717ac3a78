/**
 * The corner view: the faces U, F and R, in parallel projection. The cube is turned a little less than half to the
 * left, so that F is wider than R and one sees at once which of them is the front.
 */
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

/** Which way is down on each face, as it is looked at. */
const DOWN: Readonly<Partial<Record<Face, Face>>> = { U: 'F', F: 'D', R: 'D' };

function face(name: Face) {
  const down = NORMAL[DOWN[name]!];
  const right = cross(NORMAL[name], down);
  const at = (row: number, column: number): Point =>
    project(sum(scaled(NORMAL[name], 1.5), scaled(down, row - 1.5), scaled(right, column - 1.5)));
  const square = (row: number, column: number) => [
    at(row, column),
    at(row, column + 1),
    at(row + 1, column + 1),
    at(row + 1, column),
  ];
  return tilesOf(square, () => (name === 'U' ? 10 : 12));
}

export const CORNER_VIEW: Projection = projectionOf(WIDTH, Math.ceil(HEIGHT), {
  U: face('U'),
  F: face('F'),
  R: face('R'),
});
