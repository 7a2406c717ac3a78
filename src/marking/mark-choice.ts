/** Questions of choice, by the paper's key. */
import { readTurns } from '../cube/notation.ts';
import { writeTurns } from '../cube/turns.ts';
import type { MarkingWords } from '../words/marking.ts';
import type { ChoiceItem } from './items.ts';

/** The letters that an answer gives; undefined where it gives none of them. "b)", "(B)", "B." and "C, A, B" are letters. */
export function lettersGiven(
  { asks, options, letters }: Omit<ChoiceItem, 'answer'>,
  answer: string,
): string | undefined {
  const said = (asks === 'slip' && slipGiven(answer)?.letter) || answer;
  const bare = said.replaceAll(/[^\p{L}\p{N}]/gu, '').toUpperCase();
  if (asks === 'order') return [...bare].sort().join('') === [...letters].sort().join('') ? bare : undefined;
  if (letters.includes(bare)) return bare;
  return letters[options.findIndex((text) => text.trim().toLowerCase() === answer.toLowerCase())];
}

/** `ubr b`, `UBR:B` and `URB-B` are one place: the sides in any order, then the side that the sticker looks to. */
function placeGiven(answer: string): string | undefined {
  const match = /^\s*([UDRLFB]{2,3})\s*[:\s,/-]\s*([UDRLFB])\s*$/.exec(answer.toUpperCase());
  const [, place, side] = match ?? [];
  return place?.includes(side!) ? `${[...place].sort().join('')}:${side}` : undefined;
}

/** What else is given of a slip, in the boxes of its paper: the number of the turn, and the turn that it should be. */
interface SlipGiven {
  readonly letter: string;
  readonly turn: number;
  readonly now: string;
}

/** `R 6 U'`, `r6u'`, `R, 6` and `(R) 6: U'`; undefined for a letter alone, which is enough. */
function slipGiven(answer: string): SlipGiven | undefined {
  const match = /^\W*(\p{L})\W*(\d{1,2})\W*(.*)$/u.exec(answer);
  return match ? { letter: match[1]!, turn: Number(match[2]), now: match[3]! } : undefined;
}

/** As far as it is given: a student who leaves the turn out is not asked again. */
function isMend({ turn, now }: SlipGiven, mend: ChoiceItem['mend']): boolean {
  if (!mend) return true;
  const [given, right] = [readTurns(now), readTurns(mend.now)];
  // The last turn may be written small: it stands in a box for one turn of a face.
  const isTurn = now.trim() === '' || now.trim().toUpperCase() === mend.now.toUpperCase();
  const isRead = given.ok && right.ok && writeTurns(given.turns) === writeTurns(right.turns);
  return turn === mend.turn && (isTurn || isRead);
}

/** A letter, or of a slip a letter with a turn. */
const LETTER = /^\W*\p{L}\W*$/u;
const LETTER_AND_TURN = /^\W*\p{L}\W*\d{1,2}\W*[a-z]?w?[2'’′]?\W*$/iu;

/** Whether an answer is of the form that the boxes of a paper ask for, so that it is hardly the solution of a case. */
export function isFormOfChoice(item: ChoiceItem, answer: string): boolean {
  if (item.asks === 'place') return placeGiven(answer) !== undefined;
  const isForm = item.asks === 'order' || LETTER.test(answer) || (item.asks === 'slip' && LETTER_AND_TURN.test(answer));
  return isForm && lettersGiven(item, answer) !== undefined;
}

export interface ChoiceVerdict {
  readonly verdict: 'solves' | 'fails' | 'unreadable';
  readonly says: string;
}

export function markChoice(item: ChoiceItem, answer: string, words: MarkingWords): ChoiceVerdict {
  const { asks, letters, answer: key } = item;
  if (asks === 'place') {
    const given = placeGiven(answer);
    if (given === undefined) return { verdict: 'unreadable', says: words.noPlace };
    if (given === placeGiven(key)) return { verdict: 'solves', says: words.rightChoice };
    const [place, side] = key.split(':') as [string, string];
    return { verdict: 'fails', says: words.wrongPlace(place, side) };
  }
  const slip = asks === 'slip' ? slipGiven(answer) : undefined;
  const given = lettersGiven(item, answer);
  if (given === undefined) return { verdict: 'unreadable', says: words.noLetter(letters, asks === 'order') };
  if (given === key) {
    return !slip || isMend(slip, item.mend)
      ? { verdict: 'solves', says: words.rightChoice }
      : { verdict: 'fails', says: words.wrongMend(key, item.mend!.turn, item.mend!.now) };
  }
  return { verdict: 'fails', says: words.wrongChoice(key, optionSaid(item)) };
}

/** What the right letter stands for; nothing for an order, or for a picture, whose text is the set-up it shows. */
function optionSaid({ asks, options, letters, answer }: ChoiceItem): string {
  if (asks === 'order' || asks === 'picture') return '';
  const option = options[letters.indexOf(answer)]!;
  return readTurns(option).ok ? `\`${option}\`` : option;
}
