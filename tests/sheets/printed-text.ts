/** What a printed sheet says. */
import { readPdf } from '../../src/audit/pdf-text.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import type { PrintedSheet } from '../../src/sheets/printed.ts';

/** All text of a sheet as its PDF has it, in one line. */
export async function textOf({ pages }: PrintedSheet): Promise<string> {
  const read = await readPdf(await writePdf(pages));
  return read.pages
    .map(({ text }) => text)
    .join(' ')
    .replace(/\s+/g, ' ');
}
