/** The page that explains every problem: made from the one table of them. */
import { problemKinds } from './problem.ts';

const SEVERITY = { error: 'An error: nothing is printed.', warning: 'A warning.', hint: 'A hint.' } as const;

/** Markdown. */
export function problemsPage(): string {
  const entries = Object.entries(problemKinds()).map(([code, { severity, cause, remedy }]) =>
    [`## ${code}`, '', `${SEVERITY[severity]} ${cause}`, '', `*What to do:* ${remedy}`, ''].join('\n'),
  );
  return [
    '# What turnsheet may find wrong',
    '',
    'Every message ends in one of these words in square brackets.',
    '',
    ...entries,
  ].join('\n');
}
