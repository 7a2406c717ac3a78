/** Hints for rules that leave ways open which do not work. */
import { describe, expect, it } from 'vitest';
import { loadLesson } from '../../src/lesson/load.ts';
import { rulesOfSomeWays } from '../../src/lesson/rule-ways.ts';
import { withRules } from './faults.ts';
import { bytesOf } from './small-lesson.ts';

/** Its second rule takes what is left. */
const rulesOf = (...first: readonly string[]): string =>
  withRules(...first, '  - aim: top-top', '    between: clear', '    most: 30');
const provedOf = (text: string) => loadLesson('a.yaml', bytesOf(text)).proved!;

const SPLIT = [
  '  - see: { cross colour: sideways, edge front and corner top: unlike }',
  '    lift: edge',
  '    with: R or L',
  '    aim: split',
];

describe('a rule of which some ways work', () => {
  it('is told with the words that leave only ways that do, in the syntax of the lesson', () => {
    const text = rulesOf(...SPLIT, '    most: 8');
    const [hint, ...rest] = rulesOfSomeWays(provedOf(text));
    expect(rest).toEqual([]);
    // By hand, from each of the 96: four turns of the top before the lift, three while the face is up; two of the twelve work.
    expect(hint).toMatchObject({
      code: 'rule-some-ways',
      message: "of the 1152 ways that the rule's words allow 192 work",
    });
    const [, said] = /^write (.*), and every way works$/.exec(hint!.hint)!;
    const mended = rulesOf(...SPLIT, ...said!.split(/, | and /).map((line) => `    ${line}`), '    most: 8');
    const [claim] = provedOf(mended).rules!.rules;
    expect(claim!.proved.ways.work).toBe(claim!.proved.ways.allowed);
    expect([claim!.proved.holds, rulesOfSomeWays(provedOf(mended))]).toEqual([96, []]);
  });

  it('is told how many turns to allow, if only they are too few', () => {
    const lift = [
      '  - see: { edge: bad, corner over edge: no match }',
      "    by: R' F R F'",
      '    stands: at the side',
      '    aim: split',
    ];
    const [hint] = rulesOfSomeWays(
      provedOf(
        rulesOf(
          '  - see: { cross colour: sideways }',
          '    aim: top-top',
          '    between: clear',
          '    most: 30',
          ...lift,
          '    most: 8',
        ),
      ),
    );
    expect(hint!.hint).toMatch(/^write most: 9, and every way works$/);
  });

  it('is not told where every way works, nor where it has exceptions', () => {
    expect(
      rulesOfSomeWays(
        provedOf(rulesOf('  - see: { edge: bad }', '    aim: top-top', '    between: clear', '    most: 30')),
      ),
    ).toEqual([]);
    expect(
      rulesOfSomeWays(provedOf(rulesOf('  - see: { edge: bad }', '    lift: edge', '    aim: joined', '    most: 9'))),
    ).toEqual([]);
  });
});
