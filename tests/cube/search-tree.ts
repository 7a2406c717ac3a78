/**
 * Counting positions by brute force: all sequences of face turns in a canonical order (no face twice in a row; of two
 * opposite faces in a row only U D, R L, F B), each position known by an exact key, so that no two are confused.
 */
import { type Cube, copyOf, PIECES, solvedCube, turnFace } from '../../src/cube/cube.ts';

/** What a turn by 1, 2 or 3 quarters costs: half turns 1 each, or quarter turns counted. */
export const METRICS = { half: [0, 1, 1, 1], quarter: [0, 1, 2, 1] } as const;
export type Metric = keyof typeof METRICS;

/** Visits every canonical sequence up to this cost, the empty one first. */
export function eachSequence(most: number, metric: Metric, visit: (spots: Uint8Array, cost: number) => void): void {
  const costs = METRICS[metric];
  const stack: Cube[] = Array.from({ length: most + 1 }, solvedCube);
  const from = (depth: number, last: number, cost: number): void => {
    const cube = stack[depth]!;
    visit(cube.spots, cost);
    if (cost === most) return;
    const next = stack[depth + 1]!;
    for (let face = 0; face < 6; face++) {
      const opposite = face === (last ^ 1);
      if (face === last || (opposite && face < last)) continue;
      for (let quarters = 1; quarters <= 3; quarters++) {
        const sum = cost + costs[quarters]!;
        if (sum > most) continue;
        next.spots.set(cube.spots);
        turnFace(next, 3 * face + quarters - 1);
        from(depth + 1, face, sum);
      }
    }
  };
  // No face is -2, and none is opposite to it.
  from(0, -2, 0);
}

/** How many canonical sequences there are of each cost. */
export function sequencesByCost(most: number, metric: Metric): number[] {
  const counts = new Array<number>(most + 1).fill(0);
  eachSequence(most, metric, (_, cost) => counts[cost]!++);
  return counts;
}

const ONES = Uint8Array.from({ length: 1 << 12 }, (_, bits) => bits.toString(2).replaceAll('0', '').length);

/** Rank among the arrangements of the rest, `used` being places taken before: exact, below (places - taken)!. */
function rank(spots: Uint8Array, from: number, to: number, facesOf: number, places: number, taken: number): number {
  let used = taken;
  let at = 0;
  for (let piece = from; piece < to; piece++) {
    const place = (spots[piece]! / facesOf) | 0;
    at = at * (places - ONES[used]!) + place - ONES[used & ((1 << place) - 1)]!;
    used |= 1 << place;
  }
  return at;
}

/** 24 classes of positions: the spot of the first corner. A key is exact within a class. */
export const classOf = (spots: Uint8Array): number => spots[0]!;

/**
 * Key of a position within its class, in 62 bits: high word = 22 bits of the seven other corners (7! arrangements, 3^6
 * twists, the last twist being determined) and 8 flips; low word = 29 bits of the edges' arrangement (12!) and 3 flips
 * (the last flip is determined).
 */
export function writeKey(spots: Uint8Array, into: Uint32Array, at: number): void {
  const corners = rank(spots, 1, 8, 3, 8, 1 << ((spots[0]! / 3) | 0));
  let twists = 0;
  for (let piece = 1; piece < 7; piece++) twists = 3 * twists + (spots[piece]! % 3);
  let flips = 0;
  for (let piece = 8; piece < PIECES - 1; piece++) flips = (flips << 1) | (spots[piece]! & 1);
  into[at] = ((corners * 729 + twists) << 8) | (flips >> 3);
  into[at + 1] = rank(spots, 8, 20, 2, 12, 0) * 8 + (flips & 7);
}

/** Keys are sorted in batches of whole classes; this many at once take 8 bytes each. */
const MOST_KEYS = 40_000_000;

/** How many positions can be reached at this cost or less. */
function positionsWithin(most: number, metric: Metric): number {
  const sizes = new Array<number>(24).fill(0);
  eachSequence(most, metric, (spots) => sizes[classOf(spots)]!++);
  const waiting = sizes.flatMap((size, i) => (size > 0 ? [i] : []));
  let positions = 0;
  while (waiting.length > 0) {
    const words = new Array<Uint32Array | undefined>(24).fill(undefined);
    const ends = new Array<number>(24).fill(0);
    for (let room = MOST_KEYS; waiting.length > 0; ) {
      const next = waiting[0]!;
      room -= sizes[next]!;
      if (room < 0 && words.some((w) => w)) break;
      words[next] = new Uint32Array(2 * sizes[next]!);
      waiting.shift();
    }
    eachSequence(most, metric, (spots) => {
      const c = classOf(spots);
      const into = words[c];
      if (!into) return;
      writeKey(spots, into, ends[c]!);
      ends[c]! += 2;
    });
    for (const keys of words) if (keys) positions += distinct(keys);
  }
  return positions;
}

/** How many different pairs of words; sorts them. */
function distinct(words: Uint32Array): number {
  new BigUint64Array(words.buffer).sort();
  let n = 0;
  for (let i = 0; i < words.length; i += 2) {
    if (i === 0 || words[i] !== words[i - 2] || words[i + 1] !== words[i - 1]) n++;
  }
  return n;
}

/** How many positions need exactly 0, 1, 2 … : differences of what can be reached within each. */
export function positionsByDepth(most: number, metric: Metric): number[] {
  const within = Array.from({ length: most + 1 }, (_, n) => positionsWithin(n, metric));
  return within.map((n, i) => n - (i === 0 ? 0 : within[i - 1]!));
}

/** A cube's state as text, for small sets. */
export const stateOf = (cube: Cube): string => String.fromCharCode(...cube.spots);

/** Depths of everything that some sequences of face turns, each counted as one move, can reach from solved. */
export function groupByDepth(moves: readonly (readonly number[])[]): number[] {
  const seen = new Set<string>([stateOf(solvedCube())]);
  const depths: number[] = [];
  for (let layer: Cube[] = [solvedCube()]; layer.length > 0; ) {
    depths.push(layer.length);
    const next: Cube[] = [];
    for (const cube of layer) {
      for (const move of moves) {
        const after = copyOf(cube);
        for (const turn of move) turnFace(after, turn);
        const state = stateOf(after);
        if (seen.has(state)) continue;
        seen.add(state);
        next.push(after);
      }
    }
    layer = next;
  }
  return depths;
}
