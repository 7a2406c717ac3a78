/** A turns block -> one strip: turns in their groups, lines and words under them, the ring with the length. */
import type { Pt, TurnsBlock } from './blocks.ts';
import { widthOf } from './fonts.ts';
import { breakLines, type Finding, type Line, printed } from './lines.ts';
import { placeLine } from './measure-text.ts';
import { area, faceOf, lineAt, type Piece, type Sink, slack, strip, textAt } from './pieces.ts';
import type { Report } from './report.ts';
import { baseline, belowMiddle, inks, type TypeStyle, typeScale } from './type.ts';

const ringFace = typeScale.ring;
const labelFace = typeScale.label;

interface Size {
  readonly face: TypeStyle;
  readonly wordsFace: TypeStyle;
  /** From the top of a line of turns: to the line under a group, and to the words below that. */
  readonly underline: Pt;
  readonly wordsTop: Pt;
}

const sizes: Readonly<Record<NonNullable<TurnsBlock['size']>, Size>> = {
  small: { face: typeScale.turns, wordsFace: typeScale.words, underline: 14.6, wordsTop: 16.5 },
  large: { face: typeScale['large-turns'], wordsFace: typeScale['large-words'], underline: 20.4, wordsTop: 22.5 },
};
/**
 * Groups stand so many spaces apart, the fewer where the more would take another row. Not two: programs that read the
 * text of a PDF take a gap that wide for the end of a line.
 */
const gaps = [1.5, 1] as const;
/** Their lines a little more. */
const underlineInset = 0.8;
const underlineLine = { width: 0.5, colour: inks.black } as const;
/** With one line of words the whole is 27 points high, on the grid of 3. */
const wordsBottom = 1.5;
const wordsGap = 7;
const ringHeight = 14;
const ringLine = { colour: inks.black, width: 0.8 } as const;
const ringPadding = 4.6;
const ringGap = 6;

/** A group, or the part of it that a line holds; x from the block's left edge. */
interface Cell {
  readonly x: Pt;
  readonly text: string;
  /** Of the turns alone. */
  readonly width: Pt;
  readonly underlined: boolean;
  readonly words: readonly Line[];
  /** Of the words alone. */
  readonly wordsWidth: Pt;
}

const turnsWidth = (text: string, { face }: Size): Pt => widthOf(face.font, text, face.size);

type Row = Cell[];

interface Rows {
  readonly rows: readonly Row[];
  readonly findings: readonly Finding[];
}

const fillRows = (groups: TurnsBlock['groups'], width: Pt, size: Size): Rows => {
  const [wide, narrow] = gaps.map((spaces) => fillRowsApart(groups, width, spaces, size)) as [Rows, Rows];
  return wide.rows.length > narrow.rows.length ? narrow : wide;
};

/**
 * Groups -> rows no wider than `width`. A group moves to the next row whole where it fits there; one that fits no row
 * is parted between turns, its words under its first part. Rows after the first are indented.
 */
const fillRowsApart = (groups: TurnsBlock['groups'], width: Pt, spaces: number, size: Size): Rows => {
  const { wordsFace } = size;
  const space = turnsWidth(' ', size);
  const gap = spaces * space;
  const indent = 2 * space;
  const rows: Row[] = [[]];
  const findings: Finding[] = [];

  const nextX = (): Pt => {
    const last = rows.at(-1)!.at(-1);
    if (!last) return rows.length > 1 ? indent : 0;
    const afterTurns = last.x + last.width + gap;
    return last.wordsWidth > 0 ? Math.max(afterTurns, last.x + last.wordsWidth + wordsGap) : afterTurns;
  };
  const startRow = (): void => {
    if (rows.at(-1)!.length > 0) rows.push([]);
  };

  for (const group of groups) {
    const turns = group.turns.filter((turn) => turn !== '').map(printed);
    const spans = group.words ? ([{ kind: 'plain', text: group.words }] as const) : [];
    const words = breakLines(spans, wordsFace, Math.max(width - indent, 0));
    findings.push(...words.findings);
    if (turns.length === 0 && words.lines.length === 0) continue;
    const underlined = words.lines.length > 0;
    const wordsWidth = Math.max(0, ...words.lines.map((line) => line.width));
    const text = turns.join(' ');
    const whole = Math.max(turnsWidth(text, size), wordsWidth);
    const put = (held: string, isFirst: boolean): void => {
      const under = isFirst ? { words: words.lines, wordsWidth } : { words: [], wordsWidth: 0 };
      rows.at(-1)!.push({ x: nextX(), text: held, width: turnsWidth(held, size), underlined, ...under });
    };
    if (nextX() + whole > width + slack) startRow();
    if (nextX() + whole <= width + slack || turns.length === 0) {
      put(text, true);
      continue;
    }
    for (let rest: readonly string[] = turns; rest.length > 0; ) {
      const x = nextX();
      let count = 1;
      while (count < rest.length && x + turnsWidth(rest.slice(0, count + 1).join(' '), size) <= width + slack) count++;
      // A last turn alone on a line is easily missed: it is given company.
      if (rest.length - count === 1 && count > 2) count--;
      const part = rest.slice(0, count).join(' ');
      if (x + turnsWidth(part, size) > width + slack) findings.push({ code: 'word-too-wide', what: part });
      put(part, rest === turns);
      rest = rest.slice(count);
      if (rest.length > 0) startRow();
    }
  }
  return { rows: rows.filter((row) => row.length > 0), findings };
};

/** Neighbours that stand one space apart become one text, so that copied turns have single spaces. */
const joinCells = (row: Row, size: Size): readonly { readonly x: Pt; readonly text: string }[] => {
  const space = turnsWidth(' ', size);
  const runs: { x: Pt; text: string; end: Pt }[] = [];
  for (const { x, text, width } of row) {
    const last = runs.at(-1);
    if (last && Math.abs(last.end + space - x) < 0.01) {
      last.text += ` ${text}`;
      last.end = x + width;
    } else {
      runs.push({ x, text, end: x + width });
    }
  }
  return runs;
};

const rowHeight = (row: Row, { face, wordsFace, wordsTop }: Size): Pt => {
  const wordLines = Math.max(0, ...row.map((cell) => cell.words.length));
  if (wordLines > 0) return wordsTop + wordLines * wordsFace.leading + wordsBottom;
  return face.leading + (row.some((cell) => cell.underlined) ? 3 : 0);
};

const placeRing = (sink: Sink, text: string, right: Pt, middle: Pt, width: Pt, part?: number): void => {
  // The stroke lies half outside its box: set in, so that the ring ends where the lines of the page end.
  const inset = ringLine.width / 2;
  sink.items.push({
    kind: 'box',
    ...area(
      right - width + inset,
      middle - ringHeight / 2 + inset,
      width - ringLine.width,
      ringHeight - ringLine.width,
    ),
    radius: 4.6,
    line: ringLine,
  });
  const left = right - (width + widthOf(ringFace.font, text, ringFace.size)) / 2;
  sink.items.push(textAt(faceOf(ringFace), text, left, middle + belowMiddle(ringFace.font, ringFace.size), part));
};

/**
 * One strip. All turns are drawn before all words and these before the ring: whoever copies or reads aloud has the
 * turns unbroken.
 */
export const measureTurns = (block: TurnsBlock, width: Pt, report: Report): readonly Piece[] => {
  const { ring, label } = block;
  const size = sizes[block.size ?? 'small'];
  const { face, wordsFace, underline, wordsTop } = size;
  const ringWidth = ring
    ? Math.max(ringHeight + 2, widthOf(ringFace.font, ring.text, ringFace.size) + 2 * ringPadding)
    : 0;
  const { rows, findings } = fillRows(
    block.groups,
    Math.max(width - (ring && !label ? ringWidth + ringGap : 0), 0),
    size,
  );
  report.addFaults(findings, block.origin);
  if (ring) {
    report.checkGlyphs(ringFace.font, ring.text, block.origin);
    if (ringWidth > width) report.addFaults([{ code: 'word-too-wide', what: ring.text }], block.origin);
  }
  for (const cell of rows.flat()) report.checkGlyphs(face.font, cell.text, block.origin);
  if (label) {
    report.checkGlyphs(labelFace.font, label, block.origin);
    const labelWidth = widthOf(labelFace.font, label, labelFace.size) + (ring ? ringGap + ringWidth : 0);
    if (labelWidth > width) report.addFaults([{ code: 'word-too-wide', what: label }], block.origin);
  }
  if (rows.length === 0 && !ring && !label) return [];

  const labelPart = label ? report.addPart({ role: 'P' }) : undefined;
  const part = report.addPart({ role: 'P' });
  const ringPart = ring ? report.addPart({ role: 'Span', alt: ring.spoken }, part) : undefined;
  const tops: Pt[] = [];
  const top = label ? labelFace.leading : 0;
  let height = top;
  for (const row of rows) {
    tops.push(height);
    height += rowHeight(row, size);
  }
  height = Math.max(height, top + (rows.length > 0 || !label ? face.leading : 0));
  const inkWidth = Math.max(0, ...rows.flat().map((cell) => cell.x + Math.max(cell.width, cell.wordsWidth)));
  return [
    strip(block, height, (sink, x, y) => {
      sink.areas.push(area(x, y, ring ? Math.max(width, inkWidth) : inkWidth, height));
      if (label) sink.items.push(textAt(faceOf(labelFace), label, x, y + baseline(labelFace), labelPart));
      const cells = rows.flatMap((row, i) => row.map((cell) => ({ ...cell, left: x + cell.x, top: y + tops[i]! })));
      for (const { left, top, underlined, width } of cells) {
        if (!underlined || width === 0) continue;
        const [from, to] = [left + underlineInset, left + width - underlineInset];
        sink.items.push(lineAt(from, top + underline, to, top + underline, underlineLine));
      }
      for (const [i, row] of rows.entries()) {
        for (const run of joinCells(row, size)) {
          sink.items.push(textAt(faceOf(face), run.text, x + run.x, y + tops[i]! + baseline(face), part));
        }
      }
      for (const { left, top, words } of cells) {
        for (const [j, line] of words.entries()) {
          placeLine(sink, line, wordsFace, left, top + wordsTop + j * wordsFace.leading, part);
        }
      }
      const middle = y + (label ? labelFace : face).leading / 2;
      if (ring) placeRing(sink, ring.text, x + width, middle, ringWidth, ringPart);
    }),
  ];
};
