/** The items of several claims files, by every name that a student may give them. */

import { groupedBy } from '../text/grouped.ts';
import type { ClaimsText } from './claims-file.ts';
import { type FalseClaim, type Item, type Items, type Named, nameKey } from './items.ts';
import { type BareItem, type ProvedFile, proveFile } from './prove-claims.ts';

/** What a claims file's sheets are called after: the name of a handout, where a paper has its code. */
export const nameOfClaims = (file: string): string => file.replace(/^.*[\\/]/, '').replace(/(?:\.claims)?\.json$/i, '');

/** By what a handout may be named: its file, or the edition at its foot. */
export const sheetNames = ({ file, edition }: ClaimsText): readonly [string, ...string[]] => [
  nameOfClaims(file),
  ...(edition === undefined ? [] : [edition]),
];

/** Ids of items that are in more than one file. */
function idsTwice(files: readonly ProvedFile[]): ReadonlySet<string> {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const id of files.flatMap(({ items }) => [...items.keys()])) {
    if (seen.has(id)) twice.add(id);
    seen.add(id);
  }
  return twice;
}

/** Items in order, with their places on their sheets; an id that two files have is told apart by the file's name. */
function itemsOf({ text, items }: ProvedFile, twice: ReadonlySet<string>): Map<string, Item> {
  const sheet = nameOfClaims(text.file);
  const positions = new Map<string, number>();
  const found = new Map<string, Item>();
  for (const [id, bare] of items) {
    const position = positions.get(bare.paper) ?? 0;
    positions.set(bare.paper, position + 1);
    const named: BareItem = twice.has(id) ? { ...bare, id: `${sheet}.${id}`, paper: bare.paper || sheet } : bare;
    found.set(id, { ...named, lesson: text.lesson, position, onPaper: bare.paper !== '' });
  }
  return found;
}

/** Claims files -> what can be answered, and the claims that do not hold. */
export function proveClaims(texts: readonly ClaimsText[]): { items: Items; falseClaims: FalseClaim[] } {
  const files = texts.map(proveFile);
  const twice = idsTwice(files);
  const byName = new Map<string, Named[]>();
  const add = (names: readonly string[], name: string, named: Named): void => {
    // An item of a handout can be named with the handout or its edition, as one of a paper with its paper.
    for (const key of [name, ...names.map((sheet) => `${sheet}.${name}`)].map(nameKey))
      byName.set(key, [...(byName.get(key) ?? []), named]);
  };
  const items: Item[] = [];
  for (const file of files) {
    const names = sheetNames(file.text);
    const [sheet] = names;
    const own = itemsOf(file, twice);
    items.push(...own.values());
    for (const [id, item] of own) add(names, id, { sheet, item });
    for (const [claim, id] of file.claims) if (claim !== id) add(names, claim, { sheet, item: own.get(id)! });
    for (const [name, refused] of file.unproved) if (!own.has(name)) add(names, name, { sheet, refused });
    for (const id of file.others) add(names, id, { sheet, other: id });
  }
  const ofPapers = items.filter(({ paper }) => paper !== '');
  const papers = [...new Set(ofPapers.map(({ paper }) => paper))];
  const onPapers = groupedBy(ofPapers, ({ number }) => nameKey(number));
  return { items: { items, byName, papers, onPapers }, falseClaims: files.flatMap((file) => file.falseClaims) };
}
