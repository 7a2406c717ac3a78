/** What the prover finds wrong, in the words of a coach. */

import { type Proof, prove } from '../cube/solves.ts';
import { writeTurns } from '../cube/turns.ts';
import { isFault, type SetUpFault } from '../steps/step.ts';
import { stepOf } from '../steps/steps.ts';
import type { Subject } from '../steps/subject.ts';
import { listed } from '../text/likely.ts';
import type { Case, Lesson, Solution } from './lesson.ts';
import { likelySetup, likelySolution } from './likely-turns.ts';
import type { Problem } from './problem.ts';

/** Another place on the cube that the set-up and the solutions are about. */
function likelyWhere(c: Case, { step, families }: Lesson): string | undefined {
  const found = step.lesson.likelyWhere(c.where).find(({ where }) => {
    const subject = step.after(c.setup, where);
    if (isFault(subject) || subject.isSolved || (families.length > 0 && !families.includes(subject.family)))
      return false;
    return c.solutions.every(({ turns }) => prove(subject.cube, turns, subject.goal).verdict === 'solves');
  });
  return found && `the set-up and the solutions are about ${found.said}: write ${found.write}`;
}

export function setupProblem(c: Case, found: SetUpFault, lesson: Lesson): Problem {
  const said = lesson.step.lesson;
  const span = c.setupSpan;
  const likely = likelyWhere(c, lesson) ?? likelySetup(c, lesson);
  switch (found.fault) {
    case 'rotates': {
      const message = `the set-up ends with ${c.colours[found.down]} down instead of ${c.colours.D}`;
      const hint = likely ?? "turn the cube back at its end, or leave the rotation out; y, y' and y2 are fine";
      return { code: 'setup-rotates', span, message, hint };
    }
    case 'hides': {
      const { message, hint } = said.hidden(c.where);
      return { code: 'setup-hides-pair', span, message, hint: likely ?? hint };
    }
    case 'breaks-base': {
      const { broken } = found;
      const message = `the set-up leaves unsolved what it should keep: ${said.unsolvedSaid(broken, c.where)}`;
      const excuse = said.excusing(broken);
      const otherwise = excuse ? `mend it, or ${excuse}` : 'look for a turn that is missing or the wrong way round';
      return { code: 'setup-breaks-base', span, message, hint: likely ?? otherwise };
    }
  }
}

export function otherFamily(c: Case, { family }: Subject, lesson: Lesson): Problem {
  const hint =
    likelyWhere(c, lesson) ?? likelySetup(c, lesson) ?? `mend the set-up, or write family: ${family} if all cases are`;
  const message = `the set-up gives a case of ${family}; this lesson is about ${listed(lesson.families)}`;
  return { code: 'setup-other-family', span: c.setupSpan, message, hint };
}

/** Solutions that all fail, and solve when done one after the other: one solution written as a list. */
export function inPieces(c: Case, { cube, goal }: Subject, proofs: readonly Proof[]): Problem | undefined {
  if (proofs.length < 2 || proofs.some((p) => p.verdict === 'solves')) return undefined;
  const whole = c.solutions.flatMap((s) => s.turns);
  if (prove(cube, whole, goal).verdict === 'fails') return undefined;
  const message = 'none of these solves alone, all one after the other do: they are one solution';
  const hint = `write the turns as one text, without commas: - ${writeTurns(whole)}`;
  return { code: 'turns-not-text', span: c.solutions[0]!.span, message, hint };
}

/** How far the turns kept whole what they should. */
function wholeUntil({ turns }: Solution, { baseLastWhole }: Proof, base: string): string {
  if (baseLastWhole === turns.length) return `${base} are whole`;
  if (baseLastWhole === 0) return `${base} are never whole after the first turn`;
  return `${base} were last whole after turn ${baseLastWhole}, before ${turns[baseLastWhole]!.text}`;
}

export function failing(solution: Solution, proof: Proof, { cube, goal, where, ...subject }: Subject): Problem {
  const { unsolvedSaid, baseSaid } = stepOf(subject).lesson;
  const likely = likelySolution(cube, goal, solution.turns);
  return {
    code: 'solution-fails',
    span: solution.span,
    message: `the solution leaves ${unsolvedSaid(proof.broken, where)} unsolved; ${wholeUntil(solution, proof, baseSaid)}`,
    hint: likely ?? 'no change of a single turn mends it: check it against the set-up, and the set-up itself',
  };
}

/** Two set-ups at least, and two in three. */
const isMost = (count: number, all: number): boolean => count >= 2 && 3 * count >= 2 * all;

/**
 * A lesson that names another family than the one it teaches: one slip, told once and not at every case, with the families
 * that were likely meant. Undefined unless most set-ups give cases of one family that the lesson does not name.
 */
export function wrongFamily(
  { step, families, familySpan }: Lesson,
  cases: readonly Case[],
): { readonly meant: readonly string[]; readonly problem: Problem } | undefined {
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
