import { describe, expect, it } from 'vitest';
import { cornerOf, faceletsOf, faceOf, placeOf } from '../../../src/audit/places.ts';
import { readTurns } from '../../../src/audit/read-turns.ts';
import { afterTurns, type Stickers, undone } from '../../../src/audit/stickers.ts';
import { readAddress, writeAddress } from '../../../src/steps/pair/address.ts';
import { ADDRESSES } from '../../../src/steps/pair/cases.ts';
import { isJoined, isSplit } from '../../../src/steps/pair/joined-split.ts';
import { naiveSolutions, TEXT } from './search/naive.ts';

const joined = ADDRESSES.filter(isJoined).map(writeAddress);
const split = ADDRESSES.filter(isSplit).map(writeAddress);

/** By the second checker's stickers: what three turns insert, after a turn of U at most, all other slots kept. */
function inserts(): Map<string, string> {
  const found = new Map<string, string>();
  for (const [row, words] of naiveSolutions(4)) {
    const [address, kept] = row.split(' | ');
    if (kept !== 'FL BL BR' || !/^U\S+ U/.test(address!)) continue;
    const word = words.find((w) => w.length === 3 || (w.length === 4 && TEXT[w[0]!]!.startsWith('U')));
    if (word) found.set(address!, word.map((turn) => TEXT[turn]).join(' '));
  }
  return found;
}

/** The faces that both pieces of the front right pair touch, and whether they show one colour there. */
function touching(state: Stickers): { faces: string[]; match: boolean } {
  const pieces = [cornerOf('FR'), 'FR'] as const;
  const [corner, edge] = pieces.map((home) => {
    const shown = faceletsOf(home).map((facelet) => [faceOf(state[facelet]!), faceOf(facelet)] as const);
    return { place: placeOf(state, home), shown: new Map(shown) };
  });
  const faces = [...edge!.place].filter((face) => corner!.place.includes(face));
  return { faces, match: faces.every((face) => corner!.shown.get(face) === edge!.shown.get(face)) };
}

describe('joined and split', () => {
  const words = inserts();
  const stateOf = (address: string): Stickers => {
    const read = readTurns(words.get(address)!);
    if (!read.ok) throw new Error(read.fault);
    return undone(afterTurns(read.turns));
  };

  it('are eight addresses each', () => {
    expect(joined).toHaveLength(8);
    expect(split).toHaveLength(8);
  });

  it('are together what three turns insert, after a turn of U at most', () => {
    expect([...words.keys()].sort()).toEqual([...joined, ...split].sort());
  });

  it('joined: side by side with matching stickers', () => {
    for (const address of joined)
      expect([address, touching(stateOf(address))]).toMatchObject([address, { match: true }]);
    for (const address of joined) expect([address, touching(stateOf(address)).faces.length]).toEqual([address, 2]);
  });

  it('split: not side by side', () => {
    for (const address of split)
      expect([address, touching(stateOf(address)).faces.length < 2]).toEqual([address, true]);
  });

  // Followed by hand: R brings the corner to UFR, its D sticker to F; the edge to UR, its F sticker up. Then U, or U'.
  it("knows what R U' R' and R U R' leave on the solved cube", () => {
    expect(split).toContain('UFR:R UB:U');
    expect(joined).toContain('UFL:L UF:U');
    // On top, both, and no three turns do it: the pair side by side with unlike stickers.
    expect([isJoined, isSplit].map((is) => is(readAddress('UFR:U UF:U')!))).toEqual([false, false]);
  });
});
