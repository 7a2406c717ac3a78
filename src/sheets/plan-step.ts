/** A step of the running order as blocks: when, what to show, what to ask, room for notes. */

import { type Block, mm } from '../layout/blocks.ts';
import type { PlanStep } from '../lesson/prove-plan.ts';
import type { Scene } from '../svg/scene.ts';
import { columns, figure, stack } from './blocks.ts';
import { type RuleTexts, textSpans } from './rule-texts.ts';
import { grey, line, note, plain, strong } from './texts.ts';

const CLOCK = mm(15);
const PICTURE = mm(34);
const GAP = mm(4);
const NARROWEST = mm(60);
/** Fits the smallest page. */
const TALLEST = mm(155);

export interface StepBlocks {
  readonly title: string;
  /** Drawn large beside the rest. */
  readonly picture?: Scene;
  readonly body: readonly Block[];
  /** Without a line for notes. */
  readonly bare?: boolean;
}

/** `Ask: …` with the first word strong. */
export const labelled = (label: string, text: string, texts: RuleTexts): Block =>
  note(strong(`${label}: `), ...textSpans(text, texts));

export function stepBlock(
  { title, picture, body, bare = false }: StepBlocks,
  { minutes, at }: Pick<PlanStep, 'minutes' | 'at'>,
  texts: RuleTexts,
): Block {
  const { plan } = texts.making.words;
  const when: Block = stack(0, line('panel', plain(plan.clock(at))), note(grey(plan.minutes(minutes))));
  const heading: Block = { kind: 'text', role: 'H2', style: 'panel', spans: textSpans(title, texts) };
  const notes: Block = { kind: 'write-line', label: plan.notes };
  const text: Block = stack(mm(1), heading, ...body, ...(bare ? [] : [notes]));
  const shown = picture ? [figure(picture, PICTURE)] : [];
  const block: Block = {
    ...columns(GAP, [CLOCK, when], ...shown.map((child) => [PICTURE, child] as const), ['rest', text]),
    fallback: { tallerThan: TALLEST, narrowerThan: NARROWEST, instead: stack(mm(1), when, ...shown, text) },
  };
  return { ...stack(mm(1.5), block), ...(at === 0 ? {} : { line: 'above' }) };
}
