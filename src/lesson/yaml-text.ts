/** The YAML layer: text to a tree whose nodes know where they stand. Everything that YAML itself finds wrong is told here. */
import {
  type Document,
  isAlias,
  isMap,
  isNode,
  isScalar,
  type Node,
  type Pair,
  parseDocument,
  type Scalar,
  visit,
  type YAMLError,
} from 'yaml';
import type { Problem, ProblemCode, Span } from './problem.ts';

export type Path = readonly (string | number)[];

export interface YamlText {
  readonly text: string;
  readonly document: Document.Parsed;
  readonly problems: readonly Problem[];
}

/** YAML's own errors in the words of a coach. Whatever is not listed is told in YAML's words. */
const SAID: Partial<Record<YAMLError['code'], { code: ProblemCode; message: string; hint: string }>> = {
  TAB_AS_INDENT: { code: 'yaml-tab', message: 'a tab at the start of the line', hint: 'indent with spaces' },
  BAD_INDENT: {
    code: 'yaml-indent',
    message: 'this line does not line up with the lines around it',
    hint: 'give keys of one table the same number of spaces',
  },
  DUPLICATE_KEY: { code: 'yaml-duplicate-key', message: 'this key stands twice', hint: 'keep one of the two' },
  BLOCK_AS_IMPLICIT_KEY: {
    code: 'yaml-syntax',
    message: 'a second ":" where the value should be',
    hint: 'put a text that holds ": " in double quotes',
  },
  MULTILINE_IMPLICIT_KEY: {
    code: 'yaml-syntax',
    message: 'a key without ":" and a value',
    hint: 'write "key: value"; a text of several lines begins with "|" after the key',
  },
  BAD_SCALAR_START: {
    code: 'yaml-syntax',
    message: 'a text cannot begin with this sign',
    hint: 'put the text in double quotes, or begin it on the next line after "|"',
  },
  MULTIPLE_DOCS: {
    code: 'yaml-syntax',
    message: 'a second document begins here',
    hint: 'one lesson a file: take the line --- out',
  },
};

const spanOf = ([start, end]: readonly [number, number]): Span => ({ start, end: Math.max(end, start + 1) });

function problemOf(error: YAMLError, text: string): Problem {
  const said = SAID[error.code];
  const span = spanOf(error.pos);
  if (/^Flow /.test(error.message)) {
    const hint = 'close it: ] for [ and } for {';
    return {
      code: 'yaml-syntax',
      span: openBracket(text, error.pos[0]) ?? span,
      message: 'this bracket is never closed',
      hint,
    };
  }
  if (error.code === 'BLOCK_AS_IMPLICIT_KEY') {
    const colon = text.indexOf(': ', error.pos[0]);
    return { ...said!, span: colon < 0 ? span : spanOf([colon, colon + 1]) };
  }
  if (said) return { ...said, span };
  if (/^Sequence item without/i.test(error.message)) return { ...SAID.BAD_INDENT!, span };
  const message = error.message.split(/ at line \d|\n/)[0]!;
  const quote = /quote/i.test(message);
  return {
    code: 'yaml-syntax',
    span,
    message: message.charAt(0).toLowerCase() + message.slice(1),
    hint: quote ? "close the quote, or leave it out: turns such as R' need none" : 'mend the place shown',
  };
}

/** The bracket before an offset that nothing closes. */
function openBracket(text: string, before: number): Span | undefined {
  let closed = 0;
  for (let i = before - 1; i >= 0; i--) {
    if (text[i] === ']' || text[i] === '}') closed++;
    if ((text[i] === '[' || text[i] === '{') && closed-- === 0) return { start: i, end: i + 1 };
  }
  return undefined;
}

/** Where YAML is broken, what follows from it on the same and the next line is not told: mending one mends all. */
function withoutConsequences(errors: readonly Problem[], text: string): Problem[] {
  const lineOf = (p: Problem): number => text.slice(0, p.span.start).split('\n').length;
  const told: Problem[] = [];
  for (const error of errors) {
    const last = told.at(-1);
    if (!last || lineOf(error) > lineOf(last) + 1) told.push(error);
  }
  return told;
}

const IS_STRUCTURE: readonly ProblemCode[] = ['yaml-syntax', 'yaml-tab', 'yaml-indent'];

/** Whether the tree may be another than the writer had in mind, so that keys may seem to be missing or out of place. */
export const isTorn = ({ problems }: YamlText): boolean => problems.some((p) => IS_STRUCTURE.includes(p.code));

export function parseYaml(text: string): YamlText {
  const document = parseDocument(text, { prettyErrors: false, uniqueKeys: true, stringKeys: true, version: '1.2' });
  const aliases: Problem[] = [];
  visit(document, {
    Alias(_, node) {
      if (node.range) aliases.push(aliasProblem(node.range));
    },
  });
  const errors = document.errors.map((error) => problemOf(error, text));
  const problems = [...aliases, ...errors].sort((a, b) => a.span.start - b.span.start);
  return { text, document, problems: withoutConsequences(problems, text) };
}

const aliasProblem = (range: readonly number[]): Problem => ({
  code: 'yaml-alias',
  span: spanOf([range[0]!, range[1]!]),
  message: 'a word that begins with * is a reference in YAML, and lessons have none',
  hint: 'put the text in double quotes',
});

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

/** Where the value at a path stands; of a value that is missing, the key that should have it, or the table it belongs in. */
export function spanAt(yaml: YamlText, path: Path): Span {
  const node = nodeAt(yaml, path);
  if (node?.range && node.range[1] > node.range[0]) return trimmed(yaml.text, node.range[0], node.range[1]);
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
  return range ? spanOf([range[0], range[1]]) : undefined;
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
  if (node?.type === 'QUOTE_DOUBLE' && source.slice(start).includes('\\')) return () => start;
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
  return (offset) => offsets[offset] ?? (offsets.length > 0 ? offsets.at(-1)! + 1 : start);
}
