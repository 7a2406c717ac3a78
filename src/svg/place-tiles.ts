/** Which tiles of a drawing a place of the cube covers. */
import { homeOf, solvedCube } from '../cube/cube.ts';
import type { Place } from '../cube/spots.ts';
import { type Sticker, stickersOf } from '../cube/stickers.ts';
import { seenPlace, type View } from '../cube/view.ts';
import type { Projection, Tile } from './projection.ts';

/** On a solved cube each piece is in its home place, so its stickers show where that place's faces are. */
const STICKERS_OF_PLACE = new Map<Place, Sticker[]>();
for (const sticker of stickersOf(solvedCube())) {
  if (sticker.piece === undefined) continue;
  const place = homeOf(sticker.piece);
  STICKERS_OF_PLACE.set(place, [...(STICKERS_OF_PLACE.get(place) ?? []), sticker]);
}

export const tileOfSticker = (projection: Projection, { face, row, column }: Sticker): Tile | undefined =>
  projection.tiles[face]?.[3 * row + column];

/** The visible tiles of places named by the centres. */
export const tilesOfPlaces = (projection: Projection, view: View, places: readonly Place[]): Tile[] =>
  places
    .flatMap((place) => STICKERS_OF_PLACE.get(seenPlace(view, place))!)
    .flatMap((sticker) => tileOfSticker(projection, sticker) ?? []);
