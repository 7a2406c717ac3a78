/** A leaf of the chart: what it looks like, what to turn, what stands then; its exceptions below. */

import { afterTurns } from '../cube/cube.ts';
import { type Block, type ColumnsBlock, mm, type Pt, type Span } from '../layout/blocks.ts';
import type { ProvedLessonRule } from '../lesson/prove-rules.ts';
import type { ShownExample, ShownException } from '../lesson/rule-examples.ts';
import { drawCase } from '../svg/draw.ts';
import type { Scene } from '../svg/scene.ts';
import { columns, figure, grid, h3, stack } from './blocks.ts';
import { casePicture } from './panel.ts';
import { noteBlocks } from './phrases.ts';
import { adviceSpans, howText, type RuleTexts, statementText, textSpans, thenText } from './rule-texts.ts';
import { setUpLine, smallCase, solutionLine } from './shown-case.ts';
import { grey, line, note, plain } from './texts.ts';

const GAP = mm(4);
/** Beside the pictures; else it stands below them. */
const NARROWEST_TEXT = mm(45);
const TALLEST = mm(100);
const NARROWEST_EXCEPTION = mm(70);
/** More exceptions than these make no chart: they are counted. */
export const MOST_EXCEPTIONS = 4;

/** How the cube stands once the advice has been followed, as far as it goes. */
function pictureAfter({ done, shown }: ShownExample, { making, lesson }: RuleTexts): Scene {
  const turns = done.first.length > 0 ? done.first : done.takeOut;
  return drawCase(afterTurns(shown.subject.cube, turns), shown.subject, 'open', { ...making, colours: lesson.colours });
}

function exceptionCell({ shown, alike, of }: ShownException, texts: RuleTexts): Block {
  const { exceptions } = texts.making.words.rules;
  const below = alike > 1 ? [line('label', ...textSpans(exceptions.alike(alike, of), texts))] : [];
  return smallCase(shown, texts.making, { below });
}

function exceptionBlocks({ exceptions, exactIf, proved }: ProvedLessonRule, texts: RuleTexts): Block[] {
  if (exceptions.length === 0) return [];
  const words = texts.making.words.rules.exceptions;
  const further = exceptions.length - MOST_EXCEPTIONS;
  const after = [
    ...(further > 0 ? [words.more(further)] : []),
    ...(exactIf.length > 0
      ? [
          words.exactIf(
            exactIf.map((c) => statementText(c, texts)),
            proved.isEveryWay,
          ),
        ]
      : []),
  ].join(' ');
  const cells = exceptions.slice(0, MOST_EXCEPTIONS).map((one) => exceptionCell(one, texts));
  return [
    { ...note(...textSpans(words.heading, texts, { strong: true })), keepWithNext: true },
    grid(cells, { columns: 2, least: NARROWEST_EXCEPTION, gap: GAP, rowGap: mm(2) }),
    ...(after ? [note(...textSpans(after, texts))] : []),
  ];
}

const MANY_LETTERS = 300;

/** Whether it may be taller than its pictures and a few lines; most are not, and need not be measured twice. */
export function isLong({ said, exceptions }: ProvedLessonRule): boolean {
  const letters = said.say
    .flatMap(({ phrases }) => phrases)
    .reduce((sum, phrase) => sum + ('text' in phrase ? phrase.text.length : 10), 0);
  return exceptions.length > 0 || said.say.length > 3 || letters > MANY_LETTERS;
}

function leafText({ said, proved, example }: ProvedLessonRule, texts: RuleTexts): Block {
  const { making } = texts;
  const { rules } = making.words;
  const { counsel } = said.rule;
  const how = howText(counsel, texts);
  const remarks = noteBlocks(said.say, making);
  // A single paragraph goes on in the line.
  const only = said.say.length === 1 && said.say[0]!.kind === 'paragraph' ? remarks[0] : undefined;
  const sentences: Span[] = [
    ...textSpans(rules.holds(proved.holds, proved.sightings.length, proved.isEveryWay), texts, { strong: true }),
    ...textSpans(rules.most(counsel.most), texts),
    ...(how ? textSpans(` ${how}`, texts) : []),
    ...(only ? [plain(' '), ...only.spans] : []),
  ];
  return stack(
    0,
    h3([grey(`${said.number}\u00a0\u00a0`), ...adviceSpans(counsel, texts)], { origin: said.span }),
    note(...sentences),
    ...(only ? [] : remarks),
    ...(example ? [setUpLine(example.shown.case.setup, making), ...solutionLine(example.shown, making)] : []),
  );
}

/** The case, the words, and the case as it stands then. */
function besidePictures(rule: ProvedLessonRule, example: ShownExample, texts: RuleTexts, width: Pt): ColumnsBlock {
  const words = leafText(rule, texts);
  const then = textSpans(`\u2192 ${thenText(rule.said.rule.counsel, texts)}`, texts, { strong: true });
  const before = [width, figure(casePicture(example.shown, texts.making), width)] as const;
  const caption: Block = { ...note(...then), role: 'Caption' };
  const after = [width, stack(mm(0.5), figure(pictureAfter(example, texts), width), caption)] as const;
  return {
    ...columns(GAP, before, ['rest', words], after),
    fallback: {
      tallerThan: isLong(rule) ? TALLEST : Number.POSITIVE_INFINITY,
      narrowerThan: NARROWEST_TEXT,
      instead: stack(mm(1), columns(GAP, before, after), words),
    },
  };
}

/** `width`: of its pictures. */
export const ruleLeaf = (rule: ProvedLessonRule, texts: RuleTexts, width: Pt): Block => ({
  ...stack(
    mm(2),
    rule.example ? besidePictures(rule, rule.example, texts, width) : leafText(rule, texts),
    ...exceptionBlocks(rule, texts),
  ),
  claims: [rule.claim.id],
});
