/** What is written of a marked class: slips, report, tables. */
import { basename, join } from 'node:path';
import type { Sheet } from '../layout/blocks.ts';
import { layOut } from '../layout/layout.ts';
import { writePdf } from '../layout/pdf.ts';
import { byStudent } from '../marking/by-student.ts';
import { classCsv, jsonRow } from '../marking/class-table.ts';
import type { Items } from '../marking/items.ts';
import { LONGEST_CODE } from '../marking/limits.ts';
import type { MarkedRow } from '../marking/submission.ts';
import { summaryOf } from '../marking/summary.ts';
import { printableCode } from '../sheets/print-text.ts';
import { reportSheet } from '../sheets/report-sheet.ts';
import { slipsSheet } from '../sheets/slips-sheet.ts';
import { wordsIn } from '../steps/languages.ts';
import type { MarkingSheetWords } from '../words/words.ts';
import type { OutFile } from './files.ts';
import { documentOf } from './io.ts';
import type { MarkOptions } from './options.ts';

/** A sheet that cannot be printed: a fault of ours, since all that comes from outside was made fit for paper before. */
export interface NotPrinted {
  readonly path: string;
  readonly why: string;
}

async function pdf(path: string, sheet: Sheet, { paper }: MarkOptions): Promise<OutFile | NotPrinted> {
  const { pages, faults } = layOut(sheet, { paper });
  const [fault] = faults;
  if (fault) return { path, why: `${fault.code}, ${fault.what}` };
  return { path, bytes: await writePdf(pages) };
}

/** A student whose slip bears another name, since the fonts have nothing of the code. */
export interface Renamed {
  readonly file: string;
  readonly row: number;
  readonly message: string;
}

function renamedIn(rows: readonly MarkedRow[], { slips }: MarkingSheetWords): Renamed[] {
  return byStudent(rows).flatMap(({ student, rows: [first] }) => {
    const { file, row } = first!;
    const said = printableCode({ student, row }, LONGEST_CODE, slips);
    if (said !== slips.rowOf(row)) return [];
    return [{ file, row, message: `the fonts have no sign of the code "${student}": its slip is called "${said}"` }];
  });
}

/** The files name no folders: the same class gives the same bytes wherever it lies. */
const withoutFolder = (row: MarkedRow): MarkedRow => ({ ...row, file: basename(row.file) });

/** `others`: rows of the class table alone, which stay in it. */
export interface MarkedClass {
  readonly rows: readonly MarkedRow[];
  readonly others: readonly MarkedRow[];
}

/** The tables, and the sheets that can be printed: one that cannot takes nothing from the others. */
export async function classFiles(
  name: string,
  lesson: string,
  { items }: Items,
  { rows: marked, others }: MarkedClass,
  options: MarkOptions & { readonly out: string },
): Promise<{
  readonly files: readonly OutFile[];
  readonly notPrinted: readonly NotPrinted[];
  readonly renamed: readonly Renamed[];
}> {
  const { ink, paper, scheme, out } = options;
  const rows = marked.map(withoutFolder);
  const summary = summaryOf(rows, items);
  const making = { words: wordsIn('en'), ink, paper, scheme, lesson };
  const table = documentOf({ lesson, rows: rows.map(jsonRow) });
  const sheets = [
    await pdf(join(out, `${name}-slips.pdf`), slipsSheet(summary.students, items, making), options),
    await pdf(join(out, `${name}-report.pdf`), reportSheet(summary, making), options),
  ];
  const tables = [
    { path: join(out, `${name}-class.csv`), bytes: classCsv(rows, others) },
    { path: join(out, `${name}-class.json`), bytes: table },
  ];
  return {
    files: [...sheets.filter((sheet) => 'bytes' in sheet), ...tables],
    notPrinted: sheets.filter((sheet) => 'why' in sheet),
    renamed: renamedIn(marked, making.words.markingSheets),
  };
}
