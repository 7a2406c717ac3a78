/**
 * Places and spots. A place is where a piece can sit; a spot is one face of a place, where one sticker can be.
 * A piece's whereabouts, its turning included, are the spot of one sticker of it: one number.
 *
 *   corner spot = 3 * place + k, k counting the place's faces clockwise from its U or D face
 *   edge spot   = 2 * place + k, k counting the place's faces as its name has them
 *
 * The sticker that speaks for a piece is the one whose home spot has k = 0.
 */
import { cross, dot, FACES, type Face, faceTowards, NORMAL, rotated } from './faces.ts';

/** The corner places by their faces, U or D first; pieces and spots are numbered in this order. */
export const CORNERS = ['UFR', 'UFL', 'UBL', 'UBR', 'DFR', 'DFL', 'DBL', 'DBR'] as const;
/** The edge places likewise. */
export const EDGES = ['UF', 'UL', 'UB', 'UR', 'FR', 'FL', 'BL', 'BR', 'DF', 'DL', 'DB', 'DR'] as const;
/** The place of a corner. */
export type Corner = (typeof CORNERS)[number];
/** The place of an edge. */
export type Edge = (typeof EDGES)[number];
/** Any place of a piece that moves. */
export type Place = Corner | Edge;

/** 0..23 */
export type CornerSpot = number;
/** 0..23 */
export type EdgeSpot = number;

const facesOf = (place: Place): Face[] => [...place] as Face[];

/** Clockwise as seen from outside, from the U or D face on. */
function clockwise([a, b, c]: readonly Face[]): Face[] {
  const turnsLeft = dot(cross(NORMAL[a!], NORMAL[b!]), NORMAL[c!]) > 0;
  return turnsLeft ? [a!, c!, b!] : [a!, b!, c!];
}

const CORNER_FACES: readonly (readonly Face[])[] = CORNERS.map((place) => clockwise(facesOf(place)));
const EDGE_FACES: readonly (readonly Face[])[] = EDGES.map(facesOf);

/** The place of a corner spot. */
export const cornerOf = (spot: CornerSpot): Corner => CORNERS[Math.floor(spot / 3)]!;
/** The place of an edge spot. */
export const edgeOf = (spot: EdgeSpot): Edge => EDGES[spot >> 1]!;
/** The face of a corner spot. */
export const faceOfCornerSpot = (spot: CornerSpot): Face => CORNER_FACES[Math.floor(spot / 3)]![spot % 3]!;
/** The face of an edge spot. */
export const faceOfEdgeSpot = (spot: EdgeSpot): Face => EDGE_FACES[spot >> 1]![spot & 1]!;

/** The spot of a corner place's face; an error of ours if the place has no such face. */
export function cornerSpot(place: Corner, face: Face): CornerSpot {
  const p = CORNERS.indexOf(place);
  const k = CORNER_FACES[p]!.indexOf(face);
  if (k < 0) throw new RangeError(`${place} has no face ${face}`);
  return 3 * p + k;
}

/** The spot of an edge place's face; an error of ours if the place has no such face. */
export function edgeSpot(place: Edge, face: Face): EdgeSpot {
  const p = EDGES.indexOf(place);
  const k = EDGE_FACES[p]!.indexOf(face);
  if (k < 0) throw new RangeError(`${place} has no face ${face}`);
  return 2 * p + k;
}

/** The corner place that touches these three faces, in whatever order they come. */
export const cornerAt = (faces: readonly Face[]): Corner => CORNERS.find((c) => faces.every((f) => c.includes(f)))!;
/** The edge place that touches these two faces, in whatever order they come. */
export const edgeAt = (faces: readonly Face[]): Edge => EDGES.find((e) => faces.every((f) => e.includes(f)))!;

const movedFace = (face: Face, about: Face, quarters: number): Face =>
  faceTowards(rotated(NORMAL[face], about, quarters));

/** Where each spot comes to when all of space turns. */
export function cornerSpotTurned(spot: CornerSpot, about: Face, quarters: number): CornerSpot {
  const moved = (f: Face) => movedFace(f, about, quarters);
  return cornerSpot(cornerAt(facesOf(cornerOf(spot)).map(moved)), moved(faceOfCornerSpot(spot)));
}

/** Likewise for an edge. */
export function edgeSpotTurned(spot: EdgeSpot, about: Face, quarters: number): EdgeSpot {
  const moved = (f: Face) => movedFace(f, about, quarters);
  return edgeSpot(edgeAt(facesOf(edgeOf(spot)).map(moved)), moved(faceOfEdgeSpot(spot)));
}

/**
 * The 18 turns of the six faces: index = 3 * face + quarters - 1, so that the order is U U2 U' D D2 D' R … B'.
 * Where a sticker on a spot comes to by a turn: CORNER_AFTER[24 * turn + spot], EDGE_AFTER[24 * turn + spot].
 */
export type FaceTurn = number;
/** The number of a turn: by face in the order of FACES, then by quarters. */
export const faceTurn = (face: Face, quarters: 1 | 2 | 3): FaceTurn => 3 * FACES.indexOf(face) + quarters - 1;

function tableOfTurns(
  touches: (spot: number, face: Face) => boolean,
  moved: (spot: number, about: Face, quarters: number) => number,
): Uint8Array {
  const after = new Uint8Array(18 * 24);
  for (const face of FACES) {
    for (const quarters of [1, 2, 3] as const) {
      for (let spot = 0; spot < 24; spot++) {
        after[24 * faceTurn(face, quarters) + spot] = touches(spot, face) ? moved(spot, face, quarters) : spot;
      }
    }
  }
  return after;
}

/** By 24 * turn + spot: where a corner's sticker is after a turn. */
export const CORNER_AFTER: Uint8Array = tableOfTurns((s, face) => cornerOf(s).includes(face), cornerSpotTurned);
/** Likewise for an edge. */
export const EDGE_AFTER: Uint8Array = tableOfTurns((s, face) => edgeOf(s).includes(face), edgeSpotTurned);
