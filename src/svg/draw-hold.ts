/** How to hold the cube: for the head of a page. */
import { type Cube, homeOf, solvedCube } from '../cube/cube.ts';
import type { Sticker } from '../cube/stickers.ts';
import { type Slot, slotOfPlace } from '../steps/pair/slots.ts';
import { CORNER_VIEW } from './corner-view.ts';
import { describeHold, describeOwnSlot } from './describe.ts';
import type { Role } from './emphasis.ts';
import { cubeEdges, ground, hole, type Look, letters, seenStickers, slotOutlines, targetLine } from './marks.ts';
import type { Scene } from './scene.ts';

function roleOf({ piece }: Sticker): Role {
  if (piece === undefined) return 'centre';
  const place = homeOf(piece);
  return place.includes('D') || slotOfPlace(place) ? 'kept' : 'other';
}

/** The corner view with the cross down, two layers solved, the top not minded; a pair's own slot emptied, if given. */
export function drawHold(look: Look, slot?: Slot): Scene {
  const cube: Cube = solvedCube();
  const stickers = seenStickers(cube, CORNER_VIEW, roleOf);
  const holes = slot ? slotOutlines(CORNER_VIEW, cube, slot) : [];
  const { colours, words } = look;
  return {
    width: CORNER_VIEW.width,
    height: CORNER_VIEW.height,
    marks: [
      ...stickers.map((s) => ground(s, look)),
      ...holes.map((outline) => hole(outline, look.ink)),
      ...cubeEdges(CORNER_VIEW, look.ink),
      ...holes.map(targetLine),
      ...letters(
        stickers.filter((s) => s.role === 'centre'),
        look,
      ),
    ],
    description: [
      describeHold(cube, colours, words),
      ...(slot ? [describeOwnSlot(cube, slot, colours, words)] : []),
    ].join(' '),
  };
}
