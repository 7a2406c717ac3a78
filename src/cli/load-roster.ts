/** A roster named on the command line -> students, each with the lesson as it is for them. */
import { missingGlyphs } from '../layout/fonts.ts';
import type { Loaded } from '../lesson/load.ts';
import { type Problem, severityOf } from '../lesson/problem.ts';
import type { Outcome, ProvedLesson } from '../lesson/prove.ts';
import { sourceOf } from '../lesson/source.ts';
import { editionSuffix, type Variation } from '../lesson/vary.ts';
import type { Student } from '../practice/papers.ts';
import { type RosterRow, readRoster } from '../practice/roster.ts';
import { decode } from '../text/decode.ts';
import { readBytes } from './files.ts';
import type { Io } from './io.ts';
import type { Earlier } from './load-earlier.ts';
import { type Found, unreadable } from './load-files.ts';

/** A lesson as it is for some of the students. */
export interface Edition {
  readonly variation: Variation;
  readonly proved: ProvedLesson;
  /** How many students have it. */
  readonly copies: number;
}

export interface LoadedRoster {
  /** As many as there are rows, if nothing is wrong. */
  readonly students: readonly Student[];
  readonly found: readonly Found[];
  /** In the order in which the roster first has them. */
  readonly editions?: readonly Edition[];
}

/** Codes that no font of the page has all signs of, each at its place. */
function unprintable(rows: readonly RosterRow[]): Problem[] {
  return rows.flatMap(({ code = '', codeSpan: span }) => {
    const missing = [...new Set([...missingGlyphs('sans', code), ...missingGlyphs('sans-strong', code)])];
    if (missing.length === 0) return [];
    const message = `the fonts of the page have no ${missing.map((sign) => `"${sign}"`).join(', ')}`;
    return [{ code: 'print-glyph-missing' as const, span, message, hint: 'give the student another code' }];
  });
}

const isHold = ({ code }: Problem): boolean => code === 'variation-impossible';

/** `variation` is what the command asks for all; what a row says goes before it. */
export async function loadRoster(
  file: string,
  { proved, source, again }: Loaded,
  variation: Variation,
  earlier: Earlier,
  io: Io,
): Promise<LoadedRoster> {
  const bytes = await readBytes(io.folder, file);
  if ('unreadable' in bytes) return { students: [], found: [unreadable(file, bytes)] };
  const roster = sourceOf(file, decode(bytes).text);
  const { rows, problems } = readRoster(roster);
  const found: Found[] = [...problems, ...unprintable(rows)].map((problem) => ({ problem, source: roster }));
  if (!proved) return { students: [], found };
  if (!proved.lesson.practice) {
    const message = 'a roster is given, and the lesson asks for no practice';
    const hint = 'add to it: practice: { items: { solve: 6 } }';
    found.push({ problem: { code: 'practice-missing', span: { start: 0, end: 0 }, message, hint }, source });
    return { students: [], found };
  }
  const students: Student[] = [];
  const outcomes = new Map<string, Outcome>();
  const editions = new Map<string, Edition>();
  const outcomeFor = (row: RosterRow): Outcome => {
    const wanted = { ...variation, ...row.variation };
    const key = JSON.stringify(wanted);
    const known = outcomes.get(key);
    if (known) return known;
    const outcome = again(wanted);
    outcomes.set(key, outcome);
    // Once for all students of one variation; a hold that cannot be is told of each row.
    for (const problem of outcome.problems) {
      const isTold = found.some((f) => f.problem.code === problem.code && f.problem.span.start === problem.span.start);
      if (!isHold(problem) && !isTold) found.push({ problem, source });
    }
    return outcome;
  };
  for (const row of rows) {
    const outcome = outcomeFor(row);
    const impossible = outcome.problems.find(isHold);
    if (impossible) {
      const { message, hint } = impossible;
      found.push({ problem: { code: 'roster-hold', span: row.holdSpan, message, hint }, source: roster });
    }
    if (!outcome.proved) continue;
    const wanted = { ...variation, ...row.variation };
    const suffix = editionSuffix(wanted);
    const copies = (editions.get(suffix)?.copies ?? 0) + 1;
    editions.set(suffix, { variation: wanted, proved: outcome.proved, copies });
    students.push({ code: row.code, proved: outcome.proved, level: row.level, earlier: earlier.as(wanted) });
  }
  return {
    students: found.some((f) => severityOf(f.problem) === 'error') ? [] : students,
    found,
    editions: [...editions.values()],
  };
}
