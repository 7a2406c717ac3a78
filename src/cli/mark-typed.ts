/** `turnsheet mark --type`: answers typed at a table, each verdict at once, kept in a CSV file that can be continued. */
import { join } from 'node:path';
import { jsonRow } from '../marking/class-table.ts';
import { FIELDS, isUnreadable, withoutControls } from '../marking/fields.ts';
import { nameOfClaims } from '../marking/gather-items.ts';
import { type Items, nameKey } from '../marking/items.ts';
import { marker } from '../marking/mark.ts';
import { columnsOf } from '../marking/read-csv.ts';
import { readSubmissions } from '../marking/read-submissions.ts';
import type { MarkedRow, Submission } from '../marking/submission.ts';
import { type Cells, readTable, writeTable } from '../marking/table.ts';
import { wordsIn } from '../steps/languages.ts';
import { decode } from '../text/decode.ts';
import { likelyWord } from '../text/likely.ts';
import { readBytes, writeAll } from './files.ts';
import { documentOf, type ExitCode, type Io } from './io.ts';
import { loadItems, loadOwners, saidOf, summaryLine, tellProblems } from './marking.ts';
import type { MarkOptions } from './options.ts';
import { counted, harmless } from './report.ts';
import type { FileProblem } from './submission-files.ts';

const HEADER = [...FIELDS];

/** The file that is kept: its cells as they are, and which of its columns have which field. */
interface Kept {
  readonly file: string;
  readonly cells: string[][];
  readonly delimiter: string;
  /** Whether its first line names the delimiter. */
  readonly named: boolean;
  /** Answers of earlier times. */
  readonly rows: readonly Submission[];
}

/** A file that is not there is begun; one that cannot be gone on with is told. */
async function open(folder: string, file: string): Promise<Kept | { readonly unreadable: string }> {
  if (!/\.csv$/i.test(file)) {
    return { unreadable: 'typed answers are kept in a CSV file: give it a name that ends in .csv' };
  }
  const bytes = await readBytes(folder, file);
  const begun: Kept = { file, cells: [HEADER], delimiter: ',', named: false, rows: [] };
  if ('unreadable' in bytes) return bytes.unreadable === 'there is no such file' ? begun : bytes;
  if (bytes.length === 0) return begun;
  const read = readSubmissions(file, bytes);
  if (isUnreadable(read)) return read;
  const { cells, delimiter, named } = readTable(decode(bytes).text);
  // Before the header nothing is said of the class.
  const header = Math.max(
    cells.findIndex((row) => row.some((cell) => cell.trim() !== '')),
    0,
  );
  const rows = cells.slice(header).map((row) => [...row]);
  // What a line end at the end of the file leaves.
  if (rows.at(-1)?.every((cell) => cell === '')) rows.pop();
  return { file, cells: rows, delimiter, named, rows: read.rows };
}

/** The row of a submission under the columns that the file has. */
function cellsOf(submission: Submission, cells: Cells): string[] {
  const header = cells.find((row) => row.some((cell) => cell.trim() !== ''))!;
  const columns = columnsOf(header);
  const { paper, item } = submission;
  const named = columns.has('paper') || paper === '' ? submission : { ...submission, item: `${paper}.${item}` };
  const row = header.map(() => '');
  for (const [field, column] of columns) row[column] = named[field];
  return row;
}

const howTo = (hasPapers: boolean): string =>
  `Student code, ${hasPapers ? 'paper code, ' : ''}item, answer; an empty student code ends, an empty item goes on to the next student, "undo" as an item takes the last answer back.\n`;

/** Keys that write no sign, such as the arrows, would spoil the file. */
async function askLine(question: string, io: Io): Promise<string | undefined> {
  const typed = await io.ask(question);
  return typed === undefined ? undefined : withoutControls(typed).trim();
}

/** Asks which paper a student has; undefined at the end of the input. */
type AskPaper = (student: string) => Promise<string | undefined>;

/** Of claims without papers nothing is asked. What a student had before is offered again. */
function paperAsker({ papers }: Items, handouts: readonly string[], kept: Kept, io: Io): AskPaper {
  if (papers.length === 0) return () => Promise.resolve('');
  const known = [...papers, ...handouts];
  const isKnown = ({ paper }: Submission): boolean => known.some((code) => nameKey(code) === nameKey(paper));
  const before = new Map(kept.rows.filter(isKnown).map(({ student, paper }) => [nameKey(student), paper]));
  return async (student) => {
    const last = before.get(nameKey(student)) ?? '';
    const empty = last === '' ? 'empty for the handout' : `empty for ${last} as before, - for the handout`;
    for (;;) {
      const typed = await askLine(`${student}, paper code (${empty}): `, io);
      if (typed === undefined) return undefined;
      const said = typed === '' ? last : typed === '-' ? '' : typed;
      const paper = said === '' ? '' : known.find((code) => nameKey(code) === nameKey(said));
      if (paper !== undefined) {
        before.set(nameKey(student), paper);
        return paper;
      }
      const { unknownPaper } = wordsIn('en').marking.unmatched;
      io.err(`${harmless(unknownPaper(said, likelyWord(said, known)))}\n`);
    }
  };
}

/** Asks until there is no more; each answer is written before the next is asked for. */
async function askFor(
  kept: Kept,
  mark: (row: Submission) => MarkedRow,
  askPaper: AskPaper,
  io: Io,
): Promise<MarkedRow[] | { readonly failure: string }> {
  const rows: MarkedRow[] = [];
  const save = (): Promise<string | undefined> =>
    writeAll(io.folder, [{ path: kept.file, bytes: writeTable(kept.cells, kept.delimiter, kept.named) }]);
  for (;;) {
    const student = await askLine('student code: ', io);
    if (!student) return rows;
    const theirs = await askPaper(student);
    if (theirs === undefined) return rows;
    for (;;) {
      const item = await askLine(`${student}, item: `, io);
      if (!item) break;
      if (item.toLowerCase() === 'undo') {
        const last = rows.pop();
        if (!last) io.err('there is nothing to take back\n');
        else {
          kept.cells.pop();
          const failure = await save();
          if (failure) return { failure };
          io.err(`taken back: ${harmless(`${last.student} ${last.item} ${last.answer}`)}\n`);
        }
        continue;
      }
      const answer = await askLine(`${student}, ${item}, answer: `, io);
      if (answer === undefined) return rows;
      const [paper, number] = paperAndItem(item, theirs);
      const at = kept.cells.length + (kept.named ? 2 : 1);
      const row = mark({ file: kept.file, row: at, student, paper, item: number, answer, mark: '' });
      kept.cells.push(cellsOf(row, kept.cells));
      const failure = await save();
      if (failure) return { failure };
      rows.push(row);
      io.err(`  ${harmless(saidOf(row))}\n`);
    }
  }
}

/** "K4T 7" is item 7 of paper K4T, whichever paper was named before. */
function paperAndItem(text: string, paper: string): [paper: string, item: string] {
  const match = /^(\S+)\s+(\S+)$/.exec(text);
  return match ? [match[1]!, match[2]!] : [paper, text];
}

export async function markTyped(options: MarkOptions, io: Io): Promise<ExitCode> {
  const problems: FileProblem[] = [];
  const { items, claims, name } = await loadItems(options, io, problems);
  const owners = await loadOwners(options, items, io, problems);
  tellProblems(problems, io);
  if (claims.length === 0) return 1;
  const file = options.submissions[0] ?? join(options.out ?? '', `${name}-answers.csv`);
  const kept = await open(io.folder, file);
  if ('unreadable' in kept) {
    io.err(`${file}: error: ${kept.unreadable}\n`);
    return 1;
  }
  if (kept.rows.length > 0) io.err(`${file}: ${counted(kept.rows.length, 'answer')} so far\n`);
  io.err(howTo(items.papers.length > 0));
  const mark = marker(items, { smallLetters: options.smallLetters, owners, words: wordsIn('en') });
  const handouts = claims.map((text) => nameOfClaims(text.file));
  const rows = await askFor(kept, mark, paperAsker(items, handouts, kept, io), io);
  if ('failure' in rows) {
    io.err(`turnsheet: ${rows.failure}\n`);
    return 1;
  }
  if (options.json) {
    const ok = problems.length === 0;
    io.out(documentOf({ ok, rows: rows.map(jsonRow), problems, files: rows.length > 0 ? [file] : [] }));
  } else if (rows.length > 0) io.err(`${summaryLine(rows)}  ${file}\n`);
  return problems.length > 0 ? 1 : 0;
}
