/** Places, slots and pairs, read off the stickers. */
import type { Stickers } from './stickers.ts';

export const SLOTS = ['FR', 'FL', 'BL', 'BR'] as const;
export type Slot = (typeof SLOTS)[number];

/** The facelets of each place, in the order of the letters of its name. */
const PLACE_FACELETS = {
  UFR: [8, 19, 25],
  UFL: [6, 17, 11],
  UBL: [1, 35, 9],
  UBR: [3, 33, 27],
  DFR: [43, 24, 30],
  DFL: [41, 22, 16],
  DBL: [46, 40, 14],
  DBR: [48, 38, 32],
  UF: [7, 18],
  UL: [4, 10],
  UB: [2, 34],
  UR: [5, 26],
  FR: [21, 28],
  FL: [20, 13],
  BL: [37, 12],
  BR: [36, 29],
  DF: [42, 23],
  DL: [44, 15],
  DB: [47, 39],
  DR: [45, 31],
} as const satisfies Record<string, readonly number[]>;

export type Place = keyof typeof PLACE_FACELETS;
export const PLACES = Object.keys(PLACE_FACELETS) as Place[];
export const CROSS: readonly Place[] = ['DF', 'DL', 'DB', 'DR'];

const PLACE_OF_FACELET = new Map(
  PLACES.flatMap((place) => PLACE_FACELETS[place].map((facelet) => [facelet as number, place] as const)),
);
const PLACE_OF_FACES = new Map(PLACES.map((place) => [[...place].sort().join(''), place]));

export function faceletsOf(place: Place): readonly number[] {
  return PLACE_FACELETS[place];
}

export function cornerOf(slot: Slot): Place {
  return `D${slot}`;
}

/** The face that facelet 1..48 lies on. */
export function faceOf(facelet: number): string {
  return 'ULFRBD'[Math.floor((facelet - 1) / 8)]!;
}

/** In its own place, each sticker on its own face. `state` stands against the centres. */
export function isHome(state: Stickers, place: Place): boolean {
  return PLACE_FACELETS[place].every((facelet) => state[facelet] === facelet);
}

/** Where the piece that belongs at `home` is now. */
export function placeOf(state: Stickers, home: Place): Place {
  return PLACE_OF_FACELET.get(state[PLACE_FACELETS[home][0]]!)!;
}

/** Where a piece sits, and the face on which its chosen sticker lies. */
export interface Sight {
  readonly place: Place;
  readonly face: string;
}

export interface PairSight {
  readonly corner: Sight;
  readonly edge: Sight;
}

// A quarter of U, or of the whole cube by y, carries the front to the left.
const QUARTER_ROUND: Readonly<Record<string, string>> = { F: 'L', L: 'B', B: 'R', R: 'F', U: 'U', D: 'D' };

function turnedRound({ place, face }: Sight, quarters: number): Sight {
  let faces = [...place];
  let seen = face;
  for (let i = 0; i < quarters; i++) {
    faces = faces.map((letter) => QUARTER_ROUND[letter]!);
    seen = QUARTER_ROUND[seen]!;
  }
  return { place: PLACE_OF_FACES.get(faces.sort().join(''))!, face: seen };
}

function quartersUntil(quarterMatches: (quarters: number) => boolean): number {
  return [0, 1, 2, 3].find(quarterMatches)!;
}

function sightOf(state: Stickers, home: Place, sticker: number): Sight {
  const facelet = state[faceletsOf(home)[sticker]!]!;
  return { place: PLACE_OF_FACELET.get(facelet)!, face: faceOf(facelet) };
}

/** The pair of `slot` as seen with the cube turned about its vertical axis until that slot is FR. */
export function pairSight(state: Stickers, slot: Slot): PairSight {
  const quarters = quartersUntil((n) => turnedRound({ place: slot, face: 'U' }, n).place === 'FR');
  // The sticker that has the colour of F once the slot is FR: the first letter of FR and BL, the second of FL and BR.
  const frontSticker = [...slot].findIndex((face) => turnedRound({ place: slot, face }, quarters).face === 'F');
  return {
    corner: turnedRound(sightOf(state, cornerOf(slot), 0), quarters),
    edge: turnedRound(sightOf(state, slot, frontSticker), quarters),
  };
}

/** `UFR:R UB:U` */
export function addressText({ corner, edge }: PairSight): string {
  return `${corner.place}:${corner.face} ${edge.place}:${edge.face}`;
}

const onTop = ({ place }: Sight): boolean => place.startsWith('U');

/** The address up to turns of U: the corner at UFR, else the edge at UF, else as it is. */
export function caseSight({ corner, edge }: PairSight): PairSight {
  const leader = onTop(corner) ? corner : edge;
  if (!onTop(leader)) return { corner, edge };
  const goal = onTop(corner) ? 'UFR' : 'UF';
  const quarters = quartersUntil((n) => turnedRound(leader, n).place === goal);
  const free = (sight: Sight): Sight => (onTop(sight) ? turnedRound(sight, quarters) : sight);
  return { corner: free(corner), edge: free(edge) };
}

/** `top-away`; undefined for an edge inside the cross, which has no name there. */
export function familyOf({ corner, edge }: PairSight): string | undefined {
  if (CROSS.includes(edge.place)) return undefined;
  const where = (sight: Sight, own: Place): string => (onTop(sight) ? 'top' : sight.place === own ? 'home' : 'away');
  return `${where(corner, 'DFR')}-${where(edge, 'FR')}`;
}
