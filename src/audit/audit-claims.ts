/** A claims file read again, without its PDFs: every claim of a solution proved anew. */
import { type Fault, readClaimsFile, type SolutionClaim } from './claims-file.ts';
import { compare } from './compare.ts';

export interface ClaimsAudit {
  /** Those that were proved anew, right or wrong. */
  readonly solutions: readonly SolutionClaim[];
  /** Claims of other kinds, which are left alone. */
  readonly others: number;
  readonly faults: readonly Fault[];
}

/** `claimsFile`: the parsed JSON. What has another form is a fault too. */
export function auditClaims(claimsFile: unknown): ClaimsAudit {
  const { solutions, others, faults } = readClaimsFile(claimsFile);
  const proved = solutions.flatMap((claim) => compare(claim).map((fault) => ({ id: claim.id, fault })));
  return { solutions, others, faults: [...faults, ...proved] };
}
