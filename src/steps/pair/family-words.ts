/** Which family of cases was likely meant, and what families mean in words. */

import { joined, likelyWord } from '../../text/likely.ts';
import type { Whereabouts } from './address.ts';
import { FAMILIES, type Family } from './cases.ts';

const WHERE: Readonly<Record<Whereabouts, string>> = { home: 'at home', top: 'on top', away: 'in a foreign slot' };

function meaningOf(family: Family): string {
  const [corner, edge] = family.split('-') as [Whereabouts, Whereabouts];
  return corner === edge ? `both ${WHERE[corner]}` : `corner ${WHERE[corner]}, edge ${WHERE[edge]}`;
}

/** Families called by the piece that waits, as people say it: the other one is on top. */
function familySaid(written: string): Family | undefined {
  const said = /^(corner|edge|both)[ -](?:is |are )?(away|home|top)$/i.exec(written.trim());
  if (!said) return undefined;
  const [piece, where] = [said[1]!.toLowerCase(), said[2]!.toLowerCase() as Whereabouts];
  if (piece === 'both') return `${where}-${where}`;
  if (where === 'top') return undefined;
  return piece === 'corner' ? `${where}-top` : `top-${where}`;
}

/** The family that was likely meant by a word that is none; `others` are words that would be right too. */
export function likelyFamily(written: string, others: readonly string[] = []): string | undefined {
  const said = familySaid(written) ?? likelyWord(written, [...others, ...FAMILIES]);
  const family = FAMILIES.find((one) => one === said);
  return family ? `"${family}" was likely meant: ${meaningOf(family)}` : said && `"${said}" was likely meant`;
}

/** All nine with what they mean. */
export const FAMILIES_SAID: string = joined(FAMILIES.map((family) => `${family} (${meaningOf(family)})`));
