/** English that several tables have in common: series, places, capitals. */
import type { PlaceName, Side } from './words.ts';

const SIDE: Readonly<Record<Side, string>> = {
  U: 'top',
  D: 'bottom',
  F: 'front',
  B: 'back',
  R: 'right',
  L: 'left',
};

/** `FR` front right, `UBL` top back left: top or bottom, then front or back, then the side. */
export const placeWords = (place: PlaceName): string =>
  [...'UDFBRL']
    .filter((side) => place.includes(side))
    .map((side) => SIDE[side as Side])
    .join(' ');

/** `a`, `a and b`, `a, b and c` */
export const listed = (items: readonly string[], last = 'and'): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;

export const capital = (text: string): string =>
  text.startsWith('{cross}') ? text.replace('{cross}', '{Cross}') : text.charAt(0).toUpperCase() + text.slice(1);
