/** Breadth-first depths over the whereabouts of a few pieces, for tables that hold every state. */
import { CORNER_PIECES, homeSpot, type Piece } from '../../src/cube/cube.ts';
import { CORNER_AFTER, EDGE_AFTER, type FaceTurn } from '../../src/cube/spots.ts';

/** Turns of these faces, by their index in U D R L F B; a half turn is one move or, counting quarters, two. */
export function movesOf(faces: readonly number[], metric: 'half' | 'quarter'): FaceTurn[] {
  return faces.flatMap((face) => (metric === 'half' ? [0, 1, 2] : [0, 2]).map((q) => 3 * face + q));
}

/** How many states, given as numbers below `states`, are n moves from `start`. */
export function depths(states: number, start: number, moves: number, after: (state: number, move: number) => number) {
  const seen = new Uint8Array(states);
  seen[start] = 1;
  const counts: number[] = [];
  for (let layer = [start]; layer.length > 0; ) {
    counts.push(layer.length);
    const next: number[] = [];
    for (const state of layer) {
      for (let m = 0; m < moves; m++) {
        const to = after(state, m);
        if (seen[to]) continue;
        seen[to] = 1;
        next.push(to);
      }
    }
    layer = next;
  }
  return counts;
}

/** The same for up to four pieces, a state being their spots as digits to the base of 24. */
export function depthsOfPieces(pieces: readonly Piece[], moves: readonly FaceTurn[]): number[] {
  const start = pieces.reduce((n, piece) => 24 * n + homeSpot(piece), 0);
  const tables = [...pieces].reverse().map((piece) => (piece < CORNER_PIECES ? CORNER_AFTER : EDGE_AFTER));
  return depths(24 ** pieces.length, start, moves.length, (state, m) => {
    let rest = state;
    let to = 0;
    let unit = 1;
    for (const table of tables) {
      to += unit * table[24 * moves[m]! + (rest % 24)]!;
      rest = Math.floor(rest / 24);
      unit *= 24;
    }
    return to;
  });
}

const SEVEN = 7;
/** The corner that stays where it is when only U, R and F turn. */
const FIXED = 'DBL';
export const TWISTS = 3 ** (SEVEN - 1);
export const ARRANGEMENTS = 5040;

/**
 * The corners alone, one of them held fast: the 2x2x2. A state is arrangement * 3^6 + twists; where each corner goes
 * does not depend on twists, nor how much it twists on which corner it is, so that each has a table of its own.
 */
export function depthsOfCorners(cornerPlaces: readonly string[], moves: readonly FaceTurn[]): number[] {
  const places = cornerPlaces.flatMap((place, i) => (place === FIXED ? [] : [i]));
  const inOrder = arrangementsOf(SEVEN);
  const indexOf = new Map(inOrder.map((a, i) => [a.join(''), i]));
  const goesTo = moves.map((m) => places.map((p) => places.indexOf(Math.floor(CORNER_AFTER[24 * m + 3 * p]! / 3))));
  const twistBy = moves.map((m) => places.map((p) => CORNER_AFTER[24 * m + 3 * p]! % 3));
  const arrangementAfter = goesTo.map((to) =>
    Uint16Array.from(inOrder, (at) => indexOf.get(at.map((place) => to[place]!).join(''))!),
  );
  // Twists by place; the seventh is what brings their sum to a multiple of three.
  const twistsAfter = moves.map((_, m) =>
    Uint16Array.from({ length: TWISTS }, (_, twists) => {
      const before = digitsOf(twists);
      before.push((3 * SEVEN - before.reduce((a, b) => a + b, 0)) % 3);
      const after: number[] = [];
      before.forEach((twist, place) => {
        after[goesTo[m]![place]!] = (twist + twistBy[m]![place]!) % 3;
      });
      return after.slice(0, SEVEN - 1).reduce((n, twist) => 3 * n + twist, 0);
    }),
  );
  return depths(ARRANGEMENTS * TWISTS, 0, moves.length, (state, m) => {
    const twists = state % TWISTS;
    return TWISTS * arrangementAfter[m]![(state - twists) / TWISTS]! + twistsAfter[m]![twists]!;
  });
}

function digitsOf(twists: number): number[] {
  const digits: number[] = [];
  for (let unit = TWISTS / 3; unit >= 1; unit /= 3) digits.push(Math.floor(twists / unit) % 3);
  return digits;
}

/** All arrangements of 0..n-1 in dictionary order, the one in order first. */
function arrangementsOf(n: number): number[][] {
  const extend = (left: readonly number[]): number[][] =>
    left.length === 0
      ? [[]]
      : left.flatMap((first) => extend(left.filter((x) => x !== first)).map((rest) => [first, ...rest]));
  return extend(Array.from({ length: n }, (_, i) => i));
}
