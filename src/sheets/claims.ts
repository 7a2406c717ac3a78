/** The claims of a sheet, with the page that each came to stand on: what goes into the claims file. */
import type { Pages } from '../layout/frames.ts';
import type { PrintedClaim } from '../lesson/claim.ts';
import type { ProvedLesson } from '../lesson/prove.ts';

export interface ClaimsFile {
  /** The lesson's title. */
  readonly lesson: string;
  /** The lesson file's name, without its folder. */
  readonly file: string;
  /** Names of the PDF files. */
  readonly sheets: readonly string[];
  readonly claims: readonly PrintedClaim[];
}

/** Every claim of the lesson that the pages bear, in the order of the lesson. */
function printedClaims(proved: ProvedLesson, pages: Pages, sheet: string, file: string): PrintedClaim[] {
  const pageOf = new Map<string, number>();
  pages.frames.forEach((frame, i) => {
    for (const id of frame.claims) if (!pageOf.has(id)) pageOf.set(id, i + 1);
  });
  return proved.claims.flatMap((claim) => {
    const page = pageOf.get(claim.id);
    return page === undefined ? [] : [{ ...claim, file, sheet, page }];
  });
}

/** `sheet` is the name of the PDF file, `file` the lesson's without its folder: the same lesson gives the same bytes. */
export const claimsFile = (proved: ProvedLesson, pages: Pages, sheet: string, file: string): ClaimsFile => ({
  lesson: pages.title,
  file,
  sheets: [sheet],
  claims: printedClaims(proved, pages, sheet, file),
});
