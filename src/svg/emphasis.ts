/** What the eye should be led to, as a step of the solve says it: drawings know stickers and places, not what is taught. */
import type { FaceColours } from '../cube/colours.ts';
import type { Cube, Piece } from '../cube/cube.ts';
import type { Place } from '../cube/spots.ts';
import type { Sticker } from '../cube/stickers.ts';
import { centreAt } from '../cube/view.ts';
import type { Words } from '../words/words.ts';

/** main: what is to be brought home. kept: pieces that stay solved. centre: names its face. other: does not matter. */
export type Role = 'main' | 'kept' | 'centre' | 'other';

/** What stands out of a picture, and how. */
export interface Emphasis {
  readonly roleOf: (sticker: Pick<Sticker, 'piece'>) => Role;
  /** Pieces drawn as one body with a heavy outline, in the order in which they are painted. */
  readonly bodies: readonly Piece[];
  /** Places emptied and framed by a dashed line, together as one shape; none where nothing waits. */
  readonly target: readonly Place[];
  /** Places framed by a thin line, each list as one shape. */
  readonly framed: readonly (readonly Place[])[];
}

/** What drawings ask of a case, for a cube of it at any moment: before, amid or after its solution. */
export interface Drawn {
  readonly emphasis: (cube: Cube) => Emphasis;
  /** The picture in words, for those who cannot see it. */
  readonly describe: (cube: Cube, colours: FaceColours, words: Words) => string;
}

/** How the cube is held now: which centres the viewer sees below and in front. */
export const describeHold = (cube: Cube, colours: FaceColours, words: Words): string =>
  words.drawing.hold(colours[centreAt(cube.view, 'D')], colours[centreAt(cube.view, 'F')]);
