/** Which item a row is about. */
import { likelyWord } from '../text/likely.ts';
import type { MarkingWords } from '../words/words.ts';
import { type Item, type Items, type Named, nameKey } from './items.ts';
import type { Submission } from './submission.ts';
import { type Answered, type OnHandout, withoutPaper } from './which-paper.ts';

/** The item, or why there is none, for the student. */
export type Resolved = { readonly item: Item } | { readonly unmatched: string };

/** "1 to 12", or all of them where they are no such series. */
function seriesOf(numbers: readonly string[]): string {
  const isSeries = numbers.every((n, i) => Number(n) === i + 1);
  return isSeries && numbers.length > 2 ? `1 to ${numbers.length}` : numbers.join(', ');
}

function unknown({ item, paper }: Submission, items: Items, words: MarkingWords['unmatched']): string {
  if (paper !== '') {
    const named = items.papers.find((p) => nameKey(p) === nameKey(paper));
    if (named === undefined) return words.unknownPaper(paper, likelyWord(paper, items.papers));
    const numbers = items.items.filter((i) => i.paper === named).map((i) => i.number);
    return words.notOnPaper(named, item, seriesOf(numbers));
  }
  // Of short names each is near to each: only longer ones are likely meant, and have a likely one.
  const isLong = (name: string): boolean => name.length > 2;
  if (!isLong(item)) return words.unknownItem(item, undefined);
  const likelyPaper = item.includes('.') ? undefined : likelyWord(item, items.papers);
  if (likelyPaper !== undefined) return words.paperForItem(item, likelyPaper);
  const likely = likelyWord(item, items.items.map(({ id }) => id).filter(isLong));
  return words.unknownItem(item, likely);
}

/** What may stand before a number: "Item 3", "case 3", "Q3", "K4T Q3". No code of a paper has a Q (src/practice). */
const CALLED = /(^|[\s/_–.-])(?:(?:item|case|question|no|nr)(?![a-z])[\s.:#№-]*(?=\d)|q[\s.:#№-]*(?=\d+$))/i;

/** "#3", "3.", "3)", "Item 3", "Q3" and "03" are 3; "K4T 7" and "K4T-07" are K4T.7. */
const tidied = (item: string): string =>
  item
    .replaceAll(/^[#№(\s]+|[.,:;)\s]+$/g, '')
    .replace(CALLED, '$1')
    .replace(/^(\w+)[\s/_–-]+(?=\w+$)/, '$1.')
    .replaceAll(/(^|\.)0+(?=\d+(?:\.|$))/g, '$1');

/** What a student of a roster has: a paper of each lesson, and the edition of handouts that is called so after the lesson's name. */
export interface OwnSheets {
  readonly papers?: readonly string[] | undefined;
  readonly edition?: string | undefined;
  /** All that the students of the roster have. */
  readonly editions?: readonly string[] | undefined;
}

/** What the sheets of an edition are called: `edge-away-left`. */
const sheetOf = ({ lessonFile }: Item, edition: string): string => `${lessonFile.replace(/\.[^.]+$/, '')}${edition}`;

/** An item of a handout that another student of the roster has; not known of a sheet that is called otherwise. */
const isOfOthers = ({ sheet, item }: OnHandout, { edition, editions = [] }: OwnSheets): boolean =>
  edition !== undefined &&
  !item.onPaper &&
  sheet !== sheetOf(item, edition) &&
  editions.some((other) => sheet === sheetOf(item, other));

/** Of editions of one lesson that have the same item the one that the student has; undefined where that is not known. */
function ofEdition(all: readonly Named[], edition: string | undefined): readonly Named[] | undefined {
  if (edition === undefined || all.length < 2) return undefined;
  const items = all.flatMap((named) => ('item' in named ? [named] : []));
  const isOneLesson = items.length === all.length && new Set(items.map(({ item }) => item.lessonFile)).size === 1;
  const own = items.filter(({ sheet, item }) => sheet === sheetOf(item, edition));
  return isOneLesson && own.length === 1 ? own : undefined;
}

/**
 * An exact claim id; else the item of the paper, if one is named; else the case of a handout. What several files have is
 * looked for under the paper, and told where there is none. `answered` is the row's answer: it tells which sheet is meant
 * where none is named. `own`: what its student has, by the roster.
 */
export function resolve(
  row: Submission,
  items: Items,
  answered: Answered,
  { unmatched: words }: MarkingWords,
  own: OwnSheets = {},
): Resolved {
  if (row.item === '') return { unmatched: words.noItem };
  const written = [row.item, tidied(row.item)];
  const ofPaper = row.paper === '' ? [] : written.map((item) => `${row.paper}.${item}`);
  const names = [...new Set([...written, ...ofPaper].map(nameKey))];
  const ofSheet = (found: OnHandout | undefined): Resolved | undefined =>
    row.paper === '' ? withoutPaper(tidied(row.item), answered, found, items, own.papers, words) : undefined;
  let sheets: string[] | undefined;
  for (const name of names) {
    const isCaseNumber = /^(?:.+:)?\d+$/.test(name);
    if (isCaseNumber && row.paper !== '') continue;
    const all = items.byName.get(name) ?? [];
    const [found, ...more] = ofEdition(all, own.edition) ?? all;
    if (found && more.length > 0) sheets ??= [found, ...more].map(({ sheet }) => sheet);
    else if (found && 'item' in found) {
      const meant = ofSheet(found) ?? found;
      const isHandout = 'item' in meant && meant.item === found.item;
      return isHandout && row.paper === '' && isOfOthers(found, own)
        ? { unmatched: words.otherEdition(own.edition!) }
        : meant;
    } else if (found && 'refused' in found)
      return { unmatched: words.unproved(found.refused.claim, found.refused.why) };
    else if (found) return { unmatched: words.nothingToAnswer(row.item) };
  }
  if (sheets) return { unmatched: words.several(row.item, sheets) };
  return ofSheet(undefined) ?? { unmatched: unknown(row, items, words) };
}
