/** What sheets say of pairs: the lines of their pictures, slots that are open. */
import type { SheetPart } from '../sheet-part.ts';
import { SLOTS } from './slots.ts';
import { asPair } from './subject.ts';
import { pairWords } from './words.ts';

export const pairSheets: SheetPart = {
  signs: ({ handout }) => handout.signs.lines,
  remark: (shown, { handout }) => {
    const someStuck = shown
      .map(asPair)
      .some(({ goal, where }) => goal.kept.length < SLOTS.length - 1 - where.open.length);
    return someStuck ? handout.stuckStaysOpen : undefined;
  },
  plan: (words) => pairWords(words).plan,
  openSaid: (subject, { handout }) => {
    const { open } = asPair(subject).where;
    return open.length > 0 ? handout.open(open) : undefined;
  },
};
