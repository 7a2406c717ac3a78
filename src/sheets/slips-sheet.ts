/** A slip for each student, several to a page, to be cut along the lines. */

import { coloursHeld, type FaceColours } from '../cube/colours.ts';
import { afterTurns } from '../cube/cube.ts';
import { type Reading, readTurns } from '../cube/notation.ts';
import {
  type Block,
  mm,
  type Paper,
  type Sheet,
  type StackBlock,
  type TextBlock,
  type TurnsBlock,
} from '../layout/blocks.ts';
import type { StudentRows } from '../marking/by-student.ts';
import type { Item, SolutionItem } from '../marking/items.ts';
import type { MarkedRow, NearMissKind } from '../marking/submission.ts';
import { isTimed } from '../marking/submission.ts';
import { drawCase } from '../svg/draw.ts';
import type { Ink } from '../svg/palette.ts';
import type { Scene } from '../svg/scene.ts';
import type { Words } from '../words/words.ts';
import { columns, figure, grid, h2, h3, space, stack, whole } from './blocks.ts';
import { isHeldAs } from './panel.ts';
import { printedTurns } from './phrases.ts';
import { printable, printableCode, spansOf } from './print-text.ts';
import { grey, line, note, plain, strong } from './texts.ts';

export interface SlipMaking {
  readonly words: Words;
  readonly ink: Ink;
  readonly paper: Paper;
  readonly lesson: string;
  /** The colours of the class's cubes. */
  readonly scheme: FaceColours;
}

const PICTURE = mm(27);
const NARROWEST_PANEL = mm(70);
/** Panels of a slip that is still kept on one page: more are parted between their rows. */
const MOST_KEPT: Readonly<Record<Paper, number>> = { a4: 8, letter: 8, a5: 3 };
const LONGEST_CODE = 30;

/** How many turns of the answer a slip is in, where it is in some and not in all. */
const WRONG_TURNS: Readonly<Partial<Record<NearMissKind, number>>> = { changed: 1, dropped: 1, added: 1, swapped: 2 };

const label = (text: string): TextBlock => line('label', plain(text));

/** 1, 0.5, 2.25: without the noise of sums. */
export const pointsText = (points: number): string => String(Math.round(points * 100) / 100);

/** None where the claim is of a cube of other colours: rather no picture than a wrong one. */
function coloursOf({ hold, cross }: SolutionItem, scheme: FaceColours): FaceColours | undefined {
  const colours = coloursHeld(scheme, hold);
  return colours?.D === cross ? colours : undefined;
}

export type CaseDrawer = (item: SolutionItem, upTo?: MarkedRow) => Scene | undefined;

/** Draws a case, or where an answer went wrong: before the turn of its slip. A class goes wrong in the same places: each is drawn once. */
export function caseDrawer({ words, ink, scheme }: SlipMaking): CaseDrawer {
  const drawn = new Map<string, Scene>();
  return (item, upTo) => {
    const colours = coloursOf(item, scheme);
    if (!colours) return undefined;
    const reading = readTurns(upTo?.answer ?? '');
    const done = reading.ok && upTo?.slip ? reading.turns.slice(0, upTo.slip.turn - 1) : [];
    const key = [item.id, ...done.map((turn) => turn.text)].join(' ');
    const known = drawn.get(key);
    if (known) return known;
    const scene = drawCase(afterTurns(item.subject.cube, done), item.subject, 'open', { colours, ink, words });
    drawn.set(key, scene);
    return scene;
  };
}

/** Right for the one who marks: by the coach's mark, or by the verdict. */
const isDone = (row: MarkedRow): boolean => row.points >= 1;

/** Whether the picture is of the case itself: where the slip is in the first turn, or was found in no turn. */
const isCase = (row: MarkedRow): boolean => row.slip === null || row.slip.turn <= 1 || !readTurns(row.answer).ok;

/** As the student wrote them, small letters too; what no one writes on a slip by hand is cut. */
export const asWritten = ({ turns, smallWide }: Reading & { ok: true }, most: number): string[] =>
  printedTurns(turns.slice(0, most), { wide: smallWide ? 'r' : 'Rw' });

function answerLine(row: MarkedRow, { words }: SlipMaking): Block[] {
  const reading = readTurns(row.answer);
  const { yours } = words.markingSheets.slips;
  if (!reading.ok) return [label(yours), note(plain(printable(row.answer, 80)))];
  const turns = asWritten(reading, 60);
  return [{ kind: 'turns', label: yours, groups: groupsOf(turns, row, words.markingSheets.slips.here) }];
}

/** The turn that went wrong in a group of its own, with a word under it. */
function groupsOf(turns: readonly string[], { nearMisses }: MarkedRow, here: string): TurnsBlock['groups'] {
  const [miss] = nearMisses;
  const wrong = miss && WRONG_TURNS[miss.kind];
  const at = (miss?.turn ?? 0) - 1;
  if (!wrong || at < 0 || at >= turns.length) return [{ turns }];
  const groups = [turns.slice(0, at), turns.slice(at, at + wrong), turns.slice(at + wrong)];
  return groups
    .map((group, i) => (i === 1 ? { turns: group, words: here } : { turns: group }))
    .filter((group) => group.turns.length > 0);
}

/** One student's slip: the paper that all of the answers are of is named once. */
interface SlipOf {
  readonly itemById: ReadonlyMap<string, Item>;
  /** The hold of most items; others are named. */
  readonly usual: SolutionItem | undefined;
  readonly paper: string;
  readonly draw: CaseDrawer;
}

function nameOf(row: MarkedRow, { itemById, paper }: SlipOf): string {
  const item = itemById.get(row.matched);
  return printable(item && item.paper === paper ? item.number : row.matched || row.item);
}

function panel(row: MarkedRow, of: SlipOf, making: SlipMaking): StackBlock {
  const { usual } = of;
  const item = of.itemById.get(row.matched)!;
  const { words } = making;
  const { slips } = words.markingSheets;
  const title: Block = h3([strong(slips.item(nameOf(row, of)))]);
  const said = note(...spansOf(row.mark === '' ? row.says : `${words.marking.marked(row.mark)} ${row.says}`));
  if (item.kind === 'choice') {
    const answer = note(plain(printable(row.answer, 40)));
    return { ...whole(mm(0.8), title, answer, said), line: 'above' };
  }
  const isOther = usual !== undefined && !isHeldAs(item, usual);
  const scene = of.draw(item, isCase(row) ? undefined : row);
  const caption = isCase(row) ? slips.theCase : slips.beforeTurn(row.slip!.turn);
  const text = whole(
    0,
    title,
    ...(isOther ? [note(plain(`${words.handout.hold}: ${words.handout.holdWords(item.cross, item.hold.front)}`))] : []),
    { kind: 'turns', label: slips.setUp, groups: [{ turns: item.setup.map((t) => t.text) }] },
    ...answerLine(row, making),
    space(mm(0.8)),
    said,
  );
  const picture = scene && stack(mm(0.5), figure(scene, PICTURE), label(caption));
  const shown = picture ? columns(mm(4), [PICTURE, picture], ['rest', text]) : text;
  return { ...whole(mm(1.2), shown), line: 'above' };
}

/** What needs no picture: right answers, items without an answer, rows that match nothing. */
function lists(rows: readonly MarkedRow[], of: SlipOf, { words: { markingSheets } }: SlipMaking): TextBlock[] {
  const { slips } = markingSheets;
  const list = (heading: string, items: readonly string[]): TextBlock[] =>
    items.length === 0 ? [] : [note(strong(heading), plain(` ${items.join(', ')}`))];
  const over = (row: MarkedRow): string => (row.over ? ` (${slips.over(row.over)})` : '');
  const open = rows.filter((row) => !isDone(row));
  const unmatched = open.filter(({ verdict }) => verdict === 'unmatched');
  const empty = open.filter((row) => row.verdict === 'empty' && !isTimed(row));
  const names = (some: readonly MarkedRow[]): string[] => some.map((row) => nameOf(row, of));
  const right = rows.filter(isDone).map((row) => `${nameOf(row, of)}${over(row)}`);
  return [
    ...list(slips.right, right),
    ...list(slips.notAnswered, names(empty)),
    ...list(slips.times, names(rows.filter(isTimed))),
    ...list(
      slips.unmatched,
      unmatched.map(({ item }) => printable(item) || '–'),
    ),
  ];
}

function slip({ student, rows }: StudentRows, common: Omit<SlipOf, 'paper'>, making: SlipMaking): Block {
  const { slips } = making.words.markingSheets;
  const wrong = rows.filter((row) => !isDone(row) && row.verdict !== 'empty' && row.verdict !== 'unmatched');
  const matched = rows.filter((row) => row.matched !== '');
  const papers = [...new Set(matched.map((row) => common.itemById.get(row.matched)!.paper))];
  const paper = papers.length === 1 ? papers[0]! : '';
  const of = { ...common, paper };
  const counting = matched.filter((row) => !isTimed(row));
  const points = counting.reduce((n, row) => n + row.points, 0);
  const head: Block = h2([
    strong(printableCode({ student, row: rows[0]!.row }, LONGEST_CODE, slips)),
    grey(` · ${slips.score(pointsText(points), counting.length)}`),
  ]);
  const cells = wrong.map((row) => panel(row, of, making));
  const whose = [printable(making.lesson), ...(paper === '' ? [] : [slips.paper(paper)])].join(' · ');
  const panels = grid(cells, { columns: 2, least: NARROWEST_PANEL, gap: mm(7), rowGap: mm(3) });
  const block = stack(
    mm(1),
    { ...label(whose), keepWithNext: true },
    head,
    ...lists(rows, of, making).map((one) => ({ ...one, keepWithNext: cells.length > 0 })),
    ...(cells.length > 0 ? [space(mm(1)), panels] : []),
  );
  return cells.length <= MOST_KEPT[making.paper] ? { ...block, keep: 'where-it-fits' } : block;
}

/** A sheet about a class: named after its lesson as far as that fits the foot. */
export function markingSheet(titled: (lesson: string) => string, body: readonly Block[], making: SlipMaking): Sheet {
  const { markingSheets, language } = making.words;
  const title = titled(printable(making.lesson));
  const left = [markingSheets.foot(title), title.slice(0, 40), titled('…')];
  return { title, language, body, foot: { left, right: markingSheets.page } };
}

/** A slip a student: what was right, and where it went wrong. */
export function slipsSheet(students: readonly StudentRows[], items: readonly Item[], making: SlipMaking): Sheet {
  const { slips } = making.words.markingSheets;
  const itemById = new Map(items.map((item) => [item.id, item]));
  const usual = items.find((item) => item.kind === 'solution');
  const common = { itemById, usual, draw: caseDrawer(making) };
  const body = students.flatMap((student, i): Block[] => [
    ...(i > 0 ? [space(mm(5)), { kind: 'rule', weight: 'thin' } as const, space(mm(5))] : []),
    slip(student, common, making),
  ]);
  return markingSheet(slips.title, body, making);
}
