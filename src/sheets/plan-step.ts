/** A step of the running order as blocks: when, what to show, what to ask, room for notes. */
import { type Block, mm } from '../layout/blocks.ts';
import type { PlanStep } from '../lesson/prove-plan.ts';
import type { Scene } from '../svg/scene.ts';
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
  const when: Block = {
    kind: 'stack',
    gap: 0,
    children: [line('panel', plain(plan.clock(at))), note(grey(plan.minutes(minutes)))],
  };
  const heading: Block = { kind: 'text', role: 'H2', style: 'panel', spans: textSpans(title, texts) };
  const notes: Block = { kind: 'write-line', label: plan.notes };
  const text: Block = { kind: 'stack', gap: mm(1), children: [heading, ...body, ...(bare ? [] : [notes])] };
  const figure: Block[] = picture ? [{ kind: 'figure', scene: picture, width: PICTURE }] : [];
  const block: Block = {
    kind: 'columns',
    gap: GAP,
    columns: [
      { width: CLOCK, child: when },
      ...figure.map((child) => ({ width: PICTURE, child })),
      { width: { share: 1 }, child: text },
    ],
    fallback: {
      tallerThan: TALLEST,
      narrowerThan: NARROWEST,
      instead: { kind: 'stack', gap: mm(1), children: [when, ...figure, text] },
    },
  };
  return { kind: 'stack', gap: mm(1.5), children: [block], ...(at === 0 ? {} : { line: 'above' }) };
}
