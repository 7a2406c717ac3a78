/** The panel of one case: picture, set-up, solutions with their lengths, what to watch. */
import { cornerWhereabouts, edgeWhereabouts } from '../cube/address.ts';
import { type Piece, pieceOf, placeOf } from '../cube/cube.ts';
import { cornerOfSlot, edgeOfSlot, slotOfPlace } from '../cube/goal.ts';
import type { Place } from '../cube/spots.ts';
import { inverse, lengthOf, type Turn } from '../cube/turns.ts';
import { seenPlace } from '../cube/view.ts';
import { type Block, mm, type Span, type StackBlock, type TurnsBlock } from '../layout/blocks.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { ProvedCase, ProvedSolution } from '../lesson/proved.ts';
import { drawCase } from '../svg/draw-case.ts';
import type { Scene } from '../svg/scene.ts';
import type { CaseWhere } from '../words/words.ts';
import { lineSpans, type Making, noteBlocks, plainText, printedTurns } from './phrases.ts';

const PICTURE = mm(35);
const GUTTER = mm(4);

/** Where the pieces are, in words, for a case without a name. */
function describedName({ case: c, cube, address }: ProvedCase, { words }: Making): string {
  const where = (whereabouts: 'home' | 'top' | 'away', place: Place): CaseWhere =>
    whereabouts === 'away' ? { slot: slotOfPlace(place) ?? place } : whereabouts;
  const placeSeen = (piece: Piece): Place => seenPlace(cube.view, placeOf(cube, piece));
  const corner = where(cornerWhereabouts(address), placeSeen(pieceOf(cornerOfSlot(c.slot))));
  const edge = where(edgeWhereabouts(address), placeSeen(pieceOf(edgeOfSlot(c.slot))));
  return words.handout.caseName(corner, edge);
}

/** What the coach calls the case, or where its pieces are. */
export const caseName = (proved: ProvedCase, making: Making): string =>
  proved.case.name ? plainText(proved.case.name, making) : describedName(proved, making);

function title(proved: ProvedCase, making: Making): Block {
  const { number, name, span } = proved.case;
  const strong: Span[] = name
    ? lineSpans(name, making, 'strong')
    : [{ kind: 'strong', text: describedName(proved, making) }];
  return {
    kind: 'text',
    role: 'H3',
    style: 'panel',
    spans: [{ kind: 'plain', text: `${number}\u00a0\u00a0`, ink: 'grey' }, ...strong],
    origin: name?.span ?? span,
  };
}

const turnsLine = (label: string, turns: readonly Turn[], making: Making, rest: Partial<TurnsBlock>): TurnsBlock => ({
  kind: 'turns',
  label,
  groups: [{ turns: printedTurns(turns, making) }],
  ...rest,
});

function solutionBlocks({ solution, claim }: ProvedSolution, index: number, making: Making): Block[] {
  const { words } = making;
  const label = index === 0 ? words.handout.solve : words.handout.or;
  const ring = { text: String(claim.length), spoken: words.handout.turns(claim.length) };
  const origin = solution.span;
  return [
    turnsLine(label, solution.turns, making, { ring, claims: [claim.id], origin }),
    ...noteBlocks(solution.remark, making),
  ];
}

const note = (text: string, strong = false): Block => ({
  kind: 'text',
  role: 'P',
  style: 'note',
  spans: [{ kind: strong ? 'strong' : 'plain', text }],
});

/** What is otherwise than the reader has come to expect: the hold, and slots that are open. */
function deviations({ case: c }: ProvedCase, lesson: Lesson, { words }: Making): Block[] {
  const { handout } = words;
  const isHeldOtherwise = c.hold.up !== lesson.hold.up || c.hold.front !== lesson.hold.front;
  return [
    ...(isHeldOtherwise ? [note(`${handout.hold}: ${handout.holdWords(c.colours.D, c.hold.front)}`, true)] : []),
    ...(c.open.length > 0 ? [note(handout.open(c.open))] : []),
  ];
}

/** The open view of a case after its set-up. */
export const casePicture = ({ case: c, cube, goal }: ProvedCase, { ink, words }: Making): Scene =>
  drawCase(cube, goal, 'open', { colours: c.colours, ink, words });

export function casePanel(proved: ProvedCase, lesson: Lesson, making: Making): StackBlock {
  const { case: c, solutions } = proved;
  const { handout } = making.words;
  const origin = c.setupSpan;
  const text: Block[] = [
    title(proved, making),
    ...deviations(proved, lesson, making),
    ...noteBlocks(c.watch, making),
    turnsLine(handout.setUp, c.setup, making, { origin }),
    ...solutions.flatMap((s, i) => solutionBlocks(s, i, making)),
    ...(c.solutions.length === 0 ? [{ kind: 'write-line', label: handout.yours } as const] : []),
    ...(lesson.shows.undo && lengthOf(c.setup) > 0 ? [turnsLine(handout.undo, inverse(c.setup), making, {})] : []),
  ];
  return {
    kind: 'stack',
    keep: true,
    line: 'above',
    gap: mm(1.6),
    origin: c.span,
    children: [
      {
        kind: 'columns',
        gap: GUTTER,
        columns: [
          { width: PICTURE, child: { kind: 'figure', scene: casePicture(proved, making), width: PICTURE } },
          { width: { share: 1 }, child: { kind: 'stack', children: text, gap: 0, keep: true } },
        ],
      },
    ],
  };
}
