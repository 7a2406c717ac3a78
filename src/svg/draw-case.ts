/** A cube and what to stress on it -> a scene. */
import type { Cube } from '../cube/cube.ts';
import { CORNER_VIEW } from './corner-view.ts';
import type { Drawn } from './emphasis.ts';
import {
  cubeEdges,
  ground,
  hole,
  type Look,
  letters,
  pieceMarks,
  placeOutlines,
  seenStickers,
  stuckLine,
  targetLine,
} from './marks.ts';
import { OPEN_VIEW } from './open-view.ts';
import type { Projection } from './projection.ts';
import type { Scene } from './scene.ts';

export const VIEWS = ['corner', 'open'] as const;
export type ViewName = (typeof VIEWS)[number];
const PROJECTIONS: Readonly<Record<ViewName, Projection>> = { corner: CORNER_VIEW, open: OPEN_VIEW };

/**
 * A case as the viewer sees it now: what is to be brought home stands out, the place that waits for it is empty with a
 * dashed line around, places that it is stuck in have a thin line around, the rest is quiet. The open view shows all but
 * the bottom and is 100 by 100 units; the corner view shows the top, front and right, 100 by 114. Pieces out of sight are
 * still in the description.
 */
export function drawCase(cube: Cube, drawn: Drawn, view: ViewName, look: Look): Scene {
  const projection = PROJECTIONS[view];
  const { roleOf, bodies, target, framed } = drawn.emphasis(cube);
  const stickers = seenStickers(cube, projection, roleOf);
  const main = stickers.filter((s) => s.role === 'main');
  const holes = placeOutlines(projection, cube, target);
  return {
    width: projection.width,
    height: projection.height,
    marks: [
      ...stickers.map((s) => ground(s, look)),
      ...holes.map((outline) => hole(outline, look.ink)),
      ...cubeEdges(projection, look.ink),
      ...framed.flatMap((places) => placeOutlines(projection, cube, places)).map(stuckLine),
      ...holes.map(targetLine),
      ...bodies.flatMap((piece) =>
        pieceMarks(
          main.filter((s) => s.piece === piece),
          look,
        ),
      ),
      ...letters([...stickers.filter((s) => s.role === 'centre'), ...main], look),
    ],
    description: drawn.describe(cube, look.colours, look.words),
  };
}
