/** The class report: for the coach, who plans the next evening from it. */
import { readTurns } from '../cube/notation.ts';
import { spelt } from '../cube/turns.ts';
import { type Block, mm, type Sheet, type Span } from '../layout/blocks.ts';
import type { MarkedRow } from '../marking/submission.ts';
import type { ItemFigures, Summary } from '../marking/summary.ts';
import { letterInk } from '../svg/palette.ts';
import type { Scene } from '../svg/scene.ts';
import type { MarkingSheetWords } from '../words/marking-sheets.ts';
import { printable, printableCode, spansOf } from './print-text.ts';
import { type CaseDrawer, caseDrawer, pointsText, type SlipMaking } from './slips-sheet.ts';
import { typographic } from './typographic.ts';

const PICTURE = mm(17);
/** Codes behind a slip, solutions and rows: more than these are a list to search. */
const MOST_EXAMPLES = 3;
const MOST_LISTED = 40;

const plain = (text: string): Span => ({ kind: 'plain', text });
const faint = (text: string): Span => ({ kind: 'plain', text, ink: 'grey' });
const strong = (text: string): Span => ({ kind: 'strong', text });
const text = (spans: readonly Span[], bullet = false): Block => ({
  kind: 'text',
  role: 'P',
  style: 'body',
  spans,
  bullet,
});
const note = (spans: readonly Span[], bullet = false): Block => ({
  kind: 'text',
  role: 'P',
  style: 'note',
  spans,
  bullet,
});
const grey = (said: string): Block => ({
  kind: 'text',
  role: 'P',
  style: 'note',
  ink: 'grey',
  spans: [plain(said)],
  keepWithNext: true,
});
const heading = (said: string): Block[] => [
  { kind: 'space', height: mm(5) },
  { kind: 'text', role: 'H2', style: 'heading', spans: [strong(said)], bookmark: said, keepWithNext: true },
  { kind: 'space', height: mm(1) },
];

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

function itemCell({ item, answered, points, slips }: ItemFigures, draw: CaseDrawer, making: SlipMaking): Block {
  const { words } = making;
  const { report, slips: slipWords } = words.markingSheets;
  const rightOf = report.rightOf(pointsText(points), answered);
  const side: Block = {
    kind: 'stack',
    gap: mm(0.8),
    keep: true,
    children: [
      note([strong(slipWords.item(printable(item.id))), plain(` · ${rightOf}`)]),
      { kind: 'figure', scene: bar(points / answered, rightOf), width: mm(45) },
      ...slips.slice(0, 2).map(([slip, count]) => note([plain(`${report.slip[slip]}: ${report.times(count)}`)])),
    ],
  };
  const scene = item.kind === 'solution' ? draw(item) : undefined;
  if (!scene) return side;
  const picture: Block = { kind: 'figure', scene, width: PICTURE };
  return {
    kind: 'columns',
    gap: mm(3),
    columns: [
      { width: PICTURE, child: picture },
      { width: { share: 1 }, child: side },
    ],
  };
}

function itemsOf({ items }: Summary, making: SlipMaking): Block[] {
  const draw = caseDrawer(making);
  return [
    ...heading(making.words.markingSheets.report.items),
    {
      kind: 'grid',
      columns: 2,
      least: mm(70),
      gap: mm(7),
      rowGap: mm(4),
      cells: items.map((figures) => itemCell(figures, draw, making)),
    },
  ];
}

function slipsOf({ slips }: Summary, { words: { markingSheets } }: SlipMaking): Block[] {
  if (slips.length === 0) return [];
  const { report } = markingSheets;
  return [
    ...heading(report.slips),
    ...slips.map(({ slip, count, examples }) => {
      const shown = examples.slice(0, MOST_EXAMPLES).flatMap((row, i): Span[] => {
        const who = report.example(nameOf(row, markingSheets), printable(row.matched));
        return [faint(`${i === 0 ? '. ' : '; '}${who}: `), answerSpan(row.answer)];
      });
      return note([strong(report.slip[slip]), plain(`: ${report.times(count)}`), ...shown], true);
    }),
  ];
}

function choicesOf({ asked, choices }: Summary, { words: { markingSheets } }: SlipMaking): Block[] {
  if (asked.length === 0) return [];
  const { report, slips } = markingSheets;
  return [
    ...heading(report.choices),
    ...asked.map(({ asks, answered, points }) => {
      const missed = choices.filter(({ item }) => item.asks === asks);
      const shown = missed.map(({ item, chosen }, i): Span => {
        const said = chosen.map(({ letter, option, count }) =>
          report.chose(letter, typographic(printable(option, 200)), count),
        );
        return faint(`${i === 0 ? '. ' : '; '}${slips.item(printable(item.id))}: ${said.join(', ')}`);
      });
      return note(
        [strong(report.asks(asks)), plain(`: ${report.rightOf(pointsText(points), answered)}`), ...shown],
        true,
      );
    }),
  ];
}

/** Codes of items behind a rule; more are a list to search. */
const MOST_ITEMS = 8;

function rulesOf({ rules }: Summary, { words: { markingSheets } }: SlipMaking): Block[] {
  if (rules.length === 0) return [];
  const { report } = markingSheets;
  const isOneLesson = new Set(rules.map(({ lesson }) => lesson)).size === 1;
  return [
    ...heading(report.rules),
    ...rules.map(({ lesson, rule, answered, points, items }) => {
      const where = isOneLesson ? '' : `${printable(lesson)} · `;
      const see = rule.see.map((condition) => printable(condition, 80)).join(', ') || report.ruleForTheRest;
      const named = items
        .slice(0, MOST_ITEMS)
        .map((id) => printable(id))
        .join(', ');
      const rest = items.length - MOST_ITEMS;
      return note(
        [
          strong(`${where}${report.rule(rule.number)}`),
          plain(` (${see}): ${report.rightOf(pointsText(points), answered)}`),
          faint(`. ${report.ruleItems(`${named}${rest > 0 ? ` ${report.more(rest)}` : ''}`)}`),
        ],
        true,
      );
    }),
  ];
}

function againOf({ again }: Summary, { words: { markingSheets } }: SlipMaking): Block[] {
  const { report, slips } = markingSheets;
  return [
    ...heading(report.again),
    grey(report.againNote),
    ...again.map(({ lesson, students }) => {
      const who = students.map(
        ({ points, answered, ...one }) =>
          `${printableCode(one, LONGEST_CODE, slips)} (${report.rightOf(pointsText(points), answered)})`,
      );
      return text([strong(printable(lesson)), plain(`: ${who.join(', ') || report.nobody}`)], true);
    }),
  ];
}

/** As turns where it can be read, else as it was written. */
function answerSpan(answer: string): Span {
  const reading = readTurns(answer);
  if (!reading.ok || reading.turns.length === 0) return plain(printable(answer, 60));
  return {
    kind: 'turns',
    turns: reading.turns.slice(0, 30).map((turn) => spelt(turn, reading.smallWide ? 'r' : 'Rw')),
  };
}

function shorterOf({ shorter }: Summary, { words: { markingSheets } }: SlipMaking): Block[] {
  if (shorter.length === 0) return [];
  const { report } = markingSheets;
  return [
    ...heading(report.shorter),
    ...shorter.slice(0, MOST_LISTED).map(({ row, key }) => {
      const said = report.shorterThan(nameOf(row, markingSheets), printable(row.matched), row.length!, key);
      return text([plain(`${said}: `), answerSpan(row.answer)], true);
    }),
  ];
}

function notMarkedOf({ notMarked }: Summary, { words: { markingSheets } }: SlipMaking): Block[] {
  if (notMarked.length === 0) return [];
  const { report } = markingSheets;
  const rest = notMarked.length - MOST_LISTED;
  return [
    ...heading(report.notMarked),
    ...notMarked.slice(0, MOST_LISTED).map((row) => {
      const where = `${printable(row.file, 60)}:${row.row}`;
      return note([plain(`${where} · ${nameOf(row, markingSheets)} · `), ...spansOf(row.says)], true);
    }),
    ...(rest > 0 ? [note([plain(report.more(rest))])] : []),
  ];
}

export function reportSheet(summary: Summary, making: SlipMaking): Sheet {
  const { words, lesson } = making;
  const { report, page, foot } = words.markingSheets;
  const title = report.title(printable(lesson));
  const share = summary.answered === 0 ? 0 : Math.round((100 * summary.points) / summary.answered);
  const whole = report.whole(summary.answered, summary.students.length, `${share} %`);
  return {
    title,
    language: words.language,
    body: [
      { kind: 'text', role: 'H1', style: 'title', spans: [plain(title)], bookmark: title },
      { kind: 'text', role: 'P', style: 'note', ink: 'grey', spans: [plain(whole)] },
      { kind: 'space', height: mm(2) },
      { kind: 'rule', weight: 'heavy' },
      ...againOf(summary, making),
      ...slipsOf(summary, making),
      ...rulesOf(summary, making),
      ...choicesOf(summary, making),
      ...itemsOf(summary, making),
      ...shorterOf(summary, making),
      ...notMarkedOf(summary, making),
    ],
    foot: { left: [foot(title), title.slice(0, 40), report.title('…')], right: page },
  };
}
