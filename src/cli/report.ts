/** Messages for people. */
import { severityOf } from '../lesson/problem.ts';
import { excerpt, placeProblem } from '../lesson/source.ts';
import type { Io } from './io.ts';
import type { Found } from './load-files.ts';

/** https://no-color.org: any value that is not empty turns colours off. */
const usesColour = (io: Io): boolean => io.terminal && !io.env['NO_COLOR'];

const PAINT = { error: '31', warning: '33', hint: '36' } as const;

/** More than anyone reads at once; a file that is no lesson can have ten thousands. */
const MOST_SHOWN = 100;

/** What a lesson or the name of a file holds must not steer the terminal, nor turn the direction of its writing. */
export const harmless = (text: string): string =>
  text.replace(/(?!\t)[\p{Cc}\p{Cf}]/gu, (sign) => {
    const number = sign.codePointAt(0)!.toString(16);
    return number.length > 2 ? `\\u{${number}}` : `\\x${number.padStart(2, '0')}`;
  });

/** The place, what is wrong, the line with carets, what would be right. */
function problemText({ problem, source }: Found, io: Io): string {
  const { severity, code, file, line, column, message, hint } = placeProblem(problem, source);
  const word = usesColour(io) ? `\u001b[${PAINT[severity]}m${severity}\u001b[0m` : severity;
  const lines = excerpt(problem.span, source).map(harmless);
  return [
    `${harmless(file)}:${line}:${column}: ${word}: ${harmless(message)} [${code}]`,
    ...lines,
    `     = ${harmless(hint)}`,
    '',
  ].join('\n');
}

/** Hints of one kind: more of them are no longer a hint. */
const MOST_ALIKE = 3;

/** Errors and warnings as they stand in the file, and of each kind of hint the first few. */
export function tell(found: readonly Found[], io: Io): void {
  const alike = new Map<string, number>();
  const shown = found.filter(({ problem }) => {
    const before = alike.get(problem.code) ?? 0;
    alike.set(problem.code, before + 1);
    return severityOf(problem) !== 'hint' || before < MOST_ALIKE;
  });
  for (const one of shown.slice(0, MOST_SHOWN)) io.err(`${problemText(one, io)}\n`);
  if (shown.length > MOST_SHOWN) io.err(`… and ${shown.length - MOST_SHOWN} more\n\n`);
  const hidden = found.length - shown.length;
  if (hidden > 0) io.err(`… and ${counted(hidden, 'hint')} of these kinds more; --json gives all\n\n`);
}

export const countErrors = (found: readonly Found[]): number =>
  found.filter(({ problem }) => severityOf(problem) === 'error').length;

export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** Tells on a terminal which of many files is being worked on, on one line that is wiped at the end. */
export function progress(io: Io, total: number, silent: boolean): (file: string | undefined) => void {
  if (!io.terminal || silent || total < 2) return () => undefined;
  let done = 0;
  return (file) => io.err(file === undefined ? '\r\u001b[K' : `\r\u001b[K${++done} of ${total}: ${file}`);
}
