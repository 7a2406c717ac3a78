/** All 2,064 searches by the second method, the next longer solutions included; runs with DEEP=1. */
import { expect, test } from 'vitest';
import { ADDRESSES } from '../../../../src/steps/pair/cases.ts';
import { catalogue } from '../../../../src/steps/pair/search/catalogue.ts';
import { findSolutions } from '../../../../src/steps/pair/search/find.ts';
import { nameOf, ROWS } from './rows.ts';
import { countSolutions } from './second-method.ts';

test('the search, the catalogue and the second method agree', () => {
  const rows = new Map(catalogue(ADDRESSES, { everyKeep: true, longer: 1 }).map((row) => [nameOf(row), row]));
  expect(rows.size).toBe(2064);
  for (const row of ROWS) {
    const { shortest, solutions, longer } = rows.get(nameOf(row))!;
    const expected = countSolutions(row.cube, row.goal.pieces, 1);
    expect([nameOf(row), { shortest, solutions, longer }]).toEqual([nameOf(row), expected]);
    const answer = findSolutions(row.cube, row.goal, { longer: 1 });
    expect([answer.proved, answer.shortest, answer.solutions.length]).toEqual([true, shortest, solutions + longer]);
  }
});
