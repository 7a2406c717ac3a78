/**
 * Source: fontkit's own shaping of the same files, with its substitutions off. It reads GPOS by another way (whole
 * tables, decoded by a general library), so that agreement on thousands of pairs is no accident.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create } from 'fontkit';
import { describe, expect, test } from 'vitest';
import { widthOf } from '../../src/layout/fonts.ts';
import { readKerning } from '../../src/layout/kerning.ts';

const require = createRequire(import.meta.url);
const files = {
  sans: '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  'sans-strong': '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
  mono: '@expo-google-fonts/noto-sans-mono/500Medium/NotoSansMono_500Medium.ttf',
} as const;
const characters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.,;:!?()’‘“”-–/éüøßŁžДЖаяΩ'];
const noSubstitutions = { liga: false, ccmp: false, locl: false, calt: false };

describe.each(['sans', 'sans-strong', 'mono'] as const)('%s', (name) => {
  const bytes = readFileSync(require.resolve(files[name]));
  const font = create(bytes);

  test('every pair is kerned as fontkit does', () => {
    const kerning = readKerning(bytes);
    const known = characters.filter((one) => font.hasGlyphForCodePoint(one.codePointAt(0)!));
    expect(known.length).toBeGreaterThan(60);
    const differing: string[] = [];
    let kerned = 0;
    for (const a of known) {
      for (const b of known) {
        const [left, right] = [a, b].map((one) => font.glyphForCodePoint(one.codePointAt(0)!));
        const expected = font.layout(a + b, noSubstitutions).positions[0]!.xAdvance - left!.advanceWidth;
        if (expected !== 0) kerned++;
        if (kerning(left!.id, right!.id) !== expected) differing.push(a + b);
      }
    }
    expect(differing).toEqual([]);
    // An even-width face has no kerning to read: its row would pass with a reader that finds none.
    if (name === 'mono') expect(kerned).toBe(0);
    else expect(kerned).toBeGreaterThan(1000);
  });

  test('a line is as wide as fontkit says, spaces and all', () => {
    const line = 'AVATAR: To. “Like” wave, 7 of 11 Ty!';
    const expected = (font.layout(line, noSubstitutions).advanceWidth / font.unitsPerEm) * 10;
    expect(widthOf(name, line, 10)).toBeCloseTo(expected, 6);
  });
});

test('bytes without a GPOS table have no kerning', () => {
  expect(readKerning(new Uint8Array(12))(1, 2)).toBe(0);
});
