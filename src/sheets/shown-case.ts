/** A case beside others on the coach's and the rules' sheets: a small picture, its set-up, its first solution. */

import type { Turn } from '../cube/turns.ts';
import { type Block, mm, type TurnsBlock } from '../layout/blocks.ts';
import type { ProvedCase } from '../lesson/proved.ts';
import type { Scene } from '../svg/scene.ts';
import { beside, stack } from './blocks.ts';
import type { Making } from './making.ts';
import { casePicture, solvedGroups } from './panel.ts';
import { ringOf, turnsSpan } from './phrases.ts';
import { grey, note } from './texts.ts';

const PICTURE = mm(19);

export const setUpLine = (setup: readonly Turn[], making: Making): Block =>
  note(grey(`${making.words.handout.setUp}\u00a0 `), turnsSpan(setup, making));

/** The first solution in its phases, with its length; nothing for a case without one. */
export const solutionLine = (shown: ProvedCase, making: Making): TurnsBlock[] =>
  shown.solutions.slice(0, 1).map(({ claim }) => ({
    kind: 'turns',
    groups: solvedGroups(shown, making),
    ring: ringOf(claim.length, making),
    claims: [claim.id],
  }));

interface Around {
  readonly above?: readonly Block[];
  readonly below?: readonly Block[];
  /** In place of the case's own. */
  readonly scene?: Scene;
}

export const smallCase = (
  shown: ProvedCase,
  making: Making,
  { above = [], below = [], scene = casePicture(shown, making) }: Around = {},
): Block =>
  beside(
    mm(3),
    scene,
    PICTURE,
    stack(0, ...above, setUpLine(shown.case.setup, making), ...solutionLine(shown, making), ...below),
  );
