/** The way from a sheet to its finished pages: measure.ts, then flow.ts, then the foot, whose text counts the pages. */
import type { Paper, Sheet } from './blocks.ts';
import { placeCards } from './cards.ts';
import { flow } from './flow.ts';
import { widthOf } from './fonts.ts';
import type { Frame, Item, LayoutFault, Pages } from './frames.ts';
import { measure } from './measure.ts';
import { type PageShape, pageShape } from './paper.ts';
import { faceOf, lineAt, textAt } from './pieces.ts';
import { type Report, startReport } from './report.ts';
import { baseline, hairline, typeScale } from './type.ts';

export interface LaidOut {
  readonly pages: Pages;
  /** A sheet with faults is not to be written: its pages are laid out as far as they go. */
  readonly faults: readonly LayoutFault[];
}

const footGap = 12;

/**
 * The rule over the foot and its two texts: decoration, which a screen reader would else repeat on every page. A sheet of
 * cards has no rule, which would be taken for one to cut along.
 */
const placeFoot = ({ foot, cards }: Sheet, right: string, shape: PageShape, report: Report): readonly Item[] => {
  const style = typeScale.foot;
  const room = shape.right - shape.left - footGap - widthOf(style.font, right, style.size);
  const left = foot.left.find((text) => widthOf(style.font, text, style.size) <= room) ?? foot.left.at(-1) ?? '';
  const base = shape.footTop + baseline(style);
  const leftWidth = widthOf(style.font, left, style.size);
  const rightWidth = widthOf(style.font, right, style.size);
  if (leftWidth + footGap + rightWidth > shape.right - shape.left) {
    report.addFaults([{ code: 'word-too-wide', what: `${left} ${right}` }], undefined);
  }
  const { footRule } = shape;
  const items: Item[] = cards ? [] : [lineAt(shape.left, footRule, shape.right, footRule, hairline)];
  for (const [text, x] of [
    [left, shape.left],
    [right, shape.right - rightWidth],
  ] as const) {
    report.checkGlyphs(style.font, text, undefined);
    if (text !== '') items.push(textAt(faceOf(style), text, x, base));
  }
  return items;
};

/** Pages of `sheet` on `paper`: the same for the same input, whatever the machine. Never throws; see `faults`. */
export const layOut = (sheet: Sheet, { paper }: { readonly paper: Paper }): LaidOut => {
  const shape = pageShape(paper);
  const report = startReport();
  const width = shape.right - shape.left;
  const flowed = () =>
    flow(
      sheet.body.flatMap((block) => measure(block, width, report)),
      shape,
      report,
    );
  const placed = sheet.cards ? placeCards(sheet.cards, shape, report) : flowed();
  const frames: Frame[] = placed.map(({ items, areas, claims }, i) => ({
    items: [...items, ...placeFoot(sheet, sheet.foot.right(i + 1, placed.length), shape, report)],
    areas,
    claims: [...claims],
  }));
  const { title, language } = sheet;
  return {
    pages: { title, language, width: shape.width, height: shape.height, frames, parts: report.parts },
    faults: report.faults,
  };
};
