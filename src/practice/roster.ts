/**
 * A roster: a table of students, one a line, in the order in which they sit. The first line has the headings: code or
 * initials, cross, front, scheme, hand, level, in any order, each of them optional. A field left empty is as the lesson
 * has it.
 */
import { COLOURS, type FaceColours, isWrongScheme, readScheme, SCHEME_HINT, schemeWords } from '../cube/colours.ts';
import { LEADING_HANDS } from '../lesson/leading-hand.ts';
import { LEVELS, type Level } from '../lesson/practice.ts';
import type { Problem, ProblemCode, Span } from '../lesson/problem.ts';
import type { Source } from '../lesson/source.ts';
import type { Variation } from '../lesson/vary.ts';
import { readCsv } from '../text/csv.ts';
import { likelyWord, listed } from '../text/likely.ts';
import { likeNames, namesSaid } from '../text/names.ts';

/** A student: a line of the table, with places in it. */
export interface RosterRow {
  readonly code: string | undefined;
  /** What the lesson has to become for this student. */
  readonly variation: Variation;
  readonly level: Level | undefined;
  readonly span: Span;
  readonly codeSpan: Span;
  /** Of the colours, to tell of a hold that cannot be. */
  readonly holdSpan: Span;
}

/** With any problem that is an error the rows are not whole. */
export interface Roster {
  readonly rows: readonly RosterRow[];
  readonly problems: readonly Problem[];
}

const COLUMNS = ['code', 'initials', 'cross', 'front', 'scheme', 'hand', 'level'] as const;
type Column = (typeof COLUMNS)[number];
/** Printed at the top of a paper, beside its own code. */
const LONGEST_CODE = 24;

interface Cell {
  readonly text: string;
  readonly span: Span;
}
type Line = readonly Cell[];

const isBare = (line: Line): boolean => line.every(({ text }) => text === '');

const about = (span: Span, code: ProblemCode, message: string, hint: string): Problem => ({
  code,
  span,
  message,
  hint,
});

function linesOf({ text }: Source, problems: Problem[]): Line[] {
  const lines = readCsv(text).rows.flatMap(({ cells, quotes, places }): Line[] => {
    for (const { at } of quotes.slice(0, 1)) {
      const message = 'a quote is never closed, or goes on after its end';
      problems.push(
        about({ start: at, end: at + 1 }, 'roster-unreadable', message, 'put the whole field in quotes, or none of it'),
      );
    }
    const spans = places();
    const whole = { start: spans[0]!.start, end: spans.at(-1)!.end };
    const line = cells.map((field, i) => ({ text: field.trim(), span: spans[i] ?? whole }));
    // A student with whom all is as usual has empty fields; a line without fields is none.
    return line.length > 1 || line[0]!.text !== '' ? [line] : [];
  });
  // Empty lines at the end are what a spreadsheet adds, but where no student has anything in a field.
  if (lines.slice(1).every(isBare)) return lines;
  return lines.slice(0, lines.findLastIndex((line) => !isBare(line)) + 1);
}

function columnsOf(head: Line, problems: Problem[]): (Column | undefined)[] {
  const found: (Column | undefined)[] = [];
  for (const { text, span } of head) {
    const word = text.toLowerCase();
    const column = COLUMNS.find((c) => c === word);
    const isThere = found.includes(column) || (isCode(column) && found.some(isCode));
    if (column === undefined && word !== '') {
      const likely = likelyWord(word, COLUMNS);
      const hint = likely ? `"${likely}" was likely meant` : `the columns are ${listed(COLUMNS)}`;
      problems.push(about(span, 'roster-column', `there is no column "${text}"`, hint));
    } else if (column !== undefined && isThere) {
      problems.push(
        about(
          span,
          'roster-column',
          `a second column says whose a paper is or what "${text}" says`,
          'keep one of them',
        ),
      );
    }
    found.push(column);
  }
  return found;
}

const isCode = (column: Column | undefined): boolean => column === 'code' || column === 'initials';

function rowOf(line: Line, columns: readonly (Column | undefined)[], problems: Problem[]): RosterRow {
  const refuse = (span: Span, message: string, hint: string): undefined => {
    problems.push(about(span, 'roster-value', message, hint));
  };
  const placeOf = (...names: readonly Column[]): Cell | undefined =>
    line.find((_, i) => columns[i] !== undefined && names.includes(columns[i]));
  const cell = (...names: readonly Column[]): Cell | undefined => {
    const found = placeOf(...names);
    return found?.text === '' ? undefined : found;
  };
  const wordOf = <T extends string>(what: Column, known: readonly T[]): T | undefined => {
    const said = cell(what);
    const found = said && known.find((k) => k === said.text.toLowerCase());
    return said && (found ?? refuse(said.span, `${what} cannot be "${said.text}"`, `write ${listed(known)}`));
  };
  const schemeOf = ({ text, span }: Cell): FaceColours | undefined => {
    const read = readScheme(schemeWords(text));
    return isWrongScheme(read) ? refuse(span, read.wrong, SCHEME_HINT) : read;
  };
  const codeOf = ({ text, span }: Cell): string | undefined => {
    if (text.length <= LONGEST_CODE && !/[\p{Cc}]/u.test(text)) return text;
    const message = `a code has at most ${LONGEST_CODE} characters, in one line`;
    return refuse(span, message, 'use initials or a number');
  };
  const beyond = line.slice(columns.length).find(({ text }) => text !== '');
  if (beyond) {
    const message = `"${beyond.text}" stands under no heading`;
    refuse(beyond.span, message, 'give the column a heading, or put the field in quotes');
  }
  const cross = wordOf('cross', COLOURS);
  const front = wordOf('front', COLOURS);
  const hand = wordOf('hand', LEADING_HANDS);
  const scheme = cell('scheme') && schemeOf(cell('scheme')!);
  const code = cell('code', 'initials');
  const whole = { start: line[0]!.span.start, end: line.at(-1)!.span.end };
  return {
    code: code && codeOf(code),
    variation: { ...(cross && { cross }), ...(front && { front }), ...(hand && { hand }), ...(scheme && { scheme }) },
    level: wordOf('level', LEVELS),
    span: whole,
    codeSpan: placeOf('code', 'initials')?.span ?? whole,
    holdSpan: (cell('front') ?? cell('cross'))?.span ?? whole,
  };
}

/** Papers told apart by nothing but their own code are handed to the wrong student. */
function codesTwice(rows: readonly RosterRow[]): Problem[] {
  // Capitals are lost where answers are written down.
  const keys = rows.map(({ code }) => code?.toLowerCase());
  const hint = 'give each student a code of their own; capitals do not count';
  return rows.flatMap(({ code, span }, i) =>
    code === undefined || keys.indexOf(keys[i]) === i
      ? []
      : [about(span, 'roster-twice', `"${code}" is here twice`, hint)],
  );
}

/** Told once, at the first of them. */
function namesIn(rows: readonly RosterRow[]): Problem[] {
  const isName = ({ code = '' }: RosterRow): boolean => likeNames([code]) > 0;
  const named = rows.filter(isName);
  if (named.length === 0) return [];
  const message = `${namesSaid(named.length)}, which would be printed on the papers`;
  return [about(named[0]!.codeSpan, 'roster-names', message, 'give codes or initials')];
}

/** Whatever is wrong is told together, each with its place. */
export function readRoster(source: Source): Roster {
  const problems: Problem[] = [];
  const [head, ...lines] = linesOf(source, problems);
  const start = { start: 0, end: 0 };
  if (!head || lines.length === 0) {
    const message = head ? 'there are headings here and no students' : 'the roster is empty';
    problems.push(
      about(start, 'roster-unreadable', message, 'write a line of headings, code,cross,hand, and a line a student'),
    );
    return { rows: [], problems };
  }
  const columns = columnsOf(head, problems);
  // Under headings that are not known nothing can be read.
  if (problems.length > 0) return { rows: [], problems };
  const rows = lines.map((line) => rowOf(line, columns, problems));
  problems.push(...codesTwice(rows), ...namesIn(rows));
  return { rows, problems };
}
