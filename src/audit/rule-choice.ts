/** A question which of some rules is so, answered from what is printed: just one may be, and it is the answer. */
import { claimed } from './claimed.ts';
import type { RuleChoiceClaim } from './claims-file.ts';
import { isTrue, seenOf } from './printed-rules.ts';
import { turnsOrFaults } from './reprove.ts';
import { afterTurns } from './stickers.ts';

const CENTRES = [49, 50, 51, 52, 53, 54];

/** With our words in place of the club's, all at once: one word of ours may be theirs for another. */
function inOurWords(text: string, words: Readonly<Record<string, string>> = {}): string {
  const ours = new Map(Object.entries(words).map(([our, their]) => [their.toLowerCase(), our]));
  if (ours.size === 0) return text;
  const theirs = [...ours.keys()]
    .sort((a, b) => b.length - a.length)
    .map((word) => word.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const any = new RegExp(`(?<![\\p{L}\\d])(${theirs.join('|')})(?=s?(?![\\p{L}\\d]))`, 'giu');
  return text.replaceAll(any, (word) => ours.get(word.toLowerCase())!);
}

export function ruleChoiceFaults({ setup, pair, cross, options, letters, answer, words }: RuleChoiceClaim): string[] {
  const { turns, faults } = turnsOrFaults('set-up', setup);
  if (faults.length > 0) return faults;
  const state = afterTurns(turns);
  if (CENTRES.some((centre) => state[centre] !== centre)) return ['set-up ends in another hold'];
  const seen = seenOf(state, pair, cross);
  const read = options.map((option) => isTrue(inOurWords(option, words), seen));
  const unread = read.flatMap((one, i) => (typeof one === 'object' ? [`option ${letters[i]}: '${one.unread}'`] : []));
  if (unread.length > 0) return unread.map((text) => `${text} cannot be read`);
  const fitting = letters.filter((_, i) => read[i] === true);
  if (fitting.length > 1) return [`options ${fitting.join(' and ')} are both true as they are printed`];
  return claimed('answer', fitting[0] ?? 'none', answer);
}
