/** How to read the open view, for its first use on a sheet: an empty one with a word on each face. */
import type { Words } from '../words/words.ts';
import { cubeEdges } from './marks.ts';
import { OPEN_VIEW } from './open-view.ts';
import { BLACK, type Ink, PALETTES } from './palette.ts';
import type { Label, Polygon, Scene } from './scene.ts';

const SIZE = 9.5;
/** Under words: the grid is only hinted at. */
const FAINT = { colour: '#dcdad5', width: 0.4 } as const;
const SIDES = ['U', 'F', 'R', 'B', 'L'] as const;

/** Which side of the open view is which, 100 by 100 units. */
export function openViewLegend(words: Words, ink: Ink): Scene {
  const grid = SIDES.flatMap((side) =>
    OPEN_VIEW.tiles[side]!.map(
      ({ outline }): Polygon => ({ kind: 'polygon', points: outline, fill: PALETTES[ink].paper, stroke: FAINT }),
    ),
  );
  const labels = SIDES.map((side): Label => {
    const text = words.drawing.legend[side];
    return { kind: 'label', text, ...OPEN_VIEW.tiles[side]![4]!.middle, size: SIZE, colour: BLACK };
  });
  const { width, height } = OPEN_VIEW;
  const description = words.drawing.legendDescription;
  return { width, height, marks: [...grid, ...cubeEdges(OPEN_VIEW, ink), ...labels], description };
}
