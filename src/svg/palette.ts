/**
 * Our print colours, found by a search so that any two of the six differ in lightness (CIELAB L* by 10) and in
 * CIEDE2000 (by 20), for normal sight and for three simulated colour-vision deficiencies; tests/svg/palette.test.ts
 * measures it. In mono ink the six are greys with a letter on top, kept away from middle grey so that a copier that
 * knows black and white only leaves each letter standing on its ground.
 */
import type { Colour } from '../cube/colours.ts';

/** colour: for screens and colour printers. mono: for the photocopier, colours named by letters. */
export const INKS = ['colour', 'mono'] as const;
/** How colours are printed. */
export type Ink = (typeof INKS)[number];

/** `#rrggbb` */
export type Hex = string;

export const BLACK: Hex = '#161616';
export const WHITE: Hex = '#ffffff';

export interface Palette {
  /** The pair and the centres. */
  readonly full: Readonly<Record<Colour, Hex>>;
  /** Around a sticker of the pair, inside its black: white where the sticker is dark, so that navy stays navy. */
  readonly rim: Readonly<Record<Colour, Hex>>;
  /** Letters on a sticker in full colour. */
  readonly letter: Readonly<Record<Colour, Hex>>;
  /** Kept pieces: the same colour, quietly. */
  readonly pale: Readonly<Record<Colour, Hex>>;
  /** Stickers that do not matter. */
  readonly paper: Hex;
  /** The pair's own slot while it waits: never white in colour ink, where a white sticker looks like that. */
  readonly hole: Hex;
  /** Lines between stickers: at least 3:1 on white. In mono ink dark enough for a copier that knows no grey. */
  readonly grid: Hex;
  /** Lines along the edges of the cube. */
  readonly edges: Hex;
  /** Letters on pair and centres, so that colour is never the only sign. */
  readonly letters: boolean;
}

const FULL: Palette['full'] = {
  white: WHITE,
  yellow: '#fdd431',
  green: '#56bf93',
  blue: '#081955',
  red: '#8c2330',
  orange: '#d06400',
};

const GREY: Palette['full'] = {
  white: WHITE,
  yellow: '#dedede',
  orange: '#bababa',
  green: '#5e5e5e',
  red: '#3e3e3e',
  blue: '#1c1c1c',
};

/** WCAG 2.2, 1.4.11: what a sign needs against its neighbour. */
const CLEAR = 3;

const channels = (hex: Hex): number[] => [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16));
const hexOf = (rgb: readonly number[]): Hex =>
  `#${rgb.map((c) => Math.round(c).toString(16).padStart(2, '0')).join('')}`;

/** `share` of a colour in white; by sRGB values, as a printer's tint would be specified on screen. */
const tint = (hex: Hex, share: number): Hex => hexOf(channels(hex).map((c) => 255 - (255 - c) * share));

/** In mono ink kept stickers share one grey: which colour they are does not matter, that they stay does. */
const KEPT_GREY: Hex = '#d6d6d6';

/** WCAG 2.2, relative luminance. */
function luminance(hex: Hex): number {
  const [r, g, b] = channels(hex).map((c) =>
    c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

/** WCAG 2.2, contrast ratio: 1 to 21. */
export function contrast(a: Hex, b: Hex): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light! + 0.05) / (dark! + 0.05);
}

/** Black or white, whichever is read more easily on a ground. */
export const letterInk = (ground: Hex): Hex => (contrast(ground, BLACK) >= contrast(ground, WHITE) ? BLACK : WHITE);

const byColour = (of: Palette['full'], make: (hex: Hex) => Hex): Palette['full'] =>
  Object.fromEntries(Object.entries(of).map(([colour, hex]) => [colour, make(hex)])) as Palette['full'];

const paletteOf = (full: Palette['full'], rest: Omit<Palette, 'full' | 'rim' | 'letter'>): Palette => ({
  full,
  rim: byColour(full, (hex) => (contrast(hex, BLACK) >= CLEAR ? hex : WHITE)),
  letter: byColour(full, letterInk),
  ...rest,
});

/** By ink: our own shades, apart from each other in print and for the colour-blind (tests/svg/palette.test.ts). */
export const PALETTES: Readonly<Record<Ink, Palette>> = {
  colour: paletteOf(FULL, {
    pale: byColour(FULL, (hex) => tint(hex, 0.29)),
    paper: '#f1efea',
    hole: '#dbd7ce',
    grid: '#8f8d88',
    edges: '#85837e',
    letters: false,
  }),
  mono: paletteOf(GREY, {
    pale: byColour(GREY, () => KEPT_GREY),
    paper: WHITE,
    hole: WHITE,
    grid: '#787878',
    edges: '#606060',
    letters: true,
  }),
};
