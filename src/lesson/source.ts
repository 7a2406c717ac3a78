/** The text of a lesson file, and where in it things stand. */
import { type Problem, type Severity, type Span, severityOf } from './problem.ts';

export interface Source {
  /** As it was named to us, for messages. */
  readonly file: string;
  readonly text: string;
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
export function positionAt(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset);
  const line = before.split('\n').length;
  return { line, column: offset - (before.lastIndexOf('\n') + 1) + 1 };
}

export function placeProblem(problem: Problem, source: Source): PlacedProblem {
  const { line, column } = positionAt(source.text, problem.span.start);
  const { code, message, hint } = problem;
  return { severity: severityOf(problem), code, file: source.file, line, column, message, hint };
}

/** The line of a problem with carets below the place; empty for a problem of the whole file. */
export function excerpt(span: Span, source: Source): string[] {
  const { line, column } = positionAt(source.text, span.start);
  const text = (source.text.split('\n')[line - 1] ?? '').replace(/\r$/, '');
  if (text.trim() === '') return [];
  const from = Math.max(0, column - 60);
  const shown = text.slice(from, from + 100);
  const size = Math.max(1, Math.min(span.end - span.start, text.length - column + 1, from + 100 - column + 1));
  const gutter = String(line).padStart(4);
  const pad = shown.slice(0, column - 1 - from).replace(/[^\t]/g, ' ');
  return [`${gutter} | ${shown}`, `${' '.repeat(gutter.length)} | ${pad}${'^'.repeat(size)}`];
}
