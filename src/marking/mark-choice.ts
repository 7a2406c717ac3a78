/** Questions of choice, by the paper's key. */
import { readTurns } from '../cube/notation.ts';
import type { MarkingWords } from '../words/marking.ts';
import type { ChoiceItem } from './items.ts';

/** The letters that an answer gives; undefined where it gives none of them. "b)", "(B)", "B." and "C, A, B" are letters. */
export function lettersGiven(
  { asks, options, letters }: Omit<ChoiceItem, 'answer'>,
  answer: string,
): string | undefined {
  const bare = answer.replaceAll(/[^\p{L}\p{N}]/gu, '').toUpperCase();
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
  const given = lettersGiven(item, answer);
  if (given === undefined) return { verdict: 'unreadable', says: words.noLetter(letters, asks === 'order') };
  if (given === key) return { verdict: 'solves', says: words.rightChoice };
  return { verdict: 'fails', says: words.wrongChoice(key, optionSaid(item)) };
}

/** What the right letter stands for; nothing for an order, or for a picture, whose text is the set-up it shows. */
function optionSaid({ asks, options, letters, answer }: ChoiceItem): string {
  if (asks === 'order' || asks === 'picture') return '';
  const option = options[letters.indexOf(answer)]!;
  return readTurns(option).ok ? `\`${option}\`` : option;
}
