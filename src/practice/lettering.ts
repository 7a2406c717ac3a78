/** The order and the letters in which the choices of a paper are printed. */
import { drawWords, lettersFor, partsFor } from './check-word.ts';
import type { Exercise } from './exercise.ts';
import type { Random } from './random.ts';

export interface Lettering {
  /** What the letters of the right choices spell, one after the other; empty: no check word. */
  readonly words: readonly string[];
  /** By exercise: indices of its options as they are printed, and the letters before them. */
  readonly items: readonly { readonly order: readonly number[]; readonly letters: readonly string[] }[];
}

/** Choices whose letters go into the check word. */
export const isLettered = (e: Exercise): boolean => e.form === 'choice' && e.right.length === 1;

const PLAIN_LETTERS = 'ABCDEFGHIJKLMNOP';

const SHORTEST_WORD = 3;
const rightOf = (e: Exercise): number => (e.form === 'choice' ? e.right[0]! : -1);

/**
 * The check words of a paper and the letters of its items; undefined if the list of words does not do. `used`: by
 * word, on which paper of the class it stood last.
 */
export function lettering(
  exercises: readonly Exercise[],
  wordList: readonly string[],
  used: ReadonlyMap<string, number>,
  random: Random,
): Lettering | undefined {
  const orders = exercises.map((e) => (e.form === 'choice' ? random.shuffled(e.options.map((_, i) => i)) : []));
  const lettered = exercises.flatMap((e, i) => (isLettered(e) ? [i] : []));
  const items = orders.map((order) => ({ order, letters: [...PLAIN_LETTERS.slice(0, order.length)] }));
  if (lettered.length < SHORTEST_WORD) return { words: [], items };
  const parts = partsFor(lettered.length, wordList);
  if (!parts) return undefined;
  const words = drawWords(parts, wordList, used, random);
  let from = 0;
  for (const word of words) {
    const places = lettered.slice(from, from + word.length);
    from += word.length;
    const counts = places.map((i) => orders[i]!.length);
    const right = places.map((i) => orders[i]!.indexOf(rightOf(exercises[i]!)));
    const letters = lettersFor(word, counts, right, wordList, random);
    if (!letters) return undefined;
    places.forEach((i, n) => {
      items[i]!.letters = letters[n]!;
    });
  }
  return { words, items };
}
