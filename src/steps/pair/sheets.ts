/** What sheets say of pairs: the lines of their pictures, slots that are open. */
import type { SheetPart } from '../sheet-part.ts';
import { SLOTS } from './slots.ts';
import { asPair } from './subject.ts';
import { pairWords } from './words.ts';

export const pairSheets: SheetPart = {
  words: (words) => pairWords(words).sheets,
  remark: (shown, words) => {
    const someStuck = shown
      .map(asPair)
      .some(({ goal, where }) => goal.kept.length < SLOTS.length - 1 - where.open.length);
    return someStuck ? pairWords(words).cases.stuckStaysOpen : undefined;
  },
  openSaid: (subject, words) => {
    const { open } = asPair(subject).where;
    return open.length > 0 ? pairWords(words).cases.open(open) : undefined;
  },
};
