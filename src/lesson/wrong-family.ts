/** A lesson that names another family than the one it teaches: one slip, told once and not at every case. */
import { type Family, familyOf } from '../steps/pair/cases.ts';
import { doSetUp } from '../steps/pair/set-up.ts';
import type { Lesson } from './lesson.ts';
import type { Problem } from './problem.ts';

/** Two set-ups at least, and two in three. */
const isMost = (count: number, all: number): boolean => count >= 2 && 3 * count >= 2 * all;

export interface WrongFamily {
  /** The families that were likely meant. */
  readonly meant: readonly Family[];
  /** At the families as they are named. */
  readonly problem: Problem;
}

/** Undefined unless most set-ups give cases of one family that the lesson does not name. */
export function wrongFamily({ families, familySpan, parts }: Lesson): WrongFamily | undefined {
  if (families.length === 0) return undefined;
  const setUps = parts.flatMap((part) => part.cases).map((c) => doSetUp(c.setup, c.slot, c.open));
  const given = setUps.map((setUp) => ('fault' in setUp ? undefined : familyOf(setUp.address)));
  const count = (family: Family): number => given.filter((one) => one === family).length;
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
