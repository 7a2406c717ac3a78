/** The claims of a lesson's sheets, with the page that each came to stand on: what goes into the claims file. */
import type { PrintedClaim } from '../lesson/claim.ts';
import type { PrintedSheet } from './printed.ts';

export interface ClaimsFile {
  /** The lesson's title. */
  readonly lesson: string;
  /** The lesson file's name, without its folder. */
  readonly file: string;
  /** Names of the PDF files. */
  readonly sheets: readonly string[];
  readonly claims: readonly PrintedClaim[];
}

/** Every claim of the sheet that its pages bear, in the order in which the sheet lists them. */
function printedClaims({ pages, claims }: PrintedSheet, sheet: string, file: string): PrintedClaim[] {
  const pageOf = new Map<string, number>();
  pages.frames.forEach((frame, i) => {
    for (const id of frame.claims) if (!pageOf.has(id)) pageOf.set(id, i + 1);
  });
  return claims.flatMap((claim) => {
    const page = pageOf.get(claim.id);
    return page === undefined ? [] : [{ ...claim, file, sheet, page }];
  });
}

export const pdfName = (name: string, { suffix }: Pick<PrintedSheet, 'suffix'>): string => `${name}${suffix}.pdf`;

/**
 * `name` is what the PDF files are called before their suffix, `file` the lesson file's name without its folder: the
 * same lesson gives the same bytes.
 */
export const claimsFile = (sheets: readonly PrintedSheet[], name: string, file: string): ClaimsFile => ({
  lesson: sheets[0]!.pages.title,
  file,
  sheets: sheets.map((sheet) => pdfName(name, sheet)),
  claims: sheets.flatMap((sheet) => printedClaims(sheet, pdfName(name, sheet), file)),
});
