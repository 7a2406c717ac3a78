/** Colours of a cube, and how it is held. The puzzle itself knows faces only. */
import { FACES, type Face, OPPOSITE } from './faces.ts';
import { centreAt, type View } from './view.ts';

/** The six colours of most cubes (common practice, no source); another scheme puts them on other faces. */
export const COLOURS = ['white', 'yellow', 'green', 'blue', 'red', 'orange'] as const;
/** A colour of a sticker. */
export type Colour = (typeof COLOURS)[number];

/** The colour of each centre of a cube. As a scheme: of a cube held in one fixed way. */
export type FaceColours = Readonly<Record<Face, Colour>>;

/** Manufacturing convention, from memory: the regulations ask for six distinct colours (3a3) but not which or where. */
export const USUAL_SCHEME: FaceColours = { U: 'white', D: 'yellow', F: 'green', B: 'blue', R: 'red', L: 'orange' };

/** The order in which a scheme is written. */
const SCHEME_FACES: readonly Face[] = ['U', 'F', 'R', 'D', 'B', 'L'];

/** As a scheme is written. */
export const writeScheme = (scheme: FaceColours): string => SCHEME_FACES.map((face) => scheme[face]).join(' ');

/** How to write a scheme, with the usual one as the example. */
export const SCHEME_HINT = `write up front right down back left: ${writeScheme(USUAL_SCHEME)}`;

/** What is wrong with a scheme, in words. */
export interface WrongScheme {
  readonly wrong: string;
}
/** Whether reading a scheme failed; `wrong` says why. */
export const isWrongScheme = (read: FaceColours | WrongScheme): read is WrongScheme => 'wrong' in read;

/** Six colours, each once, of a cube held one fixed way: up, front, right, down, back, left. Capitals do not matter. */
export function readScheme(words: readonly string[]): FaceColours | WrongScheme {
  const colours: Colour[] = [];
  for (const word of words) {
    const colour = COLOURS.find((c) => c === word.toLowerCase());
    if (!colour) return { wrong: `"${word}" is no colour of a scheme` };
    if (colours.includes(colour)) return { wrong: `${colour} stands at two faces` };
    colours.push(colour);
  }
  if (colours.length !== FACES.length) return { wrong: `a scheme has six colours, and here are ${colours.length}` };
  return Object.fromEntries(SCHEME_FACES.map((face, i) => [face, colours[i]])) as unknown as FaceColours;
}

/** The words of a scheme in one text: with commas, spaces or strokes between them. */
export const schemeWords = (text: string): string[] => text.split(/[\s,;/]+/).filter((word) => word !== '');

/** Which colour is up and which in front, on the solved cube before the first turn. */
export interface Hold {
  readonly up: Colour;
  readonly front: Colour;
}

/** The colours of the viewer's faces in a hold; undefined where the two colours are not neighbours. */
export function coloursHeld(scheme: FaceColours, hold: Hold): FaceColours | undefined {
  for (let view: View = 0; view < 24; view++) {
    const at = (face: Face): Colour => scheme[centreAt(view, face)];
    if (at('U') === hold.up && at('F') === hold.front) {
      return Object.fromEntries(FACES.map((face) => [face, at(face)])) as unknown as FaceColours;
    }
  }
  return undefined;
}

/** The colour opposite to one, in a scheme. */
export function oppositeColour(scheme: FaceColours, colour: Colour): Colour {
  const face = FACES.find((f) => scheme[f] === colour)!;
  return scheme[OPPOSITE[face]];
}
