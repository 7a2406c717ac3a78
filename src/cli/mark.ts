/** `turnsheet mark`: submitted turns against the claims of what was printed. */
import { basename, join } from 'node:path';
import { classCsv, jsonRow, unclearMarks } from '../marking/class-table.ts';
import { withKeptMarks } from '../marking/kept-marks.ts';
import { marker } from '../marking/mark.ts';
import { proveClaims } from '../marking/prove-claims.ts';
import { isRight, type MarkedRow, plainSays, type Verdict } from '../marking/submission.ts';
import { LANGUAGES } from '../words/languages.ts';
import { type OutFile, writeAll } from './files.ts';
import type { ExitCode, Io } from './io.ts';
import type { MarkOptions } from './options.ts';
import { counted, harmless } from './report.ts';
import { earlierTable, type FileProblem, gatherSubmissions, nameOfClaims, readClaims } from './submission-files.ts';

const json = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;

function tellProblems(problems: readonly FileProblem[], io: Io): void {
  for (const { severity, file, row, claim, message } of problems) {
    const where = [file, row, claim && `claim ${claim}`].filter((part) => part !== undefined).join(':');
    io.err(`${harmless(`${where}: ${severity}: ${message}`)}\n`);
  }
}

/** A row a line: code, item, verdict, what is said to the student. */
export function rowText(
  { student, paper, item, mark, verdict, says }: MarkedRow,
  widths: readonly number[] = [],
): string {
  const cells = [student || '-', [paper, item].filter((part) => part !== '').join(' ') || '-', verdict];
  const said = mark === '' ? plainSays(says) : `${LANGUAGES.en.marking.marked(mark)} ${plainSays(says)}`;
  return harmless([...cells.map((cell, i) => cell.padEnd(widths[i] ?? 0)), said].join('  ').trimEnd());
}

function asText(rows: readonly MarkedRow[]): string {
  const widths = [0, 1, 2].map((i) => Math.max(0, ...rows.map((row) => rowText(row).split('  ')[i]!.length)));
  return rows.map((row) => `${rowText(row, widths)}\n`).join('');
}

function summary(rows: readonly MarkedRow[]): string {
  const count = (of: (verdict: Verdict) => boolean): number => rows.filter(({ verdict }) => of(verdict)).length;
  const right = count(isRight);
  const parts = [
    `${right} right`,
    `${count((v) => v === 'disturbs' || v === 'other-pair' || v === 'fails')} wrong`,
    ...(['unreadable', 'empty', 'unmatched'] as const)
      .filter((v) => count((w) => w === v) > 0)
      .map((v) => `${count((w) => w === v)} ${v}`),
  ];
  const students = new Set(rows.map(({ student }) => student)).size;
  return `${counted(rows.length, 'answer')} of ${counted(students, 'student')}: ${parts.join(', ')}\n`;
}

/** The written files name no folders: the same class gives the same bytes wherever it lies. */
const withoutFolder = (row: MarkedRow): MarkedRow => ({ ...row, file: basename(row.file) });

export async function mark(options: MarkOptions, io: Io): Promise<ExitCode> {
  const problems: FileProblem[] = [];
  const claims = await readClaims(io.folder, options.claims, problems);
  const { items, falseClaims } = proveClaims(claims.map((one) => one.claims));
  for (const { claim, why } of falseClaims) {
    const file =
      claims.find(({ claims: { entries } }) => entries.some((e) => idOf(e) === claim))?.file ?? options.claims[0]!;
    problems.push({ severity: 'error', file, claim, message: `${why}; its item is not marked: build the sheet again` });
  }
  const name = nameOfClaims(options.claims[0]!);
  const tableName = `${name}-class.csv`;
  const gathered = await gatherSubmissions(io.folder, options.submissions, tableName, problems);
  const tablePath = options.out === undefined ? undefined : join(options.out, tableName);
  const table = tablePath === undefined ? [] : await earlierTable(io.folder, tablePath, problems);
  const kept = withKeptMarks(gathered.rows, table);
  for (const message of kept.notes) problems.push({ severity: 'warning', file: tablePath!, message });
  const isReadable = problems.every(({ severity, claim }) => severity !== 'error' || claim !== undefined);
  const rows =
    claims.length === 0
      ? []
      : kept.rows.map(marker(items, { smallLetters: options.smallLetters, words: LANGUAGES.en.marking }));
  for (const row of unclearMarks(rows)) {
    const message = `the mark "${row.mark}" is neither right nor wrong nor a number from 0 to 1: the verdict counts`;
    problems.push({ severity: 'warning', file: row.file, row: row.row, message });
  }
  const written = rows.map(withoutFolder);
  const files: OutFile[] =
    options.out === undefined || !isReadable
      ? []
      : [
          { path: join(options.out, tableName), bytes: classCsv(written) },
          {
            path: join(options.out, `${name}-class.json`),
            bytes: json({ lesson: claims[0]!.claims.lesson, rows: written.map(jsonRow) }),
          },
        ];
  const failure = await writeAll(io.folder, files);
  const ok = failure === undefined && problems.every(({ severity }) => severity !== 'error');
  tellProblems(problems, io);
  if (failure) io.err(`turnsheet: ${failure}; nothing was changed\n`);
  if (options.json) {
    io.out(
      json({
        ok,
        rows: rows.map(jsonRow),
        submissions: gathered.files,
        problems,
        files: failure ? [] : files.map((f) => f.path),
      }),
    );
  } else {
    io.out(asText(rows));
    io.err(summary(rows));
    if (!failure) for (const { path } of files) io.err(`  ${path}\n`);
    if (!isReadable && options.out !== undefined)
      io.err('nothing was written, and files of earlier runs are as they were\n');
  }
  return ok ? 0 : 1;
}

const idOf = (entry: { kind: string; id?: string; claim?: { id: string } }): string | undefined =>
  entry.claim?.id ?? entry.id;
