/** A lesson's text as a tree whose nodes know where they stand in the source. */
import { isAlias, isMap, isNode, isScalar, type Node, type Pair, type Scalar } from 'yaml';
import type { Span } from './problem.ts';
import { type MendedYaml, mendYaml, spanInSource } from './yaml-mend.ts';

export type Path = readonly (string | number)[];

export type YamlText = MendedYaml;

export const parseYaml = (source: string): YamlText => mendYaml(source);

/** The data without positions; references become null, they have been told of. */
export const dataOf = ({ document }: YamlText): unknown => plain(document.contents);

function plain(node: unknown): unknown {
  if (!isNode(node) || isAlias(node)) return null;
  if (isScalar(node)) return node.value;
  if (isMap(node)) {
    return Object.fromEntries(node.items.map((pair) => [keyText(pair), plain(pair.value)]));
  }
  return (node as { items?: unknown[] }).items?.map(plain) ?? null;
}

const keyText = (pair: Pair): string => (isScalar(pair.key) ? String(pair.key.value) : String(pair.key));

export function nodeAt({ document }: YamlText, path: Path): Node | undefined {
  let node: unknown = document.contents;
  for (const step of path) {
    const items = (node as { items?: unknown[] } | null)?.items;
    if (isMap(node)) node = node.items.find((pair) => keyText(pair) === step)?.value;
    else node = typeof step === 'number' ? items?.[step] : undefined;
  }
  return isNode(node) ? node : undefined;
}

/** Whether a node holds a line that was changed so that it could be read: what seems to be missing may have been there. */
export function isMended({ text, mended }: YamlText, node: Node | undefined): boolean {
  if (!node?.range || mended.size === 0) return mended.size > 0;
  const lineAt = (offset: number): number => text.slice(0, offset).split('\n').length - 1;
  const [first, last] = [lineAt(node.range[0]), lineAt(node.range[2])];
  return [...mended].some((line) => line >= first && line <= last);
}

/** Where the value at a path stands; of a value that is missing, the key that should have it, or the table it belongs in. */
export function spanAt(yaml: YamlText, path: Path): Span {
  const node = nodeAt(yaml, path);
  if (node?.range && node.range[1] > node.range[0]) {
    return spanInSource(trimmed(yaml.text, node.range[0], node.range[1]), yaml.toSource);
  }
  const key = keySpan(yaml, path.slice(0, -1), path.at(-1));
  if (key) return key;
  if (path.length === 0) return { start: 0, end: 0 };
  const parent = nodeAt(yaml, path.slice(0, -1));
  if (isMap(parent) && parent.items[0]) return keySpan(yaml, path.slice(0, -1), keyText(parent.items[0]))!;
  return spanAt(yaml, path.slice(0, -1));
}

/** Where a key stands. */
export function keySpan(yaml: YamlText, path: Path, key: string | number | undefined): Span | undefined {
  const table = nodeAt(yaml, path);
  if (!isMap(table)) return undefined;
  const node = table.items.find((pair) => keyText(pair) === key)?.key;
  const range = isNode(node) ? node.range : undefined;
  return range ? spanInSource({ start: range[0], end: range[1] }, yaml.toSource) : undefined;
}

/** Without the white space at its end; a text of several lines is shown by its first. */
function trimmed(text: string, start: number, end: number): Span {
  const first = text.slice(start, end).split('\n')[0]!.trimEnd();
  return { start, end: start + Math.max(1, first.length) };
}

/**
 * For each character of a scalar's value, its offset in the source. The value is the source less indents, quotes and
 * folded line ends, so its characters are met in order; only escapes of double quotes are not, and then every character
 * is given the scalar's start.
 */
export function valueOffsets(yaml: YamlText, path: Path): (offset: number) => number {
  const node = nodeAt(yaml, path) as Scalar | undefined;
  const start = node?.range?.[0] ?? 0;
  const end = node?.range?.[1] ?? start;
  const value = String(node?.value ?? '');
  const source = yaml.text.slice(0, end);
  if (node?.type === 'QUOTE_DOUBLE' && source.slice(start).includes('\\')) return () => yaml.toSource(start);
  const isBlock = node?.type === 'BLOCK_LITERAL' || node?.type === 'BLOCK_FOLDED';
  let at = isBlock ? source.indexOf('\n', start) + 1 : start;
  const offsets: number[] = [];
  for (const c of value.split('')) {
    if (/\s/.test(c)) {
      offsets.push(at);
      continue;
    }
    while (at < end && source[at] !== c) at++;
    offsets.push(at++);
  }
  return (offset) => yaml.toSource(offsets[offset] ?? (offsets.length > 0 ? offsets.at(-1)! + 1 : start));
}
