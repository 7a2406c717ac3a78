/** All drawings there are: a cube and what to stress on it -> a scene. */
import { type Cube, homeOf, type Piece, solvedCube } from '../cube/cube.ts';
import { stickersOf } from '../cube/stickers.ts';
import type { Words } from '../words/words.ts';
import { type Drawn, describeHold, type Emphasis } from './emphasis.ts';
import type { Look } from './marks.ts';
import * as marks from './marks.ts';
import { BLACK, type Ink, PALETTES } from './palette.ts';
import type { Label, Polygon, Scene } from './scene.ts';
import { PROJECTIONS, type ViewName } from './views.ts';

const QUIET = { bodies: [], target: [], framed: [] } as const;

function draw(cube: Cube, view: ViewName, emphasis: Emphasis, look: Look, description: string): Scene {
  const projection = PROJECTIONS[view];
  const { roleOf, bodies, target, framed } = emphasis;
  const stickers = marks.seenStickers(cube, projection, roleOf);
  const main = stickers.filter((s) => s.role === 'main');
  const holes = marks.placeOutlines(projection, cube, target);
  return {
    width: projection.width,
    height: projection.height,
    marks: [
      ...stickers.map((s) => marks.ground(s, look)),
      ...holes.map((outline) => marks.hole(outline, look.ink)),
      ...marks.cubeEdges(projection, look.ink),
      ...framed.flatMap((places) => marks.placeOutlines(projection, cube, places)).map(marks.stuckLine),
      ...holes.map(marks.targetLine),
      ...bodies.flatMap((piece) =>
        marks.pieceMarks(
          main.filter((s) => s.piece === piece),
          look,
        ),
      ),
      ...marks.letters([...stickers.filter((s) => s.role === 'centre'), ...main], look),
    ],
    description,
  };
}

/**
 * A case as the viewer sees it now: what is to be brought home stands out, the place that waits for it is empty with a
 * dashed line around, places that it is stuck in have a thin line around, the rest is quiet. The open view shows all but
 * the bottom and is 100 by 100 units; the corner view shows the top, front and right, 100 by 114. Pieces out of sight are
 * still in the description.
 */
export const drawCase = (cube: Cube, drawn: Drawn, view: ViewName, look: Look): Scene =>
  draw(cube, view, drawn.emphasis(cube), look, drawn.describe(cube, look.colours, look.words));

/** How to hold the cube, for the head of a page: the corner view, the cross down, two layers solved, the top not minded. */
export function drawHold(look: Look): Scene {
  const cube = solvedCube();
  const roleOf: Emphasis['roleOf'] = ({ piece }) =>
    piece === undefined ? 'centre' : homeOf(piece).includes('U') ? 'other' : 'kept';
  return draw(cube, 'corner', { ...QUIET, roleOf }, look, describeHold(cube, look.colours, look.words));
}

/** One piece on an otherwise grey cube, in the open view: an answer to "where is it?". */
export const drawPlace = (cube: Cube, asked: Piece | undefined, look: Look, description: string): Scene => {
  const roleOf: Emphasis['roleOf'] = ({ piece }) =>
    piece === undefined ? 'centre' : piece === asked ? 'main' : 'other';
  return draw(cube, 'open', { ...QUIET, roleOf, bodies: asked === undefined ? [] : [asked] }, look, description);
};

/** The open view with nothing on it but the centres, to mark a piece on. `description` says what is to be marked. */
export const drawBlank = (look: Look, description: string): Scene =>
  drawPlace(solvedCube(), undefined, look, description);

const SIDES = ['F', 'R', 'B', 'L'] as const;

/** The top and the row below it in words: what is left to see once two layers are solved. */
function describeTop(cube: Cube, { colours, words }: Look): string {
  const stickers = stickersOf(cube);
  const row = (face: string, rows: readonly number[]): string[] =>
    stickers.filter((s) => s.face === face && rows.includes(s.row)).map((s) => words.colours[colours[s.colour]].name);
  const sides = Object.fromEntries(SIDES.map((side) => [side, row(side, [0])]));
  return words.practice.drawing.top(row('U', [0, 1, 2]), sides as Record<(typeof SIDES)[number], string[]>);
}

/** The open view with every sticker in its colour: how a cube looks. */
export const drawWhole = (cube: Cube, look: Look): Scene =>
  draw(
    cube,
    'open',
    // A centre's role is the one that is drawn in full colour.
    { ...QUIET, roleOf: () => 'centre' },
    look,
    `${describeHold(cube, look.colours, look.words)} ${describeTop(cube, look)}`,
  );

const LEGEND_SIZE = 9.5;
/** Under words: the grid is only hinted at. */
const FAINT = { colour: '#dcdad5', width: 0.4 } as const;

/** How to read the open view, for its first use on a sheet: an empty one with a word on each face. */
export function openViewLegend(words: Words, ink: Ink): Scene {
  const { width, height, tiles } = PROJECTIONS.open;
  const sides = ['U', ...SIDES] as const;
  const fill = PALETTES[ink].paper;
  const grid = sides.flatMap((side) =>
    tiles[side]!.map(({ outline }): Polygon => ({ kind: 'polygon', points: outline, fill, stroke: FAINT })),
  );
  const labels = sides.map((side): Label => {
    const text = words.drawing.legend[side];
    return { kind: 'label', text, ...tiles[side]![4]!.middle, size: LEGEND_SIZE, colour: BLACK };
  });
  const description = words.drawing.legendDescription;
  return { width, height, marks: [...grid, ...marks.cubeEdges(PROJECTIONS.open, ink), ...labels], description };
}
