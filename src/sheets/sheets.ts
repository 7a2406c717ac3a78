/** Which sheets a lesson is printed as. */
import type { Sheet } from '../layout/blocks.ts';
import type { Claim } from '../lesson/claim.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import { cardClaims, cards } from './cards.ts';
import { handout } from './handout.ts';
import type { Making } from './making.ts';
import { ruleChart, ruleChartClaims } from './rule-chart.ts';
import { runningOrder, runningOrderClaims } from './running-order.ts';

/** What a sheet's file is called after the lesson's name: nothing for the handout, `-cards` for `NAME-cards.pdf`. */
export type Suffix = '' | `-${string}`;

/** A sheet that can be made: nothing of it is, before it is asked for. */
export interface LessonSheet {
  readonly suffix: Suffix;
  /** Volumes bound into one file, each with a count of pages of its own; at least one. */
  readonly make: () => readonly Sheet[];
  /** What may stand on it; no two sheets share a claim, since each printing is a claim of its own. */
  readonly claims: () => readonly Claim[];
}

/** The handout first; the practice papers, made of students too, are in practice.ts. */
export function sheetsOf(proved: ProvedLesson, making: Making): LessonSheet[] {
  const { rules, plan, lesson } = proved;
  const sheets: LessonSheet[] = [
    { suffix: '', make: () => [handout(proved, making)], claims: () => [...proved.claims, ...proved.factClaims] },
  ];
  if (rules) {
    sheets.push({
      suffix: '-rules',
      make: () => [ruleChart(proved, rules, making)],
      claims: () => ruleChartClaims(rules),
    });
  }
  if (plan) {
    sheets.push({
      suffix: '-plan',
      make: () => [runningOrder(proved, plan, making)],
      claims: () => runningOrderClaims(plan, rules),
    });
  }
  if (lesson.cards) {
    const asked = lesson.cards;
    sheets.push({ suffix: '-cards', make: () => [cards(proved, asked, making)], claims: () => cardClaims(proved) });
  }
  return sheets;
}
