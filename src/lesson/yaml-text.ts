/** A lesson's text as a tree whose nodes know where they stand in the source. */
import { isAlias, isMap, isNode, isScalar, type Node, type Pair, type Scalar } from 'yaml';
import { NOWHERE, type Span } from './problem.ts';
import type { Source } from './source.ts';
import { type MendedYaml, mendYaml, spanInSource } from './yaml-mend.ts';

export type Path = readonly (string | number)[];

export type YamlText = MendedYaml;

const parsed = new WeakMap<Source, YamlText>();

/** Each source is parsed once. */
export function parseYaml(source: Source): YamlText {
  const yaml = parsed.get(source) ?? mendYaml(source);
  parsed.set(source, yaml);
  return yaml;
}

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

/** A key that is a table or a list, which YAML allows and has been told of, has no text. */
const keyText = (pair: Pair): string => (isScalar(pair.key) ? String(pair.key.value) : '');

export function nodeAt({ document }: YamlText, path: Path): Node | undefined {
  let node: unknown = document.contents;
  for (const step of path) {
    const items = (node as { items?: unknown[] } | null)?.items;
    if (isMap(node)) node = node.items.find((pair) => keyText(pair) === step)?.value;
    else node = typeof step === 'number' ? items?.[step] : undefined;
  }
  return isNode(node) ? node : undefined;
}

/** Whether a key that seems to be missing stands on a line that had to be changed in order to be read. */
export const isOnMendedLine = ({ source, mended }: YamlText, key: string): boolean => {
  const lines = source.text.split('\n');
  return [...mended].some((at) => new RegExp(`(?<![\\w-])${key}(?![\\w-])`).test(lines[at] ?? ''));
};

/** Where the value at a path stands; of a value that is missing, the key that should have it, or the table it belongs in. */
export function spanAt(yaml: YamlText, path: Path): Span {
  const node = nodeAt(yaml, path);
  if (node?.range && node.range[1] > node.range[0]) {
    // A text in a block stands below its | or >.
    const isBlock = isScalar(node) && (node.type === 'BLOCK_LITERAL' || node.type === 'BLOCK_FOLDED');
    const start = (isBlock ? signOffsets(yaml.text, node)[0] : undefined) ?? node.range[0];
    return spanInSource(trimmed(yaml.text, start, node.range[1]), yaml.toSource);
  }
  const key = keySpan(yaml, path.slice(0, -1), path.at(-1));
  if (key) return key;
  if (path.length === 0) return NOWHERE;
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

/** The length in the source of an escape in double quotes (YAML 1.2, 5.7), by the letter after the backslash; else 2. */
const ESCAPE_SIZE: Readonly<Record<string, number>> = { x: 4, u: 6, U: 10 };

/**
 * Offsets of the characters of a scalar that are not white space, as many as its value has. They come in the order of
 * the source, whatever the style: white space is all that quoting, folding and indenting change, but for escapes.
 */
function signOffsets(text: string, { type, range }: Scalar): number[] {
  const [start, end] = range ?? [0, 0];
  const isBlock = type === 'BLOCK_LITERAL' || type === 'BLOCK_FOLDED';
  const isQuoted = type === 'QUOTE_SINGLE' || type === 'QUOTE_DOUBLE';
  const offsets: number[] = [];
  const from = isBlock ? text.indexOf('\n', start) + 1 || end : isQuoted ? start + 1 : start;
  for (let at = from; at < end - (isQuoted ? 1 : 0); at++) {
    if (type === 'QUOTE_DOUBLE' && text[at] === '\\') {
      const letter = text[at + 1] ?? '';
      const size = ESCAPE_SIZE[letter] ?? 2;
      const isWhite = /[\stnrNLP_ ]/.test(letter) || /^[xuU]0*(?:9|a|d|20|a0)$/i.test(text.slice(at + 1, at + size));
      if (!isWhite) offsets.push(at);
      at += size - 1;
    } else if (!/\s/.test(text[at]!)) {
      offsets.push(at);
      if (type === 'QUOTE_SINGLE' && text[at] === "'") at++;
    }
  }
  return offsets;
}

/** From an offset in the value of the scalar at a path to one in the source. */
export function valueOffsets(yaml: YamlText, path: Path): (offset: number) => number {
  const node = nodeAt(yaml, path) as Scalar | undefined;
  if (!node?.range) return () => 0;
  const signs = signOffsets(yaml.text, node);
  const offsets: number[] = [];
  let next = 0;
  let before = signs[0] ?? node.range[0];
  for (const c of String(node.value ?? '').split('')) {
    if (!/\s/.test(c)) before = signs[next++] ?? before;
    else if (next > 0) before++;
    offsets.push(before);
  }
  const past = offsets.length > 0 ? offsets.at(-1)! + 1 : node.range[0];
  return (offset) => yaml.toSource(offsets[offset] ?? past);
}
