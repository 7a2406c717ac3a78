/** Proving: what is broken, how long the base was whole, what a goal asks for. Rows are worked out by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reprove } from '../../src/audit/reprove.ts';
import { afterTurns, homeOf, isHome, pieceOf, solvedCube } from '../../src/cube/cube.ts';
import { areHome } from '../../src/cube/goal.ts';
import { prove } from '../../src/cube/solves.ts';
import type { Place } from '../../src/cube/spots.ts';
import { inverse, TURNS, writeTurns } from '../../src/cube/turns.ts';
import { cornerOfSlot, edgeOfSlot, goalOf, SLOTS, type Slot, slotOfPlace } from '../../src/steps/pair/slots.ts';
import { randomFrom } from '../random.ts';
import { turnsIn } from './read.ts';

const ALL_BUT_FR: readonly Slot[] = ['FL', 'BL', 'BR'];

interface Row {
  readonly name: string;
  readonly setup: string;
  readonly solution: string;
  readonly slot?: Slot;
  readonly kept?: readonly Slot[];
  readonly broken: readonly Place[];
  /** After how many printed turns the base was last whole. */
  readonly base: number;
}

const ROWS: readonly Row[] = [
  { name: 'the inverse', setup: "R U R'", solution: "R U' R'", broken: [], base: 3 },
  { name: 'turns after the goal', setup: "R U R'", solution: "R U' R' U2", broken: [], base: 4 },
  { name: 'nothing to do', setup: '', solution: '', broken: [], base: 0 },
  { name: 'nothing done', setup: "R U R'", solution: '', broken: ['DFR', 'FR'], base: 0 },
  { name: 'only the layer on top turned', setup: "R U R'", solution: 'U2', broken: ['DFR', 'FR'], base: 1 },
  {
    // R U R' U' and U R U' R are R2 together, so that all five required pieces of the right side are elsewhere.
    name: 'a prime forgotten at the end',
    setup: "R U R' U'",
    solution: "U R U' R",
    broken: ['DR', 'DBR', 'BR', 'DFR', 'FR'],
    base: 1,
  },
  {
    name: 'one turn of a solved cube, everything kept',
    setup: '',
    solution: 'R',
    broken: ['DR', 'DBR', 'BR', 'DFR', 'FR'],
    base: 0,
  },
  { name: 'the same, BR open', setup: '', solution: 'R', kept: ['FL', 'BL'], broken: ['DR', 'DFR', 'FR'], base: 0 },
  {
    name: 'the pair solved, a kept slot disturbed',
    setup: "R U R'",
    solution: "R U' R' L' U L",
    broken: ['DFL', 'FL'],
    base: 3,
  },
  {
    name: 'the same, that slot open',
    setup: "R U R'",
    solution: "R U' R' L' U L",
    kept: ['BL', 'BR'],
    broken: [],
    base: 6,
  },
  { name: 'no slot kept', setup: "R U R'", solution: "R U' R' L' U L L U L'", kept: [], broken: [], base: 9 },
  // The first four turns solve it, F' U F takes the pair out again.
  { name: 'whole in between', setup: "R U R' U'", solution: "U R U' R' F' U F", broken: ['DFR', 'FR'], base: 7 },
  // y brings the face R to F, y2 the face R to L; Lw x is R, and so is Rw M.
  { name: 'a rotation first', setup: "R U R'", solution: "y F U' F'", broken: [], base: 4 },
  { name: 'a rotation in between', setup: "R U R'", solution: "R y2 U' L' y", broken: [], base: 5 },
  {
    name: "a rotation forgotten: R U' L' by the centres",
    setup: "R U R'",
    solution: "R y2 U' R'",
    broken: ['DL', 'DR', 'DFL', 'FL', 'DBL', 'BL', 'DBR', 'BR', 'DFR', 'FR'],
    base: 0,
  },
  { name: 'R as a wide turn and a rotation', setup: "R U R'", solution: "Lw x U' R'", broken: [], base: 4 },
  { name: 'R as a wide turn and a slice', setup: "R U R'", solution: "Rw M U' R'", broken: [], base: 4 },
  { name: 'a slice and back', setup: "R U R'", solution: "R E U' E' R'", broken: [], base: 5 },
  {
    // Lw is R and leaves the centre of B on top: R U R' R B' is R U B'.
    name: 'a wide turn that leaves the cube turned',
    setup: "R U R'",
    solution: "Lw U'",
    broken: ['DB', 'DR', 'DBL', 'BL', 'DBR', 'BR', 'DFR', 'FR'],
    base: 0,
  },
  { name: 'a rotation after all', setup: "R U R'", solution: "R U' R' x z", broken: [], base: 5 },
  {
    name: 'a set-up that leaves the cube turned',
    setup: "y R U R'",
    solution: "R U' R'",
    slot: 'BR',
    kept: ['FR', 'FL', 'BL'],
    broken: [],
    base: 3,
  },
  {
    name: "the same held as before the set-up: B U B' R U' R' by the centres",
    setup: "y R U R' y'",
    solution: "R U' R'",
    slot: 'BR',
    kept: ['FL', 'BL'],
    broken: ['DBR', 'BR'],
    base: 3,
  },
];

test.each(ROWS)('$name: $setup | $solution', ({ setup, solution, slot = 'FR', kept = ALL_BUT_FR, broken, base }) => {
  const from = afterTurns(solvedCube(), turnsIn(setup));
  const before = { spots: from.spots.slice(), view: from.view };
  expect(prove(from, turnsIn(solution), goalOf(slot, kept))).toEqual({
    verdict: broken.length === 0 ? 'solves' : 'fails',
    broken,
    baseLastWhole: base,
  });
  expect(from).toEqual(before);
});

describe('goal', () => {
  test('is the cross, the kept slots in their order, then the pair', () => {
    const goal = goalOf('BL', ['BR', 'FR']);
    expect(goal.kept).toEqual(['FR', 'BR']);
    expect(goal.base.map(homeOf)).toEqual(['DF', 'DL', 'DB', 'DR', 'DFR', 'FR', 'DBR', 'BR']);
    expect(goal.pieces.map(homeOf)).toEqual([...goal.base.map(homeOf), 'DBL', 'BL']);
  });

  test('never keeps its own slot, and keeps none twice', () => {
    expect(goalOf('FR', ['FR', 'FL', 'FL']).kept).toEqual(['FL']);
    expect(goalOf('FR', ['FR', 'FL', 'FL']).pieces).toHaveLength(8);
  });

  test.each(SLOTS)('%s is the corner below and the edge of one column', (slot) => {
    expect([cornerOfSlot(slot), edgeOfSlot(slot)]).toEqual([`D${slot}`, slot]);
    expect([cornerOfSlot(slot), edgeOfSlot(slot)].map(slotOfPlace)).toEqual([slot, slot]);
  });

  test.each(['UFR', 'UF', 'DF', 'DR'] as const)('%s belongs to no slot', (place) => {
    expect(slotOfPlace(place)).toBeUndefined();
  });
});

describe('any turns', () => {
  const anyTurns = fc.array(fc.constantFrom(...TURNS), { maxLength: 12 });
  const anyGoal = fc
    .tuple(fc.constantFrom(...SLOTS), fc.subarray([...SLOTS]))
    .map(([slot, kept]) => goalOf(slot, kept));

  test('the inverse of a set-up solves it, whatever the goal', () => {
    fc.assert(
      fc.property(anyTurns, anyGoal, (setup, goal) => {
        const proof = prove(afterTurns(solvedCube(), setup), inverse(setup), goal);
        expect(proof).toEqual({ verdict: 'solves', broken: [], baseLastWhole: setup.length });
      }),
      { seed: 20240109, numRuns: 300 },
    );
  });

  test('a proof agrees with turning the whole cube', () => {
    fc.assert(
      fc.property(anyTurns, anyTurns, anyGoal, (setup, solution, goal) => {
        const from = afterTurns(solvedCube(), setup);
        const cubes = solution.map((_, n) => afterTurns(from, solution.slice(0, n + 1)));
        const last = cubes.at(-1) ?? from;
        expect(prove(from, solution, goal)).toEqual({
          verdict: areHome(last, goal.pieces) ? 'solves' : 'fails',
          broken: goal.pieces.filter((piece) => !isHome(last, piece)).map(homeOf),
          baseLastWhole: 1 + cubes.findLastIndex((cube) => areHome(cube, goal.base)),
        });
      }),
      { seed: 20240110, numRuns: 300 },
    );
  });

  test('a piece is named by its home', () => {
    for (let piece = 0; piece < 20; piece++) expect(pieceOf(homeOf(piece))).toBe(piece);
  });
});

describe('a goal of the last layer', () => {
  const LAST = [...'UFR UFL UBL UBR UF UL UB UR'.split(' ')] as Place[];
  const FIRST_TWO = SLOTS.flatMap((slot): Place[] => [cornerOfSlot(slot), edgeOfSlot(slot)]);
  const CROSS: readonly Place[] = ['DF', 'DL', 'DB', 'DR'];

  // The second checker's stickers know nothing of pieces. Half of the words are made of short ways there and back.
  test.each([20261128, 7, 91])('is judged as the second checker judges it (seed %i)', (seed) => {
    const r = randomFrom(seed);
    const word = (length: number) => Array.from({ length }, () => r.pick(TURNS.slice(0, 18)));
    const verdicts = new Set<string>();
    for (let i = 0; i < 200; i++) {
      const some = word(r.below(3));
      const [setup, solution] = r.chance(0.5) ? [some, [...inverse(some), ...word(r.below(2))]] : [word(4), word(4)];
      const base = r.chance(0.5) ? [] : CROSS;
      const home = [...(r.chance(0.3) ? FIRST_TWO : []), ...(r.chance(0.5) ? LAST.filter(() => r.chance(0.6)) : [])];
      const top = r.chance(0.5) ? LAST.filter(() => r.chance(0.6)) : [];
      const free = r.chance(0.5) ? ('U' as const) : undefined;
      const goal = { base: base.map(pieceOf), pieces: [...base, ...home].map(pieceOf), top, free };
      const proof = prove(afterTurns(solvedCube(), setup), solution, goal);
      const text = { setup: writeTurns(setup), solution: writeTurns(solution) };
      const again = reprove({
        ...text,
        base: base as never,
        goal: { home: home as never, top: top as never, free: free ?? null },
      });
      expect(proof.verdict, JSON.stringify({ ...text, base, home, top, free })).toBe(again.verdict);
      expect(proof.broken.length).toBe(again.broken.length);
      verdicts.add(`${proof.verdict} ${top.length > 0} ${free}`);
    }
    // Both verdicts, with and without each.
    expect(verdicts.size).toBe(8);
  });
});
