/**
 * Patterns against texts that are made to slow them down: signs out of each pattern, and short pairs, repeated. A pattern
 * that tries every beginning against every end takes seconds for them, one that tries every way to part them takes for ever.
 * A virtual machine ends each try, so that such a pattern fails here and hangs nothing.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import vm from 'node:vm';
import ts from 'typescript';
import { expect, it } from 'vitest';
import { LONGEST_ANSWER, LONGEST_CODE } from '../src/marking/limits.ts';

/** Files whose patterns see only texts that are cut before, and how long those can be. */
const BOUNDED: Readonly<Record<string, number>> = {
  'marking/mark-choice.ts': LONGEST_ANSWER,
  'marking/spelling.ts': LONGEST_ANSWER,
  'marking/submission.ts': 200,
  'marking/resolve.ts': 3 * LONGEST_CODE,
};
const LONG = 20_000;
/** Milliseconds. Linear patterns take about one, those that grow with the square some hundreds. */
const MOST = 150;

const folder = new URL('../src/', import.meta.url);

/** The patterns of a file that repeat anything; its words are our own. */
function patternsIn(file: string): string[] {
  const found: string[] = [];
  const walk = (node: ts.Node): void => {
    if (ts.isRegularExpressionLiteral(node) && /[*+{]/.test(node.text)) found.push(node.text);
    ts.forEachChild(node, walk);
  };
  walk(ts.createSourceFile(file, readFileSync(new URL(file, folder), 'utf8'), ts.ScriptTarget.Latest, true));
  return found;
}

const PAIRS = [' \n', '#\n', '#\n\n', '- ', 'a ', '0a', '""', 'Aa '];

const context = vm.createContext({});
const script = new vm.Script('text.replace(pattern, "")');

/** Whether a pattern is done with a text in time; what the machine does meanwhile can delay it, but hardly thrice. */
function isQuick(pattern: RegExp, text: string): boolean {
  Object.assign(context, { pattern, text });
  for (let tries = 0; tries < 3; tries++) {
    try {
      script.runInContext(context, { timeout: MOST });
      return true;
    } catch {}
  }
  return false;
}

/** The text that a pattern, as written, is slow on. */
function slowOn(written: string, longest: number): string | undefined {
  const end = written.lastIndexOf('/');
  const pattern = new RegExp(written.slice(1, end), [...new Set(`${written.slice(end + 1)}g`)].join(''));
  const signs = new Set([' ', '\n', 'a', 'A', '0', '-', "'", ...written.replaceAll(/[^ -~]|[\\^$*+?()|]/g, '')]);
  for (const pump of [...signs, ...PAIRS]) {
    const many = pump.repeat(longest / pump.length);
    for (const text of [`${many}\u0001`, `R6${many}a`]) {
      if (!isQuick(pattern, text)) return JSON.stringify(text.slice(0, 40));
    }
  }
  return undefined;
}

it('no pattern is slow on any text that it may see', () => {
  const files = (readdirSync(fileURLToPath(folder), { recursive: true }) as string[])
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.ts') && !file.startsWith('words/'));
  const patterns = files.flatMap((file) => patternsIn(file).map((pattern) => ({ file, pattern })));
  expect(patterns.length).toBeGreaterThan(80);
  const slow = patterns.flatMap(({ file, pattern }) => {
    const text = slowOn(pattern, BOUNDED[file] ?? LONG);
    return text === undefined ? [] : [`${file}: ${pattern} on ${text}`];
  });
  expect(slow).toEqual([]);
});

it('tells patterns that are slow', () => {
  expect(slowOn(String.raw`/^(?:\s*(?:#.*)?\n)*(%.*)/`, LONG)).toBeDefined();
  expect(slowOn(String.raw`/\s+$/`, LONG)).toBeDefined();
  expect(slowOn(String.raw`/(?<!\s)\s+$/`, LONG)).toBeUndefined();
});
