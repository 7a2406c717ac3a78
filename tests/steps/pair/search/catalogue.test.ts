/** The catalogue: which rows there are, and what must hold between them. All rows by a second method: the deep tests. */
import { describe, expect, test } from 'vitest';
import { stuckSlots, writeAddress } from '../../../../src/steps/pair/address.ts';
import { ADDRESSES, CASES, upToU } from '../../../../src/steps/pair/cases.ts';
import { type CatalogueRow, catalogue } from '../../../../src/steps/pair/search/catalogue.ts';
import { findSolutions } from '../../../../src/steps/pair/search/find.ts';
import { nameOf, ROWS, rowOf } from './rows.ts';

const every = catalogue(ADDRESSES, { everyKeep: true, longer: 1 });
const byName = new Map(every.map((row) => [nameOf(row), row]));
const lengthAt = (address: CatalogueRow['address'], kept: CatalogueRow['kept']): number =>
  byName.get(nameOf({ address, kept }))!.shortest;

describe('rows', () => {
  // A set is consistent if it holds no stuck piece. Counted by hand: with k slots kept, 24 - 3k spots of the corner and
  // 16 - 2k of the edge are left: 384 + 3 * 21 * 14 + 3 * 18 * 12 + 15 * 10 = 2,064.
  test('2,064 in all, each once, as many as addresses and sets that agree', () => {
    expect(every).toHaveLength(2064);
    expect(byName.size).toBe(2064);
    expect([...byName.keys()].sort()).toEqual(ROWS.map(nameOf).sort());
    const bySize = [0, 1, 2, 3].map((k) => every.filter(({ kept }) => kept.length === k).length);
    expect(bySize).toEqual([384, 882, 648, 150]);
  });

  test('one a case, all possible slots kept, if nothing more is asked for', () => {
    const rows = catalogue(CASES);
    expect(rows.map(({ address }) => writeAddress(address))).toEqual(CASES.map(writeAddress));
    for (const { address, kept, longer } of rows) {
      expect(kept).toEqual((['FL', 'BL', 'BR'] as const).filter((slot) => !stuckSlots(address, 'FR').includes(slot)));
      expect(longer).toBe(0);
    }
  });

  test('are the same whatever else is asked for with them', () => {
    for (const row of catalogue(CASES, { longer: 1 })) expect(row).toEqual(byName.get(nameOf(row)));
    for (const row of catalogue([...ADDRESSES].reverse().slice(0, 60), { everyKeep: true, longer: 1 })) {
      expect(row).toEqual(byName.get(nameOf(row)));
    }
  });
});

test('lengths and counts are those of single searches, which know nothing of mirrors and of other sets', () => {
  for (const row of every.filter((_, i) => i % 4 === 1)) {
    const { cube, goal } = rowOf(row.address, row.kept);
    const { shortest, solutions, proved } = findSolutions(cube, goal, { longer: 1 });
    const found = solutions.filter(({ length }) => length === shortest).length;
    expect([nameOf(row), shortest, found, solutions.length - found, proved]).toEqual([
      nameOf(row),
      row.shortest,
      row.solutions,
      row.longer,
      true,
    ]);
  }
});

test('two turns longer, too', () => {
  const some = ADDRESSES.filter((_, i) => i % 60 === 3);
  for (const row of catalogue(some, { longer: 2 })) {
    const { cube, goal } = rowOf(row.address, row.kept);
    const { shortest, solutions } = findSolutions(cube, goal, { longer: 2 });
    expect([shortest, solutions.length]).toEqual([row.shortest, row.solutions + row.longer]);
  }
});

describe('laws', () => {
  test('keeping more never shortens', () => {
    let pairs = 0;
    for (const { address, kept, shortest } of every) {
      for (const slot of kept) {
        expect(
          lengthAt(
            address,
            kept.filter((s) => s !== slot),
          ),
        ).toBeLessThanOrEqual(shortest);
        pairs++;
      }
    }
    // Each row, once for each slot that it keeps.
    expect(pairs).toBe(882 + 2 * 648 + 3 * 150);
  });

  test('a turn of U changes a length by at most one', () => {
    for (const { address, kept, shortest } of every) {
      for (const turned of upToU(address)) expect(Math.abs(lengthAt(turned, kept) - shortest)).toBeLessThanOrEqual(1);
    }
  });

  // From the definition: after a turn of U at most, three turns insert a joined or split pair: 8 addresses each; those
  // that need no turn of U first are 3 long, and nothing else but the solved case is shorter than 4.
  test('what three turns insert: six addresses, whatever is kept', () => {
    const three = every.filter(({ kept, shortest }) => kept.length === 3 && shortest === 3);
    expect(three).toHaveLength(6);
    expect(every.filter(({ shortest }) => shortest < 3).every(({ shortest }) => shortest === 0)).toBe(true);
  });
});
