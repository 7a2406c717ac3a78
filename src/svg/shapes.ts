/** Plane geometry of stickers. Polygons run clockwise as seen on paper (y grows downwards). */
import type { Point } from './scene.ts';

/** All coordinates of scenes: two decimals, which is a hundredth of a hundredth of the drawing's width. */
export const rounded = (n: number): number => Math.round(n * 100) / 100 + 0;

export const point = (x: number, y: number): Point => ({ x: rounded(x), y: rounded(y) });

/** Twice the area; positive if the polygon runs clockwise on paper. */
const doubleArea = (points: readonly Point[]): number =>
  points.reduce((sum, a, i) => {
    const b = points[(i + 1) % points.length]!;
    return sum + a.x * b.y - b.x * a.y;
  }, 0);

export const clockwise = (points: readonly Point[]): Point[] =>
  doubleArea(points) >= 0 ? [...points] : [...points].reverse();

/** The mean of the corners: for our nearly square stickers the middle of the largest letter that fits. */
export const middle = (points: readonly Point[]): Point =>
  point(points.reduce((s, p) => s + p.x, 0) / points.length, points.reduce((s, p) => s + p.y, 0) / points.length);

/** A convex clockwise polygon with every side moved inwards by `by`. */
export function inset(points: readonly Point[], by: number): Point[] {
  const sides = points.map((a, i) => {
    const b = points[(i + 1) % points.length]!;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const [dx, dy] = [(b.x - a.x) / length, (b.y - a.y) / length];
    return { x: a.x - dy * by, y: a.y + dx * by, dx, dy };
  });
  return sides.map((s, i) => {
    const r = sides[(i + sides.length - 1) % sides.length]!;
    const t = ((s.x - r.x) * s.dy - (s.y - r.y) * s.dx) / (r.dx * s.dy - r.dy * s.dx);
    return point(r.x + r.dx * t, r.y + r.dy * t);
  });
}

/**
 * The outline of polygons that share whole sides: sides that two have in common drop out, the rest is chained.
 * One closed polygon for each connected group, so one for stickers that touch each other.
 */
export function unionOutline(polygons: readonly (readonly Point[])[]): Point[][] {
  const isSame = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y;
  const sides: { from: Point; to: Point }[] = [];
  for (const polygon of polygons) {
    polygon.forEach((from, i) => {
      const to = polygon[(i + 1) % polygon.length]!;
      const back = sides.findIndex((s) => isSame(s.from, to) && isSame(s.to, from));
      if (back >= 0) sides.splice(back, 1);
      else sides.push({ from, to });
    });
  }
  const outlines: Point[][] = [];
  while (sides.length > 0) {
    const outline: Point[] = [];
    for (let next = 0; next >= 0; ) {
      const [{ from, to }] = sides.splice(next, 1) as [(typeof sides)[number]];
      outline.push(from);
      next = sides.findIndex((s) => isSame(s.from, to));
    }
    outlines.push(outline);
  }
  return outlines;
}
