/** ProvedLesson -> the chart of its rules: a tree of questions, what to turn at its leaves. */

import { type Block, mm, type Pt, type Sheet } from '../layout/blocks.ts';
import type { Claim } from '../lesson/claim.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { ProvedLessonRule, ProvedRules } from '../lesson/prove-rules.ts';
import { type Answer, leavesOf, type Question, type Tree, treeOf } from '../rules/tree.ts';
import { openViewLegend } from '../svg/draw.ts';
import { columns, figure, h2, stack } from './blocks.ts';
import { clubLine, headRule, holdSaid, lessonSheet, titleBlock } from './heading.ts';
import type { Making } from './making.ts';
import { plainText } from './phrases.ts';
import { isLong, MOST_EXCEPTIONS, ruleLeaf } from './rule-leaf.ts';
import { branchText, questionText, type RuleTexts, textSpans, wordsOf } from './rule-texts.ts';
import { line, note, plain, strong } from './texts.ts';

const ANSWER = mm(14);
const ANSWER_GAP = mm(2);
/** A branch that would be narrower, or taller than what a head leaves of the smallest page, stands below its answer. */
const NARROWEST_BRANCH = { question: mm(120), leaf: mm(85) } as const;
const TALLEST_BRANCH = mm(128);
const BRANCH_GAP = mm(0.7);
const LEGEND = mm(18);

/** Many leaves have smaller pictures, so that the chart stays on a page; two rows of exceptions are as tall as a leaf. */
function pictureFor(rules: readonly ProvedLessonRule[], leaves: number): Pt {
  const shown = rules.map(({ exceptions }) => Math.min(exceptions.length, MOST_EXCEPTIONS));
  const rows = shown.reduce((sum, count) => sum + Math.ceil(count / 2), leaves * 2) / 2;
  return rows <= 3 ? mm(38) : rows <= 4 ? mm(33) : rows <= 5 ? mm(27) : mm(22.5);
}

interface Drawing extends RuleTexts {
  readonly rules: readonly ProvedLessonRule[];
  readonly picture: Pt;
}

function questionBlocks({ asks }: Question, drawing: Drawing): Block[] {
  const means =
    'feature' in asks ? [wordsOf(asks, drawing).means] : asks.together.map((c) => wordsOf(c, drawing).means);
  return [
    h2(textSpans(questionText(asks, drawing), drawing, { strong: true }), { style: 'body' }),
    ...means
      .filter((text) => text !== undefined)
      .map((text): Block => ({ ...line('label', ...textSpans(text, drawing)), keepWithNext: true })),
  ];
}

const mayBeTall = (tree: Tree, { rules }: Drawing): boolean =>
  tree.kind === 'question' || (tree.rule !== undefined && isLong(rules[tree.rule]!));

function branchBlock(answer: Answer, tree: Tree, drawing: Drawing): Block {
  const words: Block = {
    ...note(...textSpans(branchText(answer, drawing), drawing, { strong: true })),
    keepWithNext: true,
  };
  const below = treeBlock(tree, drawing);
  const stacked: Block = stack(mm(1), words, below);
  return {
    ...stack(BRANCH_GAP, {
      ...columns(ANSWER_GAP, [ANSWER, words], ['rest', { ...stack(ANSWER_GAP, below), line: 'left' }]),
      fallback: {
        tallerThan: mayBeTall(tree, drawing) ? TALLEST_BRANCH : Number.POSITIVE_INFINITY,
        narrowerThan: NARROWEST_BRANCH[tree.kind],
        instead: stacked,
      },
    }),
    line: 'above',
  };
}

function treeBlock(tree: Tree, drawing: Drawing): Block {
  if (tree.kind === 'question') {
    return stack(
      BRANCH_GAP,
      stack(0, ...questionBlocks(tree, drawing)),
      ...tree.branches.map(({ answer, tree: below }) => branchBlock(answer, below, drawing)),
    );
  }
  if (tree.rule !== undefined) return ruleLeaf(drawing.rules[tree.rule]!, drawing, drawing.picture);
  const { noRule } = drawing.making.words.rules;
  return line('body', ...textSpans(noRule, drawing));
}

function head({ lesson }: ProvedLesson, { table, rules }: ProvedRules, making: Making): Block[] {
  const { handout, rules: words } = making.words;
  const isExact = rules.every(({ claim }) => claim.exact) && table.uncovered.length === 0;
  const hold = `${handout.hold}: ${holdSaid(lesson, making)}.`;
  const { signs } = lesson.step.sheets.words(making.words);
  const about = [hold, ...signs.slice(0, 2), ...(isExact ? [] : [words.chart.inexact])];
  const titles: Block[] = [
    ...clubLine(lesson, making),
    titleBlock(lesson, making),
    note(strong(`${words.chart.lead} `), plain(about.join(' '))),
  ];
  return [
    columns(mm(10), ['rest', stack(0, ...titles)], [LEGEND, figure(openViewLegend(making.words, making.ink), LEGEND)]),
    ...headRule(),
  ];
}

/** Claims that may stand on the chart: of the rules, of an example for each, and of exceptions. */
export const ruleChartClaims = ({ rules }: ProvedRules): Claim[] =>
  rules.flatMap(({ claim, example, exceptions }) => [
    claim,
    ...[...(example ? [example] : []), ...exceptions.slice(0, MOST_EXCEPTIONS)].flatMap(({ shown }) =>
      shown.solutions.map((s) => s.claim),
    ),
  ]);

export function ruleChart(proved: ProvedLesson, rules: ProvedRules, making: Making): Sheet {
  const { lesson } = proved;
  const words = making.words.rules.chart;
  const tree = treeOf(rules.table);
  const picture = pictureFor(rules.rules, leavesOf(tree).length);
  const chart = treeBlock(tree, { lesson, making, rules: rules.rules, picture });
  const title = words.title(plainText(lesson.title, making));
  return lessonSheet(title, proved, making, [...head(proved, rules, making), chart], words);
}
