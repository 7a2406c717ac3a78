/** Parts of English sentences: colours, sides, places, lists. */
import type { Colour, ColourWords, PlaceName, Side } from './said.ts';

export const COLOUR: { readonly [colour in Colour]: ColourWords } = {
  white: { name: 'white', letter: 'W' },
  yellow: { name: 'yellow', letter: 'Y' },
  green: { name: 'green', letter: 'G' },
  blue: { name: 'blue', letter: 'B' },
  red: { name: 'red', letter: 'R' },
  orange: { name: 'orange', letter: 'O' },
};

const SIDE: Readonly<Record<string, string>> = { U: 'top', D: 'bottom', F: 'front', B: 'back', R: 'right', L: 'left' };
const TOWARDS: Readonly<Record<Side, string>> = {
  U: 'up',
  D: 'down',
  F: 'to the front',
  B: 'to the back',
  R: 'to the right',
  L: 'to the left',
};

/** A sticker of this colour looks that way. */
export const facing = (colour: Colour, side: Side): string => `${COLOUR[colour].name} ${TOWARDS[side]}`;

/** `FR` front right, `UBL` top back left. */
export const placeWords = (place: PlaceName): string => [...place].map((side) => SIDE[side] ?? side).join(' ');

/** `a`, `a and b`, `a, b and c` */
export const listed = (items: readonly string[], last = 'and'): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;

/** `1 turn`, `2 turns` */
export const counted = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;

export const capital = (text: string): string =>
  text.startsWith('{cross}') ? text.replace('{cross}', '{Cross}') : text.charAt(0).toUpperCase() + text.slice(1);
