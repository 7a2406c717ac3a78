import { describe, expect, it } from 'vitest';
import { readTurns } from '../../src/cube/notation.ts';
import { costAsWritten } from '../../src/cube/search/hands.ts';
import { prove } from '../../src/cube/solves.ts';
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
    const { cube, goal } = proved.cases[0]!;
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

  it('are named where they are as short and cost two turns of U less for hands, and only then', () => {
    const hard = withLine(11, "    setup: L' U2 F2 L F2 U2 L").replace("- L' U L R U R'", "- U' F2 D' L2 D F2");
    const proved = provedOf(hard);
    const [hint] = betterSolutions(proved);
    expect(hint!.code).toBe('solution-harder');
    const { cube, goal } = proved.cases[0]!;
    const listed = costAsWritten(turnsIn("U' F2 D' L2 D F2"));
    expect(hint!.message).toContain(
      `others of 6 turns are easier for hands than what is listed (cost ${listed.toFixed(1)})`,
    );
    for (const named of hint!.hint.split('; or ')) {
      const turns = turnsIn(named.replace(/ \(cost.*/, ''));
      expect(prove(cube, turns, goal).verdict).toBe('solves');
      expect(costAsWritten(turns)).toBeLessThanOrEqual(listed - 2);
    }
    // A club to which the bottom layer is as easy as the top has nothing to gain by a wide turn.
    const easy = hard.replace('family:', 'hands: { D: 1, F: 1, L: 1 }\nfamily:');
    expect(betterSolutions(provedOf(easy))).toEqual([]);
  });

  it('are proved shortest in every claim', () => {
    const { claims } = provedOf(text);
    expect(claims.map((c) => [c.length, c.shortest, c.proved])).toEqual([
      [9, 6, true],
      [6, 6, true],
    ]);
  });
});
