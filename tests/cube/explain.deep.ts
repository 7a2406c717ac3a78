/** The row of explain.test.ts that takes minutes; it runs with DEEP=1. */
import { test } from 'vitest';
import { TURNS } from '../../src/cube/turns.ts';
import { randomFrom } from '../random.ts';
import { expectTheSame } from './explained.ts';
import { plantedTurns, randomTurns } from './random-words.ts';

test('the parse stands for the turns it was made of: 10,000 random words (seed 1314)', () => {
  const random = randomFrom(1314);
  for (let i = 0; i < 10_000; i++) {
    expectTheSame(i % 2 === 0 ? randomTurns(random, 1 + random.below(25), TURNS) : plantedTurns(random).turns);
  }
});
