/** Half-words by their key: a hash table, built at first use and kept while the process lives. */
import { buildStems, HALF_LENGTH, type HalfWord, PRECEDES, type Stems } from './half-words.ts';
import { type Key, keyAfter } from './key.ts';

export interface HalfWordIndex {
  readonly stems: Stems;
  /** The bits of a key that count. */
  readonly mask: Key;
  /**
   * A bit a hash: 0 where no half-word of full length has it. Asked first: nine in ten front halves end here, in 512 KB
   * that stay in a cache that the entries are too large for.
   */
  readonly some: Int32Array;
  /** By bucket: where its entries begin; they end where those of the next bucket begin. */
  readonly begins: Int32Array;
  /** Two numbers an entry, side by side since each look-up that gets here waits for memory: masked key, half-word. */
  readonly entries: Int32Array;
}

/** 2^22 bits for 624,123 half-words: one look-up in seven is for nothing. Twice as many bits gain nothing: see above. */
const HASH_BITS = 22;
/** 2^17 buckets of five entries, 40 bytes: one or two lines of cache. More buckets take longer to build. */
const BUCKET_BITS = 17;
/** 2^32 divided by the golden ratio: Fibonacci hashing (Knuth, The Art of Computer Programming 3, 6.4; from memory). */
const SPREAD = 0x9e3779b1;

const hashOf = (masked: Key): number => Math.imul(masked, SPREAD) >>> (32 - HASH_BITS);
export const bucketOf = (masked: Key): number => Math.imul(masked, SPREAD) >>> (32 - BUCKET_BITS);

/** False only if there is no half-word of full length with this key. */
export function mayEnd(some: Int32Array, masked: Key): boolean {
  const hash = hashOf(masked);
  return (some[hash >>> 5]! & (1 << (hash & 31))) !== 0;
}

function eachHalfWord({ turn, key }: Stems, mask: Key, visit: (masked: Key, halfWord: HalfWord) => void): void {
  for (let stem = 0; stem < key.length; stem++) {
    for (let t = 0; t < 18; t++) {
      if (PRECEDES[18 * turn[stem]! + t] === 1) visit(keyAfter(key[stem]!, t) & mask, 18 * stem + t);
    }
  }
}

function buildIndex(stems: Stems, mask: Key): HalfWordIndex {
  const some = new Int32Array(2 ** (HASH_BITS - 5));
  const begins = new Int32Array(2 ** BUCKET_BITS + 1);
  const ofFullLength = 18 * stems.starts[HALF_LENGTH - 1]!;
  let count = 0;
  // A counting sort: begins[] counts; then says where each bucket ends; then, as it is filled from there, where it begins.
  eachHalfWord(stems, mask, (masked, halfWord) => {
    count++;
    begins[bucketOf(masked)]!++;
    const hash = hashOf(masked);
    if (halfWord >= ofFullLength) some[hash >>> 5]! |= 1 << (hash & 31);
  });
  for (let bucket = 1; bucket < begins.length; bucket++) begins[bucket]! += begins[bucket - 1]!;
  const entries = new Int32Array(2 * count);
  eachHalfWord(stems, mask, (masked, halfWord) => {
    const bucket = bucketOf(masked);
    const place = begins[bucket]! - 1;
    begins[bucket] = place;
    entries[2 * place] = masked;
    entries[2 * place + 1] = halfWord;
  });
  return { stems, mask, some, begins, entries };
}

let stems: Stems | undefined;
const indices = new Map<Key, HalfWordIndex>();

/** The index of half-words by these bits of the key. All goals of pairs share one. */
export function halfWordIndex(mask: Key): HalfWordIndex {
  stems ??= buildStems();
  const index = indices.get(mask) ?? buildIndex(stems, mask);
  indices.set(mask, index);
  return index;
}
