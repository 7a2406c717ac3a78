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
