import { describe, expect, it } from 'vitest';
import { readTurns } from '../../src/cube/notation.ts';
import { prove } from '../../src/cube/solves.ts';
import { betterSolutions } from '../../src/lesson/better.ts';
import { loadLesson } from '../../src/lesson/load.ts';
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

  it('are proved shortest in every claim', () => {
    const { claims } = provedOf(text);
    expect(claims.map((c) => [c.length, c.shortest, c.proved])).toEqual([
      [9, 6, true],
      [6, 6, true],
    ]);
  });
});
