/** Boxes to write in -> one strip: the label stands in their middle, the heads over them. */
import type { BoxesBlock, Pt } from './blocks.ts';
import { widthOf } from './fonts.ts';
import { area, faceOf, length, type Piece, slack, strip, textAt } from './pieces.ts';
import { nameOf, type Report } from './report.ts';
import { baseline, belowMiddle, inks, typeScale } from './type.ts';

const style = typeScale.label;
const labelGap = 6;
const radius = 1.5;
const line = { colour: inks.grey, width: 0.7 } as const;

export const measureBoxes = (block: BoxesBlock, room: Pt, report: Report): readonly Piece[] => {
  const { label = '', heads = [] } = block;
  const count = Math.floor(length(block.count));
  const [width, height] = [length(block.width), length(block.height)];
  const labelWidth = label === '' ? 0 : widthOf(style.font, label, style.size) + labelGap;
  const whole = labelWidth + count * width;
  if (whole > room + slack) report.addFaults([{ code: 'block-too-wide', what: nameOf(block) }], block.origin);
  for (const text of [label, ...heads]) report.checkGlyphs(style.font, text, block.origin);
  const part = label === '' && heads.length === 0 ? undefined : report.addPart({ role: 'P' });
  const face = faceOf(style);
  const headHeight = heads.length > 0 ? style.leading : 0;
  if (count === 0 || width === 0 || height === 0) return [];
  return [
    strip(block, headHeight + height, (sink, x, y) => {
      const top = y + headHeight;
      sink.areas.push(area(x, y, whole, headHeight + height));
      if (label !== '') {
        const base = top + height / 2 + belowMiddle(style.font, style.size);
        sink.items.push(textAt(face, label, x, base, part));
      }
      for (let i = 0; i < count; i++) {
        const left = x + labelWidth + i * width;
        const head = heads[i];
        if (head) {
          const middle = left + (width - widthOf(style.font, head, style.size)) / 2;
          sink.items.push(textAt(face, head, middle, y + baseline(style), part));
        }
        sink.items.push({ kind: 'box', ...area(left, top, width, height), radius, line });
      }
    }),
  ];
};
