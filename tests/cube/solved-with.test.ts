/** The quick way to try a change in turns says what doing all turns again says; the stickers of src/audit agree with both. */
import { expect, it } from 'vitest';
import { afterTurns, solvedCube } from '../../src/cube/cube.ts';
import { mendsThatSolve } from '../../src/cube/mend.ts';
import { OTHER_SIDES, OTHER_WAYS_UP, turnsFrom } from '../../src/cube/other-holds.ts';
import { solvedWith } from '../../src/cube/solved-with.ts';
import { prove } from '../../src/cube/solves.ts';
import { inverse, TURNS, turnOf, writeTurns } from '../../src/cube/turns.ts';
import { STRAIGHT } from '../../src/cube/view.ts';
import { goalOf, SLOTS } from '../../src/steps/pair/slots.ts';
import { reprovePair } from '../audit/claims.ts';
import { randomFrom } from '../random.ts';
import { turnsIn } from './read.ts';

const SEED = 20261125;

it(`agrees with doing all turns again (seed ${SEED})`, () => {
  const r = randomFrom(SEED);
  let solving = 0;
  for (let i = 0; i < 400; i++) {
    const right = Array.from({ length: 1 + r.below(9) }, () => r.pick(TURNS));
    const from = afterTurns(solvedCube(), inverse(right));
    const goal = goalOf(
      r.pick(SLOTS),
      SLOTS.filter(() => r.chance(0.6)),
    );
    const at = r.below(right.length);
    const given = right.with(at, r.pick(TURNS));
    const solves = solvedWith(from, given, goal);
    for (let n = 0; n < 60; n++) {
      const place = n < 10 ? at : r.below(given.length + 1);
      const cut = n < 10 ? 1 : r.below(Math.min(3, given.length - place + 1));
      const put =
        n < 10 ? [n === 0 ? right[at]! : r.pick(TURNS)] : Array.from({ length: r.below(3) }, () => r.pick(TURNS));
      const all = given.toSpliced(place, cut, ...put);
      const expected = prove(from, all, goal).verdict === 'solves';
      expect(solves(place, cut, put), `seed ${SEED}: ${writeTurns(all)} after ${writeTurns(inverse(right))}`).toBe(
        expected,
      );
      if (expected) solving++;
    }
  }
  expect(solving).toBeGreaterThan(400);
});

it('finds every change that the second checker holds good, each once', () => {
  const setup = "R U R' L' U L";
  const kept = ['BL', 'BR'] as const;
  const from = afterTurns(solvedCube(), turnsIn(setup));
  const given = turnsIn("L' U L R U R");
  const found = mendsThatSolve(from, given, goalOf('FR', kept)).map((change) => writeTurns(change.turns));
  const all = new Set<string>();
  for (let at = 0; at <= given.length; at++) {
    for (const turn of TURNS) {
      if (at < given.length) all.add(writeTurns(given.with(at, turn)));
      // Beside a turn of the same face another changes only that one's amount, which is tried anyway.
      const beside = [given[at - 1], given[at]].some((t) => t?.letter === turn.letter && t.kind === turn.kind);
      if (!beside) all.add(writeTurns(given.toSpliced(at, 0, turn)));
    }
    if (at < given.length) all.add(writeTurns(given.toSpliced(at, 1)));
    if (at < given.length - 1) all.add(writeTurns(given.toSpliced(at, 2, given[at + 1]!, given[at]!)));
  }
  all.delete(writeTurns(given));
  const good = [...all].filter((solution) => reprovePair({ setup, solution, pair: 'FR', kept }).verdict === 'solves');
  expect(found.toSorted()).toEqual(good.toSorted());
  expect(found[0]).toBe("L' U L R U R'");
});

it('names turns as they are called from another side', () => {
  const [right] = OTHER_SIDES;
  // Who walks round to the right-hand side has R in front: y, by the regulations' article 12a4.
  expect(writeTurns(turnsFrom(turnsIn("F R U Rw M S' y x z'"), right!))).toBe("R B U Bw S M y z' x'");
  expect([OTHER_SIDES.length, OTHER_WAYS_UP.length]).toEqual([3, 20]);
  for (const view of [STRAIGHT, ...OTHER_SIDES, ...OTHER_WAYS_UP]) {
    const turns = turnsFrom(TURNS, view);
    expect(new Set(turns).size).toBe(TURNS.length);
    expect(turns.every((turn, i) => turn.kind === TURNS[i]!.kind)).toBe(true);
  }
  expect(turnsFrom([turnOf('face', 'U', 1)], right!)).toEqual([turnOf('face', 'U', 1)]);
});
