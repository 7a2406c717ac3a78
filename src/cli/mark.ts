/** `turnsheet mark`: submitted turns against the claims of what was printed. */
import { join } from 'node:path';
import { jsonRow, unclearMarks, withKeptMarks } from '../marking/class-table.ts';
import { marker } from '../marking/mark.ts';
import { misfitsOf, withStudents } from '../marking/owners.ts';
import type { MarkedRow, Submission } from '../marking/submission.ts';
import { wordsIn } from '../steps/languages.ts';
import { likeNames, namesSaid } from '../text/names.ts';
import { type OutFile, writeAll } from './files.ts';
import { documentOf, type ExitCode, type Io } from './io.ts';
import { loadItems, loadOwners, paperNames, saidOf, summaryLine, tellProblems } from './marking.ts';
import type { MarkOptions } from './options.ts';
import { harmless } from './report.ts';
import { earlierTable, type FileProblem, gatherSubmissions } from './submission-files.ts';

/** Items and paper, code, verdict: the columns before what is said. */
function columnsOf({ student, paper, item, verdict }: MarkedRow): string[] {
  return [student || '-', [paper, item].filter((part) => part !== '').join(' ') || '-', verdict];
}

/** A row a line. */
function asText(rows: readonly MarkedRow[]): string {
  const columns = rows.map(columnsOf);
  const widths = [0, 1, 2].map((i) => columns.reduce((most, cells) => Math.max(most, cells[i]!.length), 0));
  return rows
    .map((row, i) => [...columns[i]!.map((cell, j) => cell.padEnd(widths[j]!)), saidOf(row)].join('  '))
    .map((line) => `${harmless(line)}\n`)
    .join('');
}

/** A file that cannot be read: what is there would be marked as if it were all. A claim that is false is not that. */
const isWhole = (problems: readonly FileProblem[]): boolean =>
  problems.every(({ severity, claim }) => severity !== 'error' || claim !== undefined);

export async function mark(options: MarkOptions, io: Io): Promise<ExitCode> {
  const problems: FileProblem[] = [];
  const { items, claims, name } = await loadItems(options, io, problems);
  const owners = await loadOwners(options, items, io, problems);
  const { out, smallLetters } = options;
  const tableName = `${name}-class.csv`;
  const gathered = await gatherSubmissions(
    io.folder,
    options.submissions,
    tableName,
    paperNames(items, claims),
    problems,
  );
  const tablePath = join(out ?? '', tableName);
  const table = out === undefined ? [] : await earlierTable(io.folder, tablePath, problems);
  const handedIn = owners ? withStudents(gathered.rows, owners) : gathered.rows;
  const kept = withKeptMarks(handedIn, table);
  for (const message of kept.notes) problems.push({ severity: 'warning', file: tablePath, message });
  const markAll = (some: readonly Submission[]): MarkedRow[] =>
    claims.length === 0 ? [] : some.map(marker(items, { smallLetters, owners, words: wordsIn('en') }));
  const rows = markAll(kept.rows);
  for (const { file, row, mark: unclear } of unclearMarks(rows)) {
    const message = `the mark "${unclear}" is neither right nor wrong nor a number from 0 to 1: the verdict counts`;
    problems.push({ severity: 'warning', file, row, message });
  }
  for (const misfit of owners ? misfitsOf(rows, items, owners) : []) problems.push({ severity: 'warning', ...misfit });
  const names = likeNames(gathered.rows.map(({ student }) => student));
  if (names > 0) {
    const message = `${namesSaid(names)}: give codes or initials, which go on to slips, tables and reports`;
    problems.push({ severity: 'warning', file: options.submissions[0]!, message });
  }
  let files: readonly OutFile[] = [];
  if (out !== undefined && isWhole(problems)) {
    const { classFiles } = await import('./class-files.ts');
    const made = await classFiles(
      name,
      claims[0]!.lesson,
      items,
      { rows, others: markAll(kept.others) },
      { ...options, out },
    );
    files = made.files;
    for (const one of made.renamed) problems.push({ severity: 'warning', ...one });
    for (const { path, why } of made.notPrinted) {
      const message = `a fault in turnsheet itself: it cannot be printed (${why}); an earlier one is as it was`;
      problems.push({ severity: 'error', file: path, message });
    }
  }
  const failure = await writeAll(io.folder, files);
  tellProblems(problems, io);
  if (failure) io.err(`turnsheet: ${failure}; nothing was changed\n`);
  const ok = failure === undefined && problems.every(({ severity }) => severity !== 'error');
  const paths = failure ? [] : files.map(({ path }) => path);
  if (options.json) {
    const document = { ok, rows: rows.map(jsonRow), submissions: gathered.files, problems, files: paths };
    io.out(documentOf(document));
    return ok ? 0 : 1;
  }
  io.out(asText(rows));
  const summary = claims.length > 0 ? [summaryLine(rows)] : [];
  io.err([...summary, ...paths.map((path) => `  ${path}\n`)].join(''));
  if (out !== undefined && files.length === 0)
    io.err('nothing was written, and files of earlier runs are as they were\n');
  return ok ? 0 : 1;
}
