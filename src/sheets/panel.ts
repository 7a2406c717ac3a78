/** The panel of one case: picture, set-up, solutions with their lengths, what to watch. */
import { cornerWhereabouts, edgeWhereabouts } from '../cube/address.ts';
import { pieceOf } from '../cube/cube.ts';
import { cornerOfSlot, edgeOfSlot, slotOfPlace } from '../cube/goal.ts';
import { placeSeen } from '../cube/stickers.ts';
import { type Block, mm, type StackBlock, type TurnsBlock } from '../layout/blocks.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { ProvedCase, ProvedSolution } from '../lesson/prove.ts';
import { drawCase } from '../svg/draw-case.ts';
import type { Scene } from '../svg/scene.ts';
import type { CaseWhere, Words } from '../words/words.ts';
import { type Making, noteBlocks, originOf } from './phrases.ts';

const PICTURE = mm(35);
const GUTTER = mm(4);

const label = (text: string): Block => ({
  kind: 'text',
  role: 'P',
  style: 'label',
  spans: [{ kind: 'plain', text }],
});

/** What the coach calls the case, or where its pieces are, in words. */
export function caseName({ case: c, cube, address }: ProvedCase, words: Words): string {
  if (c.name !== undefined) return c.name;
  const where = (whereabouts: 'home' | 'top' | 'away', place: string): CaseWhere =>
    whereabouts === 'away' ? { slot: slotOfPlace(place as 'FR') ?? place } : whereabouts;
  const corner = where(cornerWhereabouts(address), placeSeen(cube, pieceOf(cornerOfSlot(c.slot))));
  const edge = where(edgeWhereabouts(address), placeSeen(cube, pieceOf(edgeOfSlot(c.slot))));
  return words.handout.caseName(corner, edge);
}

function title(proved: ProvedCase, making: Making): Block {
  const { number, span } = proved.case;
  return {
    kind: 'text',
    role: 'H3',
    style: 'panel',
    spans: [
      { kind: 'plain', text: `${number}\u00a0\u00a0`, ink: 'grey' },
      { kind: 'strong', text: caseName(proved, making.words) },
    ],
    origin: originOf(span.start, making),
  };
}

const line = (turns: readonly { text: string }[], rest: Partial<TurnsBlock>): TurnsBlock => ({
  kind: 'turns',
  groups: [{ turns: turns.map((t) => t.text) }],
  ...rest,
});

function solutionBlocks({ solution, claim }: ProvedSolution, index: number, making: Making): Block[] {
  const { words } = making;
  const ring = { text: String(claim.length), spoken: words.handout.turns(claim.length) };
  const origin = originOf(solution.span.start, making);
  return [
    label(index === 0 ? words.handout.solve : words.handout.or),
    line(solution.turns, { ring, claims: [claim.id], origin }),
    ...noteBlocks(solution.remark, making),
  ];
}

/** The hold, where it is not the lesson's. */
function holdBlocks(proved: ProvedCase, lesson: Lesson, { words }: Making): Block[] {
  const { hold, colours } = proved.case;
  if (hold.up === lesson.hold.up && hold.front === lesson.hold.front) return [];
  return [label(`${words.handout.hold}: ${words.handout.holdWords(colours.D, hold.front)}`)];
}

/** The open view of a case after its set-up. */
export const casePicture = ({ case: c, cube, goal }: ProvedCase, { ink, words }: Omit<Making, 'source'>): Scene =>
  drawCase(cube, goal, 'open', { colours: c.colours, ink, words });

export function casePanel(proved: ProvedCase, lesson: Lesson, making: Making): StackBlock {
  const { case: c, solutions } = proved;
  const scene = casePicture(proved, making);
  const text: Block[] = [
    title(proved, making),
    ...holdBlocks(proved, lesson, making),
    ...noteBlocks(c.watch, making),
    label(making.words.handout.setUp),
    line(c.setup, { origin: originOf(c.setupSpan.start, making) }),
    ...solutions.flatMap((s, i) => solutionBlocks(s, i, making)),
  ];
  return {
    kind: 'stack',
    keep: true,
    line: 'above',
    gap: mm(1.6),
    origin: originOf(c.span.start, making),
    children: [
      {
        kind: 'columns',
        gap: GUTTER,
        columns: [
          { width: PICTURE, child: { kind: 'figure', scene, width: PICTURE } },
          { width: { share: 1 }, child: { kind: 'stack', children: text, gap: 0, keep: true } },
        ],
      },
    ],
  };
}
