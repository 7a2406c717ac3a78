/** Cards -> pages: fronts and backs on one grid, cut marks around it. */
import { type Block, type Cards, mm, type Pt } from './blocks.ts';
import type { Item } from './frames.ts';
import { measure } from './measure.ts';
import type { PageShape } from './paper.ts';
import { emptySink, lineAt, type Sink, solid } from './pieces.ts';
import { nameOf, type Report } from './report.ts';
import { hairline } from './type.ts';

const PADDING = mm(4);
/** How far from the grid the marks begin, and how long they are. */
const MARK_GAP = mm(1);
const MARK = mm(2);

/** The grid of a page: as far from its left edge as from its right, and from its top as from its bottom. */
function cardGrid(shape: PageShape, least: Cards['least']) {
  const left = Math.max(shape.left, shape.width - shape.right);
  const top = Math.max(shape.top, shape.height - shape.bottom);
  const [roomX, roomY] = [shape.width - 2 * left, shape.height - 2 * top];
  const columns = Math.max(1, Math.floor(roomX / least.width));
  const rows = Math.max(1, Math.floor(roomY / least.height));
  return { columns, rows, left, top, width: roomX / columns, height: roomY / rows };
}

type CardGrid = ReturnType<typeof cardGrid>;

/** Where on its page the back of the card at a place stands: over the long edge columns change, over the short one rows. */
function backPlace({ columns, rows }: CardGrid, place: number, turnedOver: Cards['turnedOver']): number {
  const [column, row] = [place % columns, Math.floor(place / columns)];
  return turnedOver === 'long' ? row * columns + (columns - 1 - column) : (rows - 1 - row) * columns + column;
}

/** At every edge of a column above and below the grid, of a row at its left and right. */
function cutMarks({ columns, rows, left, top, width, height }: CardGrid): Item[] {
  const [right, bottom] = [left + columns * width, top + rows * height];
  const line = (x1: Pt, y1: Pt, x2: Pt, y2: Pt): Item => lineAt(x1, y1, x2, y2, hairline);
  const [from, to] = [MARK_GAP, MARK_GAP + MARK];
  return [
    ...Array.from({ length: columns + 1 }, (_, i) => left + i * width).flatMap((x) => [
      line(x, top - to, x, top - from),
      line(x, bottom + from, x, bottom + to),
    ]),
    ...Array.from({ length: rows + 1 }, (_, i) => top + i * height).flatMap((y) => [
      line(left - to, y, left - from, y),
      line(right + from, y, right + to, y),
    ]),
  ];
}

export function placeCards({ cards, turnedOver, least }: Cards, shape: PageShape, report: Report): Sink[] {
  const grid = cardGrid(shape, least);
  const { columns, rows, left, top, width, height } = grid;
  const pages: Sink[] = [];
  const place = (page: Sink, block: Block, at: number): void => {
    const box = solid(measure(block, width - 2 * PADDING, report));
    const room = height - 2 * PADDING;
    if (box.height > room) {
      report.addFaults([{ code: 'block-too-tall', what: nameOf(block) }], block.origin);
      return;
    }
    const x = left + (at % columns) * width + PADDING;
    const y = top + Math.floor(at / columns) * height + PADDING;
    box.place(page, x, y, box.height);
  };
  for (let from = 0; from < cards.length; from += columns * rows) {
    const some = cards.slice(from, from + columns * rows);
    const [fronts, backs] = [emptySink(cutMarks(grid)), emptySink(cutMarks(grid))];
    for (const [i, { front }] of some.entries()) place(fronts, front, i);
    for (const [i, { back }] of some.entries()) place(backs, back, backPlace(grid, i, turnedOver));
    pages.push(fronts, backs);
  }
  return pages;
}
