/** Where a pair is: addresses worked out by hand from their definition, in all four slots. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { afterTurns, pieceOf, solvedCube } from '../../../src/cube/cube.ts';
import { cornerOf, edgeOf } from '../../../src/cube/spots.ts';
import { TURNS, writeTurns } from '../../../src/cube/turns.ts';
import {
  type Address,
  addressOf,
  readAddress,
  SOLVED_ADDRESS,
  seenFrom,
  stuckSlots,
  writeAddress,
} from '../../../src/steps/pair/address.ts';
import { ADDRESSES, caseOf, upToU } from '../../../src/steps/pair/cases.ts';
import { cornerOfSlot, SLOTS, type Slot, slotOfPlace } from '../../../src/steps/pair/slots.ts';
import { turnsIn } from '../../cube/read.ts';

function addressAfter(setup: string, slot: Slot): string | undefined {
  const address = addressOf(afterTurns(solvedCube(), turnsIn(setup)), slot);
  return address && writeAddress(address);
}

function addressIn(text: string): Address {
  const address = readAddress(text);
  if (!address) throw new Error(`not an address: ${text}`);
  return address;
}

/**
 * Followed on paper, sticker by sticker, with R: F>U>B>D>F, L: U>F>D>B>U, U: F>L>B>R>F. For example `R U R'`: the
 * corner's D sticker goes D>F by R (now UFR:F), F>L by U (UFL:L); the edge's F sticker goes F>U by R (UR:U) and stays
 * up (UF:U); R' touches neither. For the other slots the pair is then turned so that its own slot is FR: BR by y
 * (F>L, R>F, B>R, L>B), BL by y2, FL by y'.
 */
const BY_HAND: readonly (readonly [setup: string, slot: Slot, address: string])[] = [
  ['', 'FR', 'DFR:D FR:F'],
  ['', 'FL', 'DFR:D FR:F'],
  ['', 'BL', 'DFR:D FR:F'],
  ['', 'BR', 'DFR:D FR:F'],
  ["R U R'", 'FR', 'UFL:L UF:U'],
  ["R U' R'", 'FR', 'UFR:R UB:U'],
  // FL: UFR with the D sticker on R, UF with the sticker of L's colour on F; y' makes these UBR:B and UR:R.
  ["L' U' L", 'FL', 'UBR:B UR:R'],
  // BR: UBR:R, UF with the sticker of R's colour on F; by y UFR:F and UL:L.
  ["R' U R", 'BR', 'UFR:F UL:L'],
  // BL: UBR:R, UB with the sticker of B's colour on U; by y2 UFL:L and UF:U.
  ["L U L'", 'BL', 'UFL:L UF:U'],
  // One piece in a foreign slot: as after R U R', then the corner L>L>F>D into FL; the edge to UR by U'.
  ["R U R' L' U' L", 'FR', 'DFL:D UR:U'],
  // R2 U R2: the corner DFR:D>UBR:U>UFR:U>DBR:D, the edge FR:F>BR:B, out of U's reach, and back.
  ['R2 U R2', 'FR', 'DBR:D FR:F'],
  // Rotations: the viewer's R after y is the centre of B, so that the pair of BR does what FR's did.
  ["y R U R'", 'BR', 'UFL:L UF:U'],
  ["y R U R' y'", 'BR', 'UFL:L UF:U'],
  ["y' R U R'", 'FL', 'UFL:L UF:U'],
  ["y2 R U' R' y", 'BL', 'UFR:R UB:U'],
  // Under x y the viewer's R is the centre of U, the viewer's U that of F: U F' U'.
  ["x y R U' R' y' x'", 'FR', 'UBR:B UR:R'],
  // The same turn of the pair, written with a wide turn and a rotation: R is Lw x.
  ["Lw x U R'", 'FR', 'UFL:L UF:U'],
];

test.each(BY_HAND)('%j, %s: %s', (setup, slot, address) => {
  expect(addressAfter(setup, slot)).toBe(address);
});

test('no address while the edge is in the bottom layer', () => {
  expect(addressAfter('R F2', 'FR')).toBeDefined();
  expect(addressAfter('F', 'FR')).toBeUndefined();
});

/** Where a slot is seen after y, which takes what is at F to L. */
const AFTER_Y: Readonly<Record<Slot, Slot>> = { FR: 'FL', FL: 'BL', BL: 'BR', BR: 'FR' };
const anyTurns = fc.array(fc.constantFrom(...TURNS), { maxLength: 12 }).map(writeTurns);

test("a set-up done by the cube's other sides gives the other slots' pairs the same addresses", () => {
  fc.assert(
    fc.property(anyTurns, fc.constantFrom(...SLOTS), (setup, slot) => {
      // After y the pair of this slot is where `AFTER_Y` says, and what is done there is done to it.
      expect(addressAfter(`y ${setup} y'`, slot)).toBe(addressAfter(setup, AFTER_Y[slot]));
      expect(addressAfter(`y ${setup}`, slot)).toBe(addressAfter(setup, AFTER_Y[slot]));
    }),
    { seed: 20240106, numRuns: 300 },
  );
});

test('a turn of U leaves the case as it is, and so does holding the cube otherwise', () => {
  fc.assert(
    fc.property(anyTurns, fc.constantFrom('U', 'U2', "U'"), fc.constantFrom(...SLOTS), (setup, u, slot) => {
      const cube = afterTurns(solvedCube(), turnsIn(setup));
      const before = addressOf(cube, slot);
      // The face of the centre U turns, whichever way the set-up left the cube held.
      const after = addressOf(afterTurns({ ...cube, view: 0 }, turnsIn(u)), slot);
      if (!before || !after) {
        expect(after).toBe(before);
        return;
      }
      expect(caseOf(after)).toEqual(caseOf(before));
      expect(upToU(before)).toContainEqual(after);
      expect(addressOf({ ...cube, view: 7 }, slot)).toEqual(before);
    }),
    { seed: 20240107, numRuns: 300 },
  );
});

describe('text', () => {
  test('every address reads back', () => {
    for (const address of ADDRESSES) expect(addressIn(writeAddress(address))).toEqual(address);
    expect(writeAddress(SOLVED_ADDRESS)).toBe('DFR:D FR:F');
  });

  test.each([
    '',
    'UFR:R',
    'UFR:R UB',
    'UFR:L UB:U',
    'UFR:R UB:F',
    'UFR:R DB:D',
    'URF:R UB:U',
    'UFR:R BU:U',
    'UB:U UFR:R',
    'ufr:r ub:u',
    'UFR:RUB:U',
    'UFR:R UB:U FL',
  ])('%j is none', (text) => expect(readAddress(text)).toBeUndefined());

  test('spaces around and between do not matter', () => {
    expect(addressIn('  UFR:R \t UB:U ')).toEqual(addressIn('UFR:R UB:U'));
  });
});

describe('slots with a stuck piece', () => {
  // By hand: with the own slot turned to FR the piece is in the slot to the viewer's left of it, and so on round.
  test.each<[string, Slot, Slot[]]>([
    ['DFL:D UR:U', 'FR', ['FL']],
    ['DFL:D UR:U', 'FL', ['BL']],
    ['DFL:D UR:U', 'BL', ['BR']],
    ['DFL:D UR:U', 'BR', ['FR']],
    ['UFR:R BL:B', 'FR', ['BL']],
    ['UFR:R BL:L', 'FL', ['BR']],
    ['DFL:D BR:B', 'FR', ['FL', 'BR']],
    ['DFL:L FL:F', 'FR', ['FL']],
    ['DFL:L BL:L', 'BR', ['FR', 'FL']],
    ['DFR:R BR:B', 'FR', ['BR']],
    ['DFR:F FR:R', 'FR', []],
    ['UFR:R UB:U', 'BL', []],
  ])('%s, own slot %s: %j', (address, slot, stuck) => {
    expect(stuckSlots(addressIn(address), slot)).toEqual(stuck);
  });

  test('are the slots of the places where the pieces are', () => {
    fc.assert(
      fc.property(anyTurns, fc.constantFrom(...SLOTS), (setup, slot) => {
        const cube = afterTurns(solvedCube(), turnsIn(setup));
        const address = addressOf(cube, slot);
        fc.pre(address !== undefined);
        const corner = cube.spots[pieceOf(cornerOfSlot(slot))]!;
        const edge = cube.spots[pieceOf(slot)]!;
        const places = [cornerOf(corner), edgeOf(edge)].map(slotOfPlace);
        expect(stuckSlots(address!, slot)).toEqual(SLOTS.filter((s) => s !== slot && places.includes(s)));
        expect(seenFrom(address!, slot).corner).toBe(corner);
        expect(edgeOf(seenFrom(address!, slot).edge)).toBe(edgeOf(edge));
      }),
      { seed: 20240108, numRuns: 300 },
    );
  });
});
