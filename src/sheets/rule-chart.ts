/** ProvedLesson -> the chart of its rules: see this, turn this face, then you have that; exceptions beside their rule. */
import { afterTurns } from '../cube/cube.ts';
import { writeCondition } from '../cube/teach/conditions.ts';
import { narrowed } from '../cube/teach/narrow.ts';
import { type Condition, turnsTheCube } from '../cube/teach/rules.ts';
import { type Block, type ColumnsBlock, mm, type Sheet, type Span } from '../layout/blocks.ts';
import type { Claim } from '../lesson/claim.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { ProvedLessonRule, ProvedRules } from '../lesson/prove-rules.ts';
import type { ProvedCase } from '../lesson/proved.ts';
import { drawCase } from '../svg/draw-case.ts';
import { openViewLegend } from '../svg/open-view-legend.ts';
import { casePicture, solvedGroups } from './panel.ts';
import { lineSpans, type Making, noteBlocks, plainText, printedTurns } from './phrases.ts';
import { aimText, conditionSpans, counselSpans, wholeOf } from './rule-words.ts';
import { note, plain } from './texts.ts';

const PICTURE = mm(26);
const AFTER = mm(19);
const LEGEND = mm(19);
const GUTTER = mm(4);
const NARROWEST = mm(42);
/** More exceptions than these make no chart: they are counted. */
const MOST_EXCEPTIONS = 6;

/** Rules that follow each other and have a condition in common stand under it: it is asked once. */
interface Branch {
  readonly shared: Condition | undefined;
  readonly rules: readonly ProvedLessonRule[];
}

function branchesOf(rules: readonly ProvedLessonRule[]): Branch[] {
  const texts = rules.map((rule) => wholeOf(rule).map(writeCondition));
  const branches: Branch[] = [];
  for (let from = 0; from < rules.length; ) {
    // The condition that reaches furthest; of those the one that is written first.
    const reach = (text: string): number => {
      let to = from;
      while (texts[to]?.includes(text)) to++;
      return to;
    };
    const best = texts[from]!.reduce<string | undefined>((a, b) => (a && reach(a) >= reach(b) ? a : b), undefined);
    const to = best ? reach(best) : from + 1;
    const isShared = best !== undefined && to > from + 1;
    const shared = isShared ? wholeOf(rules[from]!).find((c) => writeCondition(c) === best) : undefined;
    branches.push({ shared, rules: rules.slice(from, shared ? to : from + 1) });
    from = shared ? to : from + 1;
  }
  return branches;
}

function exceptionBlocks({ exceptions, proved }: ProvedLessonRule, lesson: Lesson, making: Making): Block[] {
  if (exceptions.length === 0) return [];
  const { rules, handout } = making.words;
  const more = narrowed(proved.sightings, (i) => proved.done[i] !== undefined);
  const mend = more && plainOf(conditionSpans(more.conditions, lesson.colours.D, making));
  return [
    {
      kind: 'text',
      role: 'P',
      style: 'note',
      spans: [{ kind: 'strong', text: rules.exceptions(exceptions.length) }],
      keepWithNext: true,
    },
    {
      kind: 'grid',
      columns: 3,
      least: mm(40),
      gap: GUTTER,
      rowGap: mm(2),
      cells: exceptions.slice(0, MOST_EXCEPTIONS).map((one) => ({
        kind: 'stack',
        keep: true,
        gap: mm(0.5),
        children: [
          { kind: 'figure', scene: casePicture(one, making), width: AFTER },
          {
            kind: 'turns',
            label: handout.setUp,
            groups: [{ turns: printedTurns(one.case.setup, making) }],
          },
          {
            kind: 'turns',
            label: handout.solve,
            groups: solvedGroups(one, making),
            ring: ringOf(one, making),
            claims: one.solutions.map(({ claim }) => claim.id),
          },
        ],
      })),
    },
    ...(exceptions.length > MOST_EXCEPTIONS
      ? [note(plain(rules.exceptionsMore(exceptions.length - MOST_EXCEPTIONS)))]
      : []),
    ...(mend ? [note(plain(rules.exactWith(mend.charAt(0).toLowerCase() + mend.slice(1))))] : []),
    { kind: 'space', height: mm(3) },
  ];
}

const plainOf = (spans: readonly Span[]): string => spans.map((span) => ('text' in span ? span.text : '')).join('');

/** The pair as it stands when the advice has been followed, before the rest. */
function standsThen({ said, example }: ProvedLessonRule, making: Making): Block | undefined {
  const phases = example?.solutions[0]?.phases?.phases;
  if (!example || !phases || phases.length < 2) return undefined;
  const turns = turnsTheCube(said.rule.counsel) ? phases[0]!.turns : phases.slice(0, -1).flatMap((p) => p.turns);
  const scene = drawCase(afterTurns(example.cube, turns), example.goal, 'open', {
    colours: example.case.colours,
    ink: making.ink,
    words: making.words,
  });
  return { kind: 'figure', scene, width: AFTER };
}

function row(rule: ProvedLessonRule, shared: Condition | undefined, lesson: Lesson, making: Making): Block {
  const { said, proved, claim, example } = rule;
  const { rules, handout } = making.words;
  const own = wholeOf(rule).filter((c) => !shared || writeCondition(c) !== writeCondition(shared));
  const labelled = (label: string, ...spans: Span[]): Block => ({
    kind: 'text',
    role: 'P',
    style: 'note',
    spans: [{ kind: 'plain', text: `${label}\u00a0\u00a0`, ink: 'grey' }, ...spans],
  });
  const then = standsThen(rule, making);
  const text: Block[] = [
    {
      kind: 'text',
      role: 'H3',
      style: 'panel',
      spans: [
        { kind: 'plain', text: `${said.number}\u00a0\u00a0`, ink: 'grey' },
        ...conditionSpans(own, lesson.colours.D, making),
      ],
      origin: said.span,
    },
    labelled(rules.turn, ...counselSpans(said.rule, lesson, making)),
    labelled(
      rules.stands,
      { kind: 'strong', text: aimText(said.rule, lesson, making) },
      plain(` · ${rules.holds(proved.holds, proved.sightings.length, claim.most)}`),
    ),
    ...noteBlocks(said.say, making),
  ];
  const tries: Block[] = example
    ? [
        { kind: 'turns', label: rules.try, groups: [{ turns: printedTurns(example.case.setup, making) }] },
        {
          kind: 'turns',
          label: handout.solve,
          groups: solvedGroups(example, making),
          ring: ringOf(example, making),
          claims: [claim.id, ...example.solutions.map(({ claim: c }) => c.id)],
        },
      ]
    : [];
  const none: Block = { kind: 'space', height: 0 };
  const before: Block = example ? { kind: 'figure', scene: casePicture(example, making), width: PICTURE } : none;
  const after = then ?? none;
  const seen: Block = { kind: 'stack', gap: mm(0.8), children: text };
  const tried: Block = { kind: 'stack', gap: 0, children: tries };
  return {
    kind: 'stack',
    keep: true,
    line: 'above',
    gap: mm(1.6),
    claims: [claim.id],
    origin: said.span,
    children: [
      {
        ...beside([PICTURE, before], [1.35, seen], [AFTER, after], [1, tried]),
        fallback: {
          tallerThan: mm(200),
          narrowerThan: NARROWEST,
          instead: {
            kind: 'stack',
            gap: mm(1.6),
            children: [beside([PICTURE, before], [1, seen]), beside([PICTURE, after], [1, tried])],
          },
        },
      },
    ],
  };
}

/** Columns of a width in points, or of a small share of what is left. */
const beside = (...columns: readonly (readonly [number, Block])[]): ColumnsBlock => ({
  kind: 'columns',
  gap: GUTTER,
  columns: columns.map(([width, child]) => ({ width: width < 2 ? { share: width } : width, child })),
});

function ringOf({ solutions }: ProvedCase, { words: { handout } }: Making) {
  const { length } = solutions[0]!.claim;
  return { text: String(length), spoken: handout.turns(length) };
}

function branch({ shared, rules }: Branch, lesson: Lesson, making: Making): Block[] {
  const heading: Block[] = shared
    ? [
        {
          kind: 'text',
          role: 'H2',
          style: 'heading',
          spans: [...conditionSpans([shared], lesson.colours.D, making), plain(' …')],
          keepWithNext: true,
        },
        { kind: 'space', height: mm(1.5) },
      ]
    : [];
  return [
    ...heading,
    ...rules.flatMap((rule): Block[] => [
      row(rule, shared, lesson, making),
      { kind: 'space', height: mm(3) },
      ...exceptionBlocks(rule, lesson, making),
    ]),
  ];
}

/** Claims that may stand on the chart: of the rules, of an example for each, and of exceptions. */
export const ruleChartClaims = ({ rules }: ProvedRules): Claim[] =>
  rules.flatMap(({ claim, example, exceptions }) => [
    claim,
    ...[...(example ? [example] : []), ...exceptions].flatMap((one: ProvedCase) => one.solutions.map((s) => s.claim)),
  ]);

export function ruleChart({ lesson, edition }: ProvedLesson, { table, rules }: ProvedRules, making: Making): Sheet {
  const { rules: words, handout, language } = making.words;
  const title = plainText(lesson.title, making);
  const isExact = rules.every(({ claim }) => claim.exact) && table.uncovered.length === 0;
  const above = [lesson.club, lesson.course].filter((line) => line !== undefined);
  return {
    title: `${title}: ${words.title}`,
    language,
    body: [
      {
        kind: 'columns',
        gap: GUTTER,
        columns: [
          {
            width: { share: 1 },
            child: {
              kind: 'stack',
              gap: 0,
              children: [
                ...(above.length > 0
                  ? [
                      {
                        kind: 'text' as const,
                        role: 'P' as const,
                        style: 'label' as const,
                        spans: above.flatMap((line, i) => [
                          ...(i > 0 ? [plain(' · ')] : []),
                          ...lineSpans(line, making),
                        ]),
                      },
                    ]
                  : []),
                { kind: 'text', role: 'H1', style: 'title', spans: [plain(words.title)], bookmark: words.title },
                note(plain(`${title} · ${words.about(rules.length, isExact)}`)),
                note(
                  { kind: 'strong', text: `${handout.hold}: ` },
                  plain(handout.holdWords(lesson.colours.D, lesson.hold.front)),
                ),
              ],
            },
          },
          { width: LEGEND, child: { kind: 'figure', scene: openViewLegend(making.words, making.ink), width: LEGEND } },
        ],
      },
      { kind: 'space', height: mm(2) },
      { kind: 'rule', weight: 'heavy' },
      { kind: 'space', height: mm(3) },
      ...branchesOf(rules).flatMap((one) => branch(one, lesson, making)),
    ],
    foot: {
      left: [handout.foot(`${title} · ${words.title}`, edition), handout.proved(edition)],
      right: handout.page,
    },
  };
}
