/** The class report: for the coach, who plans the next evening from it. */

import { readTurns } from '../cube/notation.ts';
import { type Block, mm, type Sheet, type Span } from '../layout/blocks.ts';
import type { MarkedRow } from '../marking/submission.ts';
import type { CaseFigures, Summary } from '../marking/summary.ts';
import { stepNamed } from '../steps/steps.ts';
import { letterInk } from '../svg/palette.ts';
import type { Scene } from '../svg/scene.ts';
import type { SlipName } from '../words/said.ts';
import type { MarkingSheetWords, Words } from '../words/words.ts';
import { beside, figure, grid, h1, h2, space, whole } from './blocks.ts';
import { classGrid, SHORT_CODE } from './class-grid.ts';
import { printable, printableCode, spansOf } from './print-text.ts';
import { asWritten, type CaseDrawer, caseDrawer, markingSheet, pointsText, type SlipMaking } from './slips-sheet.ts';
import { grey, line, note, plain, strong } from './texts.ts';
import { typographic } from './typographic.ts';

const PICTURE = mm(17);
/** Codes behind a slip, solutions and rows: more than these are a list to search. */
const MOST_EXAMPLES = 3;
const MOST_LISTED = 40;
/** Cases with pictures, and students behind one: the hardest are what the next evening is for. */
const MOST_CASES = 12;
const MOST_MISSED = 6;

/** An item of a list. */
const entry = (style: 'body' | 'note', ...spans: readonly Span[]): Block => ({
  ...line(style, ...spans),
  bullet: true,
});
/** A part of the report; nothing where there is nothing to say. */
const section = (said: string, blocks: readonly Block[]): Block[] =>
  blocks.length === 0 ? [] : [space(mm(5)), h2([strong(said)], { bookmark: said }), space(mm(1)), ...blocks];

const BAR = { width: 100, height: 7 };
const DARK = '#4a4a4a';
const LIGHT = '#e4e2dc';

/** How much of the whole is right: black on pale, so that it copies. */
function bar(share: number, description: string): Scene {
  const box = (x: number, width: number, fill: string) => ({
    kind: 'polygon' as const,
    points: [
      { x, y: 0 },
      { x: x + width, y: 0 },
      { x: x + width, y: BAR.height },
      { x, y: BAR.height },
    ],
    fill,
  });
  const full = Math.round(BAR.width * share * 10) / 10;
  const outline = { ...box(0, BAR.width, LIGHT), stroke: { colour: letterInk('#ffffff'), width: 0.4 } };
  return { ...BAR, marks: [outline, ...(full > 0 ? [box(0, full, DARK)] : [])], description };
}

const LONGEST_CODE = 20;
const nameOf = (row: MarkedRow, { slips }: MarkingSheetWords): string => printableCode(row, LONGEST_CODE, slips);

/** A slip that a step alone knows is in its words. */
const slipSaid = (slip: string, step: string, words: Words): string =>
  stepNamed(step)!.marking.words(words).slips[slip] ?? words.markingSheets.report.slip[slip as SlipName];

/** Cases that everybody solved need no picture. */
function caseCell(figures: CaseFigures, draw: CaseDrawer, making: SlipMaking): Block {
  const { item, answered, points, slips, missedBy } = figures;
  const { words } = making;
  const { report } = words.markingSheets;
  const rightOf = report.rightOf(pointsText(points), answered);
  const who = missedBy.slice(0, MOST_MISSED).map((row) => printableCode(row, SHORT_CODE, words.markingSheets.slips));
  const rest = missedBy.length - MOST_MISSED;
  const side = whole(
    mm(0.8),
    note(strong(printable(figures.case)), plain(` · ${rightOf}`)),
    figure(bar(points / answered, rightOf), mm(28)),
    ...slips
      .slice(0, 1)
      .map(([slip, count]) => note(plain(`${slipSaid(slip, item.step, words)}: ${report.times(count)}`))),
    ...(who.length > 0
      ? [note(grey(report.missedBy(`${who.join(', ')}${rest > 0 ? ` ${report.more(rest)}` : ''}`)))]
      : []),
  );
  const scene = draw(item);
  return scene ? beside(mm(3), scene, PICTURE, side) : side;
}

function casesOf({ cases }: Summary, making: SlipMaking): Block[] {
  const { report } = making.words.markingSheets;
  const draw = caseDrawer(making);
  const missed = cases.filter(({ points, answered }) => points < answered);
  const cells = missed.slice(0, MOST_CASES).map((figures) => caseCell(figures, draw, making));
  const shape = { columns: 3, least: mm(55), gap: mm(5), rowGap: mm(3) };
  const rest = missed.length - MOST_CASES;
  return section(
    report.cases,
    cells.length === 0 ? [] : [grid(cells, shape), ...(rest > 0 ? [note(plain(report.more(rest)))] : [])],
  );
}

function slipsOf({ slips }: Summary, { words }: SlipMaking): Block[] {
  const { markingSheets } = words;
  const { report } = markingSheets;
  return section(
    report.slips,
    slips.map(({ slip, step, count, examples }) => {
      const shown = examples.slice(0, MOST_EXAMPLES).flatMap((row, i): Span[] => {
        const who = report.example(nameOf(row, markingSheets), printable(row.matched));
        return [grey(`${i === 0 ? '. ' : '; '}${who}: `), answerSpan(row.answer)];
      });
      return entry('note', strong(slipSaid(slip, step, words)), plain(`: ${report.times(count)}`), ...shown);
    }),
  );
}

function choicesOf({ asked, choices }: Summary, { words: { markingSheets } }: SlipMaking): Block[] {
  const { report, slips } = markingSheets;
  return section(
    report.choices,
    asked.map(({ asks, answered, points }) => {
      const missed = choices.filter(({ item }) => item.asks === asks);
      const shown = missed.slice(0, MOST_EXAMPLES).map(({ item, chosen }, i): Span => {
        const said = chosen.map(({ letter, option, count }) =>
          report.chose(letter, typographic(printable(option, 200)), count),
        );
        return grey(`${i === 0 ? '. ' : '; '}${slips.item(printable(item.id))}: ${said.join(', ')}`);
      });
      const rightOf = report.rightOf(pointsText(points), answered);
      return entry('note', strong(report.asks(asks)), plain(`: ${rightOf}`), ...shown);
    }),
  );
}

/** Codes of items behind a rule; more are a list to search. */
const MOST_ITEMS = 4;

function rulesOf({ rules }: Summary, { words: { markingSheets } }: SlipMaking): Block[] {
  const { report } = markingSheets;
  const isOneLesson = new Set(rules.map(({ lesson }) => lesson)).size === 1;
  return section(
    report.rules,
    rules.map(({ lesson, rule, answered, points, items }) => {
      const where = isOneLesson ? '' : `${printable(lesson)} · `;
      const see = rule.see.map((condition) => printable(condition, 80)).join(', ') || report.ruleForTheRest;
      const named = items
        .slice(0, MOST_ITEMS)
        .map((id) => printable(id))
        .join(', ');
      const rest = items.length - MOST_ITEMS;
      return entry(
        'note',
        strong(`${where}${report.rule(rule.number)}`),
        plain(` (${see}): ${report.rightOf(pointsText(points), answered)}`),
        grey(`. ${report.ruleItems(`${named}${rest > 0 ? ` ${report.more(rest)}` : ''}`)}`),
      );
    }),
  );
}

function againOf({ again }: Summary, { words: { markingSheets } }: SlipMaking): Block[] {
  const { report, slips } = markingSheets;
  return section(report.again, [
    { ...note(grey(report.againNote)), keepWithNext: true },
    ...again.map(({ lesson, students }) => {
      const who = students.map(
        ({ points, answered, ...one }) =>
          `${printableCode(one, LONGEST_CODE, slips)} (${report.rightOf(pointsText(points), answered)})`,
      );
      return entry('body', strong(printable(lesson)), plain(`: ${who.join(', ') || report.nobody}`));
    }),
  ]);
}

/** As turns where it can be read, else as it was written. */
function answerSpan(answer: string): Span {
  const reading = readTurns(answer);
  if (!reading.ok || reading.turns.length === 0) return plain(printable(answer, 60));
  return { kind: 'turns', turns: asWritten(reading, 30) };
}

function shorterOf({ shorter }: Summary, { words: { markingSheets } }: SlipMaking): Block[] {
  const { report } = markingSheets;
  return section(
    report.shorter,
    shorter.slice(0, MOST_LISTED).map(({ row, key }) => {
      const said = report.shorterThan(nameOf(row, markingSheets), printable(row.matched), row.length!, key);
      return entry('body', plain(`${said}: `), answerSpan(row.answer));
    }),
  );
}

function notMarkedOf({ notMarked }: Summary, { words: { markingSheets } }: SlipMaking): Block[] {
  const { report } = markingSheets;
  const rest = notMarked.length - MOST_LISTED;
  return section(report.notMarked, [
    ...notMarked.slice(0, MOST_LISTED).map((row) => {
      const where = `${printable(row.file, 60)}:${row.row}`;
      return entry('note', plain(`${where} · ${nameOf(row, markingSheets)} · `), ...spansOf(row.says));
    }),
    ...(rest > 0 ? [note(plain(report.more(rest)))] : []),
  ]);
}

/** The class on paper: figures, slips, who needs it again. For the coach. */
export function reportSheet(summary: Summary, making: SlipMaking): Sheet {
  const { report } = making.words.markingSheets;
  const title = report.title(printable(making.lesson));
  const share = summary.answered === 0 ? 0 : Math.round((100 * summary.points) / summary.answered);
  return markingSheet(
    report.title,
    [
      h1([plain(title)], { bookmark: title }),
      note(grey(report.whole(summary.answered, summary.students.length, `${share} %`))),
      space(mm(2)),
      { kind: 'rule', weight: 'heavy' },
      ...againOf(summary, making),
      ...casesOf(summary, making),
      ...slipsOf(summary, making),
      ...rulesOf(summary, making),
      ...choicesOf(summary, making),
      ...shorterOf(summary, making),
      ...notMarkedOf(summary, making),
      ...section(report.students, classGrid(summary, making)),
    ],
    making,
  );
}
