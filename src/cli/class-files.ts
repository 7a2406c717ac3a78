/** What is written of a marked class: slips, report, tables. */
import { basename, join } from 'node:path';
import type { Sheet } from '../layout/blocks.ts';
import { layOut } from '../layout/layout.ts';
import { writePdf } from '../layout/pdf.ts';
import { classCsv, jsonRow } from '../marking/class-table.ts';
import type { Items } from '../marking/items.ts';
import { reportSheet } from '../marking/report-sheet.ts';
import { slipsSheet } from '../marking/slips-sheet.ts';
import type { MarkedRow } from '../marking/submission.ts';
import { summaryOf } from '../marking/summary.ts';
import { LANGUAGES } from '../words/languages.ts';
import type { OutFile } from './files.ts';
import type { MarkOptions } from './options.ts';

async function pdf(path: string, sheet: Sheet, { paper }: MarkOptions): Promise<OutFile> {
  const { pages, faults } = layOut(sheet, { paper });
  // What comes from outside was made fit for paper before: a fault here is ours.
  if (faults.length > 0) throw new Error(`${path}: ${faults[0]!.code}, ${faults[0]!.what}`);
  return { path, bytes: await writePdf(pages) };
}

/** The files name no folders: the same class gives the same bytes wherever it lies. */
const withoutFolder = (row: MarkedRow): MarkedRow => ({ ...row, file: basename(row.file) });

/** `others`: rows of the class table alone, which stay in it. */
export interface MarkedClass {
  readonly rows: readonly MarkedRow[];
  readonly others: readonly MarkedRow[];
}

export async function classFiles(
  name: string,
  lesson: string,
  { items }: Items,
  { rows: marked, others }: MarkedClass,
  options: MarkOptions & { readonly out: string },
): Promise<OutFile[]> {
  const { ink, paper, scheme, out } = options;
  const rows = marked.map(withoutFolder);
  const summary = summaryOf(rows, items);
  const making = { words: LANGUAGES.en, ink, paper, scheme, lesson };
  const table = `${JSON.stringify({ lesson, rows: rows.map(jsonRow) }, undefined, 2)}\n`;
  return [
    await pdf(join(out, `${name}-slips.pdf`), slipsSheet(summary.students, items, making), options),
    await pdf(join(out, `${name}-report.pdf`), reportSheet(summary, making), options),
    { path: join(out, `${name}-class.csv`), bytes: classCsv(rows, others) },
    { path: join(out, `${name}-class.json`), bytes: table },
  ];
}
