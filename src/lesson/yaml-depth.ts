/**
 * How deep lists and tables of a YAML text stand in each other. The library descends into them by calls, and what is deep
 * enough ends the process where no error can be caught; the reader of its tokens does not.
 */
import { type CST, Parser } from 'yaml';

/** Far more than any of our formats has. */
const DEEPEST = 100;

/**
 * More than which nothing can stand in each other: each bracket opens one at most; each column of an indent a list and a
 * table; and each dash or question mark of a line one.
 */
function deepestPossible(text: string): number {
  const brackets = text.match(/[[{]/g)?.length ?? 0;
  const onLine = (line: string): number => 2 * (/^ */.exec(line)![0].length + 1) + (line.match(/[-?]/g)?.length ?? 0);
  return text.split('\n').reduce((most, line) => Math.max(most, brackets + onLine(line)), 0);
}

/** Where the first list or table stands that is too deep; undefined in texts that can be read. */
export function tooDeepAt(text: string): number | undefined {
  // Most texts need not be read twice.
  if (deepestPossible(text) <= DEEPEST) return undefined;
  const waiting: { readonly token: CST.Token | null | undefined; readonly depth: number }[] = [];
  for (const token of new Parser().parse(text)) waiting.push({ token, depth: 0 });
  let first: number | undefined;
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const { token, depth } = next;
    if (!token) continue;
    if (depth > DEEPEST) first = Math.min(first ?? token.offset, token.offset);
    else if (token.type === 'document') waiting.push({ token: token.value, depth });
    else if ('items' in token) {
      for (const { key, value } of token.items) {
        waiting.push({ token: key, depth: depth + 1 }, { token: value, depth: depth + 1 });
      }
    }
  }
  return first;
}
