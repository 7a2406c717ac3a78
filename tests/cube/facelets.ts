/**
 * The numbering of the worked example "Analyzing Rubik's Cube with GAP" (M. Schönert 1993, updated for GAP 4,
 * www.gap-system.org/Doc/Examples/rubik.html): U 1-8, L 9-16, F 17-24, R 25-32, B 33-40, D 41-48, row by row in the
 * cross net. The centres, which it does not number, are 49..54 here, in the same order of faces.
 */
import { afterTurns, type Cube, solvedCube } from '../../src/cube/cube.ts';
import type { Face } from '../../src/cube/faces.ts';
import { type Sticker, stickersOf } from '../../src/cube/stickers.ts';
import type { Turn } from '../../src/cube/turns.ts';

const ORDER: readonly Face[] = ['U', 'L', 'F', 'R', 'B', 'D'];
export const ALL_FACELETS = 54;

export function faceletAt(face: Face, row: number, column: number): number {
  const i = 3 * row + column;
  const f = ORDER.indexOf(face);
  return i === 4 ? 49 + f : 8 * f + (i < 4 ? i + 1 : i);
}

const mark = (s: Sticker): string => `${s.piece} ${s.colour}`;

/** By sticker, the facelet that it is seen at. */
const whereabouts = (cube: Cube): Map<string, number> =>
  new Map(stickersOf(cube).map((s) => [mark(s), faceletAt(s.face, s.row, s.column)]));
const HOME = whereabouts(solvedCube());

/** A permutation of 1..54 as its images: the sticker that was at facelet i ends at images[i - 1]. */
export type Images = readonly number[];

export function imagesOf(turns: readonly Turn[]): Images {
  const images = new Array<number>(ALL_FACELETS).fill(0);
  const now = whereabouts(afterTurns(solvedCube(), turns));
  for (const [sticker, from] of HOME) images[from - 1] = now.get(sticker) ?? 0;
  return images;
}

/** The mirror to the left or right on facelets: R and L change places, columns run the other way. */
export const MIRRORED: Images = (() => {
  const images = new Array<number>(ALL_FACELETS).fill(0);
  for (const face of ORDER) {
    const seen = face === 'R' ? 'L' : face === 'L' ? 'R' : face;
    for (let row = 0; row < 3; row++) {
      for (let column = 0; column < 3; column++) {
        images[faceletAt(face, row, column) - 1] = faceletAt(seen, row, 2 - column);
      }
    }
  }
  return images;
})();

/** First a, then b. */
export const followed = (a: Images, b: Images): Images => a.map((i) => b[i - 1]!);

/** The lengths of the cycles, fixed facelets too. */
export function cyclesOf(images: Images): number[] {
  const seen = new Set<number>();
  const lengths: number[] = [];
  for (let start = 1; start <= images.length; start++) {
    let length = 0;
    for (let at = start; !seen.has(at); at = images[at - 1]!) {
      seen.add(at);
      length++;
    }
    if (length > 0) lengths.push(length);
  }
  return lengths;
}

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));
export const orderOf = (images: Images): number => cyclesOf(images).reduce((n, c) => (n * c) / gcd(n, c), 1);

/** `1^28 4^5`, as the data files write it. */
export function cycleType(images: Images): string {
  const counts = new Map<number, number>();
  for (const c of cyclesOf(images)) counts.set(c, (counts.get(c) ?? 0) + 1);
  return [...counts]
    .sort(([a], [b]) => a - b)
    .map(([length, n]) => `${length}^${n}`)
    .join(' ');
}

/** A permutation written in cycles, as the worked example prints it: `(1,3,8,6)(2,5,7,4)`. */
export function imagesOfCycles(text: string, size: number): Images {
  const images = Array.from({ length: size }, (_, i) => i + 1);
  for (const [, cycle] of text.replaceAll(' ', '').matchAll(/\(([\d,]+)\)/g)) {
    const points = cycle!.split(',').map(Number);
    points.forEach((point, i) => {
      images[point - 1] = points[(i + 1) % points.length]!;
    });
  }
  return images;
}
