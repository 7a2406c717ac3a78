/** `turnsheet build LESSON --roster FILE.csv`. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readPdf } from '../../src/audit/pdf-text.ts';
import { SMALL_LESSON } from '../lesson/small-lesson.ts';
import { readPapers } from '../practice/read-papers.ts';
import { command, newFolder, put } from './command.ts';

const LESSON = SMALL_LESSON.replace('family:', 'practice: { items: { edge: 3, solve: 2 } }\nfamily:');
const ROSTER = 'initials,cross,hand,level\nAB,,,\nCD,red,,easy\nEF,,left,hard\n';

const build = async (lesson: string, roster: string, ...more: string[]) => {
  const folder = newFolder();
  const args = [
    'build',
    put(folder, 'a.yaml', lesson),
    '--roster',
    put(folder, 'class.csv', roster),
    '--out',
    'o',
    ...more,
  ];
  return { folder, ...(await command(folder, args)) };
};

describe('build with a roster', () => {
  it('writes a paper and a key each, in the order of the roster', async () => {
    const { folder, code } = await build(LESSON, ROSTER);
    expect(code).toBe(0);
    const papers = await readPapers(readFileSync(join(folder, 'o/a-practice.pdf')));
    expect(papers.map((p) => p.student)).toEqual(['AB', 'CD', 'EF']);
    expect(papers.map((p) => p.items[0]!.picture.slice(0, 10))).toEqual(['White down', 'Red down, ', 'White down']);
    const { pages } = await readPdf(readFileSync(join(folder, 'o/a-key.pdf')));
    for (const { code: paper } of papers) expect(pages.some(({ text }) => text.includes(`Paper ${paper}`))).toBe(true);
    const file = JSON.parse(readFileSync(join(folder, 'o/a.claims.json'), 'utf8'));
    expect(file.sheets).toEqual(['a.pdf', 'a-practice.pdf', 'a-key.pdf', 'a-class-key.pdf']);
    const one = file.claims.find((c: { id: string }) => c.id === `${papers[1]!.code}.4`);
    // The line of the lesson that asks, the page of the key, and where the question stands.
    const answer = { kind: 'solution', line: 5, sheet: 'a-key.pdf', page: 2, cross: 'red', verdict: 'solves' };
    expect(one).toMatchObject({ ...answer, asked: { sheet: 'a-practice.pdf', page: 2 } });
  });

  it('writes the answers of a class of twelve on one page, as the claims have them', async () => {
    const practice = '{ items: { likeness: 3, edge: 3, picture: 2, place: 2, solve: 2 } }';
    const lesson = LESSON.replace(/practice:.*\n(?: .*\n)*/, `practice: ${practice}\n`);
    const codes = Array.from({ length: 12 }, (_, i) => `S${i + 1}`);
    const { folder, code } = await build(lesson, `code,level\n${codes.map((one) => `${one},\n`).join('')}`);
    expect(code).toBe(0);
    const { pages } = await readPdf(readFileSync(join(folder, 'o/a-class-key.pdf')));
    expect(pages).toHaveLength(1);
    const text = pages[0]!.text.replace(/\s+/g, ' ');
    const { claims } = JSON.parse(readFileSync(join(folder, 'o/a.claims.json'), 'utf8'));
    const papers = await readPapers(readFileSync(join(folder, 'o/a-practice.pdf')));
    expect(papers.map(({ student }) => student)).toEqual(codes);
    for (const { code: paper, student } of papers) {
      const answers = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map(
        (n) => claims.find(({ id }: { id: string }) => id === `${paper}.${n}`).answer,
      );
      const [a, b, c, d, e, f, g, h, i, j] = answers;
      expect(text).toMatch(
        new RegExp(
          `${student} ${paper} [A-Z ]+ 1–3 ${a} ${b} ${c} · 4–6 ${d} ${e} ${f} · 7–8 ${g} ${h} · 9–10 ${i} ${j}`,
        ),
      );
    }
  });

  it('writes the handout of each edition, and says how many copies of each', async () => {
    const { folder, code, err } = await build(LESSON, 'code,cross,hand\nA,,\nB,,left\nC,,\nD,red,\nE,,left\n');
    expect(code).toBe(0);
    expect(err).toMatch(/copies of handouts: 2 of a\.pdf, 2 of a-left\.pdf, 1 of a-red-down\.pdf\n$/);
    for (const name of ['a', 'a-left', 'a-red-down']) {
      const { claims, edition } = JSON.parse(readFileSync(join(folder, `o/${name}.claims.json`), 'utf8'));
      const { pages } = await readPdf(readFileSync(join(folder, `o/${name}.pdf`)));
      expect(pages[0]!.text).toContain(edition);
      expect(claims[0].cross).toBe(name === 'a-red-down' ? 'red' : 'white');
    }
    // All of them marked together: whose paper is whose is known, and so is which handout.
    const { claims } = JSON.parse(readFileSync(join(folder, 'o/a-left.claims.json'), 'utf8'));
    put(folder, 'answers.csv', `student,item,answer\nB,1,${claims[0].solution}\n`);
    const files = ['a', 'a-left', 'a-red-down'].map((name) => `o/${name}.claims.json`);
    const marked = await command(folder, ['mark', ...files, 'answers.csv', '--roster', 'class.csv', '--json']);
    expect(JSON.parse(marked.out).problems).toEqual([]);
    expect(JSON.parse(marked.out).rows).toMatchObject([{ matched: 'a-left.1', verdict: 'solves' }]);
  });

  it('writes nothing of whose a paper is into its foot or into the claims', async () => {
    const { folder } = await build(LESSON, ROSTER.replace('AB', 'Zebra'));
    const { pages } = await readPdf(readFileSync(join(folder, 'o/a-practice.pdf')));
    expect(pages.map(({ text }) => text.match(/Zebra/g)?.length ?? 0)).toEqual([1, 0, 0]);
    expect(readFileSync(join(folder, 'o/a.claims.json'), 'utf8')).not.toContain('Zebra');
  });

  it('tells of a hold that cannot be, at the field that asks for it', async () => {
    const { folder, code, err } = await build(LESSON, 'code,front\nA,red\nB,yellow\n');
    expect(code).toBe(1);
    expect(err).toMatch(/class\.csv:3:3: error: with white down the front is .* \[roster-hold\]/);
    expect(existsSync(join(folder, 'o'))).toBe(false);
  });

  it('tells of a code that the fonts have not, at its field', async () => {
    const { code, err } = await build(LESSON, 'code,cross\nA,red\n中B文,\n');
    expect(code).toBe(1);
    expect(err).toContain('class.csv:3:1: error: the fonts of the page have no "中", "文" [print-glyph-missing]');
    expect(err).toContain('\n1 error; ');
  });

  it('tells of a lesson without practice, and of a roster that is not there', async () => {
    const without = await build(SMALL_LESSON, ROSTER);
    expect([without.code, without.err]).toEqual([1, expect.stringContaining('[practice-missing]')]);
    const folder = newFolder();
    const none = await command(folder, ['build', put(folder, 'a.yaml', LESSON), '--roster', 'no.csv']);
    expect([none.code, none.err]).toEqual([1, expect.stringContaining('no.csv:1:1: error: there is no such file')]);
  });

  it('goes with one lesson', async () => {
    const folder = newFolder();
    const { code, err } = await command(folder, ['build', 'a.yaml', 'b.yaml', '--roster', 'c.csv']);
    expect([code, err]).toEqual([2, expect.stringContaining('--roster goes with one lesson')]);
  });

  it('tells of an earlier lesson that is not there or has errors, at its own place', async () => {
    const lesson = LESSON.replace('solve: 2 }', 'solve: 3 }, earlier: [first.yaml]');
    const folder = newFolder();
    const args = ['build', put(folder, 'a.yaml', lesson)];
    expect((await command(folder, args)).err).toContain('a.yaml:5:53: error: there is no such file');
    put(folder, 'first.yaml', SMALL_LESSON.replace("L' U L R U R'", "L' U L R U R"));
    expect((await command(folder, args)).err).toContain('first.yaml:13:9: error: the solution leaves');
    put(folder, 'first.yaml', SMALL_LESSON.replace('family: top-away\n', ''));
    expect((await command(folder, args)).code).toBe(0);
  });

  it('asks for exercises in words that a lesson knows', async () => {
    const folder = newFolder();
    const odd = LESSON.replace('edge: 3', 'edges: 3').replace('solve: 2', 'solve: -1');
    const { err } = await command(folder, ['check', put(folder, 'a.yaml', odd)]);
    expect(err).toContain('a.yaml:5:22: error');
    expect(err).toContain('"edge" was likely meant');
  });
});
