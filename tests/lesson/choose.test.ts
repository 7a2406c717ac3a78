import { describe, expect, it } from 'vitest';
import { compare } from '../../src/audit/compare.ts';
import { costAsWritten } from '../../src/cube/search/hands.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { printedOnPage } from '../audit/claims.ts';
import { bytesOf } from './small-lesson.ts';

const lesson = (keys: string, cases = '  - every: top-away\n'): string =>
  `title: Chosen\nhold: { cross: white, front: green }\n${keys}\ncases:\n${cases}`;

const load = (text: string) => {
  const { proved, problems } = loadLesson('a.yaml', bytesOf(text));
  expect(problems).toEqual([]);
  return proved!;
};

const costOf = (keys: string): number =>
  load(lesson(keys)).cases.reduce((sum, c) => sum + costAsWritten(c.solutions[0]!.solution.turns), 0);

describe('solutions chosen by the engine', () => {
  it('are there for every case that lists none, and proved', () => {
    for (const choice of ['easiest', 'shortest']) {
      const { cases, claims } = load(lesson(`choose: ${choice}`));
      expect(cases.map((c) => c.solutions.length)).toEqual(cases.map(() => 1));
      for (const claim of claims) expect(compare(printedOnPage(claim))).toEqual([]);
      if (choice === 'shortest') expect(claims.every((c) => c.length === c.shortest)).toBe(true);
    }
    expect(load(lesson('show: []')).claims).toEqual([]);
  });

  it('are easier for hands than the shortest, on the whole', () => {
    expect(costOf('choose: easiest')).toBeLessThan(costOf('choose: shortest'));
  });

  it('stay the same from run to run', () => {
    const turns = () => load(lesson('choose: easiest')).claims.map((c) => c.solution);
    expect(turns()).toEqual(turns());
  });

  it('turn no cube where the lesson claims so', () => {
    const { claims } = load(lesson('choose: easiest\nclaims: { rotations: none }'));
    expect(claims.filter((c) => /[xyzw]/.test(c.solution))).toEqual([]);
  });

  it('follow what the club finds hard', () => {
    const solutions = (keys: string): string =>
      load(lesson(keys))
        .claims.map((c) => c.solution)
        .join(' ');
    expect(solutions('choose: easiest')).toMatch(/R/);
    const noRight = 'choose: easiest\nhands: { R: 19, M: 19 }';
    const count = (text: string): number => text.match(/\bR\b|R['2]/g)?.length ?? 0;
    expect(count(solutions(noRight))).toBeLessThan(count(solutions('choose: easiest')) / 2);
  });

  it('add a shortest one where only longer ones are listed, if asked', () => {
    const cases =
      "  - part: Two\n    again: true\n  - setup: R U R'\n    solutions: R U2 U R'\n  - setup: R U2 R'\n    solutions: R U2 R'\n";
    const { claims } = load(lesson('show: [shortest]', cases));
    expect(claims.map((c) => [c.id, c.solution])).toEqual([
      ['1.1', "R U2 U R'"],
      ['1.2', "R U' R'"],
      ['2.1', "R U2 R'"],
    ]);
  });
});
