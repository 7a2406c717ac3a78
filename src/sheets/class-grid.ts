/** Who answered what, a row a student and a column an item: the class at a glance. */
import { type Block, mm, type Paper } from '../layout/blocks.ts';
import { byCode, type StudentRows } from '../marking/by-student.ts';
import { isTimed, type MarkedRow } from '../marking/submission.ts';
import { letterInk } from '../svg/palette.ts';
import type { Mark, Scene } from '../svg/scene.ts';
import type { MarkingSheetWords } from '../words/words.ts';
import { columns, figure, space, whole } from './blocks.ts';
import { printableCode } from './print-text.ts';
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

/** The number that an item has on its paper or handout. */
const numberOf = ({ matched, paper }: MarkedRow): string =>
  paper !== '' && matched.startsWith(`${paper}.`)
    ? matched.slice(paper.length + 1)
    : (matched.split('.').at(-1) ?? matched);

/** Nothing where nobody answered anything that counts. */
export function classGrid(students: readonly StudentRows[], words: MarkingSheetWords, paper: Paper): Block[] {
  const { grid } = words.report;
  const most = MOST_COLUMNS[paper];
  const counting = students.map(({ student, rows }) => ({
    student,
    first: rows[0]!,
    byNumber: new Map(
      rows.filter((row) => row.matched !== '' && !isTimed(row)).map((row) => [numberOf(row), row] as const),
    ),
  }));
  const numbers = [...new Set(counting.flatMap(({ byNumber }) => [...byNumber.keys()]))].sort(byCode);
  const bands = Array.from({ length: Math.ceil(numbers.length / most) }, (_, i) =>
    numbers.slice(i * most, (i + 1) * most),
  );
  const row = (label: Block, scene: Scene): Block =>
    columns(mm(2), [STUDENT, label], ['rest', figure(scene, (scene.width / CELL) * CELL_WIDTH)]);
  return bands.flatMap((band) => {
    const heads = band.map(
      (number, i): Mark => ({
        kind: 'label',
        text: number,
        x: i * CELL + CELL / 2,
        y: CELL / 2,
        size: NUMBER,
        colour: DARK,
      }),
    );
    const head = row(note(plain(grid.items)), sceneOf(heads, band.length, grid.heads(band)));
    const rows = counting.map(({ first, byNumber }) => {
      const told = band.map((number) => [number, toldOf(byNumber.get(number))] as const);
      const of = (wanted: Told): string[] => told.flatMap(([number, is]) => (is === wanted ? [number] : []));
      const said = grid.row(of('right'), of('wrong'), [...of('part'), ...of('unread')]);
      const code = printableCode(first, SHORT_CODE, words.slips);
      return row(
        note(plain(code)),
        sceneOf(
          told.flatMap(([, is], i) => marksOf(is, i)),
          band.length,
          said,
        ),
      );
    });
    return [
      whole(mm(0.5), head, ...rows.slice(0, 2)),
      space(mm(0.5)),
      ...rows.slice(2),
      note(grey(grid.legend)),
      space(mm(2)),
    ];
  });
}
