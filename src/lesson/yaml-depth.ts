/**
 * How deep lists and tables of a YAML text stand in each other. The library descends into them by calls, and what is deep
 * enough ends the process where no error can be caught. Its parser keeps a stack of what is open, and descends only where
 * that is closed: here it is stopped before.
 */
import { Lexer, Parser } from 'yaml';

/** Far more than any of our formats has. */
const DEEPEST = 100;

/**
 * More than which nothing can stand in each other: each bracket opens one at most; each column of an indent a list and a
 * table; and each dash, question mark or colon of a line one.
 */
function deepestPossible(text: string): number {
  const brackets = text.match(/[[{]/g)?.length ?? 0;
  const onLine = (line: string): number => 2 * (/^ */.exec(line)![0].length + 1) + (line.match(/[-?:]/g)?.length ?? 0);
  return text.split('\n').reduce((most, line) => Math.max(most, brackets + onLine(line)), 0);
}

/** Where the first list or table stands that is too deep; undefined in texts that can be read. */
export function tooDeepAt(text: string): number | undefined {
  // Most texts need not be read twice.
  if (deepestPossible(text) <= DEEPEST) return undefined;
  const parser = new Parser();
  for (const lexeme of new Lexer().lex(text)) {
    for (const _ of parser.next(lexeme));
    // Below them stand the document and its own list or table.
    const deep = parser.stack[DEEPEST + 2];
    if (deep && 'offset' in deep) return deep.offset;
  }
  return undefined;
}
