/** Rules in the words of a sheet: questions, statements, advice, with colours and turns set as everywhere. */
import { FACES } from '../cube/faces.ts';
import { triggerIn } from '../cube/triggers.ts';
import type { Turn } from '../cube/turns.ts';
import type { Span } from '../layout/blocks.ts';
import type { Lesson } from '../lesson/lesson.ts';
import { triggerSaid } from '../lesson/phase-claims.ts';
import type { ProvedLessonRule } from '../lesson/prove-rules.ts';
import { type Condition, type Counsel, turnsTheCube } from '../rules/rules.ts';
import type { Answer, Question } from '../rules/tree.ts';
import { FEATURE_NAMES } from '../steps/pair/features.ts';
import type { FeatureWords, Lifted } from '../words/rule-words.ts';
import type { Making } from './making.ts';
import { colourSpan, printedTurns } from './phrases.ts';
import { typographic } from './typographic.ts';

/** What the texts of one lesson's rules have in common. */
export interface RuleTexts {
  readonly lesson: Lesson;
  readonly making: Making;
}

type Token = 'cross' | 'Cross' | 'turns';

/** A text of words with the cross colour, and turns, put in. */
export function textSpans(
  text: string,
  { lesson, making }: RuleTexts,
  { turns = [], strong = false }: { readonly turns?: readonly Turn[]; readonly strong?: boolean } = {},
): Span[] {
  const parts = text.split(/\{(cross|Cross|turns)\}/);
  return parts.flatMap((part, i): Span[] => {
    if (i % 2 === 0) {
      return part === '' ? [] : [{ kind: strong ? 'strong' : 'plain', text: typographic(part, i > 0) }];
    }
    const token = part as Token;
    if (token === 'turns') return [{ kind: 'turns', turns: printedTurns(turns, making) }];
    return [colourSpan({ colour: lesson.colours.D, capital: token === 'Cross', strong }, making)];
  });
}

const whereabouts = ({ families }: Lesson, piece: 'corner' | 'edge'): Set<string> =>
  new Set(families.map((family) => family.split('-')[piece === 'corner' ? 0 : 1]!));

/** Pieces that are in slots in all families have words of their own for some features. */
export function wordsOf({ feature }: Pick<Condition, 'feature'>, { lesson, making }: RuleTexts): FeatureWords {
  const { features, inSlots } = making.words.rules;
  const named = (['corner', 'edge'] as const).filter((piece) => feature.includes(piece));
  const areInSlots = named.every((piece) => !whereabouts(lesson, piece).has('top'));
  return (areInSlots ? inSlots[feature] : undefined) ?? features[feature];
}

export function answerText(condition: Condition, texts: RuleTexts): string {
  const { answers } = wordsOf(condition, texts);
  const { values } = condition;
  return answers[values.join(' or ')] ?? texts.making.words.rules.or(values.map((value) => answers[value] ?? value));
}

/** Without its stop, beginning small. */
export const statementText = (condition: Condition, texts: RuleTexts): string =>
  wordsOf(condition, texts).says(answerText(condition, texts));

/** What is asked at a branch of the tree. */
export const questionText = (asks: Question['asks'], texts: RuleTexts): string =>
  'feature' in asks
    ? wordsOf(asks, texts).ask
    : texts.making.words.rules.together(asks.together.map((condition) => statementText(condition, texts)));

/** An answer to it. */
export const branchText = (answer: Answer, texts: RuleTexts): string =>
  answer.kind === 'is' ? answerText(answer.condition, texts) : texts.making.words.rules[answer.kind];

/** All that a rule must see to stand alone, as one sentence without its stop; undefined if it says nothing by itself. */
export function wholeText({ said, implied }: ProvedLessonRule, texts: RuleTexts): string | undefined {
  const whole = [...said.rule.when, ...(implied ?? [])].sort(byFeature);
  return implied && whole.length > 0
    ? texts.making.words.rules.all(whole.map((condition) => statementText(condition, texts)))
    : undefined;
}

/** Where the pieces are and face first, then what is compared. */
const byFeature = (a: Condition, b: Condition): number =>
  FEATURE_NAMES.indexOf(a.feature) - FEATURE_NAMES.indexOf(b.feature);

/** What to turn, in one sentence without its stop. */
export function adviceSpans(counsel: Counsel, texts: RuleTexts): Span[] {
  const { rules } = texts.making.words;
  const strong = { strong: true };
  if (turnsTheCube(counsel)) return textSpans(rules.turnTheCube, texts, strong);
  const { by, lift } = counsel;
  if (by) {
    const trigger = triggerIn(by, texts.lesson.triggers);
    const name = trigger && !trigger.inside ? triggerSaid(trigger) : undefined;
    return textSpans(rules.by(name), texts, { ...strong, turns: by });
  }
  if (lift.length === 0) return textSpans(rules.noLift, texts, strong);
  const faces = FACES.filter((face) => lift.includes(face));
  return textSpans(rules.lift(liftedOf(counsel, texts), faces), texts, strong);
}

/** How to turn it, as a sentence; undefined where any way will do. */
export function howText(counsel: Counsel, texts: RuleTexts): string | undefined {
  const { rules } = texts.making.words;
  if (turnsTheCube(counsel)) return rules.lookAgain;
  if (counsel.by) return rules.byMeans;
  return counsel.way && rules.how(counsel.way, liftedOf(counsel, texts));
}

/** Which piece comes up: the one that the rule names, or the one that is away in all families. */
function liftedOf({ piece }: Exclude<Counsel, { turnsTheCube: true }>, { lesson }: RuleTexts): Lifted {
  if (piece) return piece;
  const away = (['corner', 'edge'] as const).filter((one) => {
    const where = whereabouts(lesson, one);
    return where.size === 1 && where.has('away');
  });
  return away.length === 1 ? away[0]! : 'piece';
}

/** What stands after the advice, in a word or two. */
export function thenText(counsel: Counsel, { making: { words } }: RuleTexts): string {
  const { leaves } = words.rules;
  if (turnsTheCube(counsel)) return leaves.turned;
  const { aim } = counsel;
  if (aim.kind !== 'family') return leaves[aim.kind];
  const [corner, edge] = aim.family.split('-') as ['home' | 'top' | 'away', 'home' | 'top' | 'away'];
  return leaves.family(corner, edge);
}
