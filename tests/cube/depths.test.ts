/** Depths of parts of the cube, in full. */
import { describe, expect, test } from 'vitest';
import { pieceOf } from '../../src/cube/cube.ts';
import { FACES } from '../../src/cube/faces.ts';
import { CORNERS, type Place } from '../../src/cube/spots.ts';
import { effect, STRAIGHT } from '../../src/cube/view.ts';
import { depthsOfCorners, depthsOfPieces, movesOf } from './coordinates.ts';
import { turnsIn } from './read.ts';
import { groupByDepth } from './search-tree.ts';

const sum = (counts: readonly number[]): number => counts.reduce((a, b) => a + b, 0);
const ALL = [0, 1, 2, 3, 4, 5];
const URF = ['U', 'R', 'F'].map((face) => (FACES as readonly string[]).indexOf(face));
const CROSS: readonly Place[] = ['DF', 'DL', 'DB', 'DR'];

/** `computed`: by two independent programs for this project; no published source was found. */
const PARTS: readonly {
  readonly pieces: readonly Place[];
  readonly metric: 'half' | 'quarter';
  readonly states: number;
  readonly depths: readonly number[];
  readonly source: string;
}[] = [
  { pieces: ['FR'], metric: 'half', states: 24, depths: [1, 6, 13, 4], source: 'computed' },
  { pieces: ['DFR'], metric: 'half', states: 24, depths: [1, 9, 14], source: 'computed' },
  { pieces: ['DFR', 'FR'], metric: 'half', states: 576, depths: [1, 9, 54, 195, 265, 50, 2], source: 'computed' },
  {
    pieces: CROSS,
    metric: 'half',
    states: 190_080,
    depths: [1, 15, 158, 1394, 9809, 46381, 97254, 34966, 102],
    source: 'computed; the sum 12*11*10*9*2^4 by GAP 4.12.1',
  },
  {
    pieces: CROSS,
    metric: 'quarter',
    states: 190_080,
    depths: [1, 10, 73, 500, 3078, 15528, 57180, 91654, 21849, 207],
    source: 'computed; the sum 12*11*10*9*2^4 by GAP 4.12.1',
  },
  {
    pieces: ['DFR', 'DFL', 'DBL', 'DBR'],
    metric: 'half',
    states: 136_080,
    depths: [1, 15, 198, 2030, 15396, 61768, 53528, 3144],
    source: 'computed',
  },
];

test.each(PARTS)('$pieces, $metric turns ($source)', ({ pieces, metric, states, depths }) => {
  const counts = depthsOfPieces(pieces.map(pieceOf), movesOf(ALL, metric));
  expect(counts).toEqual(depths);
  expect(sum(counts)).toBe(states);
});

describe('corners with one held fast, the 2x2x2', () => {
  test.each([
    ['half', 'OEIS A079761', [1, 9, 54, 321, 1847, 9992, 50136, 227536, 870072, 1887748, 623800, 2644]],
    [
      'quarter',
      'OEIS A079762',
      [1, 6, 27, 120, 534, 2256, 8969, 33058, 114149, 360508, 930588, 1350852, 782536, 90280, 276],
    ],
  ] as const)('%s turns (%s)', (metric, _, expected) => {
    const counts = depthsOfCorners(CORNERS, movesOf(URF, metric));
    expect(counts).toEqual(expected);
    expect(sum(counts)).toBe(3_674_160);
  });
});

const GROUPS: readonly (readonly [moves: string, depths: readonly number[], source: string])[] = [
  ['R2 U2', [1, 2, 2, 2, 2, 2, 1], 'computed; order 12 by GAP 4.12.1'],
  ['U2 D2 F2 B2', [1, 4, 10, 24, 53, 64, 31, 4, 1], 'OEIS A080615'],
  ["M M' E E' S S'", [1, 6, 27, 120, 287, 258, 69], 'OEIS A080619: quarter turns of the slices'],
];

test.each(GROUPS)('the group of %s: %j (%s)', (moves, expected) => {
  expect(groupByDepth(turnsIn(moves).map((turn) => effect(turn, STRAIGHT).faceTurns))).toEqual(expected);
});
