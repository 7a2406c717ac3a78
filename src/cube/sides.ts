/** The same turns as they are called from another side of the cube. */
import type { Face } from './faces.ts';
import { OTHER_SIDES, turnsFrom } from './other-holds.ts';
import { mirror, type Turn, turnOf } from './turns.ts';
import { centreAt, STRAIGHT, type View } from './view.ts';

/** Clockwise from above. */
export const SIDES: readonly Face[] = ['F', 'L', 'B', 'R'];

/** What a face is called when the cube has been turned by quarter turns about U, clockwise: F becomes L. */
export const faceFromTheSide = (face: Face, quarters: number): Face =>
  SIDES.includes(face) ? SIDES[(SIDES.indexOf(face) + quarters + 4) % 4]! : face;

/** By quarters: the view that has F where one who looks straight has `faceFromTheSide('F', quarters)`. */
const VIEWS: readonly View[] = [0, 1, 2, 3].map(
  (quarters) => [STRAIGHT, ...OTHER_SIDES].find((view) => centreAt(view, 'F') === faceFromTheSide('F', quarters))!,
);

/** Turns likewise, slices and rotations too; 0 to 3 quarters. */
export const fromTheSide = (turns: readonly Turn[], quarters: number): Turn[] =>
  turns.map((t) =>
    t.kind === 'face'
      ? turnOf('face', faceFromTheSide(t.letter as Face, quarters), t.quarters)
      : turnsFrom([t], VIEWS[quarters]!)[0]!,
  );

/** From four sides, and the same in a mirror. */
export const everySide = (turns: readonly Turn[]): Turn[][] =>
  [turns, mirror(turns)].flatMap((some) => [0, 1, 2, 3].map((quarters) => fromTheSide(some, quarters)));
