/** Solutions carried to other slots and turns of U solve there, as the second checker sees it. */
import { describe, expect, it } from 'vitest';
import { readTurns } from '../../src/cube/notation.ts';
import { type Turn, writeTurns } from '../../src/cube/turns.ts';
import { carried } from '../../src/practice/carry.ts';
import type { Address } from '../../src/steps/pair/address.ts';
import { ADDRESSES, upToU } from '../../src/steps/pair/cases.ts';
import { SLOTS, type Slot } from '../../src/steps/pair/slots.ts';
import { pairs } from '../../src/steps/pair/step.ts';
import { type PairSubject, pairSubject } from '../../src/steps/pair/subject.ts';
import { reprovePair } from '../audit/claims.ts';
import { randomFrom } from '../random.ts';

const turnsOf = (text: string): readonly Turn[] => {
  const read = readTurns(text);
  if (!read.ok) throw new Error(text);
  return read.turns;
};

const seen = (address: Address, slot: Slot): PairSubject => pairSubject(address, { slot, open: [] });

const SEED = 91;

describe('a solution carried to another slot', () => {
  it(`solves the same case there, after a set-up for it (seed ${SEED})`, () => {
    const r = randomFrom(SEED);
    for (let i = 0; i < 60; i++) {
      const [address, slot, other] = [r.pick(ADDRESSES), r.pick(SLOTS), r.pick(SLOTS)];
      const from = seen(address, slot);
      const { turns } = pairs.solutions(from, 0).solutions[0]!;
      if (turns.length === 0) continue;
      const to = seen(r.pick(upToU(address)), other);
      const there = carried(turns, from, to);
      const setup = pairs.setUp(to, [there]);
      const claim = { setup: writeTurns(setup), solution: writeTurns(there), pair: other, kept: to.goal.kept };
      const proof = reprovePair(claim);
      const where = `${from.address} ${slot} to ${to.address} ${other}, seed ${SEED}`;
      expect([proof.verdict, proof.setupFaults, proof.address], where).toEqual(['solves', [], to.address]);
    }
  });

  it('renames rotations, wide turns and slices', () => {
    const carry = (text: string) =>
      writeTurns(carried(turnsOf(text), seen(ADDRESSES[0]!, 'FR'), seen(ADDRESSES[0]!, 'FL')));
    expect(carry("y' R Uw2 F'")).toBe("y' F Uw2 L'");
    // What is at the right comes to the front: M turns as L does, so as B, against S, which turns as F; x as R, so as F: z.
    expect(carry("M U M'")).toBe("S' U S");
    expect(carry('x R')).toBe('z F');
  });
});
