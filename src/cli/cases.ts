/** `turnsheet cases`: the catalogue. */
import { writeAddress } from '../steps/pair/address.ts';
import { casesOf, FAMILIES, familyOf, upToU } from '../steps/pair/cases.ts';
import { FAMILIES_SAID, likelyFamily } from '../steps/pair/family-words.ts';
import { type CatalogueRow, catalogue } from '../steps/pair/search/catalogue.ts';
import type { ExitCode, Io } from './io.ts';
import type { CasesOptions } from './options.ts';

const written = ({ address, kept, shortest, solutions, longer }: CatalogueRow) => ({
  address: writeAddress(address),
  family: familyOf(address),
  keep: kept,
  shortest,
  // Lengths are searched in full, one after the other, until every row is done: nothing stops this search.
  proved: true,
  solutions,
  longer,
});

/** A row a line: two thousand of them are compared and searched by line. */
const asJson = (rows: readonly CatalogueRow[]): string =>
  `[\n${rows.map((row) => `  ${JSON.stringify(written(row))}`).join(',\n')}\n]\n`;

function asText(rows: readonly CatalogueRow[], longer: number): string {
  const heads = ['address', 'family', 'kept', 'turns', 'solutions'];
  if (longer > 0) heads.push(longer === 1 ? 'one longer' : `up to ${longer} longer`);
  const cells = rows.map((row) => {
    const { address, family, keep, shortest, solutions } = written(row);
    const line = [address, family, keep.join(' ') || 'none', String(shortest), String(solutions)];
    return longer > 0 ? [...line, String(row.longer)] : line;
  });
  const widths = heads.map((head, i) => Math.max(head.length, ...cells.map((line) => line[i]!.length)));
  // Words to the left, numbers to the right.
  const aligned = (cell: string, i: number): string => (i < 3 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!));
  return [heads, ...cells].map((line) => `${line.map(aligned).join('  ').trimEnd()}\n`).join('');
}

export async function cases(options: CasesOptions, io: Io): Promise<ExitCode> {
  const { family, everyAddress, everyKeep, longer, json } = options;
  const known = FAMILIES.find((f) => f === family);
  if (family !== undefined && !known) {
    const meant = likelyFamily(family) ?? `there are ${FAMILIES_SAID}`;
    io.err(`turnsheet: there is no family "${family}"; ${meant}\nTry: npx turnsheet help cases\n`);
    return 2;
  }
  if (options.print) {
    return (await import('./booklet.ts')).printBooklet(known ? [known] : FAMILIES, options.print, options.json, io);
  }
  const standing = (known ? [known] : FAMILIES).flatMap(casesOf);
  const rows = catalogue(everyAddress ? standing.flatMap(upToU) : standing, { everyKeep, longer });
  io.out(json ? asJson(rows) : asText(rows, longer));
  return 0;
}
