/** ProvedLesson -> cards to cut out: set-up and picture in front, the recommended solution in its phases behind. */

import { type Block, mm, type Sheet } from '../layout/blocks.ts';
import type { Claim } from '../lesson/claim.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { ProvedCase } from '../lesson/proved.ts';
import { beside, h3, stack } from './blocks.ts';
import { holdSaid } from './heading.ts';
import type { Making } from './making.ts';
import { caseName, casePicture, solvedGroups } from './panel.ts';
import { noteBlocks, plainText, ringOf, turnsLine, turnsSpan } from './phrases.ts';
import { grey, line, note, plain, strong } from './texts.ts';

const PICTURE = mm(38);
const GUTTER = mm(4);
/** Two columns on A4 and letter; as high as a picture and two lines of turns need. */
const LEAST = { width: mm(80), height: mm(52) };

/** A card that is dropped finds home: number, lesson, edition. */
const label = ({ number }: ProvedCase['case'], { lesson, edition }: ProvedLesson, making: Making): Block =>
  line('foot', plain(`${number} · ${plainText(lesson.title, making)} · ${edition}`));

function front(one: ProvedCase, proved: ProvedLesson, making: Making): Block {
  const { case: c } = one;
  const setUp = turnsLine(c.setup, making, { size: 'large', label: making.words.handout.setUp });
  const text = stack(mm(0.5), label(c, proved, making), note(plain(holdSaid(c, making))), setUp);
  return beside(GUTTER, casePicture(one, making), PICTURE, text);
}

function back(one: ProvedCase, proved: ProvedLesson, making: Making): Block {
  const { handout } = making.words;
  const { case: c, solutions } = one;
  const { claim, solution } = solutions[0]!;
  return {
    ...stack(
      mm(0.5),
      label(c, proved, making),
      h3([strong(caseName(one, making))]),
      note(grey(`${handout.setUp}\u00a0\u00a0`), turnsSpan(c.setup, making)),
      {
        kind: 'turns',
        size: 'large',
        label: handout.solve,
        groups: solvedGroups(one, making),
        ring: ringOf(claim.length, making),
      },
      ...noteBlocks(solution.remark, making),
    ),
    claims: [cardId(claim.id)],
    origin: c.span,
  };
}

const cardId = (id: string): string => `cards:${id}`;

/** A case without a solution makes no card. */
const solved = ({ cases }: ProvedLesson): ProvedCase[] => cases.filter(({ solutions }) => solutions.length > 0);

export const cardClaims = (proved: ProvedLesson): Claim[] =>
  solved(proved).map(({ solutions }) => {
    const { claim } = solutions[0]!;
    return { ...claim, id: cardId(claim.id), item: cardId(claim.item) };
  });

export function cards(proved: ProvedLesson, turnedOver: 'long' | 'short', making: Making): Sheet {
  const { handout, language } = making.words;
  const title = plainText(proved.lesson.title, making);
  return {
    title,
    language,
    body: [],
    cards: {
      turnedOver,
      least: LEAST,
      cards: solved(proved).map((one) => ({ front: front(one, proved, making), back: back(one, proved, making) })),
    },
    foot: { left: [handout.cards(title, turnedOver), handout.proved(proved.edition)], right: handout.page },
  };
}
