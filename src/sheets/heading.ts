/** What the heads of all sheets of a lesson have in common. */

import { type Block, mm, type Pt, type Span } from '../layout/blocks.ts';
import type { Lesson, TextLine } from '../lesson/lesson.ts';
import { columns, space, stack } from './blocks.ts';
import type { Making } from './making.ts';
import { lineSpans, plainText } from './phrases.ts';
import { line, plain } from './texts.ts';

/** Several lines as one, a dot between. */
export const dotted = (lines: readonly (TextLine | undefined)[], making: Making): Span[] =>
  lines
    .filter((one) => one !== undefined)
    .flatMap((one, i) => [...(i > 0 ? [plain(' · ')] : []), ...lineSpans(one, making)]);

/** Club and course, small, above the title; nothing if neither is named. */
export function clubLine({ club, course }: Lesson, making: Making): Block[] {
  const spans = dotted([club, course], making);
  return spans.length > 0 ? [line('label', ...spans)] : [];
}

export const titleBlock = ({ title }: Lesson, making: Making): Block => ({
  kind: 'text',
  role: 'H1',
  style: 'title',
  spans: title ? lineSpans(title, making) : [],
  bookmark: plainText(title, making),
  ...(title && { origin: title.span }),
});

/** The heavy line below a head. */
export const headRule = (below: Pt = mm(3)): Block[] => [space(mm(2)), { kind: 'rule', weight: 'heavy' }, space(below)];

/** Titles with lines for name and date beside them, on what students write on. */
export const headToFill = (titles: readonly Block[], { words: { handout } }: Making): Block =>
  columns(
    mm(10),
    ['rest', stack(0, ...titles)],
    [mm(50), stack(mm(2), { kind: 'write-line', label: handout.name }, { kind: 'write-line', label: handout.date })],
  );
