/** The parse of 20 turns, a solution longer than any that is printed: some milliseconds. */
import { bench, describe } from 'vitest';
import { explain } from '../src/cube/explain/explain.ts';
import { plantedTurns, randomTurns } from '../tests/cube/random-words.ts';
import { randomFrom } from '../tests/random.ts';

const random = randomFrom(20);
const RANDOM = Array.from({ length: 50 }, () => randomTurns(random, 20));
const PLANTED = Array.from({ length: 50 }, () =>
  [...plantedTurns(random).turns, ...randomTurns(random, 20)].slice(0, 20),
);

describe('explaining 50 times 20 turns', () => {
  bench('random turns', () => {
    for (const turns of RANDOM) explain(turns);
  });
  bench('with a form planted', () => {
    for (const turns of PLANTED) explain(turns);
  });
});
