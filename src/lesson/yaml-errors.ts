/** What YAML itself finds wrong, in the words of a coach. */
import { type Document, isAlias, isNode, isScalar, visit, type YAMLError } from 'yaml';
import type { Problem, Span } from './problem.ts';

type Told = Pick<Problem, 'code' | 'message' | 'hint'>;

const INDENT: Told = {
  code: 'yaml-indent',
  message: 'this line does not line up with the lines around it',
  hint: 'give keys of one table the same number of spaces',
};

const TOLD: Partial<Record<YAMLError['code'], Told>> = {
  TAB_AS_INDENT: { code: 'yaml-tab', message: 'a tab at the start of the line', hint: 'indent with spaces' },
  BAD_INDENT: INDENT,
  MULTILINE_IMPLICIT_KEY: {
    code: 'yaml-syntax',
    message: 'a key without ":" and a value',
    hint: 'write "key: value"; a text of several lines begins with "|" after the key',
  },
  BAD_SCALAR_START: {
    code: 'yaml-sign',
    message: 'a text cannot begin with this sign',
    hint: 'put the text in double quotes, or begin it on the next line after "|"',
  },
  MULTIPLE_DOCS: {
    code: 'yaml-syntax',
    message: 'a second document begins here',
    hint: 'one lesson a file: take the line --- out',
  },
};

const QUOTE: Told = {
  code: 'yaml-quote',
  message: 'the quote that begins here does not end where the text does',
  hint: "leave the quotes out (R U R' needs none), or put double quotes around the whole",
};

const spanAt = (start: number, size = 1): Span => ({ start, end: start + size });

const lineStart = (text: string, offset: number): number => text.lastIndexOf('\n', offset - 1) + 1;

const lineBefore = (text: string, offset: number): string => text.slice(lineStart(text, offset), offset);

/** From an offset to the end of its line. */
function restOfLine(text: string, offset: number): string {
  const end = text.indexOf('\n', offset);
  return text.slice(offset, end < 0 ? text.length : end);
}

/** The bracket before an offset that nothing closes. */
function openBracket(text: string, before: number): number | undefined {
  let closed = 0;
  for (let i = before - 1; i >= 0; i--) {
    if (text[i] === ']' || text[i] === '}') closed++;
    if ((text[i] === '[' || text[i] === '{') && closed-- === 0) return i;
  }
  return undefined;
}

/** The quote that opens a value on the line of an offset: after a key, a dash, a bracket or a comma. */
function openQuote(text: string, offset: number): number | undefined {
  const start = lineStart(text, offset);
  const found = /(?:^\s*(?:- +)*|: +|- +|[[,{] *)(['"])/.exec(restOfLine(text, start));
  return found ? start + found.index + found[0].length - 1 : undefined;
}

/** The indent of the first line from `at` on that is neither blank nor a comment; undefined if there is none. */
function indentFrom(text: string, at: number): Span | undefined {
  for (let start = at; start < text.length; start = text.indexOf('\n', start) + 1 || text.length) {
    const indent = /^ *(?=[^\s#])/.exec(restOfLine(text, start))?.[0];
    if (indent !== undefined) return spanAt(start, Math.max(1, indent.length));
  }
  return undefined;
}

/** Where a line is that does not line up: YAML may tell of the empty line before it, or of those that it puts out of line. */
function outOfLine(error: YAMLError, text: string): Span | undefined {
  const [start] = error.pos;
  const first = indentFrom(text, 0);
  if (/^Unexpected .* at node end/.test(error.message) && lineBefore(text, start) === '' && first) {
    return text[first.start] === ' ' ? first : undefined;
  }
  const isBlank = /^ *\r?\n/.test(text.slice(start)) && lineBefore(text, start).trim() === '';
  return error.code === 'BAD_INDENT' && isBlank ? indentFrom(text, start) : undefined;
}

function problemOf(error: YAMLError, text: string): Problem {
  const [start, end] = error.pos;
  const strayLine = outOfLine(error, text);
  if (strayLine) return { ...INDENT, span: strayLine };
  const message = error.message.split(/ at line \d|\n/)[0]!;
  const span = spanAt(start, Math.max(1, end - start));
  const tight = tightSign(text, start);
  if (tight) return tight;
  const dash = text.indexOf('-', start);
  const isOfLine = TURNS_TAKEN_FOR.includes(error.code) && isTightDash(text, dash) && !text.slice(start, dash).trim();
  if (isOfLine) return { ...TIGHT_DASH, span: spanAt(dash) };
  if (/quote/i.test(message)) return { ...QUOTE, span: spanAt(quoteOfMissing(text, start) ?? start) };
  if (/^Flow /.test(message)) {
    const bracket = openBracket(text, start);
    const hint = 'close it: ] for [ and } for {';
    return { code: 'yaml-syntax', span: spanAt(bracket ?? start), message: 'this bracket is never closed', hint };
  }
  if (error.code === 'BLOCK_AS_IMPLICIT_KEY') {
    const colon = text.indexOf(': ', start);
    const hint = 'put a text that holds ": " in double quotes';
    const second = 'a second ":" where the value should be';
    return { code: 'yaml-syntax', span: spanAt(colon < 0 ? start : colon), message: second, hint };
  }
  if (/^Sequence item without/.test(message)) return { ...INDENT, span };
  const strayed = error.code === 'MULTILINE_IMPLICIT_KEY' ? strayedKey(text, start) : undefined;
  if (strayed !== undefined) return { ...INDENT, span: spanAt(strayed) };
  const told = TOLD[error.code];
  const quote = openQuote(text, start);
  // What stands after the end of a quoted text: its quote ended too soon.
  const isAfter = error.code === 'UNEXPECTED_TOKEN' || /^Missing , or :/.test(message);
  if (isAfter && quote !== undefined && quote < start) return { ...QUOTE, span: spanAt(quote) };
  const sign = error.code === 'UNEXPECTED_TOKEN' ? signBefore(text, start) : undefined;
  if (sign !== undefined) return { ...signTold(text[sign]!), span: spanAt(sign) };
  if (error.code === 'BAD_INDENT' && isInText(text, start)) {
    return { ...INDENT, hint: 'the lines of a text stand deeper than its key: two spaces more', span };
  }
  if (/^Implicit map keys need/.test(message)) return { ...TOLD.MULTILINE_IMPLICIT_KEY!, span };
  if (told) return { ...told, span };
  return {
    code: 'yaml-syntax',
    span,
    message: message.charAt(0).toLowerCase() + message.slice(1),
    hint: 'mend the place shown',
  };
}

/** The sign that begins a value on the line of an offset and that YAML takes for its own: `{`, `|`, `>`, `-` and so on. */
function signBefore(text: string, offset: number): number | undefined {
  const start = lineStart(text, offset);
  const found = /^\s*(?:- +)*[\w-]+: +(?=[{[|>@`%-])/.exec(restOfLine(text, start));
  return found ? start + found[0].length : undefined;
}

const signTold = (sign: string): Told => ({
  code: 'yaml-sign',
  message: `a text cannot begin with ${sign}, which has a meaning of its own in YAML`,
  hint: 'put the whole text in double quotes',
});

/** A dash or a colon of a key with no space after it, on the line of an offset or the one before. */
function tightSign(text: string, offset: number): Problem | undefined {
  const start = lineStart(text, lineStart(text, offset) - 1);
  const lines = text.slice(start).split('\n', 2).join('\n');
  const dash = /^ *-(?=[a-z]+:(?: |$))/m.exec(lines);
  const colon =
    /^ *(?:- +)?(?:title|club|course|for|setup|name|slot|watch|turns|remark|part|cross|front|family):(?=[A-Za-z'"{])/m.exec(
      lines,
    );
  const found = dash ?? colon;
  if (!found) return undefined;
  const end = start + found.index + found[0].length;
  return { ...tightTold(found[0].at(-1)!), span: spanAt(end - 1) };
}

const tightTold = (sign: string): Told => ({
  code: 'yaml-space',
  message: `a space is missing after the "${sign}"`,
  hint: `write "${sign} "`,
});

/** Of turns in a list, which YAML takes for a text that begins with the dash, or for more of the text before. */
export const TIGHT_DASH: Told = tightTold('-');

/** As what YAML tells of turns with no space before them. */
const TURNS_TAKEN_FOR: readonly YAMLError['code'][] = ['BAD_INDENT', 'MULTILINE_IMPLICIT_KEY', 'MISSING_CHAR'];

/** Whether a dash that begins a line has turns right behind it. */
export const isTightDash = (text: string, offset: number): boolean =>
  /^-[A-Za-z(]/.test(text.slice(offset, offset + 2)) && lineBefore(text, offset).trim() === '';

/** Whether the line before opens a text of several lines. */
const isInText = (text: string, offset: number): boolean =>
  /[|>][+-]?$/.test(text.slice(0, lineStart(text, offset)).trimEnd());

/** After a line with a key and a value, a key that stands too far to the right is taken for more of the value. */
function strayedKey(text: string, valueStart: number): number | undefined {
  if (!/^\s*(?:- +)*[\w-]+: +$/.test(lineBefore(text, valueStart))) return undefined;
  const next = /\n( +)[\w-]+:(?: |\n)/.exec(text.slice(valueStart));
  return next ? valueStart + next.index + 1 + next[1]!.length : undefined;
}

/** A quote never closed is found at the end of the file: its start is the last value that opens one and does not close it. */
function quoteOfMissing(text: string, at: number): number | undefined {
  for (
    let line = text.lastIndexOf('\n', at - 1);
    line >= -1;
    line = line <= 0 ? -2 : text.lastIndexOf('\n', line - 1)
  ) {
    const quote = openQuote(text, line + 1);
    if (quote === undefined) continue;
    const sign = text[quote]!;
    const rest = restOfLine(text, quote + 1).trimEnd();
    const inside = sign === "'" ? rest.replaceAll("''", '') : rest.replace(/\\./g, '');
    if (!inside.includes(sign)) return quote;
  }
  return undefined;
}

const REFERENCE: Told = {
  code: 'yaml-alias',
  message: 'a word that begins with * or & is a reference in YAML, and lessons have none',
  hint: 'put the text in double quotes',
};

const TAG: Told = {
  code: 'yaml-tag',
  message: 'a word that begins with ! names a type in YAML, and lessons have none',
  hint: 'put the text in double quotes',
};

/** The first line that is neither blank nor a comment. */
function firstLine(text: string): { readonly at: number; readonly line: string } | undefined {
  let at = 0;
  for (const line of text.split('\n')) {
    if (!/^\s*(?:#|$)/.test(line)) return { at, line };
    at += line.length + 1;
  }
  return undefined;
}

/** More than anyone mends before looking again; each is looked for in the text around it. */
const MOST_ERRORS = 100;

/** Keys that stand twice in one table. The library compares each key with all others, which takes long for many. */
function doubleKeys(document: Document.Parsed, text: string): Problem[] {
  const found: Problem[] = [];
  visit(document, {
    Map(_, { items }) {
      const seen = new Set<unknown>();
      for (const { key } of items) {
        if (!isScalar(key) || !key.range) continue;
        if (seen.has(key.value) && found.length < MOST_ERRORS) found.push(doubleKey(key.range[0], key.range[1], text));
        seen.add(key.value);
      }
    },
  });
  return found;
}

const doubleKey = (start: number, end: number, text: string): Problem => ({
  code: 'yaml-duplicate-key',
  message: 'this key stands twice',
  hint: /^ +$/.test(lineBefore(text, start))
    ? 'keep one of the two; or, if a new case begins here, write "- " before it'
    : 'keep one of the two',
  span: spanAt(start, Math.max(1, end - start)),
});

/** References and tags, which YAML allows and lessons do not, and orders to its reader, which stand before everything else. */
function foreignTo(document: Document.Parsed, text: string): Problem[] {
  const found: Problem[] = [];
  visit(document, {
    Node(_, node) {
      if (!isNode(node) || !node.range) return;
      const [start, end] = node.range;
      if (isAlias(node)) {
        found.push({ ...REFERENCE, span: spanAt(start, end - start) });
        return;
      }
      if (node.anchor) found.push({ ...REFERENCE, span: spanAt(text.lastIndexOf('&', start)) });
      const tag = node.tag ? text.lastIndexOf('!', start) : -1;
      if (tag >= 0) found.push({ ...TAG, span: spanAt(tag, start - tag) });
    },
  });
  const message = 'a line that begins with % is an order to YAML';
  const first = firstLine(text);
  if (first?.line.startsWith('%')) found.push({ ...TAG, message, span: spanAt(first.at, first.line.length) });
  return found;
}

/** In the order of the text. */
export function yamlProblems(document: Document.Parsed, text: string): Problem[] {
  const errors = document.errors.slice(0, MOST_ERRORS);
  const problems = [
    ...foreignTo(document, text),
    ...doubleKeys(document, text),
    ...errors.map((error) => problemOf(error, text)),
  ];
  return problems.sort((a, b) => a.span.start - b.span.start);
}

/** Whether the tree may be another than the writer had in mind: not so for a key that stands twice, or a tag. */
export const isStructural = (problem: Problem): boolean => /^yaml-(?!duplicate-key|tag)/.test(problem.code);
