/** Reading the rules of a lesson: conditions, advice, and where each stands. */

import { readTurns } from '../cube/notation.ts';
import type { TriggerList } from '../cube/triggers.ts';
import type { Turn } from '../cube/turns.ts';
import { readCondition, wordsFor } from '../rules/conditions.ts';
import type { Condition, Counsel } from '../rules/rules.ts';
import type { OwnFields } from '../steps/lesson-part.ts';
import type { RulePart } from '../steps/rule-part.ts';
import { joined, likelyWord, listed } from '../text/likely.ts';
import { formatProblems, tablesOf } from './format-problems.ts';
import type { LessonRule } from './lesson.ts';
import { proseAt, type Reader, tell, turnsAt } from './reader.ts';
import type { RuleFile } from './schema.ts';
import { isStructural } from './yaml-errors.ts';
import { type Path, spanAt } from './yaml-text.ts';

/** What is to be seen, at `path`; undefined if some of it could not be read. */
export function conditionsAt(r: Reader, path: Path, see: RuleFile['see'] = {}): Condition[] | undefined {
  const { rules } = r.format.step;
  if (!rules) return [];
  const found: Condition[] = [];
  let isWhole = true;
  for (const feature of Object.keys(rules.features)) {
    const text = see[feature];
    if (text === undefined) continue;
    const read = readCondition(rules, feature, text);
    if ('unknown' in read) {
      const words = wordsFor(rules, feature);
      const likely = likelyWord(read.unknown, words);
      const hint = likely ? `"${likely}" was likely meant` : `one of ${listed(words)}`;
      const message = `"${read.unknown}" is nothing that "${feature}" can be`;
      tell(r, [...path, feature], { code: 'value-unknown', message, hint });
      isWhole = false;
    } else if (read.values.length === 0) {
      const message = `"${text}" leaves nothing over`;
      const hint = 'name what is seen, not all that can be';
      tell(r, [...path, feature], { code: 'rule-unclear', message, hint });
      isWhole = false;
    } else found.push(read);
  }
  return isWhole ? found : undefined;
}

/** Letters of a word rather than of turns. */
const isWord = (text: string): boolean => /^[\p{L}\p{N} -]+$/u.test(text) && /\p{Ll}{2}/u.test(text);

/** Turns as they are written, or those of a trigger that is named. */
function doneAt(r: Reader, path: Path, text: string, triggers: TriggerList): readonly Turn[] | undefined {
  const word = text.trim();
  if (Object.hasOwn(triggers, word)) return triggers[word];
  if (!isWord(word) || readTurns(word).ok) return turnsAt(r, path, text);
  const names = Object.keys(triggers);
  const likely = likelyWord(word, names);
  const message = `"${word}" is neither turns nor a trigger`;
  const known = `the triggers are ${joined(names)}`;
  const hint = likely ? `"${likely}" was likely meant; ${known}` : `${known}; or write turns, as in R' F R F'`;
  return tell(r, path, { code: 'turns-unreadable', message, hint });
}

/** What every rule of a lesson is read with. */
export interface RuleReading {
  readonly rules: RulePart;
  readonly triggers: TriggerList;
}

/** The keys of the step that say what to do. */
export const ownOf = (written: object, { rules }: RuleReading): OwnFields =>
  Object.fromEntries(Object.keys(rules.fields).map((key) => [key, (written as OwnFields)[key]]));

/** What is to be done; undefined, and told, if it could not be understood. */
export function counselAt(
  r: Reader,
  path: Path,
  written: Pick<RuleFile, 'turn' | 'most'>,
  reading: RuleReading,
): Counsel | undefined {
  const { rules, triggers } = reading;
  const { turn, most } = written;
  const own = ownOf(written, reading);
  if (!turn) {
    return rules.read(own, most, {
      turns: (text, ...below) => doneAt(r, [...path, ...below], text, triggers),
      tell: (told, ...below) => tell(r, [...path, ...below], told),
    });
  }
  const stray = Object.keys(own).find((key) => own[key] !== undefined);
  if (!stray) return { turnsTheCube: true, most };
  const message = `a rule that turns the cube has no "${stray}": what to do then is said by the other rules`;
  return tell(r, [...path, stray], { code: 'rule-unclear', message, hint: `take ${stray} out` });
}

function ruleAt(r: Reader, path: Path, number: number, one: unknown, reading: RuleReading): LessonRule | undefined {
  const parsed = r.format.rule!.safeParse(one);
  if (!parsed.success) {
    r.problems.push(...formatProblems(r.yaml, parsed.error, path, tablesOf(r.format)));
    return undefined;
  }
  const when = conditionsAt(r, [...path, 'see'], parsed.data.see);
  const counsel = counselAt(r, path, parsed.data, reading);
  const say = proseAt(r, [...path, 'say'], parsed.data.say);
  return when && counsel && { number, rule: { when, counsel }, say, span: spanAt(r.yaml, path) };
}

/**
 * The rules, numbered as they stand in the file. None if one of them could not be understood: what applies when depends
 * on all that stand before.
 */
export function rulesAt(r: Reader, written: readonly unknown[], triggers: TriggerList): LessonRule[] {
  const { rules } = r.format.step;
  if (!rules) return [];
  const read = written.map((one, i) => ruleAt(r, ['rules', i], i + 1, one, { rules, triggers }));
  const whole = read.filter((rule) => rule !== undefined);
  return whole.length === read.length && !r.yaml.problems.some(isStructural) ? whole : [];
}
