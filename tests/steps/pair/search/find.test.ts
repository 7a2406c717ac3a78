/** Exact search: what is a solution, that all are found, that none is wrong. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { afterTurns, solvedCube } from '../../../../src/cube/cube.ts';
import type { Answer } from '../../../../src/cube/search/answer.ts';
import { prove } from '../../../../src/cube/solves.ts';
import { inverse, lengthOf, TURNS, turnOf, writeTurns } from '../../../../src/cube/turns.ts';
import { writeAddress } from '../../../../src/steps/pair/address.ts';
import { findSolutions, shortestLength } from '../../../../src/steps/pair/search/find.ts';
import { goalOf, SLOTS, type Slot } from '../../../../src/steps/pair/slots.ts';
import { reprovePair } from '../../../audit/claims.ts';
import { turnsIn } from '../../../cube/read.ts';
import { naiveSolutions, rowName, TEXT } from './naive.ts';
import { nameOf, ROWS, rowAt } from './rows.ts';
import { countSolutions } from './second-method.ts';

const texts = ({ solutions }: Answer): string[] => solutions.map(({ turns }) => writeTurns(turns));
const countsOf = (answer: Answer) => {
  const shortest = answer.solutions.filter(({ length }) => length === answer.shortest).length;
  return { shortest: answer.shortest, solutions: shortest, longer: answer.solutions.length - shortest };
};

describe('every word of up to five turns, followed on the stickers of the second checker', () => {
  const naive = naiveSolutions(5);

  test('gives the same solutions, in the same order, for all 2,064 searches', () => {
    expect(ROWS).toHaveLength(2064);
    expect([...naive.keys()].every((name) => ROWS.some((row) => nameOf(row) === name))).toBe(true);
    let found = 0;
    for (const row of ROWS) {
      const { solutions, shortest } = findSolutions(row.cube, row.goal, { most: 5, longer: 5 });
      const expected = naive.get(rowName(writeAddress(row.address), row.kept)) ?? [];
      expect(solutions.map(({ turns }) => writeTurns(turns))).toEqual(
        expected.map((w) => w.map((t) => TEXT[t]).join(' ')),
      );
      expect(shortest).toBe(expected[0]?.length);
      found += solutions.length;
    }
    expect(found).toBeGreaterThan(1000);
  });
});

describe('the second method, a pruned search', () => {
  // Every 41st row, so that all addresses and sets have their turn; all rows are in second-method.deep.ts.
  const sample = ROWS.filter((_, i) => i % 41 === 7);

  test.each(sample.map((row) => [nameOf(row), row] as const))('finds as many for %s', (_, { cube, goal }) => {
    expect(countsOf(findSolutions(cube, goal, { longer: 1 }))).toEqual(countSolutions(cube, goal.pieces, 1));
  });

  test('and as many where the cross is not whole', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...TURNS.slice(0, 18)), { minLength: 20, maxLength: 20 }), (turns) => {
        const cube = afterTurns(solvedCube(), turns);
        const goal = goalOf('FR', []);
        const answer = findSolutions(cube, goal);
        expect(answer.shortest).toBeGreaterThan(6);
        expect(countsOf(answer)).toEqual(countSolutions(cube, goal.pieces, 0));
      }),
      { seed: 20240401, numRuns: 10 },
    );
  });
});

describe('by hand', () => {
  test('the solved case has one solution, the empty one, and none longer', () => {
    expect(findSolutions(solvedCube(), goalOf('FR', []), { longer: 3 })).toEqual({
      shortest: 0,
      solutions: [{ turns: [], length: 0 }],
      searched: 3,
      proved: true,
    });
  });

  test('what passes through the goal as written is no solution, what does not is one', () => {
    // D' alone solves. A turn of U after it comes too late; before it, in normal form, it is a word of its own.
    const cube = afterTurns(solvedCube(), turnsIn('D'));
    const found = texts(findSolutions(cube, goalOf('FR', ['FL', 'BL', 'BR']), { longer: 1 }));
    expect(found).toEqual(["D'", "U D'", "U2 D'", "U' D'"]);
  });

  test('U and D stand in one order only, and so do the other opposite faces', () => {
    for (const [setup, solution] of [
      ['D U', "D'"],
      ['L R', "R' L'"],
      ['B2 F', "F' B2"],
    ] as const) {
      const cube = afterTurns(solvedCube(), turnsIn(setup));
      expect(texts(findSolutions(cube, goalOf('FR', ['FL', 'BL', 'BR'])))).toEqual([solution]);
    }
  });
});

/** What a coach may hold: set-ups with every kind of turn, the cube standing upright at the end. */
const setups = fc
  .record({
    turns: fc.array(fc.constantFrom(...TURNS), { maxLength: 12 }),
    about: fc.constantFrom('', 'y', 'y2', "y'"),
    slot: fc.constantFrom<Slot>(...SLOTS),
    keep: fc.subarray<Slot>([...SLOTS]),
  })
  .map(({ turns, about, slot, keep }) => {
    // Turned back by undoing its rotations, then about the vertical axis.
    const some = turns.filter((t) => t.kind === 'face' || t.kind === 'rotation').slice(0, 7);
    const rotations = inverse(some.filter((t) => t.kind === 'rotation'));
    const setup = [...some, ...rotations, ...turnsIn(about)];
    return { setup, slot, keep: keep.filter((s) => s !== slot) };
  });

test('every solution found is proved by the engine and by the second checker, from set-ups that turn the cube too', () => {
  let proved = 0;
  fc.assert(
    fc.property(setups, ({ setup, slot, keep }) => {
      const cube = afterTurns(solvedCube(), setup);
      const goal = goalOf(slot, keep);
      const answer = findSolutions(cube, goal, { longer: 1 });
      expect(answer.proved).toBe(true);
      expect(answer.shortest).toBeLessThanOrEqual(lengthOf(setup));
      expect(shortestLength(cube, goal)).toEqual({ shortest: answer.shortest, proved: true });
      for (const { turns, length } of answer.solutions.slice(0, 40)) {
        expect(turns).toHaveLength(length);
        expect(turns.every(({ kind }) => kind === 'face')).toBe(true);
        expect(prove(cube, turns, goal).verdict).toBe('solves');
        const claim = { setup: writeTurns(setup), solution: writeTurns(turns), pair: slot, kept: goal.kept };
        expect(reprovePair(claim).verdict).toBe('solves');
        proved++;
      }
    }),
    { seed: 20240402, numRuns: 250 },
  );
  expect(proved).toBeGreaterThan(500);
});

describe('laws', () => {
  const some = fc.constantFrom(...ROWS.filter((_, i) => i % 7 === 0));
  const searched = (setup: string, slot: Slot, keep: readonly Slot[]) =>
    findSolutions(afterTurns(solvedCube(), turnsIn(setup)), goalOf(slot, keep), { longer: 1 });
  /** A set-up that makes the case of a row, its kept slots whole: a solution taken back. */
  const setupFor = (row: (typeof ROWS)[number]): string =>
    writeTurns(inverse(findSolutions(row.cube, row.goal).solutions[0]!.turns));
  const renamed = (text: string, faces: Readonly<Record<string, string>>): string =>
    text.replace(/[RLFB]/g, (letter) => faces[letter] ?? letter);
  const turnedBack = (text: string): string =>
    writeTurns(turnsIn(text).map((t) => turnOf(t.kind, t.letter, (4 - t.quarters) as 1 | 2 | 3)));
  /** Opposite faces may change their order in a mirror: turns are compared as sets. */
  const asSets = (found: readonly string[]): string[] => found.map((text) => text.split(' ').sort().join(' ')).sort();

  test.each([
    ['left and right', { R: 'L', L: 'R' }, { FR: 'FL', FL: 'FR', BL: 'BR', BR: 'BL' }],
    ['across the slot FR', { R: 'F', F: 'R', L: 'B', B: 'L' }, { FR: 'FR', FL: 'BR', BL: 'BL', BR: 'FL' }],
  ] as const)('mirrored cases have as many solutions, mirrored: %s', (_, faces, slots) => {
    fc.assert(
      fc.property(some, (row) => {
        const setup = setupFor(row);
        const plain = searched(setup, 'FR', row.kept);
        const mirrored = searched(
          turnedBack(renamed(setup, faces)),
          slots.FR,
          row.kept.map((slot) => slots[slot]),
        );
        expect(countsOf(mirrored)).toEqual(countsOf(plain));
        expect(asSets(texts(mirrored))).toEqual(asSets(texts(plain).map((text) => turnedBack(renamed(text, faces)))));
      }),
      { seed: 20240403, numRuns: 60 },
    );
  });

  test('a quarter turn of the whole cube changes names and nothing else', () => {
    const faces = { F: 'L', L: 'B', B: 'R', R: 'F' };
    const slots = { FR: 'FL', FL: 'BL', BL: 'BR', BR: 'FR' } as const;
    fc.assert(
      fc.property(some, fc.constantFrom(1, 2, 3), (row, quarters) => {
        let setup = setupFor(row);
        let slot: Slot = 'FR';
        let kept = row.kept;
        let plain = texts(searched(setup, slot, kept));
        for (let i = 0; i < quarters; i++) {
          setup = renamed(setup, faces);
          slot = slots[slot];
          kept = kept.map((s) => slots[s]);
          plain = plain.map((text) => renamed(text, faces));
        }
        expect(asSets(texts(searched(setup, slot, kept)))).toEqual(asSets(plain));
      }),
      { seed: 20240404, numRuns: 60 },
    );
  });

  test('no shortest solution ends in a turn of U', () => {
    for (const { cube, goal } of ROWS.filter((_, i) => i % 5 === 0)) {
      for (const { turns } of findSolutions(cube, goal).solutions) expect(turns.at(-1)?.letter).not.toBe('U');
    }
  });

  test('the search leaves the cube that it is given as it is', () => {
    const { cube, goal } = rowAt('UFR:U UF:U', ['FL']);
    const before = cube.spots.slice();
    findSolutions(cube, goal, { longer: 1 });
    expect(cube.spots).toEqual(before);
  });
});
