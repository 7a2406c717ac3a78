/** The numbering of spots and turns, on which tables elsewhere rely; worked out by hand from the layout as documented. */
import { expect, test } from 'vitest';
import { FACES } from '../../src/cube/faces.ts';
import {
  CORNER_AFTER,
  CORNERS,
  cornerOf,
  cornerSpot,
  EDGE_AFTER,
  EDGES,
  edgeOf,
  edgeSpot,
  faceOfCornerSpot,
  faceOfEdgeSpot,
  faceTurn,
} from '../../src/cube/spots.ts';
import { TURNS } from '../../src/cube/turns.ts';

const SPOTS = Array.from({ length: 24 }, (_, spot) => spot);

// Clockwise as seen from outside, from U or D on.
test('corner spots', () => {
  const byHand = ['UFR URF', 'UFL UFL', 'UBL ULB', 'UBR UBR', 'DFR DFR', 'DFL DLF', 'DBL DBL', 'DBR DRB'];
  expect(SPOTS.map((s) => `${cornerOf(s)}:${faceOfCornerSpot(s)}`)).toEqual(
    byHand.flatMap((row) => [...row.slice(4)].map((face) => `${row.slice(0, 3)}:${face}`)),
  );
  expect(SPOTS.map((s) => cornerSpot(cornerOf(s), faceOfCornerSpot(s)))).toEqual(SPOTS);
  expect(() => cornerSpot('UFR', 'B')).toThrow(RangeError);
});

test('edge spots', () => {
  const byHand = ['UF', 'UL', 'UB', 'UR', 'FR', 'FL', 'BL', 'BR', 'DF', 'DL', 'DB', 'DR'];
  expect(SPOTS.map((s) => `${edgeOf(s)}:${faceOfEdgeSpot(s)}`)).toEqual(
    byHand.flatMap((place) => [...place].map((face) => `${place}:${face}`)),
  );
  expect(SPOTS.map((s) => edgeSpot(edgeOf(s), faceOfEdgeSpot(s)))).toEqual(SPOTS);
  expect(() => edgeSpot('UF', 'R')).toThrow(RangeError);
});

test('the turns of faces come first among all turns, in the order in which solutions are sorted', () => {
  const texts = "U U2 U' D D2 D' R R2 R' L L2 L' F F2 F' B B2 B'".split(' ');
  expect(TURNS.slice(0, 18).map((t) => t.text)).toEqual(texts);
  expect(TURNS.map((t) => t.index)).toEqual(TURNS.map((_, i) => i));
  expect(FACES.flatMap((face) => ([1, 2, 3] as const).map((q) => faceTurn(face, q)))).toEqual(texts.map((_, i) => i));
});

test('a turn moves the spots of its own layer and no other', () => {
  for (let turn = 0; turn < 18; turn++) {
    const face = FACES[Math.floor(turn / 3)]!;
    for (const spot of SPOTS) {
      expect(CORNER_AFTER[24 * turn + spot] !== spot).toBe(CORNERS[Math.floor(spot / 3)]!.includes(face));
      expect(EDGE_AFTER[24 * turn + spot] !== spot).toBe(EDGES[spot >> 1]!.includes(face));
    }
  }
});
