/** Conditions and counsels of rules as spans and words of a page. */

import { type Condition, type Rule, turnsTheCube } from '../cube/teach/rules.ts';
import { triggerIn } from '../cube/teach/triggers.ts';
import { writeTurns } from '../cube/turns.ts';
import type { Span } from '../layout/blocks.ts';
import type { Lesson } from '../lesson/lesson.ts';
import { triggerSaid } from '../lesson/phase-claims.ts';
import type { ProvedLessonRule } from '../lesson/prove-rules.ts';
import type { Colour, Said } from '../words/words.ts';
import { colourSpan, type Making, printedTurns } from './phrases.ts';
import { typographic } from './typographic.ts';

/** The first letter of a sentence is a capital. */
const capital = (said: readonly Said[]): Said[] =>
  said.map((one, i) => (i === 0 && typeof one === 'string' ? one.charAt(0).toUpperCase() + one.slice(1) : one));

export const saidSpans = (said: readonly Said[], making: Making, strong = false): Span[] =>
  said.map((one, i) =>
    typeof one === 'string'
      ? { kind: strong ? 'strong' : 'plain', text: typographic(one, i > 0) }
      : colourSpan({ colour: one.colour, capital: i === 0, strong }, making),
  );

/** All that a rule must see to stand alone: its own conditions and those that earlier rules leave it. */
export const wholeOf = ({ said, implied }: ProvedLessonRule): readonly Condition[] => [
  ...said.rule.when,
  ...(implied ?? []),
];

export const conditionSpans = (
  conditions: readonly Condition[],
  cross: Colour,
  making: Making,
  isStrong = true,
): Span[] => {
  const { rules } = making.words;
  if (conditions.length === 0) return [{ kind: 'strong', text: capital([rules.otherwise]).join('') }];
  return conditions.flatMap(({ feature, values }, i): Span[] => {
    const said = rules.condition(feature, values, cross);
    const spans = saidSpans(i === 0 ? capital(said) : said, making, isStrong);
    return i === 0 ? spans : [{ kind: 'plain', text: ', ' }, ...spans];
  });
};

export const questionSpans = ({ feature }: Condition, lesson: Lesson, making: Making): Span[] =>
  saidSpans(making.words.rules.question(feature, lesson.colours.D), making);

const strong = (text: string): Span => ({ kind: 'strong', text: typographic(text, false) });

/** What to do, as a sentence without its full stop. */
export function counselSpans({ counsel }: Rule, lesson: Lesson, making: Making): Span[] {
  const { rules } = making.words;
  if (turnsTheCube(counsel)) return [strong(rules.turnTheCube)];
  const { piece, lift, way, by } = counsel;
  if (!by) return [strong(lift.length === 0 ? rules.nothing : rules.lift(piece, lift, way))];
  const trigger = triggerIn(by, lesson.triggers);
  const isNamed = trigger && !trigger.inside;
  const [before, after] = rules.by(isNamed ? triggerSaid(trigger) : undefined);
  return [strong(before), { kind: 'turns', turns: printedTurns(by, making) }, strong(after)];
}

export function aimText({ counsel }: Rule, lesson: Lesson, { words: { rules } }: Making): string {
  if (turnsTheCube(counsel)) return rules.lookAgain;
  const { aim } = counsel;
  switch (aim.kind) {
    case 'joined':
      return rules.joined;
    case 'split':
      return rules.split;
    case 'family':
      return rules.family(aim.family);
    case 'case':
      return rules.theCase;
    case 'insert':
      return rules.insert(writeTurns(aim.turns, lesson.wide));
  }
}
