/** Limits filter, stops stop, and neither ever makes `proved` wrong. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { afterTurns, solvedCube } from '../../../../src/cube/cube.ts';
import { FACES, type Face } from '../../../../src/cube/faces.ts';
import type { Solution } from '../../../../src/cube/search/answer.ts';
import { TURNS, type Turn, writeTurns } from '../../../../src/cube/turns.ts';
import { findSolutions, shortestLength } from '../../../../src/steps/pair/search/find.ts';
import { goalOf } from '../../../../src/steps/pair/slots.ts';
import { turnsIn } from '../../../cube/read.ts';
import { ROWS, rowAt } from './rows.ts';

const texts = (solutions: readonly Solution[]): string[] => solutions.map(({ turns }) => writeTurns(turns));
const someRow = fc.constantFrom(...ROWS.filter((_, i) => i % 11 === 0));
const fewTurns = fc.array(fc.constantFrom(...TURNS.slice(0, 18)), { maxLength: 2 });

describe('limits', () => {
  const MOST = 7;
  const starts = (turns: readonly Turn[], part: readonly Turn[]): boolean => part.every((t, i) => turns[i] === t);
  const finishes = (turns: readonly Turn[], part: readonly Turn[]): boolean =>
    part.length <= turns.length && part.every((t, i) => turns[turns.length - part.length + i] === t);

  test('leave of all solutions those that obey, and the shortest of these', () => {
    let obeying = 0;
    const limits = fc.record(
      { faces: fc.subarray<Face>([...FACES], { minLength: 3 }), begins: fewTurns, ends: fewTurns },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(someRow, limits, fc.nat(), ({ cube, goal }, asked, pick) => {
        const all = findSolutions(cube, goal, { most: MOST, longer: MOST }).solutions;
        // Mostly what is asked for is taken from a solution, so that something is left.
        const model = pick % 4 === 0 ? undefined : all[pick % all.length]?.turns;
        const own = model && {
          ...(asked.begins ? { begins: model.slice(0, asked.begins.length) } : {}),
          ...(asked.ends ? { ends: model.slice(model.length - Math.min(model.length, asked.ends.length)) } : {}),
        };
        const { faces = FACES, begins = [], ends = [], ...rest } = { ...asked, ...own };
        const obey = all.filter(
          ({ turns }) =>
            turns.every(({ letter }) => faces.includes(letter as Face)) &&
            starts(turns, begins) &&
            finishes(turns, ends),
        );
        const answer = findSolutions(cube, goal, { ...rest, faces, begins, ends, most: MOST, longer: MOST });
        expect(texts(answer.solutions)).toEqual(texts(obey));
        expect(answer.shortest).toBe(obey[0]?.length);
        // All of up to seven turns are there, but as many more than the shortest were asked for.
        expect(answer.searched).toBe(MOST);
        expect(answer.proved).toBe(answer.shortest === 0);
        const shortest = findSolutions(cube, goal, { faces, begins, ends, most: MOST });
        expect(texts(shortest.solutions)).toEqual(texts(obey.filter(({ length }) => length === obey[0]!.length)));
        expect(shortest.proved).toBe(obey.length > 0);
        obeying += obey.length;
      }),
      { seed: 20240411, numRuns: 200 },
    );
    expect(obeying).toBeGreaterThan(1000);
  });

  test('are named by the viewer, who may hold the cube turned', () => {
    const cube = afterTurns(solvedCube(), turnsIn("R U R' U' y"));
    const answer = findSolutions(cube, goalOf('FR', []), { faces: ['U', 'F'], most: 9 });
    // What was R is at F after y.
    expect(texts(answer.solutions)).toContain("U F U' F'");
    const without = findSolutions(cube, goalOf('FR', []), { faces: FACES.filter((face) => face !== 'B') });
    expect(without.solutions.every(({ turns }) => turns.every(({ letter }) => letter !== 'B'))).toBe(true);
    expect(without.proved).toBe(true);
  });

  test('that nothing can obey end without a solution and without a proof', () => {
    // Flipped, an edge cannot be set right by turns of U, D, R and L: they leave good edges good, bad ones bad.
    const { cube, goal } = rowAt('DFR:D FR:R', []);
    for (const limits of [
      { faces: ['U', 'R', 'L'] as Face[], most: 11 },
      { begins: turnsIn("R R'"), most: 8 },
      { begins: turnsIn('D U'), most: 8 },
      { ends: turnsIn('R U'), most: 8 },
      { faces: [], most: 8 },
    ]) {
      const { most } = limits;
      expect(findSolutions(cube, goal, limits)).toEqual({
        shortest: undefined,
        solutions: [],
        searched: most,
        proved: false,
      });
    }
  });

  test('are turns of faces: anything else is an error of the caller', () => {
    expect(() => findSolutions(solvedCube(), goalOf('FR', []), { begins: turnsIn('y') })).toThrow(RangeError);
  });
});

describe('stops', () => {
  // Nine turns: 620,000 front halves with the longer ones, enough to be stopped anywhere.
  const { cube, goal } = rowAt('DFR:D FR:R', ['FL', 'BL', 'BR']);
  const whole = findSolutions(cube, goal, { longer: 1 });
  const all = texts(whole.solutions);

  test('the whole search, for comparison', () => {
    expect([whole.shortest, whole.searched, whole.proved]).toEqual([9, 10, true]);
  });

  /** What must hold wherever a search was stopped. */
  function expectHonest(answer: ReturnType<typeof findSolutions>): void {
    const found = texts(answer.solutions);
    expect(all).toEqual(expect.arrayContaining(found));
    if (answer.shortest !== undefined) expect(answer.shortest).toBe(9);
    else expect(found).toEqual([]);
    expect(answer.proved).toBe(answer.searched === 10);
    if (answer.searched >= 9) {
      const upTo = whole.solutions.filter(({ length }) => length <= answer.searched);
      expect(answer.solutions.filter(({ length }) => length <= answer.searched)).toEqual(upTo);
    }
    if (answer.proved) expect(found).toEqual(all);
  }

  test('after any number of nodes', () => {
    const nodes = fc.oneof(fc.nat(1_300_000), fc.nat(60_000), fc.nat(400));
    let proved = 0;
    let stopped = 0;
    fc.assert(
      fc.property(nodes, (nodes) => {
        const answer = findSolutions(cube, goal, { longer: 1, nodes });
        expectHonest(answer);
        expect(findSolutions(cube, goal, { longer: 1, nodes })).toEqual(answer);
        answer.proved ? proved++ : stopped++;
        const length = shortestLength(cube, goal, { nodes });
        expect(length.shortest ?? 9).toBe(9);
        expect(length.proved).toBe(length.shortest !== undefined);
      }),
      { seed: 20240412, numRuns: 60 },
    );
    expect([proved > 2, stopped > 20]).toEqual([true, true]);
  });

  test('after any number of questions', () => {
    let asked = 0;
    const never = findSolutions(cube, goal, { longer: 1, stop: () => ++asked < 0 });
    expect(texts(never.solutions)).toEqual(all);
    expect(asked).toBeGreaterThan(30);
    for (let most = 0; most <= asked; most += 3) {
      let left = most;
      expectHonest(findSolutions(cube, goal, { longer: 1, stop: () => left-- <= 0 }));
    }
  });

  test('at a length: nothing is claimed beyond it', () => {
    for (const most of [0, 5, 8, 9, 10, 11]) {
      const answer = findSolutions(cube, goal, { longer: 1, most });
      expectHonest(answer);
      expect(answer.searched).toBe(Math.min(most, 10));
      expect(answer.shortest).toBe(most < 9 ? undefined : 9);
      expect(shortestLength(cube, goal, { most })).toEqual(
        most < 9 ? { shortest: undefined, proved: false } : { shortest: 9, proved: true },
      );
    }
  });
});
