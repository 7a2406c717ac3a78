/** The phases and merges that claims carry, held against the second checker's stickers, over solutions by chance. */
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { compare } from '../../src/audit/compare.ts';
import { afterTurns, solvedCube } from '../../src/cube/cube.ts';
import { ALLOWED } from '../../src/cube/search/allowed.ts';
import { easiest, HANDS, type HandModel } from '../../src/cube/search/hands.ts';
import { writeTurns } from '../../src/cube/turns.ts';
import type { SolutionClaim } from '../../src/lesson/claim.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { goalAt, isSolvedAddress } from '../../src/steps/pair/address.ts';
import { ADDRESSES } from '../../src/steps/pair/cases.ts';
import { findSolutions } from '../../src/steps/pair/search/find.ts';
import { setUpFor } from '../../src/steps/pair/set-up-for.ts';
import { SLOTS, type Slot } from '../../src/steps/pair/slots.ts';
import { printedOnPage } from '../audit/claims.ts';
import { type Random, randomFrom } from '../random.ts';
import { bytesOf } from './small-lesson.ts';

/** Hands that like to turn the cube, to turn two layers, and slices. */
const ODD_HANDS: HandModel = {
  ...HANDS,
  wide: 0,
  allow: ALLOWED,
  quarter: { ...HANDS.quarter, x: 0.1, y: 0.1, z: 0.1, B: 1.6, D: 0.1, M: 0.5 },
};

/** A case in some slot, further slots open, and two solutions: as found, and as odd hands do it. */
function randomCase(r: Random): Record<string, unknown> {
  const slot: Slot = r.pick(SLOTS);
  const address = r.pick(ADDRESSES.filter((a) => !isSolvedAddress(a)));
  const open = SLOTS.filter((s) => s !== slot && r.chance(0.3));
  const setup = setUpFor(address, slot, []);
  const goal = goalAt(address, slot, open);
  const { solutions } = findSolutions(afterTurns(solvedCube(), setup), goal, { longer: r.below(2) });
  const { turns } = r.pick(solutions);
  const ways = new Set([turns, easiest(turns, ODD_HANDS).turns].map((way) => writeTurns(way)));
  return { slot, open, setup: writeTurns(setup), solutions: [...ways] };
}

const claimsOf = (cases: readonly Record<string, unknown>[], more = {}): SolutionClaim[] => {
  const hold = { cross: 'white', front: 'green' };
  const part = { part: 'All', again: true };
  const text = stringify({ title: 'By chance', hold, ...more, cases: [part, ...cases] }, { lineWidth: 0 });
  return loadLesson('a.yaml', bytesOf(text)).claims.filter((claim) => claim.kind === 'solution');
};

const faultsOf = (claim: SolutionClaim): string[] => compare(printedOnPage(claim));

describe('phases in claims', () => {
  const SEED = 2_026;
  const r = randomFrom(SEED);
  const cases = Array.from({ length: 150 }, () => randomCase(r));

  it.each(['right', 'left'] as const)(`are right over solutions by chance from seed ${SEED}, hand %s`, (hand) => {
    const claims = claimsOf(cases, { hand, wide: hand === 'left' ? 'r' : 'Rw' });
    expect(claims.length).toBeGreaterThan(cases.length);
    for (const claim of claims) expect([claim.solution, faultsOf(claim)]).toEqual([claim.solution, []]);
    // The cases are such that all that is checked is there: wide turns, turns of the cube, merges.
    expect(claims.filter((c) => /[A-Z]w|[rludfb]/.test(c.solution)).length).toBeGreaterThan(20);
    expect(claims.filter((c) => /[xyz]/.test(c.solution)).length).toBeGreaterThan(5);
    expect(claims.filter((c) => c.merges!.length > 0).length).toBeGreaterThan(3);
  });

  it('are the same for a solution and for its mirror, the hands changed over', () => {
    const inMirror: Record<string, string> = { 'right four': 'left four', 'left four': 'right four' };
    const said = (hand: 'left' | 'right') =>
      claimsOf(cases, { hand }).map(({ phases, merges }) => [
        phases!.map(({ does, hides, stands, trigger }) => {
          const name = hand === 'left' ? trigger?.replace(/right four|left four/, (one) => inMirror[one]!) : trigger;
          return { does, hides, stands, trigger: name };
        }),
        merges!.map(({ turn, does }) => ({ turn, does })),
      ]);
    expect(said('left')).toEqual(said('right'));
  });

  it('are left out where the solution fails', () => {
    const [claim] = claimsOf([{ setup: "R U R'", solutions: ["R U R'"] }]);
    expect(claim).toMatchObject({ verdict: 'fails' });
    expect(claim).not.toHaveProperty('phases');
    expect(claim).not.toHaveProperty('merges');
  });

  it('name the triggers of the club', () => {
    const sledge = { setup: "R' F R F' R U R'", open: ['BR'], solutions: ["R U' R' F R' F' R"] };
    const named = (triggers: Record<string, string>) =>
      claimsOf([sledge], { triggers })[0]!.phases!.map((p) => p.trigger);
    expect(named({})).toEqual([undefined, 'sledge']);
    // The club's own name for just these turns, before the name of what they mirror or undo.
    expect(named({ bridge: "R U' R'", 'rear door': "F R' F' R" })).toEqual([undefined, 'rear door']);
    expect(named({ sledge: "F R U R'" })).toEqual([undefined, undefined]);
  });
});
