/** ProvedLesson -> the coach's running order: what to show and ask, which slip to expect, how long each step is. */

import { afterTurns } from '../cube/cube.ts';
import { turnOf } from '../cube/turns.ts';
import { type Block, mm, type Sheet } from '../layout/blocks.ts';
import type { Claim } from '../lesson/claim.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import {
  type DrillItem,
  type ExpectedSlip,
  type PlanContent,
  type PlanStep,
  type ProvedPlan,
  planClaims,
  type TurnedPair,
} from '../lesson/prove-plan.ts';
import type { ProvedRules } from '../lesson/prove-rules.ts';
import type { ProvedCase } from '../lesson/proved.ts';
import { rulesReport } from '../lesson/rule-report.ts';
import { drawCase } from '../svg/draw.ts';
import { grid, h2, space, stack, whole } from './blocks.ts';
import { clubLine, headRule, holdSaid, lessonSheet, titleBlock } from './heading.ts';
import type { Making } from './making.ts';
import { casePicture, isHeldAs } from './panel.ts';
import { noteBlocks, plainText, turnsSpan } from './phrases.ts';
import { labelled, type StepBlocks, stepBlock } from './plan-step.ts';
import {
  adviceSpans,
  branchText,
  howText,
  ownWords,
  questionText,
  type RuleTexts,
  statementText,
  textSpans,
  thenText,
  wholeText,
} from './rule-texts.ts';
import { smallCase, solutionLine } from './shown-case.ts';
import { line, note, plain, strong } from './texts.ts';

const MOST_UNCOVERED = 6;
const COLUMN_GAP = mm(5);
const NARROWEST_CASE = mm(62);
const Y = turnOf('rotation', 'y', 1);

/** The set-up large, to be read from where it lies while both hands hold the cube; the solution below it. */
const demonstrated = (shown: ProvedCase, making: Making): Block[] => [
  line('title', turnsSpan(shown.case.setup, making)),
  ...solutionLine(shown, making),
];

const sideBySide = (cells: readonly Block[]): Block =>
  grid(cells, { columns: 2, least: NARROWEST_CASE, gap: COLUMN_GAP, rowGap: mm(2) });

/** The last question on the way to the rule, with its answer and what stands then. */
function askBlocks({ asked, rule }: PlanContent & { does: 'rule' }, texts: RuleTexts): Block[] {
  if (!asked) return [];
  const { plan } = texts.making.words;
  const answer = plan.answer(branchText(asked.answer, texts), thenText(rule.said.rule.counsel, texts));
  return [labelled(plan.ask, `${questionText(asked.asks, texts)} ${answer}`, texts)];
}

function slipBlock({ shown, rule, isException, differ }: ExpectedSlip, texts: RuleTexts): Block {
  const { slip, slips } = texts.making.words.plan;
  const statements = differ.map((condition) => statementText(condition, texts));
  const text = isException ? slips.exception(statements) : slips.neighbour(rule.said.number, statements);
  return smallCase(shown, texts.making, { above: [labelled(slip, text, texts)] });
}

function ruleStep(content: PlanContent & { does: 'rule' }, texts: RuleTexts): StepBlocks {
  const { rule, shown, slip } = content;
  const { steps } = texts.making.words.plan;
  const alone = wholeText(rule, texts);
  const how = howText(rule.said.rule.counsel, texts);
  return {
    title: steps.rule(rule.said.number),
    picture: casePicture(shown, texts.making),
    body: [
      note(
        ...textSpans(`${alone ? steps.alone(alone) : steps.earlier} `, texts),
        ...adviceSpans(rule.said.rule.counsel, texts),
        plain('.'),
        ...(how ? textSpans(` ${how}`, texts) : []),
      ),
      ...demonstrated(shown, texts.making),
      ...askBlocks(content, texts),
      ...noteBlocks(rule.said.say, texts.making),
      ...(slip ? [slipBlock(slip, texts)] : []),
    ],
  };
}

function partStep({ part, shown }: PlanContent & { does: 'part' }, texts: RuleTexts): StepBlocks {
  const { lesson, making } = texts;
  const { plan, handout } = making.words;
  return {
    title: part.heading ? plainText(part.heading, making) : plan.steps.part,
    picture: casePicture(shown, making),
    body: [
      ...(isHeldAs(shown.case, lesson) ? [] : [labelled(handout.hold, holdSaid(shown.case, making), texts)]),
      ...demonstrated(shown, making),
      labelled(plan.ask, lesson.step.sheets.words(making.words).plan.ask, texts),
      ...noteBlocks(shown.case.watch, making),
    ],
  };
}

function pairBlock({ before, after, rules }: TurnedPair, texts: RuleTexts): Block {
  const { lesson, making } = texts;
  const look = { ...making, colours: lesson.colours };
  const scene = drawCase(afterTurns(before.subject.cube, [Y]), before.subject, 'open', look);
  const words = making.words.plan.steps.turnedPair(rules[0].said.number, rules[1].said.number);
  return stack(
    mm(1.5),
    smallCase(before, making, { above: [note(...textSpans(words, texts))] }),
    smallCase(after, making, { scene }),
  );
}

function turnedStep(pairs: readonly TurnedPair[], texts: RuleTexts): StepBlocks {
  const { plan } = texts.making.words;
  const { title, text, ask } = plan.steps.turned;
  return {
    title,
    body: [
      note(...textSpans(text, texts, { turns: [Y] })),
      sideBySide(pairs.map((pair) => pairBlock(pair, texts))),
      labelled(plan.ask, ask, texts),
    ],
  };
}

function drillStep(items: readonly DrillItem[], isWhole: boolean, texts: RuleTexts): StepBlocks {
  const { plan } = texts.making.words;
  const { drill, plainDrill } = plan.steps;
  if (items.length === 0) return { title: drill.title, body: [note(...textSpans(plainDrill, texts))] };
  const cells = items.map(({ rule, isException, shown }) =>
    smallCase(shown, texts.making, { above: [note(strong(plan.drillItem(rule.said.number, isException)))] }),
  );
  return {
    title: drill.title,
    body: [
      note(
        ...textSpans(
          drill.text(
            items.length,
            items.filter(({ isException }) => isException).length,
            isWhole ? ownWords(texts).points : undefined,
          ),
          texts,
        ),
      ),
      sideBySide(cells),
    ],
  };
}

function stepBlocks(step: PlanStep, texts: RuleTexts): StepBlocks {
  const { plan } = texts.making.words;
  const { open, close, break: pause, drill } = plan.steps;
  const said = (title: string, text: string): StepBlocks => ({ title, body: [note(...textSpans(text, texts))] });
  switch (step.does) {
    case 'rule':
      return ruleStep(step, texts);
    case 'part':
      return partStep(step, texts);
    case 'turned':
      return turnedStep(step.pairs, texts);
    case 'drill':
      return drillStep(step.items, step.isWhole, texts);
    case 'open':
      return said(open, texts.lesson.step.sheets.words(texts.making.words).plan.open);
    case 'break':
      return { ...said(pause.title, pause.text), bare: true };
    case 'drill again':
      return { ...said(drill.title, drill.again), bare: true };
    case 'close': {
      const { title, body } = said(close.title, close.text);
      return { title, body: [...body, labelled(plan.ask, close.ask, texts)] };
    }
  }
}

const reportId = (id: string): string => `plan:${id}`;

/** How often the advice of a rule works where just one of its conditions is not met. */
const contrastNotes = ({ rules }: ProvedRules, texts: RuleTexts): Block[] =>
  rules.flatMap(({ said, proved: { contrasts } }) => {
    const each = contrasts
      .filter(({ sightings }) => sightings > 0)
      .map(({ without, ...counts }) => ({ says: statementText(without, texts), ...counts }));
    // Of a single condition the table tells it.
    if (contrasts.length < 2 || each.length === 0) return [];
    return [note(...textSpans(texts.making.words.plan.report.contrasts(said.number, each), texts))];
  });

/** What the coach should know of the rules, addresses and all. */
function reportBlocks(rules: ProvedRules, texts: RuleTexts): Block[] {
  const { report } = texts.making.words.plan;
  const { rules: figures, sightings, mean, worst, uncovered } = rulesReport(rules);
  const own = ownWords(texts);
  const named = uncovered.slice(0, MOST_UNCOVERED).map(own.seen);
  const header = report.columns.map((text) => line('label', ...textSpans(text, texts)));
  const rows = figures.flatMap((one, i) => {
    const claims = [reportId(rules.rules[i]!.claim.id)];
    return report.cells(one).map((text) => ({ ...note(...textSpans(text, texts)), claims }));
  });
  return [
    space(mm(4)),
    {
      ...whole(
        mm(0.5),
        h2(textSpans(report.heading, texts)),
        grid([...header, ...rows], { columns: report.columns.length, gap: mm(3), rowGap: 0 }),
        ...contrastNotes(rules, texts),
        note(...textSpans(report.table(sightings, mean, worst), texts)),
        note(...textSpans(report.uncovered(uncovered.length, named), texts)),
        line('label', ...textSpans(report.means(own.sighting), texts)),
      ),
      line: 'above',
    },
  ];
}

/** Of what is shown, and of the rules in the report. */
export const runningOrderClaims = (plan: ProvedPlan, rules: ProvedRules | undefined): Claim[] => [
  ...planClaims(plan),
  ...(rules?.rules ?? []).map(({ claim }) => ({ ...claim, id: reportId(claim.id) })),
];

export function runningOrder(proved: ProvedLesson, { minutes, steps }: ProvedPlan, making: Making): Sheet {
  const { lesson, rules } = proved;
  const { plan: words, handout } = making.words;
  const texts = { lesson, making };
  const body = [
    ...clubLine(lesson, making),
    titleBlock(lesson, making),
    note(strong(`${words.lead(minutes)} `), plain(`${handout.hold}: ${holdSaid(lesson, making)}.`)),
    note(plain(words.safety)),
    ...headRule(),
    stack(mm(2.5), ...steps.map((step) => stepBlock(stepBlocks(step, texts), step, texts))),
    ...(rules ? reportBlocks(rules, texts) : []),
  ];
  return lessonSheet(words.title(plainText(lesson.title, making)), proved, making, body, words);
}
