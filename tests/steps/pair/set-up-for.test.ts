/** Set-ups made for every case, done on the second checker's stickers. */
import { describe, expect, it } from 'vitest';
import { inverse, type Turn, writeTurns } from '../../../src/cube/turns.ts';
import { goalAt, isSolvedAddress, SOLVED_ADDRESS, writeAddress } from '../../../src/steps/pair/address.ts';
import { CASES } from '../../../src/steps/pair/cases.ts';
import { cubeWithPair } from '../../../src/steps/pair/place-pair.ts';
import { findSolutions } from '../../../src/steps/pair/search/find.ts';
import { setUpFor } from '../../../src/steps/pair/set-up-for.ts';
import { SLOTS } from '../../../src/steps/pair/slots.ts';
import { reprovePair } from '../../audit/claims.ts';

const isInSlots = (address: string): boolean => address.split(' ').every((piece) => !piece.startsWith('U'));
/** Without turns of U at its ends: they hide nothing of an answer. */
const bare = (text: string): string => text.replace(/^(U[2']? )+/, '').replace(/( U[2']?)+$/, '');

describe('a set-up', () => {
  it('for each case and slot gives just that case and none of its shortest answers, and no turn of U is idle', () => {
    for (const [i, address] of CASES.filter((one) => !isSolvedAddress(one)).entries()) {
      const slot = SLOTS[i % 4]!;
      const { solutions } = findSolutions(cubeWithPair(address, slot), goalAt(address, slot));
      const best = solutions.map(({ turns }) => turns);
      for (const avoid of [[], best] as Turn[][][]) {
        const setup = writeTurns(setUpFor(address, slot, avoid));
        const solution = writeTurns(best[0]!);
        const proof = reprovePair({ setup, solution, pair: slot, kept: goalAt(address, slot).kept });
        expect([proof.address, proof.verdict, proof.setupFaults]).toEqual([writeAddress(address), 'solves', []]);
        for (const answer of best) expect(bare(writeTurns(inverse(answer)))).not.toBe(bare(setup));
        expect(setup).not.toMatch(/^U/);
        if (isInSlots(writeAddress(address))) expect(setup).not.toMatch(/ U[2']?$/);
      }
    }
  });

  it('of the solved pair is empty', () => {
    expect(setUpFor(SOLVED_ADDRESS, 'FR', [])).toEqual([]);
  });
});
