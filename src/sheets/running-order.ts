/** ProvedLesson -> the coach's running order: what to show for each rule, what to ask, the slip to expect, and a report. */
import { type Block, mm, type Sheet, type Span } from '../layout/blocks.ts';
import type { Claim } from '../lesson/claim.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { PlannedExample, PlanStep, ProvedPlan } from '../lesson/prove-plan.ts';
import type { ProvedRules } from '../lesson/prove-rules.ts';
import type { ProvedCase } from '../lesson/proved.ts';
import { casePicture, solvedGroups } from './panel.ts';
import { type Making, plainText, printedTurns } from './phrases.ts';
import { aimText, conditionSpans, counselSpans, questionSpans, wholeOf } from './rule-words.ts';
import { grey, line, note, plain } from './texts.ts';

const MINUTES = mm(13);
const PICTURE = mm(22);
const GUTTER = mm(4);
const NARROWEST = mm(66);

const labelled = (label: string, ...spans: Span[]): Block => line('body', grey(`${label}\u00a0\u00a0`), ...spans);

/** Minutes at the left, what happens beside them. */
const step = (minutes: number, children: readonly Block[], making: Making): Block => ({
  kind: 'stack',
  keep: true,
  line: 'above',
  gap: mm(1.6),
  children: [
    {
      kind: 'columns',
      gap: GUTTER,
      columns: [
        {
          width: MINUTES,
          child: {
            kind: 'text',
            role: 'P',
            style: 'panel',
            spans: [{ kind: 'strong', text: making.words.plan.short(minutes) }],
          },
        },
        { width: { share: 1 }, child: { kind: 'stack', gap: mm(1.2), children } },
      ],
    },
  ],
});

const heading = (...spans: Span[]): Block => ({ kind: 'text', role: 'H3', style: 'panel', spans });

/** A set-up in the size of a heading, to be read at arm's length, with the picture and the solution that is proved. */
const shownBlock = (label: string, one: ProvedCase, making: Making): Block => ({
  kind: 'columns',
  gap: GUTTER,
  columns: [
    { width: PICTURE, child: { kind: 'figure', scene: casePicture(one, making), width: PICTURE } },
    {
      width: { share: 1 },
      child: {
        kind: 'stack',
        gap: mm(0.5),
        children: [
          note({ kind: 'plain', text: label, ink: 'grey' }),
          {
            kind: 'text',
            role: 'P',
            style: 'heading',
            spans: [{ kind: 'turns', turns: printedTurns(one.case.setup, making) }],
          },
          {
            kind: 'turns',
            label: making.words.handout.solve,
            groups: solvedGroups(one, making),
            claims: one.solutions.map(({ claim }) => claim.id),
          },
        ],
      },
    },
  ],
});

function exampleBlocks({ isException, shown, contrast, alike }: PlannedExample, making: Making): Block[] {
  const { plan } = making.words;
  return [
    {
      kind: 'grid',
      columns: 2,
      least: NARROWEST,
      gap: GUTTER,
      rowGap: mm(2),
      cells: [
        shownBlock(plan.show(isException), shown, making),
        ...(alike ? [shownBlock(plan.slip(alike.rule.said.number), alike.shown, making)] : []),
      ],
    },
    ...(contrast ? [note(plain(plan.turned(contrast.turn, contrast.rule.said.number)))] : []),
  ];
}

function ruleStep({ rule, examples, minutes }: PlanStep & { kind: 'rule' }, lesson: Lesson, making: Making): Block[] {
  const { plan } = making.words;
  const { when } = rule.said.rule;
  const questions = when.flatMap((condition, i): Span[] => [
    ...(i > 0 ? [plain(' ')] : []),
    ...questionSpans(condition, lesson, making),
  ]);
  const top = step(
    minutes,
    [
      heading(
        { kind: 'plain', text: `${plan.rule(rule.said.number)}\u00a0\u00a0`, ink: 'grey' },
        ...conditionSpans(wholeOf(rule), lesson.colours.D, making),
      ),
      ...(questions.length > 0 ? [labelled(plan.ask, ...questions)] : []),
      labelled(
        plan.answer,
        ...counselSpans(rule.said.rule, lesson, making),
        plain(`: ${aimText(rule.said.rule, lesson, making)}`),
      ),
      ...(rule.exceptions.length > 0 ? [note(plain(plan.slipException(rule.exceptions.length)))] : []),
      ...(examples[0] ? exampleBlocks(examples[0], making) : []),
    ],
    making,
  );
  const more = examples.slice(1).map(
    (example): Block => ({
      kind: 'columns',
      gap: GUTTER,
      columns: [
        { width: MINUTES, child: { kind: 'space', height: 0 } },
        {
          width: { share: 1 },
          child: { kind: 'stack', gap: mm(1.2), keep: true, children: exampleBlocks(example, making) },
        },
      ],
    }),
  );
  return [top, ...more.flatMap((block): Block[] => [{ kind: 'space', height: mm(2) }, block])];
}

function stepBlocks(one: PlanStep, lesson: Lesson, making: Making): Block[] {
  const { plan } = making.words;
  const said = {
    open: [plan.open, plan.openDo],
    break: [plan.pause, plan.pauseDo],
    practise: [plan.practise, plan.practiseDo],
    close: [plan.close, plan.closeDo],
  } as const;
  const blocks =
    one.kind === 'rule'
      ? ruleStep(one, lesson, making)
      : [
          step(
            one.minutes,
            [heading({ kind: 'strong', text: said[one.kind][0] }), line('body', plain(said[one.kind][1]))],
            making,
          ),
        ];
  return [...blocks, { kind: 'space', height: mm(3) }];
}

function report({ table, rules }: ProvedRules, { words: { plan } }: Making): Block[] {
  const { cost, uncovered, sightings } = table;
  return [
    { kind: 'text', role: 'H2', style: 'heading', spans: [plain(plan.report)], keepWithNext: true },
    note(plain(plan.reportAbout)),
    ...rules.map(({ said, claim }) => note(plain(plan.reportRule(said.number, claim)))),
    ...(cost ? [note(plain(plan.cost(cost.mean, cost.worst)))] : []),
    ...(uncovered.length > 0 ? [note(plain(plan.uncovered(uncovered.length, sightings.length)))] : []),
  ];
}

const examplesOf = ({ steps }: ProvedPlan): PlannedExample[] =>
  steps.flatMap((one) => (one.kind === 'rule' ? one.examples : []));

export const runningOrderClaims = (plan: ProvedPlan): Claim[] =>
  examplesOf(plan).flatMap(({ shown, alike }) =>
    [shown, ...(alike ? [alike.shown] : [])].flatMap(({ solutions }) => solutions.map(({ claim }) => claim)),
  );

export function runningOrder(
  { lesson, edition }: ProvedLesson,
  plan: ProvedPlan,
  rules: ProvedRules,
  making: Making,
): Sheet {
  const { plan: words, handout, language } = making.words;
  const title = plainText(lesson.title, making);
  return {
    title: `${title}: ${words.title}`,
    language,
    body: [
      { kind: 'text', role: 'H1', style: 'title', spans: [plain(words.title)], bookmark: words.title },
      note(plain(title)),
      note(plain(words.about(plan.minutes, examplesOf(plan).length))),
      note(
        { kind: 'strong', text: `${handout.hold}: ` },
        plain(handout.holdWords(lesson.colours.D, lesson.hold.front)),
      ),
      { kind: 'space', height: mm(2) },
      { kind: 'rule', weight: 'heavy' },
      { kind: 'space', height: mm(3) },
      ...plan.steps.flatMap((one) => stepBlocks(one, lesson, making)),
      ...report(rules, making),
      { kind: 'space', height: mm(4) },
      { kind: 'write-line', label: words.notes },
    ],
    foot: {
      left: [handout.foot(`${title} · ${words.title}`, edition), handout.proved(edition)],
      right: handout.page,
    },
  };
}
