/** The key to a practice paper: letters and why, recommended solutions, and what the cube looks like after them. */
import { afterTurns, seenPiece, solvedCube } from '../cube/cube.ts';
import { lengthOf, type Turn } from '../cube/turns.ts';
import { type Block, mm, type Sheet, type Span } from '../layout/blocks.ts';
import { type ExerciseKind, isShared, type SharedKind } from '../lesson/practice.ts';
import type { PlaceExercise, SolveExercise } from '../practice/exercise.ts';
import type { PaperItem, PracticePaper } from '../practice/papers.ts';
import { stepOf } from '../steps/steps.ts';
import { drawPlace, drawWhole } from '../svg/draw.ts';
import type { Scene } from '../svg/scene.ts';
import { beside, grid, h2, space, whole } from './blocks.ts';
import { headRule, holdNote } from './heading.ts';
import type { Making } from './making.ts';
import { plainText, ringOf, turnsLine, turnsSpan } from './phrases.ts';
import {
  drawnOnce,
  itemId,
  itemsByKind,
  kindWords,
  openLines,
  optionSpans,
  type PaperMaking,
  paperMaking,
  rightLetters,
  sheetOf,
  shorterId,
  shorterOf,
  stepWords,
  titleBlocks,
} from './practice-texts.ts';
import { grey, line, note, plain, strong } from './texts.ts';

const GAP = mm(7);
const PICTURE = mm(22);

/** Answers of a word or a line stand closer than those with pictures. */
const NARROW = { columns: 3, least: mm(54) } as const;
const BROAD = { columns: 2, least: mm(75) } as const;
const COLUMNS: Readonly<Record<SharedKind, { readonly columns: number; readonly least: number }>> = {
  rule: BROAD,
  picture: NARROW,
  order: NARROW,
  slip: BROAD,
  place: BROAD,
  solve: BROAD,
  drill: NARROW,
};

const setUpSpans = ({ exercise }: PaperItem, { making }: PaperMaking): Span[] => [
  grey(`${making.words.practice.setUp} `),
  turnsSpan(exercise.setup, making),
];

const numberSpan = ({ number }: PaperItem): Span => grey(`${number}\u00a0\u00a0`);

/** One line of letters, one of the set-up, so that it can be tried. */
function choice(item: PaperItem, of: PaperMaking): Block {
  const { exercise } = item;
  if (exercise.form !== 'choice') return whole(0);
  const answer: Span[] = exercise.slip
    ? slipSpans(item, of)
    : exercise.right.flatMap((i) => optionSpans(item, exercise, i, of));
  const head = [numberSpan(item), strong(rightLetters(item)), plain('\u00a0\u00a0\u00a0'), ...answer];
  const isSetUpTheAnswer = exercise.kind === 'picture';
  return whole(0, line('body', ...head), ...(isSetUpTheAnswer ? [] : [note(...setUpSpans(item, of))]));
}

function slipSpans({ exercise }: PaperItem, { making }: PaperMaking): Span[] {
  if (exercise.form !== 'choice' || !exercise.slip) return [];
  const { at, was, now } = exercise.slip;
  const [before, between] = making.words.practice.slipAnswer(at);
  return [plain(`${before} `), turnsSpan([now], making), plain(`, ${between} `), turnsSpan([was], making)];
}

const withPicture = (scene: Scene, text: Block): Block => beside(mm(4), scene, PICTURE, text);

/** Where the telling sticker of a piece looks, in words. */
function placeWords({ subject, asked, at, faces }: PlaceExercise, { making, look }: PaperMaking): string {
  const colour = look.colours[seenPiece(solvedCube(), asked.piece).faces];
  return stepOf(subject).practice.pieceSaid({ name: asked.name, at, colour, faces }, making.words);
}

function place(item: PaperItem, exercise: PlaceExercise, of: PaperMaking): Block {
  const words = placeWords(exercise, of);
  const scene = drawnOnce(exercise, 'place', of.look, () =>
    drawPlace(exercise.after, exercise.asked.piece, of.look, words),
  );
  const text = whole(0, line('body', numberSpan(item)), note(plain(words)), note(...setUpSpans(item, of)));
  return withPicture(scene, text);
}

function solution(item: PaperItem, exercise: SolveExercise, of: PaperMaking): Block {
  const { making, look, paper } = of;
  const { handout, practice } = making.words;
  const { recommended, setup, subject } = exercise;
  const id = itemId(paper, item);
  const solved = (label: string, list: readonly Turn[], claim: string): Block =>
    turnsLine(list, making, { label, ring: ringOf(lengthOf(list), making), claims: [claim] });
  const shorter = shorterOf(exercise);
  const none = shorter.length === 0 ? [grey(practice.noneShorter)] : [];
  const text = whole(
    0,
    line('body', numberSpan(item), ...none),
    turnsLine(setup, making, { label: handout.setUp }),
    solved(practice.recommended, recommended, id),
    ...shorter.map((turns) => solved(practice.shortest, turns, shorterId(id))),
    ...openLines(item, making, plain),
  );
  if (exercise.kind === 'drill') return text;
  const scene = drawnOnce(exercise, 'after', look, () => drawWhole(afterTurns(subject.cube, recommended), look));
  return withPicture(scene, text);
}

function answer(item: PaperItem, of: PaperMaking): Block {
  const { exercise } = item;
  switch (exercise.form) {
    case 'solve':
      return solution(item, exercise, of);
    case 'place':
      return { ...place(item, exercise, of), claims: [itemId(of.paper, item)] };
    case 'choice':
      return { ...choice(item, of), claims: [itemId(of.paper, item)] };
  }
}

function section(kind: ExerciseKind, items: readonly PaperItem[], of: PaperMaking): Block[] {
  const { title } = kindWords(items[0]!, of.making);
  const common: Block = { ...note(plain(stepWords(items[0]!, of.making).common)), keepWithNext: true };
  const cells = items.map((item) => answer(item, of));
  return [
    h2([plain(title)]),
    ...(kind === 'solve' ? [common] : []),
    space(mm(1)),
    grid(cells, { ...(isShared(kind) ? COLUMNS[kind] : NARROW), gap: GAP, rowGap: mm(3) }),
    space(mm(4)),
  ];
}

/** With the code and the check words of its paper. */
export function practiceKey(paper: PracticePaper, making: Making): Sheet {
  const of = paperMaking(paper, making);
  const { practice } = making.words;
  const { lesson } = paper.student.proved;
  const { checkWords } = paper;
  const text = practice.keyTitle(plainText(lesson.title, making));
  const check = line('body', strong(`${practice.checkWord(checkWords.length)}: `), plain(checkWords.join(' ')));
  return sheetOf(text, of, [
    ...titleBlocks(text, of),
    ...headRule(),
    holdNote(lesson, making),
    ...(checkWords.length > 0 ? [check] : []),
    space(mm(3)),
    ...itemsByKind(paper).flatMap(([kind, items]) => section(kind, items, of)),
  ]);
}
