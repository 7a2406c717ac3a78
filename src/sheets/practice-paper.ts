/** A practice paper: exercises by kind, room to write, boxes for letters. */

import type { Turn } from '../cube/turns.ts';
import { type Block, type GridBlock, mm, type Sheet, type TurnsBlock } from '../layout/blocks.ts';
import { type ExerciseKind, isShared } from '../lesson/practice.ts';
import type { ChoiceExercise } from '../practice/exercise.ts';
import { isLettered } from '../practice/lettering.ts';
import type { PaperItem, PracticePaper } from '../practice/papers.ts';
import { drawHold } from '../svg/draw-hold.ts';
import { drawBlank } from '../svg/draw-place.ts';
import { openViewLegend } from '../svg/open-view-legend.ts';
import type { Scene } from '../svg/scene.ts';
import { clubLine, headRule, headToFill } from './heading.ts';
import type { Making } from './making.ts';
import { plainText, printedTurns, signsOf } from './phrases.ts';
import {
  drawnOnce,
  itemId,
  kindWords,
  numberOf,
  openLines,
  optionSpans,
  type PaperMaking,
  paperMaking,
  pictureOf,
  stepWords,
} from './practice-texts.ts';
import { grey, line, plain, strong } from './texts.ts';

const GAP = mm(7);
const INNER_GAP = mm(3.5);
const ROW_GAP = mm(4);
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

const figure = (scene: Scene, width: number): Block => ({ kind: 'figure', scene, width });

const turns = (list: readonly Turn[], { making }: PaperMaking, label?: string): TurnsBlock => ({
  kind: 'turns',
  groups: [{ turns: printedTurns(list, making) }],
  ...(label !== undefined && { label }),
});

/** The item's number, and boxes at the right for its answer. */
function numberAndBoxes(item: PaperItem, boxes: number, heads?: readonly string[]): Block {
  const width = boxes * BOX;
  return {
    kind: 'columns',
    gap: mm(2),
    columns: [
      { width: { share: 1 }, child: numberOf(item) },
      { width, child: { kind: 'boxes', count: boxes, width: BOX, height: BOX, ...(heads && { heads }) } },
    ],
  };
}

const stack = (children: readonly Block[], gap = mm(1.5)): Block => ({ kind: 'stack', keep: true, gap, children });

const beside = (left: Block, width: number, right: Block): Block => ({
  kind: 'columns',
  gap: INNER_GAP,
  columns: [
    { width, child: left },
    { width: { share: 1 }, child: right },
  ],
});

/** Of the lesson as it is for the student. */
const shownOnce = (what: string, { paper, look }: PaperMaking, draw: () => Scene): Scene =>
  drawnOnce(paper.student.proved, what, look, draw);

/** Each choice on a line, its letter first. */
const choices = (e: ChoiceExercise, item: PaperItem, of: PaperMaking): Block[] =>
  item.order.map((option, i) => ({
    kind: 'columns',
    gap: 0,
    columns: [
      { width: LETTER, child: line('body', strong(item.letters[i]!)) },
      {
        width: { share: 1 },
        child: line(e.options[option]!.says === 'rule' ? 'note' : 'body', ...optionSpans(item, e, option, of)),
      },
    ],
  }));

/** Two short words side by side. */
const sideBySide = (blocks: readonly Block[]): Block => ({
  kind: 'columns',
  gap: mm(2),
  columns: blocks.map((child) => ({ width: { share: 1 }, child })),
});

function panel(item: PaperItem, of: PaperMaking): Block {
  const { exercise } = item;
  const { words } = of.making;
  const picture = pictureOf(item, of.look);
  if (exercise.form === 'solve') {
    const open = openLines(item, of.making, strong);
    const lines = Array.from({ length: WRITE_LINES }, (): Block => ({ kind: 'write-line', label: '' }));
    const right = [numberOf(item), turns(exercise.setup, of, words.handout.setUp), ...open, ...lines];
    return beside(figure(picture, PICTURE), PICTURE, stack(right, 0));
  }
  if (exercise.form === 'place') {
    const { name } = exercise.asked;
    const { mark, blank } = stepWords(item, of.making).pieces[name]!;
    const empty = shownOnce(`blank ${name}`, of, () => drawBlank(of.look, blank));
    return stack([
      numberOf(item),
      sideBySide([figure(picture, LARGE_PICTURE), figure(empty, LARGE_PICTURE)]),
      turns(exercise.turns, of, mark),
    ]);
  }
  const options = choices(exercise, item, of);
  const inOrder = exercise.right.length > 1;
  const boxes = inOrder ? exercise.right.length : exercise.slip ? words.practice.slipHeads.length : 1;
  const head = numberAndBoxes(item, boxes, exercise.slip && words.practice.slipHeads);
  if (exercise.options.every((o) => o.says === 'word')) {
    return stack([head, figure(picture, PICTURE), sideBySide(options)]);
  }
  const setUp = exercise.kind === 'picture' ? [] : [turns(exercise.setup, of, words.handout.setUp)];
  return beside(figure(picture, CHOICE_PICTURE), CHOICE_PICTURE, stack([head, ...setUp, ...options]));
}

/** How many panels of a kind stand beside each other, and the least width of one. */
function columnsOf({ exercise: { kind } }: PaperItem): Pick<GridBlock, 'columns' | 'least'> {
  // Rules are sentences: each on a line.
  if (kind === 'rule') return { columns: 1, least: mm(80) };
  return isShared(kind) ? { columns: 2, least: mm(80) } : { columns: 4, least: mm(36) };
}

/** Text beside boxes, lowered to their middle. */
const lowered = (child: Block, by: number): Block => stack([{ kind: 'space', height: by }, child], 0);

function drillRow(item: PaperItem, of: PaperMaking, isFirst: boolean): Block {
  const heads = isFirst ? Array.from({ length: TIMES }, (_, i) => String(i + 1)) : [];
  const boxes: Block = { kind: 'boxes', count: TIMES, width: TIME_BOX, height: BOX, heads };
  const row: Block = {
    kind: 'columns',
    gap: mm(3),
    columns: [
      { width: mm(6), child: lowered(numberOf(item), mm(5)) },
      { width: SMALL_PICTURE, child: figure(pictureOf(item, of.look), SMALL_PICTURE) },
      { width: { share: 1 }, child: lowered(turns(item.exercise.setup, of), mm(5)) },
      { width: TIMES * TIME_BOX, child: lowered(boxes, isFirst ? 0 : mm(3.6)) },
    ],
  };
  return { ...row, claims: [itemId(of.paper, item)] };
}

/** Three rows stand together on a page, the numbers of the times over the first; then a break. */
function drill(items: readonly PaperItem[], of: PaperMaking): Block[] {
  const { rest, strain } = of.making.words.practice;
  const starts = items.map((_, i) => i).filter((i) => i % ROWS_TO_A_BREAK === 0);
  const groups = starts.map((start): Block => {
    const some = items.slice(start, start + ROWS_TO_A_BREAK);
    const isLast = start + ROWS_TO_A_BREAK >= items.length;
    return stack([
      ...some.map((item, i) => drillRow(item, of, i === 0)),
      ...(isLast ? [] : [line('note', grey(rest)), { kind: 'space', height: mm(2) } as const]),
    ]);
  });
  return [
    { ...line('note', strong(strain)), keepWithNext: true } as Block,
    { kind: 'space', height: mm(2) },
    ...groups,
  ];
}

/** Items of one kind under one heading. */
function section(kind: ExerciseKind, items: readonly PaperItem[], of: PaperMaking): Block[] {
  const { title, ask } = kindWords(items[0]!, of.making);
  const head: Block[] = [
    { kind: 'text', role: 'H2', style: 'heading', spans: [plain(title)], keepWithNext: true },
    { kind: 'text', role: 'P', style: 'note', spans: [plain(ask)], keepWithNext: true },
  ];
  const body: Block[] =
    kind === 'drill'
      ? drill(items, of)
      : [
          {
            kind: 'grid',
            gap: GAP,
            rowGap: ROW_GAP,
            ...columnsOf(items[0]!),
            cells: items.map((item) => ({ ...panel(item, of), claims: [itemId(of.paper, item)] })),
          },
        ];
  return [...head, { kind: 'space', height: mm(2) }, ...body, { kind: 'space', height: mm(5) }];
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
  return [
    {
      kind: 'stack',
      keep: true,
      gap: mm(2),
      children: [
        { kind: 'text', role: 'H2', style: 'heading', spans: [plain(practice.checkWord(checkWords.length))] },
        line('note', plain(practice.checkWordSays(numbersIn(lettered), checkWords.length))),
        { kind: 'grid', columns: 2, least: mm(75), gap: GAP, rowGap: mm(2), cells: rows },
      ],
    },
    { kind: 'space', height: mm(5) },
  ];
}

/** Club, course and paper over the title, lines for name and date beside it, the hold below. */
function head(of: PaperMaking): Block[] {
  const { paper, making, look } = of;
  const { lesson } = paper.student.proved;
  const { handout, practice } = making.words;
  const { start } = stepWords(paper.items[0]!, making);
  const whose = [practice.paper(paper.code), ...(paper.student.code ? [practice.student(paper.student.code)] : [])];
  const titles: Block[] = [
    ...clubLine(lesson, making),
    {
      kind: 'text',
      role: 'H1',
      style: 'title',
      spans: [plain(practice.title(plainText(lesson.title, making)))],
      bookmark: whose.join(' · '),
    },
    line('body', strong(whose.join(' · '))),
  ];
  const hold = shownOnce('hold', of, () => drawHold(look));
  const legend = shownOnce('legend', of, () => openViewLegend(making.words, making.ink));
  const holdLine = line(
    'note',
    strong(`${handout.hold}: `),
    plain(`${handout.holdWords(lesson.colours.D, lesson.hold.front)}. ${start}`),
  );
  return [
    headToFill(titles, making),
    ...headRule(),
    {
      kind: 'columns',
      gap: INNER_GAP,
      columns: [
        { width: HOLD, child: figure(hold, HOLD) },
        { width: LEGEND, child: figure(legend, LEGEND) },
        { width: { share: 1 }, child: stack([holdLine, line('note', plain(signsOf(making).join(' ')))]) },
      ],
    },
    { kind: 'space', height: mm(4) },
  ];
}

/** Kinds in the order in which their items stand. */
const kindsOf = (items: readonly PaperItem[]): ExerciseKind[] => [...new Set(items.map((i) => i.exercise.kind))];

/** The check word follows the last choice. */
export function practicePaper(paper: PracticePaper, making: Making): Sheet {
  const of = paperMaking(paper, making);
  const { items } = paper;
  const kinds = kindsOf(items);
  const lastLettered = items.findLast((i) => isLettered(i.exercise))?.exercise.kind;
  const title = making.words.practice.title(plainText(paper.student.proved.lesson.title, making));
  const { practice, handout } = making.words;
  return {
    title,
    language: making.words.language,
    body: [
      ...head(of),
      ...kinds.flatMap((kind) => [
        ...section(
          kind,
          items.filter((i) => i.exercise.kind === kind),
          of,
        ),
        ...(kind === lastLettered ? checkWord(of) : []),
      ]),
    ],
    foot: { left: [practice.foot(title, paper.code), practice.shortFoot(paper.code)], right: handout.page },
  };
}
