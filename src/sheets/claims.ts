/** The claims of a lesson's sheets, with the page that each came to stand on: what goes into the claims file. */
import type { PrintedClaim } from '../lesson/claim.ts';
import type { PrintedSheet } from './printed.ts';

export interface ClaimsFile {
  /** The lesson's title. */
  readonly lesson: string;
  /** The lesson file's name, without its folder. */
  readonly file: string;
  /** As printed at the foot of the sheets; left out where they have none. */
  readonly edition?: string;
  /** Names of the PDF files. */
  readonly sheets: readonly string[];
  readonly claims: readonly PrintedClaim[];
}

type Places = ReadonlyMap<string, { readonly sheet: string; readonly page: number }>;

/** Where each id first stands on a sheet. */
function placesOn({ pages }: PrintedSheet, sheet: string): Places {
  const places = new Map<string, { sheet: string; page: number }>();
  pages.frames.forEach((frame, i) => {
    for (const id of frame.claims) if (!places.has(id)) places.set(id, { sheet, page: i + 1 });
  });
  return places;
}

/** Every claim of the sheet that its pages bear, in the order in which the sheet lists them. */
const printedClaims = (
  { claims }: PrintedSheet,
  here: Places,
  others: readonly Places[],
  file: string,
): PrintedClaim[] =>
  claims.flatMap((claim) => {
    const place = here.get(claim.id);
    // A fact may be said on several sheets; of an answer the question stands on another.
    const asked = claim.kind === 'fact' ? undefined : others.find((p) => p.has(claim.id))?.get(claim.id);
    return place ? [{ ...claim, file, ...place, ...(asked && { asked }) }] : [];
  });

/** What a sheet's file is called. */
export const pdfName = (name: string, { suffix }: Pick<PrintedSheet, 'suffix'>): string => `${name}${suffix}.pdf`;

/**
 * `name` is what the PDF files are called before their suffix, `file` the lesson file's name without its folder: the
 * same lesson gives the same bytes.
 */
export function claimsFile(sheets: readonly PrintedSheet[], name: string, file: string, edition?: string): ClaimsFile {
  const names = sheets.map((sheet) => pdfName(name, sheet));
  const places = sheets.map((sheet, i) => placesOn(sheet, names[i]!));
  const others = (i: number): Places[] => places.filter((_, other) => other !== i);
  return {
    lesson: sheets[0]!.pages.title,
    file,
    ...(edition !== undefined && { edition }),
    sheets: names,
    claims: sheets.flatMap((sheet, i) => printedClaims(sheet, places[i]!, others(i), file)),
  };
}
