/** Text blocks -> a strip for each line, with swatches and turns within the text. */
import type { Pt, TextBlock } from './blocks.ts';
import { widthOf } from './fonts.ts';
import { breakLines, type Line, swatchLetter, swatchSide } from './lines.ts';
import { area, type Piece, round, type Sink, strip, textAt } from './pieces.ts';
import type { Report } from './report.ts';
import { baseline, belowMiddle, inks, type TypeStyle, typeScale } from './type.ts';

const bulletIndent = 9;
const bulletSize = 2.6;
/** Thin and dark, so that a pale swatch still has an edge on a copy. */
const swatchLine = { colour: inks.black, width: 0.6 } as const;
/** Half the height of small letters, as a share of the size: a swatch is centred on it. */
const halfSmallLetter = 0.243;

const placeSwatches = (sink: Sink, line: Line, style: TypeStyle, x: Pt, base: Pt): void => {
  const side = swatchSide * style.size;
  const middle = base - halfSmallLetter * style.size;
  for (const swatch of line.swatches) {
    const left = x + swatch.x;
    sink.items.push({
      kind: 'box',
      ...area(left, middle - side / 2, side, side),
      radius: round(side * 0.2),
      fill: swatch.fill,
      line: swatchLine,
    });
    if (swatch.letter) {
      const size = round(swatchLetter * style.size);
      const face = { font: 'sans-strong', size, colour: swatch.letterInk ?? inks.black } as const;
      const inside = left + (side - widthOf(face.font, swatch.letter, size)) / 2;
      sink.items.push(textAt(face, swatch.letter, inside, middle + belowMiddle(face.font, size)));
    }
  }
};

/** One line with its top left corner at (x, y). Decoration comes first, so that the text of a line stays together. */
export const placeLine = (sink: Sink, line: Line, style: TypeStyle, x: Pt, y: Pt, part: number): void => {
  const base = y + baseline(style);
  placeSwatches(sink, line, style, x, base);
  for (const run of line.runs) sink.items.push(textAt(run, run.text, x + run.x, base, part));
};

/**
 * A strip a line. Two lines at least stay together on either side of a page's end: the first is glued to the second,
 * the last but one to the last, so that three lines or fewer are never parted.
 */
export const measureText = (block: TextBlock, width: Pt, report: Report): readonly Piece[] => {
  const { role, bookmark } = block;
  // A heading alone at the end of a page is never meant.
  const { keepWithNext = role.startsWith('H') } = block;
  const style = typeScale[block.style];
  const indent = block.bullet ? bulletIndent : 0;
  const { lines, findings } = breakLines(block.spans, style, Math.max(width - indent, 0), block.ink);
  report.addFaults(findings, block.origin);
  if (lines.length === 0) return [];
  const part = report.addPart({ role, ...(bookmark !== undefined && { bookmark }) });
  return lines.map((line, i) => {
    const isLast = i === lines.length - 1;
    const glued = isLast ? keepWithNext : i === 0 || i === lines.length - 2;
    return strip(
      block,
      style.leading,
      (sink, x, y) => {
        sink.areas.push(area(x, y, indent + line.width, style.leading));
        if (block.bullet && i === 0) {
          const middle = y + baseline(style) - halfSmallLetter * style.size;
          sink.items.push({
            kind: 'box',
            ...area(x + 1.5, middle - bulletSize / 2, bulletSize, bulletSize),
            radius: bulletSize / 2,
            fill: inks.black,
          });
        }
        placeLine(sink, line, style, x + indent, y, part);
      },
      glued,
    );
  });
};
