/** The panel of one case: picture, set-up, solutions with their lengths, what to watch. */

import { afterTurns } from '../cube/cube.ts';
import { inverse, lengthOf } from '../cube/turns.ts';
import { type Block, mm, type Span, type StackBlock, type TurnsBlock } from '../layout/blocks.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { ProvedCase, ProvedSolution } from '../lesson/proved.ts';
import { stepOf } from '../steps/steps.ts';
import type { Subject } from '../steps/subject.ts';
import { drawCase } from '../svg/draw.ts';
import type { Scene } from '../svg/scene.ts';
import { beside, figure, grid, h3, space, whole } from './blocks.ts';
import { holdSaid } from './heading.ts';
import type { Making } from './making.ts';
import { lineSpans, noteBlocks, plainText, printedTurns, ringOf, turnsLine } from './phrases.ts';
import { grey, note, plain, strong } from './texts.ts';
import { whyLine } from './why.ts';

const PICTURE = mm(35);
const GUTTER = mm(4);

/** Where the pieces are and how they are turned, in words, for a case without a name. */
const describedName = ({ case: c, subject }: ProvedCase, { words }: Making): string => subject.named(c.colours, words);

/** What the coach calls the case, or where its pieces are. */
export const caseName = (proved: ProvedCase, making: Making): string =>
  proved.case.name ? plainText(proved.case.name, making) : describedName(proved, making);

function title(proved: ProvedCase, making: Making): Block {
  const { number, name, span } = proved.case;
  const said: Span[] = name ? lineSpans(name, making, 'strong') : [strong(describedName(proved, making))];
  return h3([grey(`${number}\u00a0\u00a0`), ...said], { origin: name?.span ?? span });
}

type Groups = TurnsBlock['groups'];

/** The turns of a solution in its phases, each with a few words. */
function phaseGroups({ phases, solution }: ProvedSolution, subject: Subject, making: Making): Groups {
  const { words } = making;
  if (!phases) return [{ turns: printedTurns(solution.turns, making) }];
  return phases.phases.map((phase) => {
    const { turns, trigger } = phase;
    const said = stepOf(subject).phases?.said(phase, words) ?? '';
    return {
      turns: printedTurns(turns, making),
      words: trigger ? words.handout.trigger(said, trigger) : said,
    };
  });
}

/** The first solution of a case. */
export const solvedGroups = ({ solutions, subject }: ProvedCase, making: Making): Groups =>
  phaseGroups(solutions[0]!, subject, making);

/** Two stand beside each other in the narrowest panel. */
const STATE = mm(17);
const STATE_GAP = mm(2);
/** More than any page has room for: as many stand in a row as fit. */
const STATES_IN_A_ROW = 12;

/** Small pictures of the cube after each phase but the last, which leaves it solved. */
function statesStrip({ phases }: ProvedSolution, { case: c, subject }: ProvedCase, making: Making): Block[] {
  if (!phases || phases.phases.length < 2) return [];
  let after = subject.cube;
  const scenes = phases.phases.slice(0, -1).map(({ turns }) => {
    after = afterTurns(after, turns);
    return drawCase(after, subject, 'open', { ...making, colours: c.colours, small: true });
  });
  const figures = scenes.map((scene) => figure(scene, STATE));
  const shape = { columns: STATES_IN_A_ROW, least: STATE, gap: STATE_GAP, rowGap: STATE_GAP };
  return [space(STATE_GAP / 2), grid(figures, shape)];
}

function solutionBlocks(proved: ProvedSolution, index: number, { subject }: ProvedCase, making: Making): Block[] {
  const { solution, claim } = proved;
  const { handout } = making.words;
  return [
    {
      kind: 'turns',
      label: index === 0 ? handout.solve : handout.or,
      groups: phaseGroups(proved, subject, making),
      ring: ringOf(claim.length, making),
      claims: [claim.id],
      origin: solution.span,
    },
    ...noteBlocks(solution.remark, making),
  ];
}

export const isHeldAs = ({ hold: a }: Held, { hold: b }: Held): boolean => a.up === b.up && a.front === b.front;
type Held = Pick<Lesson, 'hold'>;

/** What is otherwise than the reader has come to expect: the hold, and what is open. */
function deviations({ case: c, subject }: ProvedCase, lesson: Lesson, making: Making): Block[] {
  const open = stepOf(subject).sheets.openSaid(subject, making.words);
  return [
    ...(isHeldAs(c, lesson) ? [] : [note(strong(`${making.words.handout.hold}: ${holdSaid(c, making)}`))]),
    ...(open === undefined ? [] : [note(plain(open))]),
  ];
}

/** The open view of a case after its set-up. */
export const casePicture = ({ case: c, subject }: ProvedCase, making: Making): Scene =>
  drawCase(subject.cube, subject, 'open', { ...making, colours: c.colours });

export function casePanel(proved: ProvedCase, lesson: Lesson, making: Making): StackBlock {
  const { case: c, solutions } = proved;
  const { handout } = making.words;
  const text: Block[] = [
    title(proved, making),
    ...deviations(proved, lesson, making),
    ...noteBlocks(c.watch, making),
    turnsLine(c.setup, making, { label: handout.setUp, origin: c.setupSpan }),
    ...solutions.flatMap((s, i) => [
      ...solutionBlocks(s, i, proved, making),
      ...(lesson.shows.why ? whyLine(s.solution.turns, lesson.triggers, making) : []),
      ...(lesson.shows.states && i === 0 ? statesStrip(s, proved, making) : []),
    ]),
    ...(c.solutions.length === 0 ? [{ kind: 'write-line', label: handout.yours } as const] : []),
    ...(lesson.shows.undo && lengthOf(c.setup) > 0
      ? [turnsLine(inverse(c.setup), making, { label: handout.undo })]
      : []),
  ];
  return {
    ...whole(mm(1.6), beside(GUTTER, casePicture(proved, making), PICTURE, whole(0, ...text))),
    line: 'above',
    origin: c.span,
  };
}
