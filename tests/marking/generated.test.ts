/** 5,000 generated answers against the second checker; generated.deep.ts has the 100,000. */
import { expect, test } from 'vitest';
import { markGenerated } from './generated.ts';

const SEED = 20261125;

test(`5,000 answers: no false verdict, every planted slip found (seed ${SEED})`, () => {
  const { faults, verdicts, planted, meant } = markGenerated(5_000, SEED);
  expect(faults.slice(0, 10)).toEqual([]);
  // Each verdict that turns can have, each kind of slip, and odd spellings came up.
  const had = ['disturbs', 'fails', 'other-pair', 'solves', 'solves-turned', 'unreadable'];
  expect(Object.keys(verdicts).sort()).toEqual(had);
  const kinds = ['added', 'changed', 'dropped', 'inverted', 'mirrored', 'other-side', 'prime', 'swapped', 'u-first'];
  expect(Object.keys(planted).sort()).toEqual(kinds);
  for (const kind of kinds) expect(planted[kind], kind).toBeGreaterThan(30);
  expect(meant).toBeGreaterThan(200);
});
