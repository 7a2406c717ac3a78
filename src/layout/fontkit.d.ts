/** What fonts.ts uses of fontkit 2, which brings no types of its own. */
declare module 'fontkit' {
  export interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
    readonly codePoints: readonly number[];
  }

  /** Font units. */
  export interface GlyphPosition {
    xAdvance: number;
    yAdvance: number;
    xOffset: number;
    yOffset: number;
  }

  export interface GlyphRun {
    readonly glyphs: readonly Glyph[];
    readonly positions: readonly GlyphPosition[];
    readonly advanceWidth: number;
  }

  export interface Font {
    readonly unitsPerEm: number;
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
    /** `features` switches OpenType features by tag. */
    layout(text: string, features?: Readonly<Record<string, boolean>>): GlyphRun;
  }

  export function create(bytes: Uint8Array): Font;
}
