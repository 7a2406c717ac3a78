/** Submissions against items: a row out for each row in. */

import { readTurns } from '../cube/notation.ts';
import { prove } from '../cube/solves.ts';
import { type Turn, writeTurns } from '../cube/turns.ts';
import type { Words } from '../words/words.ts';
import { type ChoiceItem, type Item, type Items, nameKey, type SolutionItem } from './items.ts';
import { LONGEST_ANSWER, MOST_TURNS_MENDED } from './limits.ts';
import { isFormOfChoice, markChoice } from './mark-choice.ts';
import { nearMisses } from './near-misses.ts';
import type { Owners } from './owners.ts';
import { resolve } from './resolve.ts';
import { likelyMeant } from './spelling.ts';
import {
  isRight,
  isTimes,
  type MarkedRow,
  type NearMiss,
  pointsOf,
  type SmallLetters,
  type Submission,
  type Verdict,
} from './submission.ts';
import { type Judgement, judge } from './verdict.ts';
import type { Answered } from './which-paper.ts';

export interface MarkingOptions {
  readonly smallLetters: SmallLetters;
  readonly words: Words;
  /** Whose paper is whose, where a roster says it. */
  readonly owners?: Owners | undefined;
}

/** What the verdict adds to a submission. Made in one order of keys, so that all rows are written alike as JSON. */
type Marked = Omit<MarkedRow, keyof Submission | 'points' | 'matched'>;

const plain = (verdict: Verdict, says: string): Marked => ({
  verdict,
  length: null,
  over: null,
  broken: [],
  nearMisses: [],
  slip: null,
  says,
});

/** Nothing written, a sign for nothing, or words that say so. */
const isEmpty = (answer: string, { nothing }: Words['marking']): boolean =>
  /^[\s\-–—−?.…]*$/.test(answer) ||
  (answer.length < 40 &&
    nothing.includes(
      answer
        .toLowerCase()
        .replaceAll(/['’′]/g, '')
        .replaceAll(/[^\p{L}]+/gu, ' ')
        .trim(),
    ));

/** Such an answer is read by nothing: neither as turns nor as a letter. */
const isTooLong = (answer: string): boolean => answer.length > LONGEST_ANSWER;

const joinedSays = (...parts: readonly (string | undefined)[]): string => parts.filter((p) => p).join(' ');

function verdictSays({ verdict, length, over, failed }: Judgement, words: Words): string {
  if (failed) return failed.says(words);
  const { solves, solvesTurned } = words.marking;
  return (verdict === 'solves-turned' ? solvesTurned : solves)(length, over);
}

/** The small letters of an answer as capitals; undefined where it has none. */
function capitalsOf(answer: string, turns: readonly Turn[], smallWide: boolean): Turn[] | undefined {
  if (!smallWide) return undefined;
  const reading = readTurns(answer.replaceAll(/[udlrfb]/g, (letter) => letter.toUpperCase()));
  // A capital letter before w is a wide turn either way.
  return reading.ok && writeTurns(reading.turns) !== writeTurns(turns) ? reading.turns : undefined;
}

function markTurns(
  item: SolutionItem,
  answer: string,
  neighbours: readonly SolutionItem[],
  { smallLetters, words: allWords }: MarkingOptions,
): Marked {
  const words = allWords.marking;
  const reading = readTurns(answer);
  if (!reading.ok) return unreadable(item, answer, reading, neighbours, words);
  const { turns, smallWide } = reading;
  const capitals = capitalsOf(answer, turns, smallWide);
  const asWide = judge(item, turns);
  const asOuter = capitals && !isRight(asWide.verdict) ? judge(item, capitals) : undefined;
  const outerSolves = asOuter !== undefined && isRight(asOuter.verdict);
  const counts = outerSolves && smallLetters === 'outer' ? asOuter : asWide;
  const { verdict, length, over, broken, baseLastWhole } = counts;
  const says = verdictSays(counts, allWords);
  const common = { verdict, length, over: over ?? null, broken };
  if (isRight(verdict)) {
    const beats = length < item.key.length ? words.beatsKey(item.key.length) : undefined;
    const small = counts === asOuter ? words.countedAsOuter : undefined;
    return { ...common, nearMisses: [], slip: null, says: joinedSays(says, beats, small) };
  }
  const misses = nearMisses(item, turns, capitals, neighbours, words);
  const whole = misses.length === 0 ? words.wholeUntil(baseLastWhole, turns.length) : undefined;
  const long = turns.length > MOST_TURNS_MENDED ? words.tooManyTurns(MOST_TURNS_MENDED) : undefined;
  const small = capitals ? words.smallLettersSay(outerSolves) : undefined;
  return {
    ...common,
    nearMisses: misses,
    slip: slipOf(misses[0], baseLastWhole, turns.length),
    says: joinedSays(says, small, misses[0]?.says ?? whole, long),
  };
}

/** Where no near miss tells, what should stay was whole until a turn and never again; whole to the end, nothing is told. */
function slipOf(likeliest: NearMiss | undefined, baseLastWhole: number, turns: number): MarkedRow['slip'] {
  if (likeliest) return { turn: likeliest.turn, kind: likeliest.kind };
  return baseLastWhole < turns ? { turn: baseLastWhole + 1, kind: 'unknown' } : null;
}

/** What was likely meant is judged in its place: the verdict stays, the student learns what the turns would do. */
function unreadable(
  item: SolutionItem,
  answer: string,
  { at, message, hint }: { at: number; message: string; hint: string },
  neighbours: readonly SolutionItem[],
  words: Words['marking'],
): Marked {
  const meant = likelyMeant(answer).map((turns) => ({ turns, solves: isRight(judge(item, turns).verdict) }));
  const right = meant.filter(({ solves }) => solves);
  const best = right[0] ?? meant[0];
  const spelt = right.map(({ turns }): NearMiss => {
    const text = writeTurns(turns);
    const says = words.nearMiss({ kind: 'spelling', answer: text });
    return { kind: 'spelling', answer: text, turn: readTurnsBefore(answer, at) + 1, says };
  });
  const misses = best && !best.solves ? nearMisses(item, best.turns, undefined, neighbours, words) : spelt;
  const cannot = words.unreadable(readTurnsBefore(answer, at), message, hint);
  const likely = best && words.meant(writeTurns(best.turns), best.solves);
  const [first] = misses;
  return {
    ...plain('unreadable', joinedSays(cannot, likely, best?.solves ? undefined : first?.says)),
    nearMisses: misses,
    slip: first ? { turn: first.turn, kind: first.kind } : null,
  };
}

/** How many turns stand before a place that cannot be read. */
function readTurnsBefore(answer: string, at: number): number {
  const reading = readTurns(answer.slice(0, at).replaceAll(/[()]/g, ' '));
  // What cannot be read often belongs to the turn before it.
  const touches = at > 0 && !/\s/.test(answer[at - 1]!);
  return reading.ok ? Math.max(0, reading.turns.length - (touches ? 1 : 0)) : 0;
}

function choice(item: ChoiceItem, answer: string, words: Words): Marked {
  const { verdict, says } = markChoice(item, answer, words);
  return plain(verdict, says);
}

/** All ways to read an answer that count; none where it cannot be read. */
function readings(answer: string, smallLetters: SmallLetters): (readonly Turn[])[] {
  const reading = readTurns(answer);
  if (!reading.ok) return [];
  const capitals = smallLetters === 'outer' ? capitalsOf(answer, reading.turns, reading.smallWide) : undefined;
  return capitals ? [reading.turns, capitals] : [reading.turns];
}

function answeredBy(answer: string, { smallLetters, words }: MarkingOptions): Answered {
  let read: (readonly Turn[])[] | undefined;
  if (isTooLong(answer) || isEmpty(answer, words.marking)) return { isRightOn: () => false, isFormOf: () => false };
  return {
    isRightOn: (item) => {
      if (item.kind === 'choice')
        return isFormOfChoice(item, answer, words) && choice(item, answer, words).verdict === 'solves';
      read ??= readings(answer, smallLetters);
      return read.some((turns) => prove(item.subject.cube, turns, item.subject.goal).verdict === 'solves');
    },
    isFormOf: (item) => item.kind === 'choice' && isFormOfChoice(item, answer, words),
  };
}

/** The items that stand before and after it, as far as they are solved by turns. */
function neighboursOf(items: readonly Item[]): (item: SolutionItem) => SolutionItem[] {
  const sheetOf = ({ lessonFile, lesson, paper }: Item): string => [lessonFile, lesson, paper].join('|');
  const byPlace = new Map(items.map((item) => [`${sheetOf(item)}|${item.position}`, item]));
  return (item) =>
    [item.position - 1, item.position + 1]
      .map((position) => byPlace.get(`${sheetOf(item)}|${position}`))
      .filter((other) => other?.kind === 'solution');
}

/** Marks one answer after the other against the same items. */
export function marker(items: Items, options: MarkingOptions): (submission: Submission) => MarkedRow {
  const words = options.words.marking;
  const neighbours = neighboursOf(items.items);
  const judged = (item: Item, answer: string): Marked => {
    if (isEmpty(answer, words)) return plain('empty', words.empty);
    if (isTooLong(answer)) return plain('unreadable', words.tooLong(LONGEST_ANSWER));
    if (item.kind === 'choice') return choice(item, answer, options.words);
    return isTimes(answer) ? plain('empty', words.time) : markTurns(item, answer, neighbours(item), options);
  };
  return (submission) => {
    const { file, row, student, paper, item, answer, mark } = submission;
    const [papersOf, editionOf] = [options.owners?.papersOf, options.owners?.editionOf];
    const own = {
      papers: papersOf?.get(nameKey(student)),
      edition: editionOf?.get(nameKey(student)),
      editions: editionOf && [...editionOf.values()],
    };
    const found = resolve(submission, items, answeredBy(answer, options), words, own);
    const [matched, marked] =
      'item' in found ? [found.item.id, judged(found.item, answer)] : ['', plain('unmatched', found.unmatched)];
    const points = pointsOf(mark) ?? (isRight(marked.verdict) ? 1 : 0);
    return { file, row, student, paper, item, matched, answer, ...marked, mark, points };
  };
}
