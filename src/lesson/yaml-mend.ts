/**
 * Reading on after YAML is broken: the line at fault is changed so that the rest can be read and the next fault found.
 * What is then said of the changed lines, apart from the fault itself, is not told.
 */
import { type Document, parseDocument } from 'yaml';
import type { Problem, Span } from './problem.ts';
import { positionAt, type Source, sourceOf } from './source.ts';
import { tooDeepAt } from './yaml-depth.ts';
import { isStructural, yamlProblems } from './yaml-errors.ts';

export interface MendedYaml {
  readonly source: Source;
  /** The text as read in the end. Its lines are those of the source, some changed. */
  readonly text: string;
  readonly document: Document.Parsed;
  /** With spans in the source. */
  readonly problems: readonly Problem[];
  /** Lines changed, from 0. */
  readonly mended: ReadonlySet<number>;
  /** From an offset in `text` to one in the source. */
  readonly toSource: (offset: number) => number;
}

/** More faults than one mends at a time; each costs a parse. */
const MOST_MENDS = 30;

const indentOf = (line: string): number => /^ */.exec(line)![0].length;

/** Where keys of the lines before stand, that of a list's item and that of its content. */
function indentsBefore(lines: readonly string[], at: number): number[] {
  const found = new Set<number>();
  for (const line of lines.slice(Math.max(0, at - 12), at)) {
    if (line.trim() === '') continue;
    found.add(indentOf(line));
    found.add(/^ *(?:- +)*/.exec(line)![0].length);
  }
  return [...found];
}

/** Nothing that could be read as turns. */
const filler = (text: string): string => text.replace(/\S/g, 'q');

/** The line at `at` without the fault that was found at `column` of it. */
function mendedLine(lines: readonly string[], at: number, column: number, { code, message }: Problem): string {
  const line = lines[at]!;
  const before = line.slice(0, column);
  const rest = line.slice(column);
  if (code === 'yaml-alias') return `${before}_${rest.slice(1)}`;
  if (code === 'yaml-space') return `${before}${rest[0]} ${rest.slice(1)}`;
  // The brackets of a list around a quote stay.
  if (code === 'yaml-quote') return before + rest.replace(/[^\s\],}]/g, 'q');
  if (code === 'yaml-sign' || /bracket/.test(message)) return before + filler(rest);
  if (code === 'yaml-indent') {
    const own = indentOf(line);
    const below = lines.slice(at + 1).find((next) => next.trim() !== '');
    // What stands under a key is deeper than the key.
    const most = below !== undefined && /(:|[|>][+-]?)\s*$/.test(line) ? indentOf(below) : Number.POSITIVE_INFINITY;
    const fitting = indentsBefore(lines, at).filter((indent) => indent < most);
    const near = fitting.sort((a, b) => Math.abs(a - own) - Math.abs(b - own) || b - a)[0];
    if (near !== undefined && near !== own && Math.abs(near - own) <= 3) return ' '.repeat(near) + line.trimStart();
  }
  if (/second ":"/.test(message)) return before + rest.replaceAll(': ', '; ');
  return `#${line.slice(1)}`;
}

/** Tabs are told once: an editor that sets them sets them on every line. */
const withoutTabs = (line: string): string => line.replace(/^[ \t]*/, (indent) => indent.replaceAll('\t', '  '));

/** Between a text and the source, whose lines it has, some of them changed. */
function mapping(
  text: string,
  source: Source,
): { lineAt: (offset: number) => number; toSource: MendedYaml['toSource'] } {
  const mended = sourceOf('', text);
  const lineAt = (offset: number): number => positionAt(mended, offset).line - 1;
  const lengthOf = ({ lineStarts, text: whole }: Source, line: number): number =>
    (lineStarts[line + 1] ?? whole.length + 1) - 1 - lineStarts[line]!;
  /** Changes of indent and spaces put in move the rest of a line; all others keep its length. */
  const toSource = (offset: number): number => {
    const line = lineAt(offset);
    const size = lengthOf(source, line);
    const shift = lengthOf(mended, line) - size;
    const column = offset - mended.lineStarts[line]! - shift;
    return source.lineStarts[line]! + Math.min(Math.max(column, 0), size);
  };
  return { lineAt, toSource };
}

const TOO_DEEP = {
  code: 'yaml-syntax',
  message: 'here lists and tables stand too deep in each other',
  hint: 'close brackets where their list ends, and begin lines less far to the right',
} as const;

export function mendYaml(source: Source): MendedYaml {
  const lines = source.text.split('\n');
  const mended = new Set<number>();
  const told: Problem[] = [];
  let isMeasured = false;
  for (;;) {
    const text = lines.join('\n');
    const { lineAt, toSource } = mapping(text, source);
    const inSource = (problem: Problem): Problem => ({ ...problem, span: spanInSource(problem.span, toSource) });
    const deep = isMeasured ? undefined : tooDeepAt(text);
    isMeasured = true;
    if (deep !== undefined) {
      const problems = [...told, inSource({ ...TOO_DEEP, span: { start: deep, end: deep + 1 } })];
      return { source, text: '', document: parseDocument(''), mended: new Set(), problems, toSource: (at) => at };
    }
    const document = parseDocument(text, { prettyErrors: false, uniqueKeys: false, stringKeys: true, version: '1.2' });
    const problems = yamlProblems(document, text);
    const broken = problems.find((p) => isStructural(p) && !mended.has(lineAt(p.span.start)));
    if (!broken || told.length === MOST_MENDS) {
      const rest = problems.filter((p) => !isStructural(p)).map(inSource);
      return { source, text, document, problems: [...told, ...rest], mended, toSource };
    }
    told.push(inSource(broken));
    const at = lineAt(broken.span.start);
    const column = broken.span.start - (text.lastIndexOf('\n', broken.span.start - 1) + 1);
    mended.add(at);
    if (/second document/.test(broken.message)) lines.fill('', at);
    else if (broken.code === 'yaml-tab') {
      // Lines that are indented can stand in each other.
      isMeasured = false;
      lines.forEach((line, i) => {
        lines[i] = withoutTabs(line);
      });
    } else lines[at] = mendedLine(lines, at, column, broken);
  }
}

export const spanInSource = ({ start, end }: Span, toSource: MendedYaml['toSource']): Span => {
  const from = toSource(start);
  return { start: from, end: Math.max(from + 1, toSource(end)) };
};
