/** A finished build read again: every claim of its file proved anew, and its texts looked for on the pages of the PDFs. */
import { auditClaims } from './audit-claims.ts';
import type { Fault, SolutionClaim } from './claims-file.ts';
import { readPdf } from './pdf-text.ts';
import { printedRuns } from './printed-runs.ts';

export interface Audit {
  /** Claims of kind `solution` that were proved anew. */
  readonly claims: number;
  readonly faults: readonly Fault[];
}

// Map.groupBy came with Node 21.
function groupBy<T, K>(values: readonly T[], keyOf: (value: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const value of values) {
    const key = keyOf(value);
    const group = groups.get(key);
    if (group) group.push(value);
    else groups.set(key, [value]);
  }
  return groups;
}

type RunsByPage = readonly (readonly string[])[];

interface Demand {
  readonly id: string;
  readonly part: 'set-up' | 'solution';
}

/**
 * For each text on a page, the printings it must have, each with those who rely on it. A solution is printed for its
 * own claim; a set-up may serve several solutions of one case, but not two claims with the same solution.
 */
function printingsNeeded(claims: readonly SolutionClaim[]): Map<string, Map<string, Demand[]>> {
  const needed = new Map<string, Map<string, Demand[]>>();
  const need = (text: string, printing: string, demand: Demand): void => {
    if (text === '') return;
    const printings = needed.get(text) ?? new Map<string, Demand[]>();
    needed.set(text, printings);
    printings.set(printing, [...(printings.get(printing) ?? []), demand]);
  };
  const before = new Map<string, number>();
  for (const claim of claims) {
    const both = `${claim.setup}, ${claim.solution}`;
    const nth = before.get(both) ?? 0;
    before.set(both, nth + 1);
    need(claim.setup, `set-up ${nth}`, { id: claim.id, part: 'set-up' });
    need(claim.solution, `solution ${nth} after ${claim.setup}`, { id: claim.id, part: 'solution' });
  }
  return needed;
}

function faultsOnPage(claims: readonly SolutionClaim[], runs: readonly string[], where: string): Fault[] {
  const faults: Fault[] = [];
  for (const [text, printings] of printingsNeeded(claims)) {
    const found = runs.filter((run) => run === text).length;
    const standing = found === 0 ? 'does not stand' : `stands ${found} and not ${printings.size} times`;
    for (const { id, part } of [...printings.values()].slice(found).flat()) {
      faults.push({ id, fault: `${part} '${text}' ${standing} as a whole run of turns on ${where}` });
    }
  }
  return faults;
}

function faultsInSheet(sheet: string, claims: readonly SolutionClaim[], pages: RunsByPage): Fault[] {
  const byPage = groupBy(claims, ({ page }) => page);
  return [...byPage].flatMap(([page, onPage]) => {
    const runs = pages[page - 1];
    if (runs) return faultsOnPage(onPage, runs, `page ${page} of ${sheet}`);
    return onPage.map(({ id }) => ({ id, fault: `page ${page}: ${sheet} has ${pages.length}` }));
  });
}

/**
 * Proves every claim of a claims file anew and looks for its two texts on its page.
 * `claimsFile`: the parsed JSON. `pdfBytesBySheet`: the finished PDFs under the names that claims call them by.
 */
export async function auditBuild(
  claimsFile: unknown,
  pdfBytesBySheet: ReadonlyMap<string, Uint8Array>,
): Promise<Audit> {
  const { solutions, faults: ofClaims } = auditClaims(claimsFile);
  const faults: Fault[] = [...ofClaims];
  for (const [sheet, claims] of groupBy(solutions, (claim) => claim.sheet)) {
    const bytes = pdfBytesBySheet.get(sheet);
    if (!bytes) {
      faults.push(...claims.map(({ id }) => ({ id, fault: `sheet ${sheet} is missing` })));
      continue;
    }
    try {
      const { pages } = await readPdf(bytes);
      const runs = pages.map(({ items }) => printedRuns(items));
      faults.push(...faultsInSheet(sheet, claims, runs));
    } catch (error) {
      const fault = `sheet ${sheet} cannot be read: ${error instanceof Error ? error.message : String(error)}`;
      faults.push(...claims.map(({ id }) => ({ id, fault })));
    }
  }
  return { claims: solutions.length, faults };
}
