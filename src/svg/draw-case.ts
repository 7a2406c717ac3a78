/** A cube and what to stress on it -> a scene. */
import type { Cube } from '../cube/cube.ts';
import type { PairGoal } from '../steps/pair/slots.ts';
import { CORNER_VIEW } from './corner-view.ts';
import { describeCase } from './describe.ts';
import { markedSlots, pairPieces, rolesFor } from './emphasis.ts';
import {
  cubeEdges,
  ground,
  hole,
  type Look,
  letters,
  pieceMarks,
  seenStickers,
  slotOutlines,
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
 * A case as the viewer sees it now: the pair stands out, its own slot is an empty place with a dashed line around,
 * slots that it is stuck in have a thin line around, the rest is quiet. The open view shows all but the bottom and is
 * 100 by 100 units; the corner view shows the top, front and right, 100 by 114. Pieces out of sight are still in the
 * description.
 */
export function drawCase(cube: Cube, goal: PairGoal, view: ViewName, look: Look): Scene {
  const projection = PROJECTIONS[view];
  const stickers = seenStickers(cube, projection, rolesFor(goal));
  const pair = stickers.filter((s) => s.role === 'pair');
  const { corner, edge } = pairPieces(goal);
  const { target, stuck } = markedSlots(cube, goal);
  const holes = target ? slotOutlines(projection, cube, target) : [];
  return {
    width: projection.width,
    height: projection.height,
    marks: [
      ...stickers.map((s) => ground(s, look)),
      ...holes.map((outline) => hole(outline, look.ink)),
      ...cubeEdges(projection, look.ink),
      ...stuck.flatMap((slot) => slotOutlines(projection, cube, slot)).map(stuckLine),
      ...holes.map(targetLine),
      ...[corner, edge].flatMap((piece) =>
        pieceMarks(
          pair.filter((s) => s.piece === piece),
          look,
        ),
      ),
      ...letters([...stickers.filter((s) => s.role === 'centre'), ...pair], look),
    ],
    description: describeCase(cube, goal, look.colours, look.words),
  };
}
