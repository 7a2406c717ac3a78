import { describe, expect, it } from 'vitest';
import { compare } from '../../src/audit/compare.ts';
import type { SolutionClaim } from '../../src/lesson/claim.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import { ProvedLesson } from '../../src/lesson/prove.ts';
import { printedOnPage } from '../audit/claims.ts';
import { bytesOf, SMALL_LESSON, withLine } from './small-lesson.ts';

const load = (text: string, file = 'lessons/small.yaml') => loadLesson(file, bytesOf(text));
const provedOf = (text: string): ProvedLesson => {
  const { proved, problems } = load(text);
  expect(problems).toEqual([]);
  return proved!;
};

/** What the second checker says; it knows claims as they are printed. */
const faultsOf = (claim: SolutionClaim): string[] => compare(printedOnPage(claim));

describe('proving a lesson', () => {
  it('claims what was worked out by hand for the small lesson', () => {
    // By hand: R U R' brings the pair to the top; L' U L puts the edge into the front left slot. The corner ends
    // at the top back right, white to the back. White is down, so yellow is up; green in front then has orange right.
    expect(provedOf(SMALL_LESSON).claims[0]).toEqual({
      id: '1.1',
      kind: 'solution',
      file: 'lessons/small.yaml',
      line: 13,
      hold: { up: 'yellow', front: 'green' },
      setup: "R U R' L' U L",
      solution: "L' U L R U R'",
      cross: 'white',
      pair: 'FR',
      kept: ['BL', 'BR'],
      address: 'UBR:B FL:F',
      case: 'UFR:R FL:F',
      family: 'top-away',
      verdict: 'solves',
      broken: [],
      length: 6,
      shortest: 6,
      proved: true,
      phases: [
        { turns: "L' U L", does: 'edge-out', address: 'UFR:R UB:U', stands: 'split' },
        { turns: "R U R'", does: 'insert', address: 'DFR:D FR:F', stands: 'solved' },
      ],
      merges: [],
      // The front left slot is the one that the set-up emptied: the others stay, the pair comes home.
      step: 'pairs',
      base: ['DF', 'DL', 'DB', 'DR', 'DBL', 'BL', 'DBR', 'BR'],
      goal: { home: ['DFR', 'FR'], top: [], free: null },
      item: '1',
      nth: 1,
    });
  });

  it('makes claims that the second checker finds no fault with', () => {
    for (const claim of provedOf(SMALL_LESSON).claims) expect(faultsOf(claim)).toEqual([]);
  });

  it('writes turns in normal form, groups written out, and counts as the regulations do', () => {
    const text = withLine(13, '      - y’ (F′ U F)1 y r2’ M x', "      - L' U L (R U R')");
    const { claims, problems } = load(text);
    expect(claims[0]).toMatchObject({ solution: "y' F' U F y Rw2 M x", length: 6, verdict: 'fails' });
    expect(claims[1]).toMatchObject({ id: '1.2', solution: "L' U L R U R'", length: 6, verdict: 'solves', line: 14 });
    expect(problems.map((p) => p.code)).toEqual(['solution-fails']);
  });

  it('follows the centres through rotations in set-up and solution', () => {
    // The same case, the cube turned in between: after y the front left slot is seen at the back left.
    const text = withLine(13, "      - y B' U B F U F' x2").replace(
      "setup: R U R' L' U L\n",
      "setup: y F U F' B' U B y'\n",
    );
    const [claim] = provedOf(text).claims;
    expect(claim).toMatchObject({ address: 'UBR:B FL:F', verdict: 'solves', length: 6 });
    expect(faultsOf(claim!)).toEqual([]);
  });

  it('keeps open what the lesson opens, and says what a failing solution leaves', () => {
    const opened = withLine(10, '  - name: The first', '    open: [BR]');
    expect(provedOf(opened).claims[0]!).toMatchObject({ kept: ['BL'] });
    expect(provedOf(opened.replace('[BR]', 'BR')).claims).toEqual(provedOf(opened).claims);
    const { claims, proved } = load(withLine(13, "      - L' U L R U R' B U B'"));
    expect(claims[0]).toMatchObject({ verdict: 'fails' });
    expect(claims[0]!.broken).toEqual(expect.arrayContaining(['DBR', 'BR']));
    expect(proved).toBeUndefined();
  });

  it('takes any colour for the cross and any slot for the pair', () => {
    const text = withLine(3, '  cross: red')
      .replace('- name: The first', '- slot: BR')
      .replace("setup: R U R' L' U L\n", "setup: B U B' R' U R\n");
    const moved = text.replace("- L' U L R U R'", "- R' U R B U B'");
    const { claims } = load(moved);
    expect(claims[0]).toMatchObject({ cross: 'red', hold: { up: 'orange', front: 'green' }, pair: 'BR' });
    expect(faultsOf(claims[0]!)).toEqual([]);
  });

  it('names an edition by what is printed: not by comments or spaces, but by every word and turn', () => {
    const { edition } = provedOf(SMALL_LESSON);
    expect(edition).toMatch(/^[0-9a-f]{4}-[0-9a-f]{4}$/);
    expect(provedOf(`# a comment\n${SMALL_LESSON}`).edition).toBe(edition);
    expect(provedOf(SMALL_LESSON.replace('A wall', 'Two walls')).edition).not.toBe(edition);
    expect(provedOf(SMALL_LESSON.replace("- L' U L R U R'", "- L' U L R U R' U")).edition).not.toBe(edition);
  });

  it('is the only way to a proved lesson', () => {
    // @ts-expect-error The constructor is private: a ProvedLesson comes from ProvedLesson.prove alone.
    expect(() => new ProvedLesson()).toThrow();
  });
});
