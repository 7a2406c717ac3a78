/** Lessons with a practice of the tests' own. */
import { parse, stringify } from 'yaml';

/** The text of a lesson with another `practice`, whatever it had before. */
export function withPractice(text: string, practice: Record<string, unknown> | undefined): string {
  const { practice: _, ...lesson } = parse(text) as Record<string, unknown>;
  return stringify(practice ? { ...lesson, practice } : lesson, { lineWidth: 0 });
}
