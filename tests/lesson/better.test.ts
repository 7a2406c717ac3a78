import { describe, expect, it } from 'vitest';
import { readTurns } from '../../src/cube/notation.ts';
import { costAsWritten, easiest } from '../../src/cube/search/hands.ts';
import { prove } from '../../src/cube/solves.ts';
import { lengthOf } from '../../src/cube/turns.ts';
import { betterSolutions } from '../../src/lesson/better.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { turnsIn } from '../cube/read.ts';
import { bytesOf, withLine } from './small-lesson.ts';

const provedOf = (text: string) => loadLesson('a.yaml', bytesOf(text)).proved!;

describe('better solutions', () => {
  // The three turns of U at the end do nothing for the pair.
  const text = withLine(13, "      - L' U L R U R' U U2 U");

  it('are named where only longer ones are listed, each shorter and solving', () => {
    const proved = provedOf(text);
    const [hint, ...rest] = betterSolutions(proved);
    expect(rest).toEqual([]);
    expect(hint).toMatchObject({ code: 'solution-longer', message: '9 turns are listed, 6 would do' });
    expect(text.slice(hint!.span.start, hint!.span.end)).toBe("L' U L R U R' U U2 U");
    const { cube, goal } = proved.cases[0]!.subject;
    const named = hint!.hint.split('; or ').flatMap((one) => one.replace(')', '').split(' (for hands: '));
    expect(named.length).toBeGreaterThanOrEqual(3);
    for (const turns of named) {
      const reading = readTurns(turns);
      expect(reading.ok && prove(cube, reading.turns, goal).verdict, turns).toBe('solves');
    }
  });

  it('are not named where a shortest one is listed too', () => {
    expect(betterSolutions(provedOf(withLine(13, "      - L' U L R U R' U U2 U", "      - L' U L R U R'")))).toEqual(
      [],
    );
  });

  // A case with four solutions of seven turns, the third of them all half turns and turns behind.
  const hard = (...listed: string[]) =>
    withLine(11, "    setup: L' U R U' R' U' L U").replace(
      "      - L' U L R U R'\n",
      listed.map((turns) => `      - ${turns}\n`).join(''),
    );
  const HARD = "R2 B2 L2 B' L2 B' R2";

  it('are named where they are as short and cost two turns of U less, each done as hands do it best', () => {
    const proved = provedOf(hard(HARD));
    const [hint] = betterSolutions(proved);
    expect(hint!.code).toBe('solution-harder');
    const { cube, goal } = proved.cases[0]!.subject;
    const listed = easiest(turnsIn(HARD)).cost;
    expect(hint!.message).toBe(
      `others of 7 turns are easier for hands than what is listed (cost ${listed.toFixed(1)} at its easiest)`,
    );
    for (const named of hint!.hint.split('; or ')) {
      const turns = turnsIn(named.replace(/ \(cost.*/, ''));
      expect(prove(cube, turns, goal).verdict).toBe('solves');
      expect(costAsWritten(turns)).toBeLessThanOrEqual(listed - 2);
    }
    // To a club that finds one turn as hard as another none of them is worth a hint.
    const alike = hard(HARD).replace('family:', 'hands: { U: 1, D: 1, R: 1, L: 1, F: 1, B: 1, half: 0 }\nfamily:');
    expect(betterSolutions(provedOf(alike))).toEqual([]);
  });

  it('are as long as is said, also where the easiest of those listed is longer', () => {
    const longer = "U' L' U R U R' L D D'";
    expect(easiest(turnsIn(longer)).cost).toBeLessThan(easiest(turnsIn(HARD)).cost);
    const [hint] = betterSolutions(provedOf(hard(HARD, longer)));
    expect(hint!.message).toMatch(/^others of 7 turns/);
    for (const named of hint!.hint.split('; or ')) {
      expect(lengthOf(turnsIn(named.replace(/ \(cost.*/, '')))).toBe(7);
    }
  });

  it('are none of those listed, held otherwise', () => {
    // The same turns of the same faces, with the cube turned at the start or with a wide turn: by hand.
    const setup = withLine(11, "    setup: F' U F R' U2 R2 U' R'");
    for (const turns of ["y F R' F' R F U F'", "R B' R' B R U R'", "Lw U' R' U R F R'"]) {
      expect(betterSolutions(provedOf(setup.replace("- L' U L R U R'", `- ${turns}`))), turns).toEqual([]);
    }
  });

  it('are proved shortest in every claim', () => {
    const { claims } = provedOf(text);
    expect(claims.map((c) => [c.length, c.shortest, c.proved])).toEqual([
      [9, 6, true],
      [6, 6, true],
    ]);
  });
});
