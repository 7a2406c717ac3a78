/** Hints for turns that fail: what one turn changed would mend. */

import type { Cube } from '../cube/cube.ts';
import type { Goal } from '../cube/goal.ts';
import { type Change, mendsOf } from '../cube/mend.ts';
import { prove } from '../cube/solves.ts';
import { type Turn, turnOf, writeTurns } from '../cube/turns.ts';
import { isFault } from '../steps/step.ts';
import type { Subject } from '../steps/subject.ts';
import type { Case, Lesson } from './lesson.ts';

/** Hints are read by people: three are a choice, more a riddle. */
const MOST = 3;

/** "R' U R (R at the end is R')" in the words of a coach. */
function saidOf({ kind, was, now, at, turns }: Change): string {
  const text = writeTurns(turns);
  const place = `turn ${at + 1}`;
  switch (kind) {
    case 'dropped':
      return `${text} (without ${was!.text}, ${place})`;
    case 'swapped':
      return `${text} (${was!.text} and ${now!.text} change places)`;
    case 'top':
      return `${text} (${now!.text} ${at === 0 ? 'first' : 'at the end'})`;
    case 'added':
      return `${text} (with ${now!.text} as ${place})`;
    default:
      return `${text} (${now!.text} instead of ${was!.text}, ${place})`;
  }
}

const choice = (said: readonly string[]): string => `was it ${said.join('; or ')}?`;

/** Small letters that were meant as capitals: each wide turn as a turn of its face alone. Undefined if there are none. */
function inCapitals(turns: readonly Turn[]): Turn[] | undefined {
  if (turns.every(({ kind }) => kind !== 'wide')) return undefined;
  return turns.map((turn) => (turn.kind === 'wide' ? turnOf('face', turn.letter, turn.quarters) : turn));
}

const capitalsSaid = (turns: readonly Turn[]): string => `${writeTurns(turns)} (a small letter turns two layers)`;

/** What a solution was likely meant to be; undefined if neither capitals nor a change of one turn make it solve. */
export function likelySolution(cube: Cube, goal: Goal, turns: readonly Turn[]): string | undefined {
  const solves = (changed: readonly Turn[]): boolean => prove(cube, changed, goal).verdict === 'solves';
  const capitals = inCapitals(turns);
  if (capitals && solves(capitals)) return choice([capitalsSaid(capitals)]);
  const mends = mendsOf(turns, solves, MOST);
  return mends.length > 0 ? choice(mends.map(saidOf)) : undefined;
}

/**
 * What a set-up was likely meant to be: capitals, or a change of one turn, after which all of the case's solutions solve.
 * Failing that, one that gives a case of the families.
 */
export function likelySetup(c: Case, { step, families }: Pick<Lesson, 'step' | 'families'>): string | undefined {
  const caseOf = (turns: readonly Turn[]): Subject | undefined => {
    const subject = step.after(turns, c.where);
    if (isFault(subject)) return undefined;
    return families.length === 0 || families.includes(subject.family) ? subject : undefined;
  };
  const capitals = inCapitals(c.setup);
  const inCapital = capitals && caseOf(capitals);
  if (inCapital) {
    const use = isServed(inCapital, c) ? 'which the solutions solve' : `a case of ${inCapital.family}`;
    return choice([`${capitalsSaid(capitals)}, ${use}`]);
  }
  const served = mendsOf(c.setup, (turns) => isServed(caseOf(turns), c), MOST);
  if (served.length > 0) return choice(served.map((change) => `${saidOf(change)}, which the solutions solve`));
  const fitting = mendsOf(c.setup, (turns) => caseOf(turns) !== undefined, MOST);
  if (fitting.length === 0) return undefined;
  return choice(fitting.map((change) => `${saidOf(change)}, a case of ${caseOf(change.turns)!.family}`));
}

const isServed = (subject: Subject | undefined, { solutions }: Case): boolean =>
  subject !== undefined &&
  solutions.length > 0 &&
  solutions.every(({ turns }) => prove(subject.cube, turns, subject.goal).verdict === 'solves');
