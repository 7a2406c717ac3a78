/**
 * Rows that name no paper, where a class has a handout and papers with the same numbers. They are taken for the handout
 * unless the answer speaks against it: it is right on a paper and not there, or it has the form of a paper's question
 * (a letter, a place). Then the coach is asked, so that no right answer is marked wrong on a sheet that was not meant.
 */
import type { MarkingWords } from '../words/words.ts';
import { type Item, type Items, nameKey } from './items.ts';

/** An answer held against items; no slips are looked for. */
export interface Answered {
  readonly isRightOn: (item: Item) => boolean;
  /** Whether it is what a question of choice asks for, right or wrong. */
  readonly isFormOf: (item: Item) => boolean;
}

/** What a number stands for on the handout. */
export interface OnHandout {
  readonly sheet: string;
  readonly item: Item;
}

/**
 * `number` is the item as the row names it; `own`: the papers that its student has, where that is known. The item that is meant; or what the coach is asked; undefined where neither
 * the handout nor a paper has the number.
 */
export function withoutPaper(
  number: string,
  answered: Answered,
  found: OnHandout | undefined,
  { items, papers, onPapers }: Items,
  own: readonly string[] | undefined,
  words: MarkingWords['unmatched'],
): { readonly item: Item } | { readonly unmatched: string } | undefined {
  const there = (onPapers.get(nameKey(number)) ?? []).filter(({ paper }) => own === undefined || own.includes(paper));
  if (there.length === 0 || (found && answered.isRightOn(found.item))) return found;
  const right = there.filter(answered.isRightOn);
  if (found && right.length === 0 && !there.some(answered.isFormOf)) return found;
  const [only, ...more] = there;
  const isAllThereIs = own !== undefined || (papers.length === 1 && items.every(({ paper }) => paper !== ''));
  if (!found && more.length === 0 && (right.length > 0 || isAllThereIs)) return { item: only! };
  const codes = (some: readonly Item[]): string[] => some.map(({ paper }) => paper);
  return { unmatched: words.whichPaper(number, codes(there), codes(right), found?.sheet) };
}
