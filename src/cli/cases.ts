/** `turnsheet cases`: the catalogue. */
import type { CatalogueRow } from '../steps/find-part.ts';
import { USUAL_STEP } from '../steps/steps.ts';
import type { ExitCode, Io } from './io.ts';
import type { CasesOptions } from './options.ts';

/** Lengths are searched in full, one after the other, until every row is done: nothing stops this search. */
const document = ({ address, fields, shortest, solutions, longer }: CatalogueRow) =>
  JSON.stringify({ address, ...fields, shortest, proved: true, solutions, longer });

/** A row a line: two thousand of them are compared and searched by line. */
const asJson = (rows: readonly CatalogueRow[]): string =>
  `[\n${rows.map((row) => `  ${document(row)}`).join(',\n')}\n]\n`;

function asText(rows: readonly CatalogueRow[], columns: readonly string[], longer: number): string {
  const heads = ['address', ...columns, 'turns', 'solutions'];
  if (longer > 0) heads.push(longer === 1 ? 'one longer' : `up to ${longer} longer`);
  const lines = rows.map(({ address, cells, ...row }) =>
    [address, ...cells, row.shortest, row.solutions, ...(longer > 0 ? [row.longer] : [])].map(String),
  );
  const widths = heads.map((head, i) => Math.max(head.length, ...lines.map((line) => line[i]!.length)));
  // Words to the left, numbers to the right.
  const aligned = (cell: string, i: number): string =>
    i <= columns.length ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!);
  return [heads, ...lines].map((line) => `${line.map(aligned).join('  ').trimEnd()}\n`).join('');
}

export async function cases(options: CasesOptions, io: Io): Promise<ExitCode> {
  const { family, longer, own, json } = options;
  const { families, find, lesson } = USUAL_STEP;
  if (family !== undefined && !families.includes(family)) {
    const meant = lesson.likelyFamily(family) ?? `there are ${lesson.familiesSaid}`;
    io.err(`turnsheet: there is no family "${family}"; ${meant}\nTry: npx turnsheet help cases\n`);
    return 2;
  }
  const some = family === undefined ? families : [family];
  if (options.print) {
    return (await import('./booklet.ts')).printBooklet(USUAL_STEP, some, options.print, options.json, io);
  }
  const rows = find.catalogue(some, longer, own);
  io.out(json ? asJson(rows) : asText(rows, find.columns, longer));
  return 0;
}
