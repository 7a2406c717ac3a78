/** How to hold the cube: for the head of a page. */
import { type Cube, homeOf, solvedCube } from '../cube/cube.ts';
import type { Sticker } from '../cube/stickers.ts';
import { CORNER_VIEW } from './corner-view.ts';
import { describeHold } from './describe-hold.ts';
import type { Role } from './emphasis.ts';
import { cubeEdges, ground, type Look, letters, seenStickers } from './marks.ts';
import type { Scene } from './scene.ts';

function roleOf({ piece }: Sticker): Role {
  if (piece === undefined) return 'centre';
  const place = homeOf(piece);
  return place.includes('U') ? 'other' : 'kept';
}

/** The corner view with the cross down, two layers solved, the top not minded. */
export function drawHold(look: Look): Scene {
  const cube: Cube = solvedCube();
  const stickers = seenStickers(cube, CORNER_VIEW, roleOf);
  const { colours, words } = look;
  return {
    width: CORNER_VIEW.width,
    height: CORNER_VIEW.height,
    marks: [
      ...stickers.map((s) => ground(s, look)),
      ...cubeEdges(CORNER_VIEW, look.ink),
      ...letters(
        stickers.filter((s) => s.role === 'centre'),
        look,
      ),
    ],
    description: describeHold(cube, colours, words),
  };
}
