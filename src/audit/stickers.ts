/**
 * The 54 stickers of a cube and what each turn does to them.
 *
 * 1..48 as in "Analyzing Rubik's Cube with GAP" (M. Schönert 1993, gap-system.org/Doc/Examples/rubik.html):
 * U 1-8, L 9-16, F 17-24, R 25-32, B 33-40, D 41-48, each face row by row in the usual cross-shaped net.
 * That example leaves the centres out; here they are 49..54 in the same order of faces, U L F R B D.
 */

/** `s[i]` is where the sticker that was at facelet i is now; facelets are 1..54 and `s[0]` is 0. */
export type Stickers = Uint8Array;

type Cycles = readonly (readonly number[])[];

// The six generators exactly as the GAP example prints them.
const FACE_CYCLES = {
  U: [
    [1, 3, 8, 6],
    [2, 5, 7, 4],
    [9, 33, 25, 17],
    [10, 34, 26, 18],
    [11, 35, 27, 19],
  ],
  L: [
    [9, 11, 16, 14],
    [10, 13, 15, 12],
    [1, 17, 41, 40],
    [4, 20, 44, 37],
    [6, 22, 46, 35],
  ],
  F: [
    [17, 19, 24, 22],
    [18, 21, 23, 20],
    [6, 25, 43, 16],
    [7, 28, 42, 13],
    [8, 30, 41, 11],
  ],
  R: [
    [25, 27, 32, 30],
    [26, 29, 31, 28],
    [3, 38, 43, 19],
    [5, 36, 45, 21],
    [8, 33, 48, 24],
  ],
  B: [
    [33, 35, 40, 38],
    [34, 37, 39, 36],
    [3, 9, 46, 32],
    [2, 12, 47, 29],
    [1, 14, 48, 27],
  ],
  D: [
    [41, 43, 48, 46],
    [42, 45, 47, 44],
    [14, 22, 30, 38],
    [15, 23, 31, 39],
    [16, 24, 32, 40],
  ],
} as const satisfies Record<string, Cycles>;

// Read off the same net by hand: M follows L, E follows D, S follows F. The last cycle of each holds the centres.
const SLICE_CYCLES = {
  M: [
    [2, 18, 42, 39],
    [7, 23, 47, 34],
    [49, 51, 54, 53],
  ],
  E: [
    [12, 20, 28, 36],
    [13, 21, 29, 37],
    [50, 51, 52, 53],
  ],
  S: [
    [4, 26, 45, 15],
    [5, 31, 44, 10],
    [49, 52, 54, 50],
  ],
} as const satisfies Record<string, Cycles>;

export const SOLVED: Stickers = Uint8Array.from({ length: 55 }, (_, i) => i);

function fromCycles(cycles: Cycles): Stickers {
  const images = SOLVED.slice();
  for (const cycle of cycles) {
    for (const [i, facelet] of cycle.entries()) images[facelet] = cycle[(i + 1) % cycle.length]!;
  }
  return images;
}

/** First `a`, then `b`. */
export function followedBy(a: Stickers, b: Stickers): Stickers {
  return a.map((facelet) => b[facelet]!);
}

export function undone(a: Stickers): Stickers {
  const images = SOLVED.slice();
  for (const [i, facelet] of a.entries()) images[facelet] = i;
  return images;
}

/** The same stickers in every place, centres included. */
export function sameStickers(a: Stickers, b: Stickers): boolean {
  return a.every((facelet, i) => facelet === b[i]);
}

function inTurn(...parts: readonly Stickers[]): Stickers {
  return parts.reduce(followedBy, SOLVED);
}

const U = fromCycles(FACE_CYCLES.U);
const L = fromCycles(FACE_CYCLES.L);
const F = fromCycles(FACE_CYCLES.F);
const R = fromCycles(FACE_CYCLES.R);
const B = fromCycles(FACE_CYCLES.B);
const D = fromCycles(FACE_CYCLES.D);
const M = fromCycles(SLICE_CYCLES.M);
const E = fromCycles(SLICE_CYCLES.E);
const S = fromCycles(SLICE_CYCLES.S);
const x = inTurn(R, undone(M), undone(L));
const y = inTurn(U, undone(E), undone(D));
const z = inTurn(F, S, undone(B));

/** One clockwise quarter of every turn that can be written; the wide ones by the identities Rw = L x, Lw = R x' … */
const QUARTERS = {
  U,
  D,
  L,
  R,
  F,
  B,
  M,
  E,
  S,
  x,
  y,
  z,
  Rw: inTurn(L, x),
  Lw: inTurn(R, undone(x)),
  Uw: inTurn(D, y),
  Dw: inTurn(U, undone(y)),
  Fw: inTurn(B, z),
  Bw: inTurn(F, undone(z)),
} as const;

export type Layer = keyof typeof QUARTERS;

/** `quarters`: clockwise as the regulations have it for this layer; 3 is one counter-clockwise. */
export interface Turn {
  readonly layer: Layer;
  readonly quarters: 1 | 2 | 3;
}

export function afterTurns(turns: readonly Turn[], start: Stickers = SOLVED): Stickers {
  let stickers = start;
  for (const { layer, quarters } of turns) {
    for (let i = 0; i < quarters; i++) stickers = followedBy(stickers, QUARTERS[layer]);
  }
  return stickers;
}

/** The 24 ways to hold a cube, as whole-cube rotations. */
const ROTATIONS: readonly Stickers[] = [SOLVED, x, inTurn(x, x), undone(x), z, undone(z)].flatMap((tilt) => [
  tilt,
  inTurn(tilt, y),
  inTurn(tilt, y, y),
  inTurn(tilt, undone(y)),
]);

/** The rotation that has carried the centres to where they are. */
function netRotation(stickers: Stickers): Stickers {
  // Slices and rotations move the six centres as one body, so one of the 24 always fits.
  return ROTATIONS.find((rotation) => [49, 50, 51, 52, 53, 54].every((c) => rotation[c] === stickers[c]))!;
}

/** The same state with the whole cube turned back until its centres stand as they did at first. */
export function againstCentres(stickers: Stickers): Stickers {
  return followedBy(stickers, undone(netRotation(stickers)));
}
