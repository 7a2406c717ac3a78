/** Solutions carried to other slots and turns of U solve there, as the second checker sees it. */
import { describe, expect, it } from 'vitest';
import { reprove } from '../../src/audit/reprove.ts';
import { readTurns } from '../../src/cube/notation.ts';
import { type Turn, writeTurns } from '../../src/cube/turns.ts';
import { carried } from '../../src/practice/carry.ts';
import { cubeOf } from '../../src/practice/material.ts';
import { startSetUps } from '../../src/practice/set-ups.ts';
import { writeAddress } from '../../src/steps/pair/address.ts';
import { ADDRESSES, upToU } from '../../src/steps/pair/cases.ts';
import { findSolutions } from '../../src/steps/pair/search/find.ts';
import { SLOTS } from '../../src/steps/pair/slots.ts';
import { randomFrom } from '../random.ts';

const turnsOf = (text: string): readonly Turn[] => {
  const read = readTurns(text);
  if (!read.ok) throw new Error(text);
  return read.turns;
};

const SEED = 91;

describe('a solution carried to another slot', () => {
  it(`solves the same case there, after a set-up for it (seed ${SEED})`, () => {
    const r = randomFrom(SEED);
    const setUps = startSetUps();
    for (let i = 0; i < 60; i++) {
      const [address, slot, other] = [r.pick(ADDRESSES), r.pick(SLOTS), r.pick(SLOTS)];
      const { cube, goal } = cubeOf(address, slot);
      const turns = findSolutions(cube, goal).solutions[0]!.turns;
      if (turns.length === 0) continue;
      const to = r.pick(upToU(address));
      const there = carried({ address, slot, turns }, { address: to, slot: other });
      const setup = setUps.setUp(to, other, [there]);
      const { goal: goalThere } = cubeOf(to, other);
      const claim = { setup: writeTurns(setup), solution: writeTurns(there), pair: other, kept: goalThere.kept };
      const proof = reprove(claim);
      const where = `${writeAddress(address)} ${slot} to ${writeAddress(to)} ${other}, seed ${SEED}`;
      expect([proof.verdict, proof.setupFaults, proof.address], where).toEqual(['solves', [], writeAddress(to)]);
    }
  });

  it('renames rotations, wide turns and slices', () => {
    const at = { address: ADDRESSES[0]!, slot: 'FR' } as const;
    const carry = (text: string) => {
      return writeTurns(carried({ ...at, turns: turnsOf(text) }, { ...at, slot: 'FL' }));
    };
    expect(carry("y' R Uw2 F'")).toBe("y' F Uw2 L'");
    // What is at the right comes to the front: M turns as L does, so as B, against S, which turns as F; x as R, so as F: z.
    expect(carry("M U M'")).toBe("S' U S");
    expect(carry('x R')).toBe('z F');
  });
});
