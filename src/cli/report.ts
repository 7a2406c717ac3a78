/** Problems as text for people. */

import type { Problem } from '../lesson/problem.ts';
import { excerpt, type PlacedProblem, placeProblem, type Source } from '../lesson/source.ts';
import type { Io } from './io.ts';

/** https://no-color.org: any value that is not empty turns colours off. */
const usesColour = (io: Io): boolean => io.terminal && !io.env['NO_COLOR'];

const PAINT = { error: '31', warning: '33', hint: '36' } as const;

/** A problem as it is shown: the place, what is wrong, the line with carets, what would be right. */
export function problemText(problem: PlacedProblem, lines: readonly string[], io: Io): string {
  const { severity, code, file, line, column, message, hint } = problem;
  const word = usesColour(io) ? `\u001b[${PAINT[severity]}m${severity}\u001b[0m` : severity;
  return [`${file}:${line}:${column}: ${word}: ${message} [${code}]`, ...lines, `     = ${hint}`, ''].join('\n');
}

export const problemTextIn = (problem: Problem, source: Source, io: Io): string =>
  problemText(placeProblem(problem, source), excerpt(problem.span, source), io);

export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** Tells on a terminal which of many files is being worked on, on one line that is wiped at the end. */
export function progress(io: Io, total: number, silent: boolean): (file: string | undefined) => void {
  if (!io.terminal || silent || total < 2) return () => undefined;
  let done = 0;
  return (file) => io.err(file === undefined ? '\r\u001b[K' : `\r\u001b[K${++done} of ${total}: ${file}`);
}
