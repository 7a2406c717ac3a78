/** Reading the rules of a lesson: conditions, advice, and where each stands. */

import type { Face } from '../cube/faces.ts';
import { readTurns } from '../cube/notation.ts';
import type { TriggerList } from '../cube/triggers.ts';
import type { Turn } from '../cube/turns.ts';
import { readCondition, wordsFor } from '../rules/conditions.ts';
import type { Condition, Counsel } from '../rules/rules.ts';
import { readAddress } from '../steps/pair/address.ts';
import type { Advice, Aim } from '../steps/pair/advice.ts';
import { FAMILIES } from '../steps/pair/cases.ts';
import { likelyFamily } from '../steps/pair/family-words.ts';
import { FEATURE_NAMES } from '../steps/pair/features.ts';
import { joined, likelyWord, listed } from '../text/likely.ts';
import { formatProblems, tablesOf } from './format-problems.ts';
import type { LessonRule } from './lesson.ts';
import { proseAt, type Reader, turnsAt } from './reader.ts';
import { type RuleFile, ruleSchema } from './schema.ts';
import { isStructural } from './yaml-errors.ts';
import { type Path, spanAt } from './yaml-text.ts';

const LIFTING: readonly Face[] = ['R', 'L', 'F', 'B'];

/** What is to be seen, at `path`; undefined if some of it could not be read. */
export function conditionsAt(r: Reader, path: Path, see: RuleFile['see'] = {}): Condition[] | undefined {
  const found: Condition[] = [];
  let isWhole = true;
  for (const feature of FEATURE_NAMES) {
    const text = see[feature];
    if (text === undefined) continue;
    const read = readCondition(feature, text);
    if ('unknown' in read) {
      const words = wordsFor(feature);
      const likely = likelyWord(read.unknown, words);
      const hint = likely ? `"${likely}" was likely meant` : `one of ${listed(words)}`;
      const message = `"${read.unknown}" is nothing that "${feature}" can be`;
      r.problems.push({ code: 'value-unknown', span: spanAt(r.yaml, [...path, feature]), message, hint });
      isWhole = false;
    } else if (read.values.length === 0) {
      const message = `"${text}" leaves nothing over`;
      const hint = 'name what is seen, not all that can be';
      r.problems.push({ code: 'rule-unclear', span: spanAt(r.yaml, [...path, feature]), message, hint });
      isWhole = false;
    } else found.push(read);
  }
  return isWhole ? found : undefined;
}

function liftAt(r: Reader, path: Path, text = 'any'): readonly Face[] | undefined {
  const said = text.trim();
  if (/^any( face)?$/.test(said)) return LIFTING;
  if (said === 'none') return [];
  const faces = said.split(/\s+or\s+|\s*,\s*/);
  const known = LIFTING.filter((face) => faces.includes(face));
  if (faces.every((face) => LIFTING.includes(face as Face))) return known;
  const message = `"${text}" names no faces that lift`;
  const hint = 'write R or L, F or B, one of them alone, any, or none';
  r.problems.push({ code: 'value-unknown', span: spanAt(r.yaml, path), message, hint });
  return undefined;
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
  r.problems.push({ code: 'turns-unreadable', span: spanAt(r.yaml, path), message, hint });
  return undefined;
}

function aimAt(r: Reader, path: Path, written: NonNullable<RuleFile['aim']>, triggers: TriggerList): Aim | undefined {
  if (typeof written !== 'string') {
    const turns = doneAt(r, [...path, 'insert'], written.insert, triggers);
    return turns && { kind: 'insert', turns };
  }
  const said = written.trim();
  if (said === 'joined' || said === 'split') return { kind: said };
  const family = FAMILIES.find((f) => f === said);
  if (family) return { kind: 'family', family };
  const address = readAddress(said);
  if (address) return { kind: 'case', case: address };
  const message = `"${written}" is nothing that a rule can aim at`;
  const hint =
    likelyFamily(said, ['joined', 'split']) ?? 'joined, split, a family such as top-top, or a case by its address';
  r.problems.push({ code: 'value-unknown', span: spanAt(r.yaml, path), message, hint });
  return undefined;
}

/** Keys that say how to lift, of which a rule that turns the cube has none. */
const ADVICE_KEYS = ['lift', 'with', 'how', 'by', 'aim'] as const;

function counselAt(r: Reader, path: Path, written: RuleFile, triggers: TriggerList): Counsel | undefined {
  const { turn, most, lift: piece, how: way } = written;
  if (turn) {
    const strays = ADVICE_KEYS.find((key) => written[key] !== undefined);
    if (!strays) return { turnsTheCube: true, most };
    const message = `a rule that turns the cube has no "${strays}": what to do then is said by the other rules`;
    const span = spanAt(r.yaml, [...path, strays]);
    r.problems.push({ code: 'rule-unclear', span, message, hint: `take ${strays} out` });
    return undefined;
  }
  if (written.aim === undefined) {
    const message = 'a rule needs the key "aim", or "turn" in its place';
    r.problems.push({ code: 'key-missing', span: spanAt(r.yaml, path), message, hint: 'add aim: split' });
    return undefined;
  }
  const lift = liftAt(r, [...path, 'with'], written.with);
  const aim = aimAt(r, [...path, 'aim'], written.aim, triggers);
  const by = written.by === undefined ? undefined : doneAt(r, [...path, 'by'], written.by, triggers);
  if (!lift || !aim || (written.by !== undefined && !by)) return undefined;
  if (by?.some((t) => t.kind !== 'face' || t.letter === 'D')) {
    const message = 'a rule is done by turns of U, R, L, F and B';
    r.problems.push({
      code: 'rule-unclear',
      span: spanAt(r.yaml, [...path, 'by']),
      message,
      hint: 'write it with these',
    });
    return undefined;
  }
  const advice: Advice = { aim, lift, piece, way, by, most };
  return advice;
}

function ruleAt(r: Reader, path: Path, number: number, one: unknown, triggers: TriggerList): LessonRule | undefined {
  const parsed = ruleSchema.safeParse(one);
  if (!parsed.success) {
    r.problems.push(...formatProblems(r.yaml, parsed.error, path, tablesOf(r.format)));
    return undefined;
  }
  const when = conditionsAt(r, [...path, 'see'], parsed.data.see);
  const counsel = counselAt(r, path, parsed.data, triggers);
  const say = proseAt(r, [...path, 'say'], parsed.data.say);
  return when && counsel && { number, rule: { when, counsel }, say, span: spanAt(r.yaml, path) };
}

/**
 * The rules, numbered as they stand in the file. None if one of them could not be understood: what applies when depends
 * on all that stand before.
 */
export function rulesAt(r: Reader, written: readonly unknown[], triggers: TriggerList): LessonRule[] {
  const read = written.map((one, i) => ruleAt(r, ['rules', i], i + 1, one, triggers));
  const rules = read.filter((rule) => rule !== undefined);
  return rules.length === read.length && !r.yaml.problems.some(isStructural) ? rules : [];
}
