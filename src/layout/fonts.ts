/**
 * The three fonts of a page: read when first needed, measured word by word. Each word is shaped once and the writer is
 * given the same glyphs (`fontForWriter`): what was measured is what is drawn. Shaping is kerning alone: fontkit's own
 * takes three times as long, and its ligatures make text harder to copy.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font, type GlyphPosition, type GlyphRun } from 'fontkit';
import type { Pt } from './blocks.ts';
import type { FontName } from './frames.ts';
import { type Kerning, readKerning } from './kerning.ts';

const files: Readonly<Record<FontName, string>> = {
  sans: '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  'sans-strong': '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
  mono: '@expo-google-fonts/noto-sans-mono/500Medium/NotoSansMono_500Medium.ttf',
};

interface Shaped {
  readonly run: GlyphRun | undefined;
  /** Share of the size. */
  readonly width: number;
  readonly missing: readonly string[];
}

interface OpenFont {
  readonly font: Font;
  readonly kerning: Kerning;
  readonly words: Map<string, Shaped>;
}

const open = new Map<FontName, OpenFont>();

const openFont = (name: FontName): OpenFont => {
  const known = open.get(name);
  if (known) return known;
  const bytes = readFileSync(createRequire(import.meta.url).resolve(files[name]));
  const made = { font: create(bytes), kerning: readKerning(bytes), words: new Map<string, Shaped>() };
  open.set(name, made);
  return made;
};

/** No paper is wide enough for so long a word, so its exact width matters to nobody; shaping it would take seconds. */
const longestShaped = 500;
/** Stands in for the width of what cannot be shaped: such a sheet has a fault and is not written. */
const guessedAdvance = 0.5;

const hasGlyph = (font: Font, character: string): boolean => {
  const codePoint = character.codePointAt(0)!;
  return codePoint >= 0x20 && font.hasGlyphForCodePoint(codePoint);
};

/** Marks that are set over the letter before them need the font's own placing. */
const hasMarks = /\p{M}/u;

const place = ({ font, kerning }: OpenFont, word: string): GlyphRun => {
  if (hasMarks.test(word)) return font.layout(word);
  const glyphs = Array.from(word, (character) => font.glyphForCodePoint(character.codePointAt(0)!));
  const positions = glyphs.map((glyph, i) => {
    const next = glyphs[i + 1];
    return {
      xAdvance: glyph.advanceWidth + (next ? kerning(glyph.id, next.id) : 0),
      yAdvance: 0,
      xOffset: 0,
      yOffset: 0,
    };
  });
  return runOf(glyphs, positions);
};

const runOf = (glyphs: GlyphRun['glyphs'], positions: readonly GlyphPosition[]): GlyphRun => ({
  glyphs,
  positions,
  get advanceWidth() {
    return positions.reduce((sum, position) => sum + position.xAdvance, 0);
  },
});

const shape = (name: FontName, word: string): Shaped => {
  const opened = openFont(name);
  const { font, words } = opened;
  const known = words.get(word);
  if (known) return known;
  const characters = [...word];
  const missing = [...new Set(characters.filter((character) => !hasGlyph(font, character)))];
  const shapeable = missing.length === 0 && characters.length <= longestShaped;
  const run = shapeable ? place(opened, word) : undefined;
  const width = run ? run.advanceWidth / font.unitsPerEm : characters.length * guessedAdvance;
  const shaped = { run, width, missing };
  words.set(word, shaped);
  return shaped;
};

/** Spaces stand alone, so that a word has one width wherever it stands (neither face kerns with the space). */
const wordsAndSpaces = (text: string): readonly string[] => text.match(/ |[^ ]+/g) ?? [];

/** Width in points of `text` on one line, kerning included. */
export const widthOf = (font: FontName, text: string, size: Pt): Pt => {
  let width = 0;
  for (const word of wordsAndSpaces(text)) width += shape(font, word).width;
  return width * size;
};

/** The characters of `text` that the font cannot print, each once. */
export const missingGlyphs = (font: FontName, text: string): readonly string[] => [
  ...new Set(wordsAndSpaces(text).flatMap((word) => shape(font, word).missing)),
];

/**
 * The font for the writer, shaping through the same words as widthOf. The writer scales the positions of a run in
 * place: each call hands out new ones. Text with missing glyphs is shaped as far as the font goes.
 */
export const fontForWriter = (name: FontName): Font => {
  const opened = openFont(name);
  const layout = (text: string): GlyphRun => {
    const runs = wordsAndSpaces(text).map((word) => shape(name, word).run ?? place(opened, word));
    return runOf(
      runs.flatMap((run) => run.glyphs),
      runs.flatMap((run) => run.positions.map((position) => ({ ...position }))),
    );
  };
  return Object.create(opened.font, { layout: { value: layout } }) as Font;
};
