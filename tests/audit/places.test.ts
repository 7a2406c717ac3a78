import { describe, expect, test } from 'vitest';
import {
  addressText,
  caseSight,
  faceletsOf,
  faceOf,
  familyOf,
  type PairSight,
  PLACES,
  pairSight,
  type Slot,
} from '../../src/audit/places.ts';
import { readTurns } from '../../src/audit/read-turns.ts';
import { afterTurns, againstCentres } from '../../src/audit/stickers.ts';
import { randomWord, seeded } from './random.ts';

function sightAfter(word: string, slot: Slot): PairSight {
  const read = readTurns(word);
  if (!read.ok) throw new Error(`${word}: ${read.fault}`);
  return pairSight(againstCentres(afterTurns(read.turns)), slot);
}

/** Every way a pair can lie with the cross whole: 24 corner sights times 16 edge sights. */
const everySight: readonly PairSight[] = (() => {
  const sights = PLACES.flatMap((place) => [...place].map((face) => ({ place, face })));
  const corners = sights.filter(({ place }) => place.length === 3);
  const edges = sights.filter(({ place }) => place.length === 2 && !place.startsWith('D'));
  return corners.flatMap((corner) => edges.map((edge) => ({ corner, edge })));
})();

test('each facelet of a place lies on the face of its letter', () => {
  for (const place of PLACES) expect(faceletsOf(place).map(faceOf).join('')).toBe(place);
});

describe('cases', () => {
  test('384 addresses fall into the 168 cases of the families', () => {
    expect(everySight).toHaveLength(384);
    const cases = new Map(everySight.map((sight) => [addressText(caseSight(sight)), familyOf(caseSight(sight))!]));
    const sizes: Record<string, number> = {};
    for (const family of cases.values()) sizes[family] = (sizes[family] ?? 0) + 1;
    // 24 + 6 + 6 + 6 = 42 is the number of classes of one pair, computed by orbits (36 of four states and 6 of one)
    // and by double cosets in GAP; the foreign slots follow: 3 slots times the sights there.
    expect(sizes).toEqual({
      'top-top': 24,
      'home-top': 6,
      'top-home': 6,
      'home-home': 6,
      'top-away': 18,
      'away-top': 18,
      'home-away': 18,
      'away-home': 18,
      'away-away': 54,
    });
  });

  test('a case is its own case and keeps its family', () => {
    for (const sight of everySight) {
      const form = caseSight(sight);
      expect(caseSight(form)).toEqual(form);
      expect(familyOf(form)).toBe(familyOf(sight));
    }
  });

  test('turning U after a set-up changes the address and never the case', () => {
    const seed = 7;
    const pick = seeded(seed);
    for (let i = 0; i < 300; i++) {
      const word = randomWord(pick, ['U', 'R', 'F', 'L', 'B', 'D'], 12);
      const forms = ['', ' U', ' U2', " U'"].map((turn) => addressText(caseSight(sightAfter(word + turn, 'FR'))));
      // An edge in the cross is not part of the case's world, but its address turns by the same rule.
      expect(new Set(forms).size, `seed ${seed}: ${word}`).toBe(1);
    }
  });
});

describe('addresses followed by hand, sticker by sticker', () => {
  test.each([
    // The corner goes DFR, UFR, UBR, UFR with its D sticker on D, F, R, R; the edge FR, UR, UB with F on F, U, U.
    ["R U' R'", 'FR', 'UFR:R UB:U'],
    // The corner goes DFR, UFR, UFL and stays, D sticker on D, F, L; the edge FR, UR, UF with F on F, U, U.
    ["R U R'", 'FR', 'UFL:L UF:U'],
    ['', 'FR', 'DFR:D FR:F'],
    ['', 'BL', 'DFR:D FR:F'],
    // The corner goes DFL, UFL, UBL, UFL with its D sticker on D, F, L, L; the edge FL, UL, UB with L on L, L, B.
    // Seen with FL turned to FR, so L to F, B to L, F to R: UFR with F, UL with L.
    ["L' U L", 'FL', 'UFR:F UL:L'],
  ] as const)('%j, pair of %s: %s', (word, slot, address) => expect(addressText(sightAfter(word, slot))).toBe(address));
});

test('the same set-up done from another side gives the same address in that slot', () => {
  const seed = 99;
  const pick = seeded(seed);
  for (let i = 0; i < 200; i++) {
    const word = randomWord(pick, ['U', 'R', 'F', 'L', 'B', 'D', 'M', 'Rw'], 10);
    const seen = addressText(sightAfter(word, 'FR'));
    // After y the old B is on the right and the old R in front, so what is done at FR is done to the slot BR.
    for (const [turn, back, slot] of [
      ['y', "y'", 'BR'],
      ['y2', 'y2', 'BL'],
      ["y'", 'y', 'FL'],
    ] as const) {
      // Back about the axis it came by: word may rotate the centres, and the address is read against them.
      expect(addressText(sightAfter(`${turn} ${word} ${back}`, slot)), `seed ${seed}: ${word}`).toBe(seen);
    }
  }
});
