/**
 * How many solutions a second one thread proves. Acceptance: 200,000 a second, the reading of the solution included.
 * Each sample proves all the claims of the deck once: solutions a second = `hz` * claims, printed at the end.
 */
import { bench, describe } from 'vitest';
import { afterTurns, type Cube, solvedCube } from '../src/cube/cube.ts';
import type { Goal } from '../src/cube/goal.ts';
import { readTurns } from '../src/cube/notation.ts';
import { prove } from '../src/cube/solves.ts';
import { inverse, type Turn, writeTurns } from '../src/cube/turns.ts';
import { goalOf } from '../src/steps/pair/slots.ts';

function turnsIn(text: string): Turn[] {
  const reading = readTurns(text);
  if (!reading.ok) throw new Error(`${text}: ${reading.message}`);
  return reading.turns;
}

// Solutions of 3 to 14 turns, of every kind of turn; the set-up of each is its inverse, so that each one is proved.
const SOLUTIONS = [
  "R U R'",
  "R U' R' U R U' R'",
  "y' L' U L U' F U F'",
  "R U R' U' R U R' U' R U R'",
  "F' U F U2 R U R'",
  "U R U2' R' U R U' R'",
  "Rw U' Rw' U2 Rw U Rw' R U R'",
  "M' U M U2 M' U M",
  "U' R U' R' U2 R U' R'",
  "R2 U2 R' U' R U' R2",
  "x' R U R' x U2 R U' R'",
  "U2 R U2 R' U R U' R' d R' U' R",
];
const GOALS: readonly Goal[] = [goalOf('FR', ['FL', 'BL', 'BR']), goalOf('FR', ['BL', 'BR']), goalOf('FR', [])];

interface Item {
  readonly setup: string;
  readonly solution: string;
  readonly turns: Turn[];
  readonly from: Cube;
  readonly goal: Goal;
}
const DECK: readonly Item[] = SOLUTIONS.flatMap((solution) => {
  const turns = turnsIn(solution);
  const setup = writeTurns(inverse(turns));
  const from = afterTurns(solvedCube(), turnsIn(setup));
  return GOALS.map((goal) => ({ setup, solution, turns, from, goal }));
});

/** Proves the deck; what comes back keeps the work from being optimised away, and is checked. */
function proved(proof: (item: Item) => boolean): void {
  let n = 0;
  for (const item of DECK) if (proof(item)) n++;
  if (n !== DECK.length) throw new Error(`${DECK.length - n} of the bench's own solutions fail`);
}

const ROWS: Readonly<Record<string, (item: Item) => boolean>> = {
  'set-up and solution read': ({ setup, solution, goal }) =>
    prove(afterTurns(solvedCube(), turnsIn(setup)), turnsIn(solution), goal).verdict === 'solves',
  'solution read': ({ from, solution, goal }) => prove(from, turnsIn(solution), goal).verdict === 'solves',
  'all read before': ({ from, turns, goal }) => prove(from, turns, goal).verdict === 'solves',
};

describe(`proving ${DECK.length} claims`, () => {
  for (const [name, proof] of Object.entries(ROWS)) {
    let runs = 0;
    let ms = 0;
    bench(
      name,
      () => {
        const start = performance.now();
        proved(proof);
        ms += performance.now() - start;
        runs++;
      },
      {
        teardown: (_, mode) => {
          if (mode !== 'run') return;
          const claims = runs * DECK.length;
          console.log(`${name}: ${claims} claims, ${Math.round((1000 * claims) / ms)} a second`);
        },
      },
    );
  }
});
