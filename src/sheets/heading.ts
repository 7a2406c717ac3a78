/** What the heads of all sheets of a lesson have in common. */

import { type Block, mm, type Pt, type Sheet, type Span } from '../layout/blocks.ts';
import type { Lesson, TextLine } from '../lesson/lesson.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import { columns, h1, space, stack } from './blocks.ts';
import type { Making } from './making.ts';
import { lineSpans, plainText } from './phrases.ts';
import { line, note, plain, strong } from './texts.ts';

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

export const titleBlock = ({ title }: Lesson, making: Making): Block =>
  h1(title ? lineSpans(title, making) : [], {
    bookmark: plainText(title, making),
    ...(title && { origin: title.span }),
  });

/** What is at the bottom and in front, in words, and of a lesson whether it is for the left hand. */
export const holdSaid = (
  { colours, hold, hand }: Pick<Lesson, 'colours' | 'hold'> & Partial<Pick<Lesson, 'hand'>>,
  { words: { handout } }: Making,
): string => `${handout.holdWords(colours.D, hold.front)}${hand === 'left' ? handout.leftHand : ''}`;

/** The hold in a line of its own. */
export const holdNote = (lesson: Lesson, making: Making, more = ''): Block =>
  note(strong(`${making.words.handout.hold}: `), plain(`${holdSaid(lesson, making)}${more}`));

type Said = (title: string, edition: string) => string;

/** A sheet of a lesson: its edition in the foot, `named` after the title, or alone where that is too wide. */
export const lessonSheet = (
  title: string,
  { edition }: ProvedLesson,
  { words: { handout, language } }: Making,
  body: readonly Block[],
  named: { readonly foot: Said; readonly proved: (edition: string) => string } = handout,
): Sheet => ({
  title,
  language,
  body,
  foot: { left: [named.foot(title, edition), named.proved(edition)], right: handout.page },
});

/** The heavy line below a head. */
export const headRule = (below: Pt = mm(3)): Block[] => [space(mm(2)), { kind: 'rule', weight: 'heavy' }, space(below)];

/** Titles with lines for whose it is and for the date beside them, on what students write on; `code`: it is printed already. */
export function headToFill(titles: readonly Block[], { words: { handout } }: Making, code?: string): Block {
  const labels = [...(code === undefined ? [handout.whose] : []), handout.date];
  const lines = labels.map((label): Block => ({ kind: 'write-line', label }));
  return columns(mm(10), ['rest', stack(0, ...titles)], [mm(50), stack(mm(2), ...lines)]);
}
