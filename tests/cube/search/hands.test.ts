/** The cheapest way for hands, held against trying every way of a few turns. */
import { describe, expect, it } from 'vitest';
import { afterTurns, solvedCube } from '../../../src/cube/cube.ts';
import { ALLOWED } from '../../../src/cube/search/allowed.ts';
import { costAsWritten, type Execution, easiest, HANDS, type HandModel } from '../../../src/cube/search/hands.ts';
import { mirror, TURNS, type Turn, writeTurns } from '../../../src/cube/turns.ts';
import { centreAt } from '../../../src/cube/view.ts';
import { randomFrom } from '../../random.ts';
import { turnsIn } from '../read.ts';

const FACE_TURNS = TURNS.filter((t) => t.kind === 'face');
const SEED = 99;

/** With all there is. */
const FREE: HandModel = { ...HANDS, allow: ALLOWED };
/** With no face that is avoided whatever it costs. */
const ANY_FACE: HandModel = { ...FREE, quarter: { ...HANDS.quarter, B: 1.6, D: 1.6 } };
const STILL: HandModel = { ...HANDS, still: true };

const stateAfter = (turns: readonly Turn[]): string => afterTurns(solvedCube(), turns).spots.join();

/** As those do it who lead with the left hand. */
function easiestLeft(turns: readonly Turn[]): Execution {
  const { turns: mirrored, cost } = easiest(mirror(turns), FREE);
  return { turns: mirror(mirrored), cost };
}

/** Every way to write some face turns with at most so many written turns, by trying all. */
function cheapestByTrying(wanted: readonly Turn[], most: number): number {
  const target = stateAfter(wanted);
  let best = Number.POSITIVE_INFINITY;
  const walk = (turns: readonly Turn[], done: number): void => {
    if (stateAfter(turns) === target) best = Math.min(best, costAsWritten(turns));
    if (turns.length === most) return;
    for (const turn of TURNS) {
      const isRotation = turn.kind === 'rotation';
      if (!isRotation && done === wanted.length) continue;
      const next = [...turns, turn];
      // Only what does the wanted face turns one after the other.
      const count = isRotation ? 0 : turn.kind === 'slice' ? 2 : 1;
      if (!isRotation && stateAfter(next) !== stateAfter(wanted.slice(0, done + count))) continue;
      walk(next, done + count);
    }
  };
  walk([], 0);
  return best;
}

describe('easiest', () => {
  const random = randomFrom(SEED);
  const words = Array.from({ length: 200 }, () =>
    Array.from({ length: 1 + random.below(8) }, () => random.pick(FACE_TURNS)),
  );

  it(`does the same to the cube as the turns given (seed ${SEED})`, () => {
    for (const word of words) {
      for (const way of [easiest(word), easiest(word, FREE), easiestLeft(word), easiest(word, STILL)]) {
        expect(stateAfter(way.turns), writeTurns(word)).toBe(stateAfter(word));
      }
    }
  });

  it('costs what its turns cost as written, and never more than the turns given', () => {
    for (const word of words) {
      const { turns, cost } = easiest(word, ANY_FACE);
      expect(costAsWritten(turns, ANY_FACE), writeTurns(word)).toBeCloseTo(cost, 6);
      expect(cost).toBeLessThanOrEqual(costAsWritten(word, ANY_FACE) + 1e-6);
      const still = easiest(word, { ...ANY_FACE, allow: [], still: true });
      expect(still.turns.every((t) => t.kind === 'face')).toBe(true);
      expect(still.cost).toBeGreaterThanOrEqual(cost);
    }
  });

  it('is the cheapest of all ways to do one or two turns', () => {
    for (const text of ['B', "D'", 'L2', "R L'", 'B U', "F' D", 'D D2', "B F'", "U D'"]) {
      const word = turnsIn(text);
      expect(easiest(word, FREE).cost, text).toBeCloseTo(cheapestByTrying(word, word.length + 1), 6);
    }
  });

  it('leaves the cross at the bottom and uses nothing but what is allowed', () => {
    const some = words.slice(0, 60);
    const used = (allow: HandModel['allow']): string =>
      some.map((word) => writeTurns(easiest(word, { ...HANDS, allow }).turns)).join('\n');
    expect(used([])).not.toMatch(/[wMESxz]|\w.*y/);
    expect(used(['wide'])).toMatch(/w/);
    expect(used(['wide'])).not.toMatch(/[MESxz]|\w.*y/);
    expect(used(['slices'])).not.toMatch(/[wxz]/);
    expect(used(['rotations'])).toMatch(/\w.*y/);
    expect(used(['rotations'])).not.toMatch(/[wMESxz]/);
    expect(used(['tipping'])).toMatch(/[xz]/);
    for (const word of some) {
      const { turns } = easiest(word, { ...HANDS, allow: ['wide', 'slices', 'rotations'] });
      expect(centreAt(afterTurns(solvedCube(), turns).view, 'D'), writeTurns(turns)).toBe('D');
    }
  });

  it('begins with y where that spares turns of B, and has none where the cube is held still', () => {
    const done = (text: string, model = HANDS): string => writeTurns(easiest(turnsIn(text), model).turns);
    expect(done("B U B'")).toBe("y R U R'");
    expect(done("B U B'", STILL)).toBe("B U B'");
    expect(done("L' U L")).toBe("L' U L");
    expect(done("R B' L F R")).toMatch(/B/);
  });

  it('is the same in a mirror for the other hand', () => {
    for (const word of words) {
      const left = easiestLeft(mirror(word));
      const right = easiest(word, FREE);
      expect(left).toEqual({ turns: mirror(right.turns), cost: right.cost });
    }
  });

  it('finds what a coach would do (common practice, no source)', () => {
    const done = (text: string): string => writeTurns(easiest(turnsIn(text), FREE).turns);
    // The right four is left alone; turns of B are not done blindly; the floor is not turned twice.
    expect(done("R U R' U'")).toBe("R U R' U'");
    expect(done("B U B' F' U F")).not.toMatch(/B(?!w)/);
    expect(done("F2 D' L2 D F2")).not.toMatch(/D/);
    expect(done("R L'")).toContain('M');
  });

  it('knows triggers of either hand and what a regrip costs', () => {
    const cost = (text: string): number => costAsWritten(turnsIn(text));
    expect(cost("R U R'")).toBeLessThan(cost("L' U' L"));
    expect(cost("R U R' U' R U R'")).toBeLessThan(cost('R U R U R U R'));
    expect(easiestLeft(turnsIn("L' U' L")).cost).toBe(easiest(turnsIn("R U R'"), FREE).cost);
    expect(cost("R U R'")).toBeLessThan(cost("B U B'"));
  });

  it('follows a club that likes other things', () => {
    const loved = { ...FREE, quarter: { ...HANDS.quarter, B: 0.2 } };
    expect(writeTurns(easiest(turnsIn("B U B'"), loved).turns)).toBe("B U B'");
  });

  it('is the cheapest too where a club likes three rotations better than one', () => {
    const odd = { ...FREE, quarter: { ...HANDS.quarter, x: 0, y: 0, z: 20 } };
    // x x y' brings the back in front and turns it over; R and U there are B and D here.
    const byHand = costAsWritten(turnsIn("x x y' R' U' R U R' U' R U"), odd);
    expect(stateAfter(turnsIn("x x y' R' U' R U R' U' R U"))).toBe(stateAfter(turnsIn("B' D' B D B' D' B D")));
    expect(easiest(turnsIn("B' D' B D B' D' B D"), odd).cost).toBeLessThanOrEqual(byHand + 0.005);
  });
});
