/**
 * The seam between what is taught and what proves, prints and marks it: a step that the house does not know goes through
 * all of it. What is right is worked out by hand or by the second checker, which knows no step.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { auditBuild } from '../../../src/audit/audit-build.ts';
import { readPdf } from '../../../src/audit/pdf-text.ts';
import { registerStep } from '../../../src/steps/steps.ts';
import { command, newFolder, put } from '../../cli/command.ts';
import { oneCorner } from './step.ts';

const LESSON = `title: One corner under the cross
club: Ondrelby Cube Club
step: one-corner
hold: { cross: white, front: green }
family: on-top
claims: { cases: all, turns: 8 }
choose: shortest
text: |
  The corner waits on top. Its {white} sticker tells what to do.
cases:
  - setup: R U' R'
    solutions: [R U R']
  - part: The others
  - address: UFR:F
  - address: UFR:U
    corner: DBL
practice:
  seed: 3
  items: { height: 2, place: 2, picture: 1, slip: 1, solve: 3, drill: 2 }
`;

interface Claim {
  readonly id: string;
  readonly kind: string;
  readonly asks?: string;
  readonly answer?: string;
  readonly paper?: string;
  readonly item: string;
  readonly sheet: string;
  readonly setup: string;
  readonly solution: string;
}

let takeOut: () => void;
beforeAll(() => {
  takeOut = registerStep(oneCorner);
});
afterAll(() => takeOut());

describe('a lesson about one corner', () => {
  let folder: string;
  let claims: Claim[];

  beforeAll(async () => {
    folder = newFolder();
    put(folder, 'corner.yaml', LESSON);
    const built = await command(folder, ['build', 'corner.yaml']);
    expect(built.err).toMatch(/proved/);
    expect(built.code).toBe(0);
    claims = JSON.parse(readFileSync(join(folder, 'out/corner.claims.json'), 'utf8')).claims;
  });

  it('is checked', async () => {
    const { code, out, err } = await command(folder, ['check', 'corner.yaml', '--json']);
    expect([code, err]).toEqual([0, '']);
    const [checked] = JSON.parse(out).lessons ?? [JSON.parse(out)];
    expect(checked.problems).toEqual([]);
  });

  it('is told where it is wrong, in its own words', async () => {
    const wrong = LESSON.replace("setup: R U' R'", "setup: R U' R").replace('address: UFR:F', 'address: UFR:X');
    put(folder, 'wrong.yaml', wrong);
    const { code, err } = await command(folder, ['check', 'wrong.yaml']);
    expect(code).toBe(1);
    expect(err).toMatch(/wrong\.yaml:11:12.*should keep: DR .*R' instead of R, turn 3/s);
    expect(err).toMatch(/wrong\.yaml:14:14.*"UFR:X" is no place of a corner/s);
  });

  it('knows the keys of no other step', async () => {
    put(folder, 'slots.yaml', LESSON.replace('corner: DBL', 'slot: BL'));
    const { code, err } = await command(folder, ['check', 'slots.yaml']);
    expect(code).toBe(1);
    expect(err).toMatch(/slots\.yaml:16:5.*no key "slot".*address, solutions, watch or corner/s);
  });

  it('has no rules, and is told so, where its step knows none', async () => {
    put(folder, 'rules.yaml', LESSON.replace('\ncases:', '\nrules:\n  - see: { height: top }\n    most: 8\ncases:'));
    const { code, err } = await command(folder, ['check', 'rules.yaml']);
    expect(code).toBe(1);
    expect(err).toMatch(/rules\.yaml:10:1.*a lesson has no key "rules"/s);
  });

  it('has a running order in its own words', async () => {
    put(folder, 'evening.yaml', LESSON.replace('choose:', 'plan: { minutes: 30 }\nchoose:'));
    expect(await command(folder, ['build', 'evening.yaml', '--out', 'evening'])).toMatchObject({ code: 0 });
    const { pages } = await readPdf(readFileSync(join(folder, 'evening/evening-plan.pdf')));
    const words = pages.map(({ text }) => text).join(' ');
    expect(words).toContain('Show the corner.');
    expect(words).toContain('Is the corner on top?');
    expect(words).not.toMatch(/\b(?:own slot|slots?|edges?|joined|split|pieces)\b/i);
  });

  it('is printed: a handout, a paper and its key', async () => {
    expect(readdirSync(join(folder, 'out')).sort()).toEqual([
      'corner-key.pdf',
      'corner-practice.pdf',
      'corner.claims.json',
      'corner.pdf',
    ]);
    const words = async (name: string): Promise<string> => {
      const { pages } = await readPdf(readFileSync(join(folder, 'out', name)));
      return pages.map(({ text }) => text).join(' ');
    };
    // Nothing that is printed speaks of what another step is about.
    for (const sheet of ['corner.pdf', 'corner-practice.pdf', 'corner-key.pdf']) {
      expect(await words(sheet)).not.toMatch(/\b(?:pairs?|slots?|edges?|joined|split)\b/i);
    }
    expect(await words('corner.pdf')).toContain('Dashed: where it belongs.');
    expect(await words('corner.pdf')).toContain('All 3 cases');
    expect(await words('corner-practice.pdf')).toContain('Is the corner on top or below?');
    expect(await words('corner-key.pdf')).toContain('the corner is home and the cross is whole');
  });

  it('claims what the second checker, which knows no such step, finds true', async () => {
    const sheets = new Map(
      ['corner.pdf', 'corner-key.pdf'].map((name) => [name, readFileSync(join(folder, 'out', name))] as const),
    );
    const audit = await auditBuild(JSON.parse(readFileSync(join(folder, 'out/corner.claims.json'), 'utf8')), sheets);
    expect(audit.faults).toEqual([]);
    expect(audit.claims).toBeGreaterThanOrEqual(6);
    // By hand: with the corner at the top front right, white to the right, R U R' takes it home.
    expect(claims[0]).toMatchObject({
      step: 'one-corner',
      item: '1',
      base: ['DF', 'DL', 'DB', 'DR'],
      goal: { home: ['DFR'], top: [], free: null },
      corner: 'DFR',
      address: 'UFR:R',
      shortest: 3,
    });
    expect(claims[0]).not.toHaveProperty('kept');
  });

  it('is marked: any turns that bring the corner home are right, and what went wrong is said', async () => {
    const solve = claims.find((c) => c.kind === 'solution' && c.paper && !/y/.test(c.solution))!;
    const height = claims.find(({ asks }) => asks === 'height')!;
    const place = claims.find(({ asks }) => asks === 'place')!;
    const rows = [
      // Back slots and the top need not stay: turns of U at the end change nothing.
      ['A1', '', '1', "R U R' U2"],
      ['A1', '', '1', "R U' R'"],
      ['A1', '', '2', 'R U R'],
      ['A1', solve.paper, solve.item, `${solve.solution} U`],
      ['A1', height.paper, height.item, height.answer],
      ['A1', place.paper, place.item, place.answer],
      ['A1', place.paper, place.item, 'nowhere'],
    ];
    put(folder, 'class.csv', ['student,paper,item,answer', ...rows.map((row) => row.join(','))].join('\n'));
    const { out } = await command(folder, ['mark', 'out/corner.claims.json', 'class.csv', '--json']);
    const marked: { verdict: string; says: string }[] = JSON.parse(out).rows;
    expect(marked.map(({ verdict }) => verdict)).toEqual([
      'solves',
      'fails',
      'fails',
      'solves',
      'solves',
      'solves',
      'unreadable',
    ]);
    expect(marked[1]!.says).toMatch(/^Not home: bottom front right\./);
    expect(marked.at(-1)!.says).toBe('Write a place such as UFR:R.');
    const { code } = await command(folder, ['mark', 'out/corner.claims.json', 'class.csv', '--out', 'marked']);
    expect(code).toBe(0);
    expect(readdirSync(join(folder, 'marked')).filter((name) => /slips|report/.test(name))).toHaveLength(2);
  });

  it('is printed for the left hand, for which all is seen in a mirror', async () => {
    const { code } = await command(folder, ['build', 'corner.yaml', '--hand', 'left', '--out', 'left']);
    expect(code).toBe(0);
    const [first] = JSON.parse(readFileSync(join(folder, 'left/corner-left.claims.json'), 'utf8')).claims;
    expect(first).toMatchObject({ setup: "L' U L", solution: "L' U' L", corner: 'DFL', address: 'UFR:F' });
  });
});
