/** ProvedLesson -> the handout: head, explanation, a panel for each case. */

import { type Block, type ColumnsBlock, mm, type Sheet } from '../layout/blocks.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { ProvedPart } from '../lesson/proved.ts';
import { drawHold, openViewLegend } from '../svg/draw.ts';
import { type Cell, columns, figure, grid, h2, space, stack } from './blocks.ts';
import { clubLine, dotted, headRule, headToFill, holdNote, lessonSheet, titleBlock } from './heading.ts';
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
const SHORT_OPENING = mm(50);
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
    ...(below.length > 0 ? [{ ...note(...below), ink: 'grey' } as const] : []),
  ];
  return [headToFill(titles, making), ...headRule(mm(4))];
}

/** How to hold the cube. */
function orientation(lesson: Lesson, making: Making): Block {
  const picture = drawHold({ ...making, colours: lesson.colours });
  return stack(mm(1), figure(picture, PICTURE), holdNote(lesson, making));
}

/** The sides of the open view. */
function legend({ words, ink }: Making): Block {
  return stack(
    mm(1),
    figure(openViewLegend(words, ink), PICTURE),
    note(strong(words.handout.reading)),
    note(plain(words.handout.outermost)),
  );
}

/** What the lines and shades of the pictures mean. */
function signs(proved: ProvedLesson, making: Making): Block {
  const { step } = proved.lesson;
  const subjects = proved.cases.map(({ subject }) => subject);
  const remark = step.sheets.remark(subjects, making.words);
  return note(plain([...signsOf(step, making), ...(remark === undefined ? [] : [remark])].join(' ')));
}

/**
 * The hold, the explanation, what to watch for, beside each other: the pictures side by side where the text is short,
 * below each other where it is as tall as both; all below each other where it is long, so that it can flow.
 */
function opening(proved: ProvedLesson, making: Making): Block[] {
  const { lesson } = proved;
  const pictures = [orientation(lesson, making), legend(making)];
  const text = stack(mm(2), ...textBlocks(lesson.text, making));
  const watch = stack(mm(2), ...noteBlocks(lesson.watch, making));
  const hasWatch = lesson.watch.length > 0;
  const aside: Cell[] = hasWatch ? [[ASIDE, { ...watch, line: 'left' }]] : [];
  const beside = (...left: readonly Cell[]): ColumnsBlock => columns(COLUMN_GAP, ...left, ['rest', text], ...aside);
  const sideBySide = pictures.map((child): Cell => [PICTURE, child]);
  const flowing = stack(mm(4), columns(COLUMN_GAP, ...sideBySide), text, ...(hasWatch ? [watch] : []));
  const tall: Block = {
    ...beside([PICTURE, stack(mm(4), ...pictures)]),
    fallback: { tallerThan: TALLEST_OPENING, narrowerThan: NARROWEST_TEXT, instead: flowing },
  };
  return [
    { ...beside(...sideBySide), fallback: { tallerThan: SHORT_OPENING, narrowerThan: NARROWEST_TEXT, instead: tall } },
    space(mm(2)),
    signs(proved, making),
    space(mm(4)),
  ];
}

function part({ part: { heading, text }, cases }: ProvedPart, lesson: Lesson, making: Making): Block[] {
  const panels = cases.map((c) => casePanel(c, lesson, making));
  return [
    ...(heading
      ? [h2(lineSpans(heading, making), { bookmark: plainText(heading, making), origin: heading.span })]
      : []),
    ...textBlocks(text, making).map((block) => ({ ...block, keepWithNext: true })),
    space(mm(2)),
    grid(panels, { columns: 2, least: NARROWEST_PANEL, gap: COLUMN_GAP, rowGap: ROW_GAP }),
    space(mm(4)),
  ];
}

/** What the club calls things. */
function glossary({ clubWords }: Lesson, { words }: Making): Block[] {
  const entries = Object.entries(clubWords);
  if (entries.length === 0) return [];
  const { clubWords: heading, clubWord } = words.handout;
  return [h2([plain(heading)]), ...entries.map(([ours, theirs]) => note(plain(clubWord(ours, theirs))))];
}

export function handout(proved: ProvedLesson, making: Making): Sheet {
  const { lesson, parts } = proved;
  return lessonSheet(plainText(lesson.title, making), proved, making, [
    ...head(proved, making),
    ...opening(proved, making),
    ...parts.flatMap((p) => part(p, lesson, making)),
    ...glossary(lesson, making),
  ]);
}
