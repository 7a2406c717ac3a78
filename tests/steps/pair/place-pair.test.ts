import { expect, it } from 'vitest';
import { pieceOf, solvedCube } from '../../../src/cube/cube.ts';
import { addressOf, writeAddress } from '../../../src/steps/pair/address.ts';
import { ADDRESSES } from '../../../src/steps/pair/cases.ts';
import { cubeWithPair } from '../../../src/steps/pair/place-pair.ts';
import { SLOTS } from '../../../src/steps/pair/slots.ts';

it.each(SLOTS)(
  'puts the pair of %s at each of the 384 addresses, one piece a place, the rest as solved as can be',
  (slot) => {
    const solved = solvedCube();
    for (const address of ADDRESSES) {
      const cube = cubeWithPair(address, slot);
      expect(writeAddress(addressOf(cube, slot)!)).toBe(writeAddress(address));
      expect(new Set([...cube.spots.slice(0, 8)].map((s) => Math.floor(s / 3))).size).toBe(8);
      expect(new Set([...cube.spots.slice(8)].map((s) => s >> 1)).size).toBe(12);
      const pair = [pieceOf(`D${slot}`), pieceOf(slot)];
      const displaced = [...cube.spots.keys()].filter((p) => !pair.includes(p) && cube.spots[p] !== solved.spots[p]);
      expect(displaced.length).toBeLessThanOrEqual(2);
    }
  },
);
