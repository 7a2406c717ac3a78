/** A claims file read again, without its PDFs: every claim of a solution, and every question which rule is so, proved anew. */
import { type Fault, type RuleChoiceClaim, readClaimsFile, type SolutionClaim } from './claims-file.ts';
import { compare } from './compare.ts';
import { ruleChoiceFaults } from './rule-choice.ts';

export interface ClaimsAudit {
  /** Those that were proved anew, right or wrong. */
  readonly solutions: readonly SolutionClaim[];
  /** Questions which rule is so, likewise. */
  readonly questions: readonly RuleChoiceClaim[];
  /** Claims of other kinds, which are left alone. */
  readonly others: number;
  readonly faults: readonly Fault[];
}

/** `claimsFile`: the parsed JSON. What has another form is a fault too. */
export function auditClaims(claimsFile: unknown): ClaimsAudit {
  const { solutions, questions, others, faults } = readClaimsFile(claimsFile);
  const faultsOf = <C extends { readonly id: string }>(claims: readonly C[], of: (claim: C) => string[]): Fault[] =>
    claims.flatMap((claim) => of(claim).map((fault) => ({ id: claim.id, fault })));
  const found = [...faultsOf(solutions, compare), ...faultsOf(questions, ruleChoiceFaults)];
  return { solutions, questions, others, faults: [...faults, ...found] };
}
