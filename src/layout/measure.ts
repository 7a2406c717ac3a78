/**
 * Blocks and a width -> pieces. Measuring walks the blocks in reading order, which gives the parts of the document's
 * structure their order. Lengths that are negative or no numbers count as none.
 */
import type { Block, ColumnsBlock, FigureBlock, GridBlock, Pt, StackBlock, WriteLineBlock } from './blocks.ts';
import { widthOf } from './fonts.ts';
import { measureBoxes } from './measure-boxes.ts';
import { measureText } from './measure-text.ts';
import { measureTurns } from './measure-turns.ts';
import {
  area,
  type Box,
  faceOf,
  glue,
  length,
  lineAt,
  type Piece,
  type Place,
  round,
  slack,
  solid,
  strip,
  textAt,
} from './pieces.ts';
import { nameOf, type Report, startReport } from './report.ts';
import { baseline, hairline, heavyLine, inks, typeScale } from './type.ts';

const tooWide = (block: Block, report: Report): void =>
  report.addFaults([{ code: 'block-too-wide', what: nameOf(block) }], block.origin);

const fullLine = (block: Block, line: typeof hairline | typeof heavyLine, width: Pt, glued: boolean): Piece =>
  strip(
    block,
    line.width,
    (sink, x, y) => {
      const middle = y + line.width / 2;
      sink.areas.push(area(x, y, width, line.width));
      sink.items.push(lineAt(x, middle, x + width, middle, line));
    },
    glued,
  );

/** Room for handwriting: 7.4 mm, on the grid of 3. */
const writeHeight = 21;
const writeGap = 6;

const measureWriteLine = (block: WriteLineBlock, width: Pt, report: Report): readonly Piece[] => {
  const style = typeScale.label;
  const labelWidth = block.label === '' ? 0 : widthOf(style.font, block.label, style.size);
  report.checkGlyphs(style.font, block.label, block.origin);
  if (labelWidth > width) report.addFaults([{ code: 'word-too-wide', what: block.label }], block.origin);
  const part = report.addPart({ role: 'P' });
  return [
    strip(block, writeHeight, (sink, x, y) => {
      const base = round(y + writeHeight - style.leading + baseline(style));
      const lineY = base + 1.8;
      const start = x + labelWidth + (labelWidth > 0 ? writeGap : 0);
      sink.areas.push(area(x, y, Math.max(width, labelWidth), writeHeight));
      if (start < x + width) {
        const line = { width: hairline.width, colour: inks.black };
        sink.items.push(lineAt(start, lineY, x + width, lineY, line));
      }
      if (labelWidth > 0) sink.items.push(textAt(faceOf(style), block.label, x, base, part));
    }),
  ];
};

const measureFigure = (block: FigureBlock, width: Pt, report: Report): readonly Piece[] => {
  const { scene } = block;
  const asked = length(block.width);
  if (asked > width + slack) tooWide(block, report);
  const drawn = Math.min(asked, width);
  const sceneWidth = length(scene.width);
  const height = sceneWidth === 0 ? 0 : (drawn * length(scene.height)) / sceneWidth;
  if (drawn === 0 || !Number.isFinite(height) || height === 0) return [];
  for (const mark of scene.marks) {
    if (mark.kind === 'label') report.checkGlyphs('sans-strong', mark.text, block.origin);
  }
  const part = report.addPart({ role: 'Figure', alt: scene.description });
  return [
    strip(block, height, (sink, x, y) => {
      const placed = area(x, y, drawn, height);
      sink.areas.push(placed);
      sink.items.push({ kind: 'scene', ...placed, scene, part });
    }),
  ];
};

/** Lists of pieces below each other, `gap` apart; an empty list takes no gap. */
const joinBelow = (lists: readonly (readonly Piece[])[], gap: Pt): readonly Piece[] =>
  lists.filter((list) => list.length > 0).flatMap((list, i) => (i > 0 && gap > 0 ? [glue(gap), ...list] : list));

const lineBefore = (piece: Piece, inset: Pt): Piece => {
  const place: Place = (sink, x, y, height) => {
    const middle = x + hairline.width / 2;
    sink.items.push(lineAt(middle, y, middle, y + height, hairline));
    piece.place?.(sink, x + inset, y, height);
  };
  return { ...piece, place };
};

const measureStack = (block: StackBlock, width: Pt, report: Report): readonly Piece[] => {
  const keep = block.keep === true;
  const gap = length(block.gap);
  const inset = block.line === 'left' ? gap + hairline.width : 0;
  if (inset > width) tooWide(block, report);
  const inner = joinBelow(
    block.children.map((child) => measure(child, Math.max(width - inset, 0), report)),
    gap,
  );
  if (inner.length === 0) return [];
  // Kept first and lined afterwards: the line is then one stroke, as long as the room that the stack is given.
  const parted = keep ? [solidStrip(block, inner)] : block.keep ? chained(inner) : inner;
  if (block.line === 'left') return parted.map((piece) => lineBefore(piece, inset));
  if (block.line !== 'above') return parted;
  const lined = [fullLine(block, hairline, width, true), glue(gap), ...parted];
  return keep ? [solidStrip(block, lined)] : lined;
};

/** Each strip glued to the next, as flow parts them again where they are taller than a page; the last as it is. */
const chained = (pieces: readonly Piece[]): readonly Piece[] => {
  const last = pieces.findLastIndex((piece) => piece.kind === 'strip');
  return pieces.map((piece, i) => (piece.kind === 'strip' && i < last ? { ...piece, glued: true } : piece));
};

const solidStrip = (block: Block, pieces: readonly Piece[]): Piece => {
  const box = solid(pieces);
  return strip(block, box.height, box.place, pieces.findLast((piece) => piece.kind === 'strip')?.glued);
};

/** A block that is not parted whatever it says itself, as a cell or a column. */
const measureSolid = (block: Block, width: Pt, report: Report): Box => {
  const pieces = measure(block.kind === 'stack' ? { ...block, keep: true } : block, width, report);
  // A single strip is handed the whole height of its row, which a line at its left fills.
  const only = pieces.length === 1 ? pieces[0] : undefined;
  return only?.kind === 'strip' ? only : solid(pieces);
};

/** Boxes beside each other, all given the height of the tallest. */
const row = (block: Block, boxes: readonly { readonly x: Pt; readonly box: Box }[]): Piece => {
  const height = Math.max(0, ...boxes.map(({ box }) => box.height));
  return strip(block, height, (sink, x, y, given) => {
    for (const { x: left, box } of boxes) box.place(sink, x + left, y, Math.max(given, height));
  });
};

/**
 * Points first, then shares of what is left. Points beyond the room are a fault and shrunk to fit, as are points that
 * leave nothing to share.
 */
const columnWidths = (block: ColumnsBlock, width: Pt, gap: Pt, report: Report): readonly Pt[] => {
  const asked = block.columns.map((column) => column.width);
  const room = Math.max(width - gap * Math.max(asked.length - 1, 0), 0);
  const fixed = asked.reduce<Pt>((sum, one) => sum + (typeof one === 'number' ? length(one) : 0), 0);
  const shares = asked.reduce<number>((sum, one) => sum + (typeof one === 'number' ? 0 : length(one.share)), 0);
  const scale = fixed > room ? room / fixed : 1;
  const left = Math.max(room - fixed, 0);
  if (fixed > room + slack || (shares > 0 && left === 0)) tooWide(block, report);
  return asked.map((one) => {
    if (typeof one === 'number') return length(one) * scale;
    return shares > 0 ? (left * length(one.share)) / shares : 0;
  });
};

/** Gaps that alone fill the room are a fault and taken as none. */
const gapWithin = (block: ColumnsBlock | GridBlock, count: number, width: Pt, report: Report): Pt => {
  const gap = length(block.gap);
  if (count < 2 || gap * (count - 1) < width) return gap;
  tooWide(block, report);
  return 0;
};

/** Measured on a report of its own: what is not set leaves no parts and no faults behind. */
const isTallerThan = (block: ColumnsBlock, limit: Pt, width: Pt): boolean => {
  if (!Number.isFinite(limit)) return false;
  const { fallback: _, ...bare } = block;
  return solid(measureColumns(bare, width, startReport())).height > limit;
};

const hasNarrower = (block: ColumnsBlock, limit: Pt, width: Pt): boolean => {
  const widths = columnWidths(block, width, length(block.gap), startReport());
  return block.columns.some((column, i) => typeof column.width !== 'number' && widths[i]! < limit);
};

const measureColumns = (block: ColumnsBlock, width: Pt, report: Report): readonly Piece[] => {
  const { fallback } = block;
  if (
    fallback &&
    (hasNarrower(block, fallback.narrowerThan, width) || isTallerThan(block, fallback.tallerThan, width))
  ) {
    return measure(fallback.instead, width, report);
  }
  const gap = gapWithin(block, block.columns.length, width, report);
  const widths = columnWidths(block, width, gap, report);
  let x = 0;
  const boxes = block.columns.map((column, i) => {
    const left = x;
    x += widths[i]! + gap;
    return { x: left, box: measureSolid(column.child, widths[i]!, report) };
  });
  return boxes.length === 0 ? [] : [row(block, boxes)];
};

const measureGrid = (block: GridBlock, width: Pt, report: Report): readonly Piece[] => {
  const most = Math.max(1, Math.floor(length(block.columns)));
  const least = length(block.least ?? 0);
  const fitting = least > 0 ? Math.floor((width + length(block.gap)) / (least + length(block.gap))) : most;
  const count = Math.max(1, Math.min(most, fitting));
  const gap = gapWithin(block, count, width, report);
  const cellWidth = (width - gap * (count - 1)) / count;
  const rows: (readonly Piece[])[] = [];
  for (let start = 0; start < block.cells.length; start += count) {
    const cells = block.cells.slice(start, start + count);
    const boxes = cells.map((cell, i) => ({
      x: i * (cellWidth + gap),
      box: measureSolid(cell, cellWidth, report),
    }));
    // A row that fits no page is named by its tallest cell.
    const tallest = Math.max(...boxes.map(({ box }) => box.height));
    const culprit = cells[boxes.findIndex(({ box }) => box.height === tallest)] ?? block;
    rows.push([row(culprit, boxes)]);
  }
  return joinBelow(rows, length(block.rowGap));
};

const measureBare = (block: Block, width: Pt, report: Report): readonly Piece[] => {
  switch (block.kind) {
    case 'text':
      return measureText(block, width, report);
    case 'turns':
      return measureTurns(block, width, report);
    case 'figure':
      return measureFigure(block, width, report);
    case 'stack':
      return measureStack(block, width, report);
    case 'columns':
      return measureColumns(block, width, report);
    case 'grid':
      return measureGrid(block, width, report);
    case 'rule':
      return [fullLine(block, block.weight === 'heavy' ? heavyLine : hairline, width, false)];
    case 'write-line':
      return measureWriteLine(block, width, report);
    case 'boxes':
      return measureBoxes(block, width, report);
    case 'space':
      return length(block.height) > 0 ? [glue(length(block.height))] : [];
  }
};

/** The pieces of a block at a width; the claims of the block go to every page that comes to hold a strip of it. */
export const measure = (block: Block, width: Pt, report: Report): readonly Piece[] => {
  const pieces = measureBare(block, width, report);
  const { claims = [] } = block;
  if (claims.length === 0) return pieces;
  return pieces.map((piece) => {
    if (piece.kind === 'glue') return piece;
    const place: Place = (sink, x, y, height) => {
      for (const claim of claims) sink.claims.add(claim);
      piece.place(sink, x, y, height);
    };
    return { ...piece, place };
  });
};
