/**
 * Pair kerning, read from the bytes of a font's GPOS table (OpenType 1.9, chapter GPOS: lookup types 2 and 9). fontkit
 * reads the same, but decodes whole tables into objects first: 60 ms more for two fonts, a third of a small build.
 */

/** How much closer (negative) or further two neighbouring glyphs stand, in font units. */
export type Kerning = (left: number, right: number) => number;

/** A view of the bytes from a table's start; offsets in OpenType count from the table that holds them. */
interface Table {
  u16(at: number): number;
  i16(at: number): number;
  u32(at: number): number;
  tag(at: number): string;
  sub(offset: number): Table;
}

const tableAt = (view: DataView, start: number): Table => ({
  u16: (at) => view.getUint16(start + at),
  i16: (at) => view.getInt16(start + at),
  u32: (at) => view.getUint32(start + at),
  tag: (at) => String.fromCharCode(...[0, 1, 2, 3].map((i) => view.getUint8(start + at + i))),
  sub: (offset) => tableAt(view, start + offset),
});

const range = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i);

/** Index in the table of the record whose glyph range holds `glyph`; records of 6 bytes, sorted, from `at`. */
const findRange = (table: Table, at: number, count: number, glyph: number): number | undefined => {
  let low = 0;
  let high = count - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    if (glyph < table.u16(at + 6 * middle)) high = middle - 1;
    else if (glyph > table.u16(at + 6 * middle + 2)) low = middle + 1;
    else return middle;
  }
  return undefined;
};

/** Index of `glyph` among the `count` sorted glyphs that start at `at`, `size` bytes apart. */
const findGlyph = (table: Table, at: number, count: number, size: number, glyph: number): number | undefined => {
  let low = 0;
  let high = count - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const found = table.u16(at + size * middle);
    if (found === glyph) return middle;
    if (glyph < found) high = middle - 1;
    else low = middle + 1;
  }
  return undefined;
};

const coverageIndex = (coverage: Table, glyph: number): number | undefined => {
  const count = coverage.u16(2);
  if (coverage.u16(0) === 1) return findGlyph(coverage, 4, count, 2, glyph);
  const record = findRange(coverage, 4, count, glyph);
  return record === undefined ? undefined : coverage.u16(4 + 6 * record + 4) + glyph - coverage.u16(4 + 6 * record);
};

const classOf = (classes: Table, glyph: number): number => {
  if (classes.u16(0) === 1) {
    const index = glyph - classes.u16(2);
    return index >= 0 && index < classes.u16(4) ? classes.u16(6 + 2 * index) : 0;
  }
  const record = findRange(classes, 4, classes.u16(2), glyph);
  return record === undefined ? 0 : classes.u16(4 + 6 * record + 4);
};

const xAdvanceBit = 0x4;

const bitCount = (bits: number): number => {
  let count = 0;
  for (let rest = bits; rest > 0; rest >>= 1) count += rest & 1;
  return count;
};

/** The kerning of a pair, or undefined if this subtable has nothing to say and the next one is to be asked. */
type PairLookup = (left: number, right: number) => number | undefined;

const pairLookup = (table: Table): PairLookup => {
  const coverage = table.sub(table.u16(2));
  const leftFormat = table.u16(4);
  const valueSize = 2 * (bitCount(leftFormat) + bitCount(table.u16(6)));
  const advanceAt = leftFormat & xAdvanceBit ? 2 * bitCount(leftFormat & (xAdvanceBit - 1)) : undefined;
  const advance = (values: Table, at: number): number => (advanceAt === undefined ? 0 : values.i16(at + advanceAt));
  if (table.u16(0) === 1) {
    return (left, right) => {
      const index = coverageIndex(coverage, left);
      if (index === undefined) return undefined;
      const pairs = table.sub(table.u16(10 + 2 * index));
      const size = 2 + valueSize;
      const found = findGlyph(pairs, 2, pairs.u16(0), size, right);
      return found === undefined ? undefined : advance(pairs, 2 + size * found + 2);
    };
  }
  const leftClasses = table.sub(table.u16(8));
  const rightClasses = table.sub(table.u16(10));
  const rightCount = table.u16(14);
  return (left, right) => {
    if (coverageIndex(coverage, left) === undefined) return undefined;
    const index = classOf(leftClasses, left) * rightCount + classOf(rightClasses, right);
    return advance(table, 16 + valueSize * index);
  };
};

const pairType = 2;
const extensionType = 9;

/** A lookup's subtables of pairs, each behind an extension or not. */
const pairLookups = (lookup: Table): readonly PairLookup[] =>
  range(lookup.u16(4)).flatMap((i) => {
    const subtable = lookup.sub(lookup.u16(6 + 2 * i));
    if (lookup.u16(0) === pairType) return [pairLookup(subtable)];
    const isPair = lookup.u16(0) === extensionType && subtable.u16(2) === pairType;
    return isPair ? [pairLookup(subtable.sub(subtable.u32(4)))] : [];
  });

/** Kerning of a font file in TrueType or OpenType form; none if it has no GPOS table. */
export const readKerning = (bytes: Uint8Array): Kerning => {
  const file = tableAt(new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength), 0);
  const entry = range(file.u16(4)).find((i) => file.tag(12 + 16 * i) === 'GPOS');
  if (entry === undefined) return () => 0;
  const gpos = file.sub(file.u32(12 + 16 * entry + 8));
  const features = gpos.sub(gpos.u16(6));
  const lookups = gpos.sub(gpos.u16(8));
  const kernLookups = range(features.u16(0))
    .filter((i) => features.tag(2 + 6 * i) === 'kern')
    .map((i) => features.sub(features.u16(2 + 6 * i + 4)))
    .flatMap((feature) => range(feature.u16(2)).map((i) => feature.u16(4 + 2 * i)));
  const asked = [...new Set(kernLookups)].map((i) => pairLookups(lookups.sub(lookups.u16(2 + 2 * i))));
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
