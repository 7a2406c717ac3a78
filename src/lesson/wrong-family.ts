/** A lesson that names another family than the one it teaches: one slip, told once and not at every case. */
import { isFault } from '../steps/step.ts';
import type { Case, Lesson } from './lesson.ts';
import type { Problem } from './problem.ts';

/** Two set-ups at least, and two in three. */
const isMost = (count: number, all: number): boolean => count >= 2 && 3 * count >= 2 * all;

export interface WrongFamily {
  /** The families that were likely meant. */
  readonly meant: readonly string[];
  /** At the families as they are named. */
  readonly problem: Problem;
}

/** Undefined unless most set-ups give cases of one family that the lesson does not name. */
export function wrongFamily({ step, families, familySpan }: Lesson, cases: readonly Case[]): WrongFamily | undefined {
  if (families.length === 0) return undefined;
  const given = cases.map(({ setup, where }) => {
    const subject = step.after(setup, where);
    return isFault(subject) ? undefined : subject.family;
  });
  const count = (family: string): number => given.filter((one) => one === family).length;
  const family = given.find((one) => one && !families.includes(one) && isMost(count(one), given.length));
  if (!family) return undefined;
  const meant = [...families.filter((named) => count(named) > 0), family];
  const set = count(family) === given.length ? `all ${given.length}` : `${count(family)} of the ${given.length}`;
  const named = families.length > 1 ? 'is none of the families' : 'is not the family';
  const message = `${set} set-ups are of ${family}, which ${named} named here`;
  const written = meant.length > 1 ? `[${meant.join(', ')}]` : family;
  return {
    meant,
    problem: { code: 'family-other', span: familySpan, message, hint: `was it family: ${written}?` },
  };
}
