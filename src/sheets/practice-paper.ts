/** A practice paper: exercises by kind, room to write, boxes for letters. */

import { type Block, type GridBlock, mm, type Pt, type Sheet } from '../layout/blocks.ts';
import { type ExerciseKind, isShared } from '../lesson/practice.ts';
import type { ChoiceExercise } from '../practice/exercise.ts';
import { isLettered } from '../practice/lettering.ts';
import type { PaperItem, PracticePaper } from '../practice/papers.ts';
import { drawBlank, drawHold, openViewLegend } from '../svg/draw.ts';
import type { Scene } from '../svg/scene.ts';
import { beside, columns, figure, grid, h2, space, whole } from './blocks.ts';
import { clubLine, headRule, headToFill, holdNote } from './heading.ts';
import type { Making } from './making.ts';
import { plainText, signsOf, turnsLine } from './phrases.ts';
import {
  drawnOnce,
  itemId,
  itemsByKind,
  kindWords,
  numberOf,
  openLines,
  optionSpans,
  type PaperMaking,
  paperMaking,
  pictureOf,
  sheetOf,
  stepWords,
  titleBlocks,
} from './practice-texts.ts';
import { grey, line, note, plain, strong } from './texts.ts';

const GAP = mm(7);
const INNER_GAP = mm(3.5);
const ROW_GAP = mm(4);
const PANEL_GAP = mm(1.5);
const PICTURE = mm(33);
/** Beside lines of turns, which should not be broken. */
const CHOICE_PICTURE = mm(29);
const LARGE_PICTURE = mm(38);
const SMALL_PICTURE = mm(15);
const HOLD = mm(19);
const LEGEND = mm(22);
/** A printed letter before what it stands for. */
const LETTER = mm(5);
/** A letter in handwriting. */
const BOX = mm(8);
const TIME_BOX = mm(15);
const TIMES = 5;
const WRITE_LINES = 2;
/** Rows of a drill between two breaks. */
const ROWS_TO_A_BREAK = 3;

/** The item's number, and boxes at the right for its answer. */
function numberAndBoxes(item: PaperItem, boxes: number, heads?: readonly string[]): Block {
  const empty: Block = { kind: 'boxes', count: boxes, width: BOX, height: BOX, ...(heads && { heads }) };
  return columns(mm(2), ['rest', numberOf(item)], [boxes * BOX, empty]);
}

/** Of the lesson as it is for the student. */
const shownOnce = (what: string, { paper, look }: PaperMaking, draw: () => Scene): Scene =>
  drawnOnce(paper.student.proved, what, look, draw);

/** Each choice on a line, its letter first. */
const choices = (e: ChoiceExercise, item: PaperItem, of: PaperMaking): Block[] =>
  item.order.map((option, i) => {
    const said = line(e.options[option]!.says === 'rule' ? 'note' : 'body', ...optionSpans(item, e, option, of));
    return columns(0, [LETTER, line('body', strong(item.letters[i]!))], ['rest', said]);
  });

/** Two short words side by side. */
const sideBySide = (blocks: readonly Block[]): Block =>
  columns(mm(2), ...blocks.map((child) => ['rest', child] as const));

function panel(item: PaperItem, of: PaperMaking): Block {
  const { exercise } = item;
  const { words } = of.making;
  const picture = pictureOf(item, of.look);
  if (exercise.form === 'solve') {
    const open = openLines(item, of.making, strong);
    const lines = Array.from({ length: WRITE_LINES }, (): Block => ({ kind: 'write-line', label: '' }));
    const right = [
      numberOf(item),
      turnsLine(exercise.setup, of.making, { label: words.handout.setUp }),
      ...open,
      ...lines,
    ];
    return beside(INNER_GAP, picture, PICTURE, whole(0, ...right));
  }
  if (exercise.form === 'place') {
    const { name } = exercise.asked;
    const { mark, blank } = stepWords(item, of.making).pieces[name]!;
    const empty = shownOnce(`blank ${name}`, of, () => drawBlank(of.look, blank));
    const pictures = sideBySide([picture, empty].map((scene) => figure(scene, LARGE_PICTURE)));
    return whole(PANEL_GAP, numberOf(item), pictures, turnsLine(exercise.turns, of.making, { label: mark }));
  }
  const options = choices(exercise, item, of);
  const inOrder = exercise.right.length > 1;
  const boxes = inOrder ? exercise.right.length : exercise.slip ? words.practice.slipHeads.length : 1;
  const head = numberAndBoxes(item, boxes, exercise.slip && words.practice.slipHeads);
  if (exercise.options.every((o) => o.says === 'word')) {
    return whole(PANEL_GAP, head, figure(picture, PICTURE), sideBySide(options));
  }
  const setUp =
    exercise.kind === 'picture' ? [] : [turnsLine(exercise.setup, of.making, { label: words.handout.setUp })];
  return beside(INNER_GAP, picture, CHOICE_PICTURE, whole(PANEL_GAP, head, ...setUp, ...options));
}

/** How many panels of a kind stand beside each other, and the least width of one. */
function columnsOf({ exercise: { kind } }: PaperItem): Pick<GridBlock, 'columns' | 'least'> {
  // Rules are sentences: each on a line.
  if (kind === 'rule') return { columns: 1, least: mm(80) };
  return isShared(kind) ? { columns: 2, least: mm(80) } : { columns: 4, least: mm(36) };
}

/** Text beside boxes, lowered to their middle. */
const lowered = (child: Block, by: Pt): Block => whole(0, space(by), child);

function drillRow(item: PaperItem, of: PaperMaking, isFirst: boolean): Block {
  const heads = isFirst ? Array.from({ length: TIMES }, (_, i) => String(i + 1)) : [];
  const boxes: Block = { kind: 'boxes', count: TIMES, width: TIME_BOX, height: BOX, heads };
  const row = columns(
    mm(3),
    [mm(6), lowered(numberOf(item), mm(5))],
    [SMALL_PICTURE, figure(pictureOf(item, of.look), SMALL_PICTURE)],
    ['rest', lowered(turnsLine(item.exercise.setup, of.making), mm(5))],
    [TIMES * TIME_BOX, lowered(boxes, isFirst ? 0 : mm(3.6))],
  );
  return { ...row, claims: [itemId(of.paper, item)] };
}

/** Three rows stand together on a page, the numbers of the times over the first; then a break. */
function drill(items: readonly PaperItem[], of: PaperMaking): Block[] {
  const { rest, strain } = of.making.words.practice;
  const starts = items.map((_, i) => i).filter((i) => i % ROWS_TO_A_BREAK === 0);
  const groups = starts.map((start): Block => {
    const some = items.slice(start, start + ROWS_TO_A_BREAK);
    const isLast = start + ROWS_TO_A_BREAK >= items.length;
    const rows = some.map((item, i) => drillRow(item, of, i === 0));
    return whole(PANEL_GAP, ...rows, ...(isLast ? [] : [note(grey(rest)), space(mm(2))]));
  });
  return [{ ...note(strong(strain)), keepWithNext: true }, space(mm(2)), ...groups];
}

/** Items of one kind under one heading. */
function section(kind: ExerciseKind, items: readonly PaperItem[], of: PaperMaking): Block[] {
  const { title, ask } = kindWords(items[0]!, of.making);
  const head: Block[] = [h2([plain(title)]), { ...note(plain(ask)), keepWithNext: true }];
  const panels = (): Block[] => items.map((item) => ({ ...panel(item, of), claims: [itemId(of.paper, item)] }));
  const body: Block[] =
    kind === 'drill' ? drill(items, of) : [grid(panels(), { gap: GAP, rowGap: ROW_GAP, ...columnsOf(items[0]!) })];
  return [...head, space(mm(2)), ...body, space(mm(5))];
}

/** `1–8, 12`: the numbers of the items, runs drawn together. */
function numbersIn(items: readonly PaperItem[]): string {
  const runs: [number, number][] = [];
  for (const { number } of items) {
    const last = runs.at(-1);
    if (last && last[1] === number - 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs.map(([a, b]) => (a === b ? `${a}` : `${a}\u2013${b}`)).join(', ');
}

/** A box for each letter of the check words, the number of its item over it. */
function checkWord({ paper, making }: PaperMaking): Block[] {
  const { checkWords, items } = paper;
  if (checkWords.length === 0) return [];
  const lettered = items.filter((i) => isLettered(i.exercise));
  const { practice } = making.words;
  let from = 0;
  const rows = checkWords.map((word): Block => {
    const heads = lettered.slice(from, from + word.length).map(({ number }) => String(number));
    from += word.length;
    return { kind: 'boxes', count: word.length, width: BOX, height: BOX, heads };
  });
  const said = note(plain(practice.checkWordSays(numbersIn(lettered), checkWords.length)));
  const boxes = grid(rows, { columns: 2, least: mm(75), gap: GAP, rowGap: mm(2) });
  return [whole(mm(2), h2([plain(practice.checkWord(checkWords.length))]), said, boxes), space(mm(5))];
}

/** Club, course and paper over the title, lines for name and date beside it, the hold below. */
function head(text: string, of: PaperMaking): Block[] {
  const { paper, making, look } = of;
  const { lesson } = paper.student.proved;
  const { start } = stepWords(paper.items[0]!, making);
  const hold = shownOnce('hold', of, () => drawHold(look));
  const legend = shownOnce('legend', of, () => openViewLegend(making.words, making.ink));
  const holdLine = holdNote(lesson, making, `. ${start}`);
  return [
    headToFill([...clubLine(lesson, making), ...titleBlocks(text, of)], making, of.paper.student.code),
    ...headRule(),
    columns(
      INNER_GAP,
      [HOLD, figure(hold, HOLD)],
      [LEGEND, figure(legend, LEGEND)],
      [
        'rest',
        whole(
          PANEL_GAP,
          holdLine,
          note(plain([...signsOf(lesson.step, making), making.words.handout.outermost].join(' '))),
        ),
      ],
    ),
    space(mm(4)),
  ];
}

/** The check word follows the last choice. */
export function practicePaper(paper: PracticePaper, making: Making): Sheet {
  const of = paperMaking(paper, making);
  const lastLettered = paper.items.findLast((i) => isLettered(i.exercise))?.exercise.kind;
  const text = making.words.practice.title(plainText(paper.student.proved.lesson.title, making));
  const sections = itemsByKind(paper).flatMap(([kind, items]) => [
    ...section(kind, items, of),
    ...(kind === lastLettered ? checkWord(of) : []),
  ]);
  return sheetOf(text, of, [...head(text, of), ...sections]);
}
