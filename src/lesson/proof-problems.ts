/** What the prover finds wrong, in the words of a coach. */

import { type Proof, prove } from '../cube/solves.ts';
import type { Place } from '../cube/spots.ts';
import { writeTurns } from '../cube/turns.ts';
import { isSolvedAddress } from '../steps/pair/address.ts';
import { type Family, familyOf } from '../steps/pair/cases.ts';
import { doSetUp, type SetUp, type SetUpFault } from '../steps/pair/set-up.ts';
import { SLOTS, type Slot, slotOfPlace } from '../steps/pair/slots.ts';
import { joined, listed } from '../text/likely.ts';
import type { Case, Solution } from './lesson.ts';
import { likelySetup, likelySolution } from './likely-turns.ts';
import type { Problem } from './problem.ts';

/** "the pair, slot BR and the cross at DR": what places that are not home have in common. */
function unsolvedIn(broken: readonly Place[], own: Slot): string {
  const of = (slot: Slot): Place[] => broken.filter((place) => slotOfPlace(place) === slot);
  const pair = of(own);
  const cross = broken.filter((place) => slotOfPlace(place) === undefined);
  return joined([
    ...(pair.length === 2 ? ['the pair'] : pair.map((place) => `the pair's ${place.length === 3 ? 'corner' : 'edge'}`)),
    ...SLOTS.filter((slot) => slot !== own && of(slot).length > 0).map((slot) => `slot ${slot}`),
    ...(cross.length > 0 ? [`the cross at ${joined(cross)}`] : []),
  ]);
}

/** Another slot whose pair the set-up and the solutions are about. */
function likelySlot(c: Case, families: readonly Family[]): string | undefined {
  const slot = SLOTS.find((other) => {
    const setUp = other === c.slot ? undefined : doSetUp(c.setup, other, c.open);
    if (!setUp || 'fault' in setUp || (families.length > 0 && !families.includes(familyOf(setUp.address))))
      return false;
    if (isSolvedAddress(setUp.address)) return false;
    return c.solutions.every(({ turns }) => prove(setUp.cube, turns, setUp.goal).verdict === 'solves');
  });
  return slot && `the set-up and the solutions are about the pair of slot ${slot}: write slot: ${slot}`;
}

export function setupProblem(c: Case, found: SetUpFault, families: readonly Family[]): Problem {
  const span = c.setupSpan;
  const likely = likelySlot(c, families) ?? likelySetup(c, families);
  switch (found.fault) {
    case 'rotates': {
      const message = `the set-up ends with ${c.colours[found.down]} down instead of ${c.colours.D}`;
      const hint = likely ?? "turn the cube back at its end, or leave the rotation out; y, y' and y2 are fine";
      return { code: 'setup-rotates', span, message, hint };
    }
    case 'hides-pair': {
      const message = `after the set-up the edge of slot ${c.slot} is in the bottom layer`;
      return { code: 'setup-hides-pair', span, message, hint: likely ?? 'mend it so that the cross is whole' };
    }
    case 'breaks-base': {
      const { broken } = found;
      const message = `the set-up leaves unsolved what it should keep: ${unsolvedIn(broken, c.slot)}`;
      const slots = SLOTS.filter((s) => broken.some((place) => slotOfPlace(place) === s));
      const isCross = broken.some((place) => slotOfPlace(place) === undefined);
      const opened = slots.length > 1 ? 'these slots are' : 'this slot is';
      const otherwise = isCross
        ? 'look for a turn that is missing or the wrong way round'
        : `mend it, or say that ${opened} open: open: ${slots.length > 1 ? `[${slots.join(', ')}]` : slots[0]}`;
      return { code: 'setup-breaks-base', span, message, hint: likely ?? otherwise };
    }
  }
}

export function otherFamily(c: Case, family: Family, wanted: readonly Family[]): Problem {
  const hint =
    likelySlot(c, wanted) ?? likelySetup(c, wanted) ?? `mend the set-up, or write family: ${family} if all cases are`;
  const message = `the set-up gives a case of ${family}; this lesson is about ${listed(wanted)}`;
  return { code: 'setup-other-family', span: c.setupSpan, message, hint };
}

/** Solutions that all fail, and solve when done one after the other: one solution written as a list. */
export function inPieces(c: Case, { cube, goal }: SetUp, proofs: readonly Proof[]): Problem | undefined {
  if (proofs.length < 2 || proofs.some((p) => p.verdict === 'solves')) return undefined;
  const whole = c.solutions.flatMap((s) => s.turns);
  if (prove(cube, whole, goal).verdict === 'fails') return undefined;
  const message = 'none of these solves alone, all one after the other do: they are one solution';
  const hint = `write the turns as one text, without commas: - ${writeTurns(whole)}`;
  return { code: 'turns-not-text', span: c.solutions[0]!.span, message, hint };
}

/** How far the turns kept whole what they should. */
function wholeUntil({ turns }: Solution, { baseLastWhole }: Proof): string {
  if (baseLastWhole === turns.length) return 'cross and kept slots are whole';
  if (baseLastWhole === 0) return 'cross and kept slots are never whole after the first turn';
  return `cross and kept slots were last whole after turn ${baseLastWhole}, before ${turns[baseLastWhole]!.text}`;
}

export function failing(solution: Solution, proof: Proof, { cube, goal }: SetUp): Problem {
  const likely = likelySolution(cube, goal, solution.turns);
  return {
    code: 'solution-fails',
    span: solution.span,
    message: `the solution leaves ${unsolvedIn(proof.broken, goal.slot)} unsolved; ${wholeUntil(solution, proof)}`,
    hint: likely ?? 'no change of a single turn mends it: check it against the set-up, and the set-up itself',
  };
}
