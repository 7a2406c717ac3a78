/** Which sheets a lesson is printed as. */
import type { Sheet } from '../layout/blocks.ts';
import type { Claim } from '../lesson/claim.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import { cardClaims, cards } from './cards.ts';
import { handout } from './handout.ts';
import type { Making } from './making.ts';
import { ruleChart, ruleChartClaims } from './rule-chart.ts';
import { runningOrder, runningOrderClaims } from './running-order.ts';

export interface LessonSheet {
  /** What its file is called after the lesson's name: nothing for the handout, `-cards` for `NAME-cards.pdf`. */
  readonly suffix: '' | `-${string}`;
  readonly sheet: Sheet;
  /** Bound behind it in the same file, each with a count of pages of its own. */
  readonly more?: readonly Sheet[];
  /** What may stand on it; no two sheets share a claim, since each printing is a claim of its own. */
  readonly claims: readonly Claim[];
}

export const sheetsOf = (proved: ProvedLesson, making: Making): LessonSheet[] => [
  { suffix: '', sheet: handout(proved, making), claims: proved.claims },
  ...(proved.rules
    ? [
        {
          suffix: '-rules' as const,
          sheet: ruleChart(proved, proved.rules, making),
          claims: ruleChartClaims(proved.rules),
        },
      ]
    : []),
  ...(proved.plan
    ? [
        {
          suffix: '-plan' as const,
          sheet: runningOrder(proved, proved.plan, making),
          claims: runningOrderClaims(proved.plan, proved.rules),
        },
      ]
    : []),
  ...(proved.lesson.cards
    ? [
        {
          suffix: '-cards' as const,
          sheet: cards(proved, proved.lesson.cards, making),
          claims: cardClaims(proved),
        },
      ]
    : []),
];
