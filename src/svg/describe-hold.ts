/** How a cube is held, in words. */
import type { FaceColours } from '../cube/colours.ts';
import type { Cube } from '../cube/cube.ts';
import { centreAt } from '../cube/view.ts';
import type { Words } from '../words/words.ts';

/** How the cube is held now: which centres the viewer sees below and in front. */
export const describeHold = (cube: Cube, colours: FaceColours, words: Words): string =>
  words.drawing.hold(colours[centreAt(cube.view, 'D')], colours[centreAt(cube.view, 'F')]);
