/** Questions of choice, by the paper's key. */
import { COLOURS } from '../cube/colours.ts';
import type { Face } from '../cube/faces.ts';
import { readTurns } from '../cube/notation.ts';
import { writeTurns } from '../cube/turns.ts';
import { stepNamed } from '../steps/steps.ts';
import type { Words } from '../words/words.ts';
import type { ChoiceItem } from './items.ts';
import { likelyMeant } from './spelling.ts';

/** Without signs and case, which say nothing in an answer of letters or words. */
const bareOf = (text: string): string => text.replaceAll(/[^\p{L}\p{N}]/gu, '').toUpperCase();

/** Turns by their normal form, so that `R′ U2` and `R'U2` are one; other texts bare. */
export function optionKey(text: string): string {
  const reading = readTurns(text);
  return reading.ok && reading.turns.length > 0 ? writeTurns(reading.turns) : bareOf(text);
}

/**
 * The letters that an answer gives; undefined where it gives none of them. "b)", "(B)", "B." and "C, A, B" are letters, and
 * so are an option's own text, and the letter with it: "like.", "B, like".
 */
export function lettersGiven(
  { asks, options, letters }: Omit<ChoiceItem, 'answer'>,
  answer: string,
): string | undefined {
  const said = (asks === 'slip' && slipGiven(answer)?.letter) || answer;
  const bare = bareOf(said);
  if (asks === 'order') return [...bare].sort().join('') === [...letters].sort().join('') ? bare : undefined;
  if (letters.includes(bare)) return bare;
  const option = (text: string): string | undefined =>
    letters[options.findIndex((one) => optionKey(one) === optionKey(text))];
  const [, letter = '', rest = ''] = /^\W*(\p{L})(?!\p{L})[^\p{L}]*(.*)$/u.exec(answer) ?? [];
  const both = rest === '' ? undefined : option(rest);
  return both !== undefined && both === letter.toUpperCase() ? both : option(answer);
}

/** `bottom front, green to the front`: words of the place, then a colour or a comma, then where the sticker looks. */
function placeInWords(answer: string, faces: Readonly<Record<string, Face>>): string | undefined {
  const words = answer
    .toLowerCase()
    .split(/[^\p{L},:]+|(?=[,:])/u)
    .flatMap((word) => word.split(/(?<=[,:])/));
  const isBreak = (word: string): boolean =>
    word === ',' || word === ':' || (COLOURS as readonly string[]).includes(word);
  const at = words.findIndex(isBreak);
  const facesOf = (some: readonly string[]): Face[] => some.flatMap((word) => faces[word] ?? []);
  const [place, side] = at < 0 ? [[], []] : [facesOf(words.slice(0, at)), facesOf(words.slice(at))];
  return side.length === 1 && [2, 3].includes(place.length) ? `${place.join('')}:${side[0]}` : undefined;
}

/** `ubr b`, `UBR:B`, `UBR (B)`, `UBRB` and `URB-B` are one place: the sides in any order, then the side that the sticker looks to; or in words. */
function placeGiven(answer: string, { faces }: Words['marking']): string | undefined {
  const written = placeInWords(answer, faces) ?? answer;
  const match = /^\W*([UDRLFB]{2,3})\W*([UDRLFB])\W*$/.exec(written.toUpperCase());
  const [, place, side] = match ?? [];
  return place?.includes(side!) ? `${[...place].sort().join('')}:${side}` : undefined;
}

/** What else is given of a slip, in the boxes of its paper: the number of the turn, and the turn that it should be. */
interface SlipGiven {
  readonly letter: string;
  readonly turn: number;
  /** Empty if it is left out. */
  readonly now: string;
}

/** `R 6 U'`, `r6u'`, `R, 6` and `(R) 6th: U2 -> U'`; undefined for a letter alone, which is enough. */
function slipGiven(answer: string): SlipGiven | undefined {
  const match = /^\W*(\p{L})\W*(\d{1,2})(?:st|nd|rd|th)?\W*(.*)$/iu.exec(answer);
  if (!match) return undefined;
  const now = match[3]!.split(/(?:->|=>|→|⇒)/).at(-1)!;
  return { letter: match[1]!, turn: Number(match[2]), now: now.replaceAll(/[()[\]{}.;:]/g, ' ').trim() };
}

/** One turn of a face, as it may be written in a box; undefined where it cannot be read as one. */
function turnIn(text: string): string | undefined {
  const reading = readTurns(text);
  const readings = reading.ok ? [reading.turns] : likelyMeant(text);
  // It may be written small: it stands in a box for one turn of a face.
  const one = readings.find((turns) => turns.length === 1);
  return (
    one &&
    writeTurns(one)
      .replace(/^[a-z]/, (letter) => letter.toUpperCase())
      .replace(/^([UDRLFB])w/, '$1')
  );
}

type MendGiven = 'right' | 'wrong' | 'unread';

/** As far as it is given: a student who leaves the turn out is not asked again. */
function mendGiven({ turn, now }: SlipGiven, mend: ChoiceItem['mend']): MendGiven {
  if (!mend) return 'right';
  if (turn !== mend.turn) return 'wrong';
  if (now === '') return 'right';
  const given = turnIn(now);
  if (given === undefined) return 'unread';
  return given === turnIn(mend.now) ? 'right' : 'wrong';
}

/** A letter, or of a slip a letter with a turn. */
const LETTER = /^\W*\p{L}\W*$/u;
const LETTER_AND_TURN = /^\W*\p{L}\W*\d{1,2}\W*[a-z]?w?[2'’′]?\W*$/iu;

/** Whether an answer is of the form that the boxes of a paper ask for, so that it is hardly the solution of a case. */
export function isFormOfChoice(item: ChoiceItem, answer: string, { marking }: Words): boolean {
  if (item.asks === 'place') return placeGiven(answer, marking) !== undefined;
  const isForm = item.asks === 'order' || LETTER.test(answer) || (item.asks === 'slip' && LETTER_AND_TURN.test(answer));
  return isForm && lettersGiven(item, answer) !== undefined;
}

export interface ChoiceVerdict {
  readonly verdict: 'solves' | 'fails' | 'unreadable';
  readonly says: string;
}

export function markChoice(item: ChoiceItem, answer: string, allWords: Words): ChoiceVerdict {
  const words = allWords.marking;
  const { asks, letters, answer: key } = item;
  if (asks === 'place') {
    const given = placeGiven(answer, words);
    if (given === undefined)
      return { verdict: 'unreadable', says: stepNamed(item.step)!.marking.words(allWords).noPlace };
    if (given === placeGiven(key, words)) return { verdict: 'solves', says: words.rightChoice };
    const [place, side] = key.split(':') as [string, string];
    return { verdict: 'fails', says: words.wrongPlace(place, side) };
  }
  const slip = asks === 'slip' ? slipGiven(answer) : undefined;
  const given = lettersGiven(item, answer);
  if (given === undefined) return { verdict: 'unreadable', says: words.noLetter(letters, asks === 'order') };
  if (given !== key) return { verdict: 'fails', says: words.wrongChoice(key, optionSaid(item)) };
  const { mend } = item;
  if (asks !== 'slip' || !mend) return { verdict: 'solves', says: words.rightChoice };
  const now = slip && mendGiven(slip, mend);
  if (now === 'unread') return { verdict: 'unreadable', says: words.noMend(slip!.now) };
  if (now === 'wrong') return { verdict: 'fails', says: words.wrongMend(key, mend.turn, mend.now) };
  return {
    verdict: 'solves',
    says: slip && slip.now !== '' ? words.rightChoice : words.noMendGiven(mend.turn, mend.now),
  };
}

/** What the right letter stands for; nothing for an order, or for a picture, whose text is the set-up it shows. */
function optionSaid({ asks, options, letters, answer }: ChoiceItem): string {
  if (asks === 'order' || asks === 'picture') return '';
  const option = options[letters.indexOf(answer)]!;
  return readTurns(option).ok ? `\`${option}\`` : option;
}
