/** The six faces and how space turns about them. Everything else about the puzzle's shape is derived from here. */

/** In the order in which turns are sorted: two of opposite faces stand side by side. */
export const FACES = ['U', 'D', 'R', 'L', 'F', 'B'] as const;
/** A face as the viewer names it: regulations 12a1. */
export type Face = (typeof FACES)[number];

/** A direction or a position of a piece: x to the right, y up, z towards the viewer; each -1, 0 or 1. */
export type Vector = readonly [x: number, y: number, z: number];

/** Where each face looks. */
export const NORMAL: Readonly<Record<Face, Vector>> = {
  U: [0, 1, 0],
  D: [0, -1, 0],
  R: [1, 0, 0],
  L: [-1, 0, 0],
  F: [0, 0, 1],
  B: [0, 0, -1],
};

/** In a mirror at the left or right. */
export const MIRRORED_FACE: Readonly<Record<Face, Face>> = { U: 'U', D: 'D', F: 'F', B: 'B', R: 'L', L: 'R' };
export const OPPOSITE: Readonly<Record<Face, Face>> = { U: 'D', D: 'U', R: 'L', L: 'R', F: 'B', B: 'F' };

export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** The vector product of two directions. */
export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** All of them added. */
export const sum = (...vectors: readonly Vector[]): Vector =>
  vectors.reduce<Vector>((a, b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2]], [0, 0, 0]);

/** `by` times as long. */
export const scaled = (v: Vector, by: number): Vector => [v[0] * by, v[1] * by, v[2] * by];

/** Where `v` comes to by quarter turns about a face, clockwise as seen from outside that face. */
export function rotated(v: Vector, about: Face, quarters: number): Vector {
  const n = NORMAL[about];
  let at = v;
  for (let i = 0; i < quarters; i++) {
    // A rotation by -90 degrees about n: the part along n stays, the rest goes to minus n x v.
    at = sum(scaled(n, dot(at, n)), scaled(cross(n, at), -1));
  }
  return at;
}

/** The face that looks this way; a RangeError where none does. */
export function faceTowards(v: Vector): Face {
  const face = FACES.find((f) => dot(NORMAL[f], v) === 1 && dot(v, v) === 1);
  if (!face) throw new RangeError(`no face looks towards ${v.join(' ')}`);
  return face;
}
