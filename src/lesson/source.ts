/** The text of a lesson file, and where in it things stand. */
import type { Severity } from '../text/problem-kind.ts';
import { type Problem, type Span, severityOf } from './problem.ts';

/** A file's text, and where its lines begin. */
export interface Source {
  /** As it was named to us, for messages. */
  readonly file: string;
  readonly text: string;
  /** Offset of the start of each line: found once, asked for every problem. */
  readonly lineStarts: readonly number[];
}

/** A text as a source of problems; `file` as it is to be named in messages. */
export function sourceOf(file: string, text: string): Source {
  const lineStarts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) lineStarts.push(at + 1);
  return { file, text, lineStarts };
}

/** A problem with its place: what `check --json` prints. Lines and columns from 1, columns in UTF-16 units. */
export interface PlacedProblem {
  readonly severity: Severity;
  readonly code: Problem['code'];
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly message: string;
  readonly hint: string;
}

/** Line and column, from 1, of an offset. */
export function positionAt({ lineStarts }: Source, offset: number): { line: number; column: number } {
  let low = 0;
  let high = lineStarts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (lineStarts[middle]! <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: offset - lineStarts[low]! + 1 };
}

/** With line and column, from 1, in place of offsets. */
export function placeProblem(problem: Problem, source: Source): PlacedProblem {
  const { line, column } = positionAt(source, problem.span.start);
  const { code, message, hint } = problem;
  return { severity: severityOf(problem), code, file: source.file, line, column, message, hint };
}

/** How much of a line is shown before and in all. */
const BEFORE = 60;
const SHOWN = 100;

/** The line of a problem with carets below the place; none for a problem of the whole file. */
export function excerpt({ start, end }: Span, source: Source): string[] {
  const { line, column } = positionAt(source, start);
  const next = source.lineStarts[line] ?? source.text.length + 1;
  const text = source.text.slice(source.lineStarts[line - 1]!, next - 1).replace(/\r$/, '');
  if (text.trim() === '') return [];
  const from = Math.max(0, column - BEFORE);
  const shown = text.slice(from, from + SHOWN);
  const size = Math.max(1, Math.min(end - start, text.length - column + 1, from + SHOWN - column + 1));
  const gutter = String(line).padStart(4);
  const pad = shown.slice(0, column - 1 - from).replace(/[^\t]/g, ' ');
  return [`${gutter} | ${shown}`, `${' '.repeat(gutter.length)} | ${pad}${'^'.repeat(size)}`];
}
