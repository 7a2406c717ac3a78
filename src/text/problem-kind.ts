/** What a kind of problem is: how grave, whence it comes, what to do about it. */

export type Severity = 'error' | 'warning' | 'hint';

export interface ProblemKind {
  readonly severity: Severity;
  /** What leads to it, for the page of problems. */
  readonly cause: string;
  /** What to do about it. */
  readonly remedy: string;
}
