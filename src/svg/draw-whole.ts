/** The open view with every sticker in its colour: how a cube looks. */

import type { Cube } from '../cube/cube.ts';
import { stickersOf } from '../cube/stickers.ts';
import { describeHold } from './describe-hold.ts';
import { cubeEdges, ground, type Look, letters, seenStickers } from './marks.ts';
import { OPEN_VIEW } from './open-view.ts';
import type { Scene } from './scene.ts';

const SIDES = ['F', 'R', 'B', 'L'] as const;

/** The top and the row below it in words: what is left to see once two layers are solved. */
function describeTop(cube: Cube, { colours, words }: Look): string {
  const stickers = stickersOf(cube);
  const row = (face: string, rows: readonly number[]): string[] =>
    stickers.filter((s) => s.face === face && rows.includes(s.row)).map((s) => words.colours[colours[s.colour]].name);
  const sides = Object.fromEntries(SIDES.map((side) => [side, row(side, [0])])) as Record<
    'F' | 'R' | 'B' | 'L',
    string[]
  >;
  return words.practice.drawing.top(row('U', [0, 1, 2]), sides);
}

/** All stickers that the open view shows, in their colours. */
export function drawWhole(cube: Cube, look: Look): Scene {
  // A centre's role is the one that is drawn in full colour.
  const stickers = seenStickers(cube, OPEN_VIEW, () => 'centre');
  return {
    width: OPEN_VIEW.width,
    height: OPEN_VIEW.height,
    marks: [...stickers.map((s) => ground(s, look)), ...cubeEdges(OPEN_VIEW, look.ink), ...letters(stickers, look)],
    description: `${describeHold(cube, look.colours, look.words)} ${describeTop(cube, look)}`,
  };
}
