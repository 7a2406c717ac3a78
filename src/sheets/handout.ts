/** ProvedLesson -> the handout: head, explanation, a panel for each case. */
import { type Block, type ColumnsBlock, mm, type Sheet } from '../layout/blocks.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { ProvedPart } from '../lesson/proved.ts';
import { drawHold } from '../svg/draw-hold.ts';
import { openViewLegend } from '../svg/open-view-legend.ts';
import { clubLine, dotted, headRule, headToFill, titleBlock } from './heading.ts';
import type { Making } from './making.ts';
import { casePanel } from './panel.ts';
import { lineSpans, noteBlocks, plainText, signsOf, textBlocks } from './phrases.ts';
import { promisesOf } from './promises.ts';
import { note, plain, strong } from './texts.ts';

const PICTURE = mm(26);
const ASIDE = mm(54);
const COLUMN_GAP = mm(7);
const ROW_GAP = mm(3);
/** As tall as a picture with its words. */
const SHORT_OPENING = mm(44);
/** Leaves room for a row of panels below it on the first page, on either paper. */
const TALLEST_OPENING = mm(150);
const NARROWEST_TEXT = mm(55);
const NARROWEST_PANEL = mm(78);

/** Club and course above the title, what is promised below it, lines for name and date beside them. */
function head(proved: ProvedLesson, making: Making): Block[] {
  const { lesson } = proved;
  const promises = promisesOf(proved, making.words);
  const below = [
    ...dotted([lesson.audience], making),
    ...(promises ? [plain(`${lesson.audience ? ' · ' : ''}${promises}`)] : []),
  ];
  const titles: Block[] = [
    ...clubLine(lesson, making),
    titleBlock(lesson, making),
    ...(below.length > 0 ? [{ kind: 'text', role: 'P', style: 'note', ink: 'grey', spans: below } as const] : []),
  ];
  return [headToFill(titles, making), ...headRule(mm(4))];
}

/** How to hold the cube. */
function orientation(lesson: Lesson, making: Making): Block {
  const { words, ink } = making;
  const { hold, holdWords } = words.handout;
  return {
    kind: 'stack',
    gap: mm(1),
    children: [
      { kind: 'figure', scene: drawHold({ colours: lesson.colours, ink, words }), width: PICTURE },
      note(strong(`${hold}: `), plain(holdWords(lesson.colours.D, lesson.hold.front))),
    ],
  };
}

/** The sides of the open view. */
function legend({ words, ink }: Making): Block {
  return {
    kind: 'stack',
    gap: mm(1),
    children: [
      { kind: 'figure', scene: openViewLegend(words, ink), width: PICTURE },
      note(strong(words.handout.reading)),
    ],
  };
}

/** What the lines and shades of the pictures mean. */
function signs(proved: ProvedLesson, making: Making): Block {
  const { stuckStaysOpen } = making.words.handout;
  const someStuck = proved.cases.some(({ goal, case: c }) => goal.kept.length < 3 - c.open.length);
  return note(plain([...signsOf(making), ...(someStuck ? [stuckStaysOpen] : [])].join(' ')));
}

/**
 * The hold, the explanation, what to watch for, beside each other: the pictures side by side where the text is short,
 * below each other where it is as tall as both; all below each other where it is long, so that it can flow.
 */
function opening(proved: ProvedLesson, making: Making): Block[] {
  const { lesson } = proved;
  const pictures = [orientation(lesson, making), legend(making)];
  const text: Block = { kind: 'stack', gap: mm(2), children: textBlocks(lesson.text, making) };
  const watch: Block = { kind: 'stack', gap: mm(2), children: noteBlocks(lesson.watch, making) };
  const hasWatch = lesson.watch.length > 0;
  const columns = (left: readonly ColumnsBlock['columns'][number][]): ColumnsBlock => ({
    kind: 'columns',
    gap: COLUMN_GAP,
    columns: [
      ...left,
      { width: { share: 1 }, child: text },
      ...(hasWatch ? [{ width: ASIDE, child: { ...watch, line: 'left' } as const }] : []),
    ],
  });
  const sideBySide = pictures.map((child) => ({ width: PICTURE, child }));
  const flowing: Block = {
    kind: 'stack',
    gap: mm(4),
    children: [{ kind: 'columns', gap: COLUMN_GAP, columns: sideBySide }, text, ...(hasWatch ? [watch] : [])],
  };
  const tall: Block = {
    ...columns([{ width: PICTURE, child: { kind: 'stack', gap: mm(4), children: pictures } }]),
    fallback: { tallerThan: TALLEST_OPENING, narrowerThan: NARROWEST_TEXT, instead: flowing },
  };
  return [
    { ...columns(sideBySide), fallback: { tallerThan: SHORT_OPENING, narrowerThan: NARROWEST_TEXT, instead: tall } },
    { kind: 'space', height: mm(2) },
    signs(proved, making),
    { kind: 'space', height: mm(4) },
  ];
}

function part({ part: { heading, text }, cases }: ProvedPart, lesson: Lesson, making: Making): Block[] {
  const blocks: Block[] = [];
  if (heading) {
    const origin = heading.span;
    const spans = lineSpans(heading, making);
    const bookmark = plainText(heading, making);
    blocks.push({ kind: 'text', role: 'H2', style: 'heading', spans, bookmark, keepWithNext: true, origin });
  }
  blocks.push(...textBlocks(text, making).map((block) => ({ ...block, keepWithNext: true })));
  blocks.push({ kind: 'space', height: mm(2) });
  const cells = cases.map((c) => casePanel(c, lesson, making));
  blocks.push(
    { kind: 'grid', columns: 2, least: NARROWEST_PANEL, gap: COLUMN_GAP, rowGap: ROW_GAP, cells },
    { kind: 'space', height: mm(4) },
  );
  return blocks;
}

/** What the club calls things. */
function glossary({ clubWords }: Lesson, { words }: Making): Block[] {
  const entries = Object.entries(clubWords);
  if (entries.length === 0) return [];
  const { clubWords: heading, clubWord } = words.handout;
  return [
    { kind: 'text', role: 'H2', style: 'heading', spans: [plain(heading)], keepWithNext: true },
    ...entries.map(([ours, theirs]) => note(plain(clubWord(ours, theirs)))),
  ];
}

export function handout(proved: ProvedLesson, making: Making): Sheet {
  const { lesson, parts, edition } = proved;
  const { handout: words, language } = making.words;
  const title = plainText(lesson.title, making);
  return {
    title,
    language,
    body: [
      ...head(proved, making),
      ...opening(proved, making),
      ...parts.flatMap((p) => part(p, lesson, making)),
      ...glossary(lesson, making),
    ],
    foot: { left: [words.foot(title, edition), words.proved(edition)], right: words.page },
  };
}
