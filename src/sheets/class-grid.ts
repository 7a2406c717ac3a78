/** Who answered what, a row a student and a column an item: the class at a glance. */
import { type Block, mm, type Paper } from '../layout/blocks.ts';
import { byCode, type StudentRows } from '../marking/by-student.ts';
import type { Item } from '../marking/items.ts';
import { isTimed, type MarkedRow } from '../marking/submission.ts';
import type { Summary } from '../marking/summary.ts';
import { letterInk } from '../svg/palette.ts';
import type { Mark, Scene } from '../svg/scene.ts';
import { groupedBy } from '../text/grouped.ts';
import type { MarkingSheetWords } from '../words/words.ts';
import { columns, figure, space, whole } from './blocks.ts';
import { printableCode } from './print-text.ts';
import type { SlipMaking } from './slips-sheet.ts';
import { grey, note, plain } from './texts.ts';

/** In scene units, and on paper. */
const CELL = 10;
const CELL_WIDTH = mm(4.4);
const BOX = 8;
const NUMBER = 7;
const STUDENT = mm(32);
/** Columns that fit beside a code; more go below. */
const MOST_COLUMNS: Readonly<Record<Paper, number>> = { a4: 30, letter: 30, a5: 16 };
const DARK = letterInk('#ffffff');
const THIN = { colour: DARK, width: 0.6 };

/** In places that are narrow. */
export const SHORT_CODE = 8;

type Told = 'right' | 'part' | 'wrong' | 'unread' | 'none';

function toldOf(row: MarkedRow | undefined): Told {
  if (!row || row.verdict === 'empty') return 'none';
  if (row.points >= 1) return 'right';
  if (row.points > 0) return 'part';
  return row.verdict === 'unreadable' ? 'unread' : 'wrong';
}

function marksOf(told: Told, column: number): Mark[] {
  const [x, y] = [column * CELL + (CELL - BOX) / 2, (CELL - BOX) / 2];
  const box = (width: number, fill: string): Mark => ({
    kind: 'polygon',
    points: [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + BOX },
      { x, y: y + BOX },
    ],
    fill,
    stroke: THIN,
  });
  const dash: Mark = {
    kind: 'line',
    points: [
      { x, y: y + BOX / 2 },
      { x: x + BOX, y: y + BOX / 2 },
    ],
    stroke: { colour: DARK, width: 0.9 },
  };
  switch (told) {
    case 'right':
      return [box(BOX, '#ffffff')];
    case 'part':
      return [box(BOX, '#ffffff'), box(BOX / 2, DARK)];
    // What is looked for is what stands out, and spares ink.
    case 'wrong':
      return [box(BOX, DARK)];
    case 'unread':
      return [
        box(BOX, '#ffffff'),
        { kind: 'label', text: '?', x: x + BOX / 2, y: y + BOX / 2, size: NUMBER, colour: DARK },
      ];
    case 'none':
      return [dash];
  }
}

const sceneOf = (marks: readonly Mark[], count: number, description: string): Scene => ({
  width: count * CELL,
  height: CELL,
  marks,
  description,
});

/** What stands in one band of columns: the papers or the handouts of a lesson. */
const bandOf = ({ lessonFile, onPaper }: Item): string => `${lessonFile} ${onPaper}`;

/** Nothing where nobody answered anything that counts. */
export function classGrid({ students, items }: Summary, { words: { markingSheets }, paper }: SlipMaking): Block[] {
  const itemById = new Map(items.map(({ item }) => [item.id, item]));
  const most = MOST_COLUMNS[paper];
  return [...groupedBy([...itemById.values()], bandOf).values()].flatMap((own) => {
    const numbers = [...new Set(own.map(({ number }) => number))].sort(byCode);
    const rowOf = ({ rows }: StudentRows, number: string): MarkedRow | undefined =>
      rows.find((row) => {
        const item = itemById.get(row.matched);
        return item?.number === number && bandOf(item) === bandOf(own[0]!) && !isTimed(row);
      });
    const parts = Array.from({ length: Math.ceil(numbers.length / most) }, (_, i) =>
      numbers.slice(i * most, (i + 1) * most),
    );
    return parts.flatMap((part) => bandBlocks(own[0]!, part, students, rowOf, markingSheets));
  });
}

function bandBlocks(
  { onPaper }: Item,
  numbers: readonly string[],
  students: readonly StudentRows[],
  rowOf: (student: StudentRows, number: string) => MarkedRow | undefined,
  { report: { grid }, slips }: MarkingSheetWords,
): Block[] {
  const row = (label: string, scene: Scene): Block =>
    columns(mm(2), [STUDENT, note(plain(label))], ['rest', figure(scene, (scene.width / CELL) * CELL_WIDTH)]);
  const heads = numbers.map(
    (text, i): Mark => ({ kind: 'label', text, x: i * CELL + CELL / 2, y: CELL / 2, size: NUMBER, colour: DARK }),
  );
  const head = row(onPaper ? grid.papers : grid.handout, sceneOf(heads, numbers.length, grid.heads(numbers)));
  const rows = students.map((student) => {
    const told = numbers.map((number) => [number, toldOf(rowOf(student, number))] as const);
    const of = (wanted: Told): string[] => told.flatMap(([number, is]) => (is === wanted ? [number] : []));
    const said = grid.row(of('right'), of('wrong'), [...of('part'), ...of('unread')]);
    const marks = told.flatMap(([, is], i) => marksOf(is, i));
    return row(printableCode(student.rows[0]!, SHORT_CODE, slips), sceneOf(marks, numbers.length, said));
  });
  return [
    whole(mm(0.5), head, ...rows.slice(0, 2)),
    space(mm(0.5)),
    ...rows.slice(2),
    note(grey(grid.legend)),
    space(mm(2)),
  ];
}
