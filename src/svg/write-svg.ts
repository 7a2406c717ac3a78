/** Scene -> SVG text. The only file that knows svg.js, and svgdom, the document that svg.js needs outside a browser. */
import { type Container, registerWindow, SVG } from '@svgdotjs/svg.js';
import { createSVGWindow } from 'svgdom';
import type { Mark, Point, Scene, Stroke } from './scene.ts';
import { rounded } from './shapes.ts';

/** Baseline below the middle of a capital, in font sizes; half the cap height of Source Sans. */
const HALF_CAPITAL = 0.33;
const FONT = "'Source Sans 3', 'Source Sans Pro', sans-serif";

/** The one document that all drawings are written with; each takes its own root and leaves nothing behind. */
let isReady = false;
function ensureDocument(): void {
  if (isReady) return;
  const window = createSVGWindow();
  registerWindow(window, window.document);
  isReady = true;
}

const number = (n: number): string => String(rounded(n));
const path = (points: readonly Point[]): string => points.map((p) => `${number(p.x)},${number(p.y)}`).join(' ');

const strokeAttributes = (stroke: Stroke | undefined): Record<string, string> =>
  stroke
    ? {
        stroke: stroke.colour,
        'stroke-width': number(stroke.width),
        'stroke-linejoin': 'round',
        'stroke-linecap': stroke.dash ? 'butt' : 'round',
        ...(stroke.dash ? { 'stroke-dasharray': stroke.dash.map(number).join(' ') } : {}),
      }
    : {};

function addMark(to: Container, mark: Mark): void {
  if (mark.kind !== 'label') {
    const { points, stroke } = mark;
    const fill = (mark.kind === 'polygon' && mark.fill) || 'none';
    const element = to.element(mark.kind === 'polygon' ? 'polygon' : 'polyline');
    element.attr({ points: path(points), fill, ...strokeAttributes(stroke) });
    return;
  }
  const { text, x, y, size, colour } = mark;
  const attributes = { x: number(x), y: number(y + size * HALF_CAPITAL), 'font-size': number(size), fill: colour };
  to.element('text')
    .words(text)
    .attr({ ...attributes, 'font-family': FONT, 'font-weight': '600', 'text-anchor': 'middle' });
}

/** A whole SVG document; the scene's description is what a screen reader says. The same scene, the same bytes. */
export function writeSvg(scene: Scene, title: string): string {
  ensureDocument();
  const root = SVG().attr({ viewBox: `0 0 ${number(scene.width)} ${number(scene.height)}`, role: 'img' });
  root.element('title').words(title);
  root.element('desc').words(scene.description);
  for (const mark of scene.marks) addMark(root, mark);
  return `${root.svg()}\n`;
}
