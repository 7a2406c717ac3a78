/** What a kind of problem is: how grave, whence it comes, what to do about it. */

/** error: nothing is printed. warning: all is, and the coach should look. hint: there is something better. */
export type Severity = 'error' | 'warning' | 'hint';

/** A kind of problem, as the page of problems tells it. */
export interface ProblemKind {
  readonly severity: Severity;
  /** What leads to it, for the page of problems. */
  readonly cause: string;
  /** What to do about it. */
  readonly remedy: string;
}
