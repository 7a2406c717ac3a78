/** What can be seen of a cube: which sticker is where. */
import { CORNER_PIECES, type Cube, homeSpot, PIECES, type Piece } from './cube.ts';
import { cross, FACES, type Face, NORMAL, scaled, sum, type Vector } from './faces.ts';
import { cornerAt, cornerSpot, edgeAt, edgeSpot, faceOfCornerSpot, faceOfEdgeSpot } from './spots.ts';
import { centreAt } from './view.ts';

/** One of the 54 stickers as the viewer sees it. */
export interface Sticker {
  /** The viewer's face on which it is seen, and where: rows from the top, columns from the left, 0..2. */
  readonly face: Face;
  readonly row: number;
  readonly column: number;
  /** The piece that bears it; none for a centre. */
  readonly piece: Piece | undefined;
  /** The face that it belongs on: its colour. */
  readonly colour: Face;
}

/**
 * How each face is looked at: which way is down. The net is the usual cross: U above F, L F R B in a row, D below F.
 */
const DOWN: Readonly<Record<Face, Face>> = { U: 'F', L: 'D', F: 'D', R: 'D', B: 'D', D: 'B' };

/** The position of the piece behind a sticker. */
function positionOf(face: Face, row: number, column: number): Vector {
  const down = NORMAL[DOWN[face]];
  const right = cross(NORMAL[face], down);
  return sum(NORMAL[face], scaled(down, row - 1), scaled(right, column - 1));
}

/** By spot, the colour and bearer of the sticker that is there, the spots named by the centres. */
function stickersBySpot(cube: Cube): {
  corner: { piece: Piece; colour: Face }[];
  edge: { piece: Piece; colour: Face }[];
} {
  const corner: { piece: Piece; colour: Face }[] = [];
  const edge: { piece: Piece; colour: Face }[] = [];
  for (let piece = 0; piece < PIECES; piece++) {
    const faces = piece < CORNER_PIECES ? 3 : 2;
    const spot = cube.spots[piece]!;
    const place = spot - (spot % faces);
    for (let k = 0; k < faces; k++) {
      const at = place + ((spot + k) % faces);
      const home = homeSpot(piece) + k;
      if (faces === 3) corner[at] = { piece, colour: faceOfCornerSpot(home) };
      else edge[at] = { piece, colour: faceOfEdgeSpot(home) };
    }
  }
  return { corner, edge };
}

/** All 54 stickers: U, D, R, L, F, B, each row by row. */
export function stickersOf(cube: Cube): Sticker[] {
  const bySpot = stickersBySpot(cube);
  const out: Sticker[] = [];
  for (const face of FACES) {
    for (let row = 0; row < 3; row++) {
      for (let column = 0; column < 3; column++) {
        const position = positionOf(face, row, column);
        const touched = FACES.filter((f) => sum(position, NORMAL[f]).some((n) => Math.abs(n) === 2));
        const centres = touched.map((f) => centreAt(cube.view, f));
        const here = centreAt(cube.view, face);
        const sticker =
          touched.length === 3
            ? bySpot.corner[cornerSpot(cornerAt(centres), here)]
            : touched.length === 2
              ? bySpot.edge[edgeSpot(edgeAt(centres), here)]
              : undefined;
        out.push({ face, row, column, piece: sticker?.piece, colour: sticker?.colour ?? here });
      }
    }
  }
  return out;
}
