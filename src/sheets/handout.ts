/** ProvedLesson -> the handout: head, explanation, a panel for each case. */
import { type Block, mm, type Sheet, type Span } from '../layout/blocks.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { ProvedLesson, ProvedPart } from '../lesson/prove.ts';
import { drawHold } from '../svg/draw-hold.ts';
import { openViewLegend } from '../svg/open-view-legend.ts';
import type { Ink } from '../svg/palette.ts';
import { LANGUAGES } from '../words/languages.ts';
import { casePanel } from './panel.ts';
import { type Making, noteBlocks, originOf, textBlocks } from './phrases.ts';

const PICTURE = mm(26);
const COLUMN_GAP = mm(7);
const ROW_GAP = mm(3);
/** Leaves room for a row of panels below it on the first page, on either paper. */
const TALLEST_OPENING = mm(150);

const plain = (text: string): Span[] => [{ kind: 'plain', text }];

/** Club and course above the title, lines for name and date beside them. */
function head(lesson: Lesson, { words }: Making): Block[] {
  const above = [lesson.club, lesson.course].filter((t) => t !== undefined).join(' · ');
  const titles: Block[] = [
    ...(above === '' ? [] : [{ kind: 'text', role: 'P', style: 'label', spans: plain(above) } as const]),
    { kind: 'text', role: 'H1', style: 'title', spans: plain(lesson.title), bookmark: lesson.title },
    ...(lesson.audience
      ? [{ kind: 'text', role: 'P', style: 'note', ink: 'grey', spans: plain(lesson.audience) } as const]
      : []),
  ];
  const lines: Block[] = [
    { kind: 'write-line', label: words.handout.name },
    { kind: 'write-line', label: words.handout.date },
  ];
  return [
    {
      kind: 'columns',
      gap: mm(10),
      columns: [
        { width: { share: 1 }, child: { kind: 'stack', gap: 0, children: titles } },
        { width: mm(50), child: { kind: 'stack', gap: mm(2), children: lines } },
      ],
    },
    { kind: 'space', height: mm(2) },
    { kind: 'rule', weight: 'heavy' },
    { kind: 'space', height: mm(4) },
  ];
}

/** How to hold the cube, and how to read the pictures. */
function orientation(lesson: Lesson, making: Making): Block {
  const { words, ink } = making;
  const look = { colours: lesson.colours, ink, words };
  return {
    kind: 'stack',
    gap: mm(1),
    children: [
      { kind: 'figure', scene: drawHold(look), width: PICTURE },
      { kind: 'text', role: 'P', style: 'note', spans: [{ kind: 'strong', text: words.handout.hold }] },
      {
        kind: 'text',
        role: 'P',
        style: 'note',
        spans: plain(words.handout.holdWords(lesson.colours.D, lesson.hold.front)),
      },
    ],
  };
}

function legend(making: Making): Block {
  const { words, ink } = making;
  return {
    kind: 'stack',
    gap: mm(1),
    children: [
      { kind: 'figure', scene: openViewLegend(words, ink), width: PICTURE },
      { kind: 'text', role: 'P', style: 'note', spans: plain(words.handout.reading) },
    ],
  };
}

/** The pictures, the explanation, what to watch for: beside each other, or below each other if the text is long. */
function opening(lesson: Lesson, making: Making): Block[] {
  const pictures = [orientation(lesson, making), legend(making)];
  const text: Block = { kind: 'stack', gap: mm(2), children: textBlocks(lesson.text, making) };
  const watch = noteBlocks(lesson.watch, making);
  const below: Block = {
    kind: 'stack',
    gap: mm(4),
    children: [
      { kind: 'columns', gap: COLUMN_GAP, columns: pictures.map((child) => ({ width: PICTURE, child })) },
      text,
      { kind: 'stack', gap: mm(2), children: watch },
    ],
  };
  return [
    {
      kind: 'columns',
      gap: COLUMN_GAP,
      ifTaller: { than: TALLEST_OPENING, instead: below },
      columns: [
        { width: PICTURE, child: { kind: 'stack', gap: mm(4), children: pictures } },
        { width: { share: 1 }, child: text },
        ...(watch.length > 0
          ? [{ width: mm(54), child: { kind: 'stack', gap: mm(2), line: 'left', children: watch } as const }]
          : []),
      ],
    },
    { kind: 'space', height: mm(5) },
  ];
}

function part({ part: { heading, text, span }, cases }: ProvedPart, lesson: Lesson, making: Making): Block[] {
  const blocks: Block[] = [];
  if (heading !== undefined) {
    const origin = originOf(span.start, making);
    const spans = plain(heading);
    blocks.push({ kind: 'text', role: 'H2', style: 'heading', spans, bookmark: heading, keepWithNext: true, origin });
  }
  blocks.push(...textBlocks(text, making).map((block) => ({ ...block, keepWithNext: true })));
  blocks.push({ kind: 'space', height: mm(2) });
  const cells = cases.map((c) => casePanel(c, lesson, making));
  blocks.push({ kind: 'grid', columns: 2, gap: COLUMN_GAP, rowGap: ROW_GAP, cells }, { kind: 'space', height: mm(4) });
  return blocks;
}

export function handout(proved: ProvedLesson, ink: Ink): Sheet {
  const { lesson, parts, edition } = proved;
  const words = LANGUAGES[lesson.language];
  const making: Making = { source: lesson.source, words, ink };
  return {
    title: lesson.title,
    language: words.language,
    body: [...head(lesson, making), ...opening(lesson, making), ...parts.flatMap((p) => part(p, lesson, making))],
    foot: { left: words.handout.proved(edition), right: words.handout.page },
  };
}
