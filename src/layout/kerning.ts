/**
 * Pair kerning, read from the bytes of a font's GPOS table (OpenType 1.9, chapter GPOS: lookup types 2 and 9). fontkit
 * reads the same, but decodes whole tables into objects first: 60 ms more for two fonts, a third of a small build.
 */

/** How much closer (negative) or further two neighbouring glyphs stand, in font units. */
export type Kerning = (left: number, right: number) => number;

/** Offsets in OpenType count from the table that holds them. */
const sub = (table: DataView, offset: number): DataView => new DataView(table.buffer, table.byteOffset + offset);

const tag = (table: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map((i) => table.getUint8(at + i)));

const range = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i);

/**
 * Index of the record that holds `glyph`, among `count` sorted ones that start at `at`, `size` bytes apart. A record begins
 * with its glyph, or with the first and, `last` bytes on, the last of a range.
 */
const find = (table: DataView, at: number, count: number, size: number, glyph: number, last = 0) => {
  let low = 0;
  let high = count - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const first = at + size * middle;
    if (glyph < table.getUint16(first)) high = middle - 1;
    else if (glyph > table.getUint16(first + last)) low = middle + 1;
    else return middle;
  }
  return undefined;
};

const coverageIndex = (coverage: DataView, glyph: number): number | undefined => {
  const count = coverage.getUint16(2);
  if (coverage.getUint16(0) === 1) return find(coverage, 4, count, 2, glyph);
  const record = find(coverage, 4, count, 6, glyph, 2);
  return record === undefined
    ? undefined
    : coverage.getUint16(4 + 6 * record + 4) + glyph - coverage.getUint16(4 + 6 * record);
};

const classOf = (classes: DataView, glyph: number): number => {
  if (classes.getUint16(0) === 1) {
    const index = glyph - classes.getUint16(2);
    return index >= 0 && index < classes.getUint16(4) ? classes.getUint16(6 + 2 * index) : 0;
  }
  const record = find(classes, 4, classes.getUint16(2), 6, glyph, 2);
  return record === undefined ? 0 : classes.getUint16(4 + 6 * record + 4);
};

const xAdvanceBit = 0x4;

const bitCount = (bits: number): number => bits.toString(2).replaceAll('0', '').length;

/** The kerning of a pair, or undefined if this subtable has nothing to say and the next one is to be asked. */
type PairLookup = (...pair: Parameters<Kerning>) => number | undefined;

const pairLookup = (table: DataView): PairLookup => {
  const coverage = sub(table, table.getUint16(2));
  const leftFormat = table.getUint16(4);
  const valueSize = 2 * (bitCount(leftFormat) + bitCount(table.getUint16(6)));
  const advanceAt = leftFormat & xAdvanceBit ? 2 * bitCount(leftFormat & (xAdvanceBit - 1)) : undefined;
  const advance = (values: DataView, at: number): number =>
    advanceAt === undefined ? 0 : values.getInt16(at + advanceAt);
  if (table.getUint16(0) === 1) {
    return (left, right) => {
      const index = coverageIndex(coverage, left);
      if (index === undefined) return undefined;
      const pairs = sub(table, table.getUint16(10 + 2 * index));
      const size = 2 + valueSize;
      const found = find(pairs, 2, pairs.getUint16(0), size, right);
      return found === undefined ? undefined : advance(pairs, 2 + size * found + 2);
    };
  }
  const leftClasses = sub(table, table.getUint16(8));
  const rightClasses = sub(table, table.getUint16(10));
  const rightCount = table.getUint16(14);
  return (left, right) => {
    if (coverageIndex(coverage, left) === undefined) return undefined;
    const index = classOf(leftClasses, left) * rightCount + classOf(rightClasses, right);
    return advance(table, 16 + valueSize * index);
  };
};

const pairType = 2;
const extensionType = 9;

/** A lookup's subtables of pairs, each behind an extension or not. */
const pairLookups = (lookup: DataView): readonly PairLookup[] =>
  range(lookup.getUint16(4)).flatMap((i) => {
    const subtable = sub(lookup, lookup.getUint16(6 + 2 * i));
    if (lookup.getUint16(0) === pairType) return [pairLookup(subtable)];
    const isPair = lookup.getUint16(0) === extensionType && subtable.getUint16(2) === pairType;
    return isPair ? [pairLookup(sub(subtable, subtable.getUint32(4)))] : [];
  });

/** Kerning of a font file in TrueType or OpenType form; none if it has no GPOS table. */
export const readKerning = (bytes: Uint8Array): Kerning => {
  const file = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const entry = range(file.getUint16(4)).find((i) => tag(file, 12 + 16 * i) === 'GPOS');
  if (entry === undefined) return () => 0;
  const gpos = sub(file, file.getUint32(12 + 16 * entry + 8));
  const features = sub(gpos, gpos.getUint16(6));
  const lookups = sub(gpos, gpos.getUint16(8));
  const kernLookups = range(features.getUint16(0))
    .filter((i) => tag(features, 2 + 6 * i) === 'kern')
    .map((i) => sub(features, features.getUint16(2 + 6 * i + 4)))
    .flatMap((feature) => range(feature.getUint16(2)).map((i) => feature.getUint16(4 + 2 * i)));
  const asked = [...new Set(kernLookups)].map((i) => pairLookups(sub(lookups, lookups.getUint16(2 + 2 * i))));
  return (left, right) => {
    let sum = 0;
    for (const subtables of asked) {
      for (const lookup of subtables) {
        const value = lookup(left, right);
        if (value === undefined) continue;
        sum += value;
        break;
      }
    }
    return sum;
  };
};
