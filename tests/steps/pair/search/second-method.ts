/**
 * A second method: iterative deepening, pruned by the whole distance tables of cross and corner and of cross and edge.
 * It shares nothing with the search but the tables of turns.
 * Method: R. E. Korf, "Finding Optimal Solutions to Rubik's Cube Using Pattern Databases", AAAI-97 (from memory).
 */
import { type Cube, homeSpot, type Piece, pieceOf } from '../../../../src/cube/cube.ts';
import { CORNER_AFTER, EDGE_AFTER } from '../../../../src/cube/spots.ts';

const CROSS = (['DF', 'DL', 'DB', 'DR'] as const).map(pieceOf);
const SPOTS = 24;
const STATES = SPOTS ** 5;

const tableOf = (piece: Piece): Uint8Array => (piece < 8 ? CORNER_AFTER : EDGE_AFTER);
/** A state: the spots of five pieces as digits to the base of 24. */
const stateOf = (spots: readonly number[]): number => spots.reduce((n, spot) => SPOTS * n + spot, 0);

/** Breadth-first from home, every state there is. 255 where there is none. */
function distances(pieces: readonly Piece[]): Uint8Array {
  const distance = new Uint8Array(STATES).fill(255);
  const tables = pieces.map(tableOf);
  const queue = new Int32Array(12 * 11 * 10 * 9 * 16 * SPOTS);
  let last = 0;
  queue[last++] = stateOf(pieces.map(homeSpot));
  distance[queue[0]!] = 0;
  for (let first = 0; first < last; first++) {
    const state = queue[first]!;
    for (let turn = 0; turn < 18; turn++) {
      let rest = state;
      let to = 0;
      for (let i = 4, unit = 1; i >= 0; i--, unit *= SPOTS) {
        const above = (rest / SPOTS) | 0;
        to += unit * tables[i]![SPOTS * turn + rest - SPOTS * above]!;
        rest = above;
      }
      if (distance[to] !== 255) continue;
      distance[to] = distance[state]! + 1;
      queue[last++] = to;
    }
  }
  return distance;
}

const tables = new Map<Piece, Uint8Array>();
function tableFor(piece: Piece): Uint8Array {
  const known = tables.get(piece) ?? distances([...CROSS, piece]);
  tables.set(piece, known);
  return known;
}

export interface Counts {
  readonly shortest: number;
  readonly solutions: number;
  readonly longer: number;
}

/**
 * Lengths and counts of the solutions that bring the cross and these pieces home, `longer` more turns included; bounded
 * below by the tables of `guides`, some of the pieces.
 */
export function countSolutions(
  cube: Cube,
  pieces: readonly Piece[],
  longer: number,
  guides: readonly Piece[] = [pieceOf('DFR'), pieceOf('FR')],
): Counts {
  const all = [...CROSS, ...guides, ...pieces.filter((p) => !guides.includes(p) && !CROSS.includes(p))];
  const homes = all.map(homeSpot);
  const after = all.map(tableOf);
  const bounds = guides.map(tableFor);
  const stack = Array.from({ length: 24 }, () => new Uint8Array(all.length));
  stack[0]!.set(all.map((p) => cube.spots[p]!));

  const isWithin = (spots: Uint8Array, left: number): boolean => {
    const cross = ((spots[0]! * SPOTS + spots[1]!) * SPOTS + spots[2]!) * SPOTS + spots[3]!;
    return bounds.every((bound, i) => bound[cross * SPOTS + spots[4 + i]!]! <= left);
  };
  const count = (depth: number, left: number, lastFace: number): number => {
    const spots = stack[depth]!;
    const isGoal = spots.every((spot, i) => spot === homes[i]);
    // What goes on from the goal has passed through it.
    if (isGoal || left === 0) return isGoal && left === 0 ? 1 : 0;
    let found = 0;
    for (let turn = 0; turn < 18; turn++) {
      const face = Math.floor(turn / 3);
      // Opposite faces are 0 and 1, 2 and 3, 4 and 5: never the second before the first.
      if (face === lastFace || (lastFace % 2 === 1 && face === lastFace - 1)) continue;
      const next = stack[depth + 1]!;
      for (let i = 0; i < next.length; i++) next[i] = after[i]![SPOTS * turn + spots[i]!]!;
      if (isWithin(next, left - 1)) found += count(depth + 1, left - 1, face);
    }
    return found;
  };
  let shortest = 0;
  while (count(0, shortest, -1) === 0) shortest++;
  let more = 0;
  for (let n = 1; n <= longer; n++) more += count(0, shortest + n, -1);
  return { shortest, solutions: count(0, shortest, -1), longer: more };
}
