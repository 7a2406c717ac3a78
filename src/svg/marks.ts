/** The marks that drawings of a cube are made of. Each function only emits; where things lie is in the projection. */
import type { FaceColours } from '../cube/colours.ts';
import { type Cube, homeOf, solvedCube } from '../cube/cube.ts';
import type { Place } from '../cube/spots.ts';
import { type Sticker, stickersOf } from '../cube/stickers.ts';
import { seenPlace } from '../cube/view.ts';
import type { Words } from '../words/words.ts';
import type { Role } from './emphasis.ts';
import { BLACK, type Ink, PALETTES } from './palette.ts';
import type { Projection, Tile } from './projection.ts';
import type { Label, Point, Polygon, Stroke } from './scene.ts';
import { unionOutline } from './shapes.ts';

/** How a drawing looks, whatever cube is on it. */
export interface Look {
  /** By the engine's faces: see coloursHeld. */
  readonly colours: FaceColours;
  readonly ink: Ink;
  readonly words: Words;
  /** Half as wide as usual: the outline of the pair is drawn heavier, so that it is still the first thing seen. */
  readonly small?: boolean;
}

/** A sticker and where it is drawn. */
export interface SeenSticker extends Pick<Sticker, 'piece' | 'colour'> {
  readonly tile: Tile;
  readonly role: Role;
}

/** Widths in scene units: at 35 mm across, 1 is 0.35 mm, about a point. */
const GRID = 0.45;
const EDGES = 0.8;
const HEAVY: Stroke = { colour: BLACK, width: 2.2 };
/** As wide as the margin around the drawing lets it be. */
const HEAVY_SMALL: Stroke = { ...HEAVY, width: 2.8 };
const TARGET: Stroke = { colour: BLACK, width: 1.5, dash: [2.6, 2.3] };
const STUCK: Stroke = { colour: BLACK, width: 1.1 };
/** Rounds a sticker of the pair. */
const RIM = 0.65;

const tileOf = (projection: Projection, { face, row, column }: Sticker): Tile | undefined =>
  projection.tiles[face]?.[3 * row + column];

export const seenStickers = (cube: Cube, projection: Projection, roleFor: (s: Sticker) => Role): SeenSticker[] =>
  stickersOf(cube).flatMap((sticker) => {
    const tile = tileOf(projection, sticker);
    return tile ? [{ piece: sticker.piece, colour: sticker.colour, tile, role: roleFor(sticker) }] : [];
  });

/** A sticker at rest: kept pieces pale, centres in full colour, the rest paper. */
export function ground({ tile, role, colour }: SeenSticker, { colours, ink }: Look): Polygon {
  const { full, pale, paper, grid } = PALETTES[ink];
  const name = colours[colour];
  const fill = role === 'centre' ? full[name] : role === 'kept' ? pale[name] : paper;
  return { kind: 'polygon', points: tile.outline, fill, stroke: { colour: grid, width: GRID } };
}

export const cubeEdges = ({ faces }: Projection, ink: Ink): Polygon[] =>
  faces.map((points) => ({ kind: 'polygon', points, stroke: { colour: PALETTES[ink].edges, width: EDGES } }));

/** On a solved cube each piece is in its home place, so its stickers show where that place's faces are. */
const ALL_PLACES = stickersOf(solvedCube()).flatMap((on) =>
  on.piece === undefined ? [] : [{ place: homeOf(on.piece), on }],
);

/** Places as one shape, or as many as do not touch; nothing where they are out of sight. */
export const placeOutlines = (projection: Projection, cube: Cube, places: readonly Place[]): Point[][] =>
  unionOutline(
    places
      .map((place) => seenPlace(cube.view, place))
      .flatMap((seen) => ALL_PLACES.flatMap(({ place, on }) => (place === seen ? [on] : [])))
      .flatMap((on) => tileOf(projection, on) ?? [])
      .map((tile) => tile.outline),
  );

/** The pair's own slot, emptied: goes under the cube's edges. */
export const hole = (outline: readonly Point[], ink: Ink): Polygon => ({
  kind: 'polygon',
  points: outline,
  fill: PALETTES[ink].hole,
});

export const targetLine = (points: readonly Point[]): Polygon => ({ kind: 'polygon', points, stroke: TARGET });
export const stuckLine = (points: readonly Point[]): Polygon => ({ kind: 'polygon', points, stroke: STUCK });

function sticker({ tile, colour }: SeenSticker, { colours, ink }: Look): Polygon {
  const { full, rim } = PALETTES[ink];
  const name = colours[colour];
  return { kind: 'polygon', points: tile.inner, fill: full[name], stroke: { colour: rim[name], width: RIM } };
}

/** A piece of the pair: one black body with its stickers let into it. */
export const pieceMarks = (stickers: readonly SeenSticker[], look: Look): Polygon[] => [
  ...unionOutline(stickers.map((s) => s.tile.outline)).map(
    (points): Polygon => ({ kind: 'polygon', points, fill: BLACK, stroke: look.small ? HEAVY_SMALL : HEAVY }),
  ),
  ...stickers.map((s) => sticker(s, look)),
];

/** The letter of a sticker's colour, in inks that have letters. */
export function letters(stickers: readonly SeenSticker[], { colours, ink, words }: Look): Label[] {
  if (!PALETTES[ink].letters) return [];
  return stickers.map(({ tile, colour }) => {
    const name = colours[colour];
    return {
      kind: 'label',
      text: words.colours[name].letter,
      ...tile.middle,
      size: tile.letterSize,
      colour: PALETTES[ink].letter[name],
    };
  });
}
