/** The sample lessons as handouts: laid out, written, read back by the second checker. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { auditBuild } from '../../src/audit/audit-build.ts';
import { readPdf } from '../../src/audit/pdf-text.ts';
import { layOut } from '../../src/layout/layout.ts';
import { writePdf } from '../../src/layout/pdf.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import type { ProvedLesson } from '../../src/lesson/prove.ts';
import { printedClaims } from '../../src/sheets/claims.ts';
import { handout } from '../../src/sheets/handout.ts';
import { bytesOf, SMALL_LESSON } from '../lesson/small-lesson.ts';

const LESSONS = join(dirname(fileURLToPath(import.meta.url)), '../../lessons');
const samples = readdirSync(LESSONS).filter((name) => name.endsWith('.yaml'));

const proved = (name: string, bytes: Uint8Array): ProvedLesson => {
  const { proved: lesson, problems } = loadLesson(name, bytes);
  expect(problems).toEqual([]);
  return lesson!;
};
const sample = (name: string): ProvedLesson => proved(name, readFileSync(join(LESSONS, name)));

describe.each(samples)('the handout of %s', (name) => {
  const lesson = sample(name);

  it.each([
    ['a4', 'colour'],
    ['letter', 'mono'],
  ] as const)('on %s in %s: every claim proved again, and found on its page', async (paper, ink) => {
    const { pages, faults } = layOut(handout(lesson, ink), { paper });
    expect(faults).toEqual([]);
    const claims = printedClaims(lesson, pages, 'a.pdf');
    expect(claims.map((c) => c.id)).toEqual(lesson.claims.map((c) => c.id));
    const pdf = await writePdf(pages);
    const file = JSON.parse(JSON.stringify({ lesson: lesson.lesson.title, file: name, sheets: ['a.pdf'], claims }));
    const audit = await auditBuild(file, new Map([['a.pdf', pdf]]));
    expect(audit).toEqual({ claims: lesson.claims.length, faults: [] });
  });

  it('describes every picture, the hold and the legend too', async () => {
    const { pages } = layOut(handout(lesson, 'colour'), { paper: 'a4' });
    const { figures, title, language } = await readPdf(await writePdf(pages));
    expect(figures).toHaveLength(lesson.cases.length + 2);
    expect(figures.every(({ alt }) => alt.length > 20)).toBe(true);
    expect([title, language]).toEqual([lesson.lesson.title, 'en']);
  });
});

describe('a handout', () => {
  const text = async (source: string): Promise<string> => {
    const { pages, faults } = layOut(handout(proved('a.yaml', bytesOf(source)), 'colour'), { paper: 'a4' });
    expect(faults).toEqual([]);
    const read = await readPdf(await writePdf(pages));
    return read.pages.map((p) => p.text).join('\n');
  };

  it('says what the lesson says, in its order', async () => {
    const said = await text(SMALL_LESSON);
    const order = [
      'A small lesson',
      'white down, green in front',
      'Look',
      'The first',
      'A wall behind.',
      "R U' R' L U' L'",
    ];
    const places = order.map((words) => said.indexOf(words));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(said).toContain('page 1 of 1');
  });

  it('names a case that the coach did not', async () => {
    // The second case: its edge is stuck in the back left slot.
    expect(await text(SMALL_LESSON)).toContain('Corner on top, edge in the back left slot');
  });

  it('tells the hold of a case only where it is another', async () => {
    expect(await text(SMALL_LESSON)).not.toContain('Hold:');
    const turned = SMALL_LESSON.replace('- name: The first', '- hold: { front: red }');
    expect(await text(turned)).toContain('Hold: white down, red in front');
  });

  it('lets a text of any length flow over pages', async () => {
    const long = Array.from(
      { length: 120 },
      (_, i) => `  Paragraph ${i} of a long explanation, which goes on and on.\n`,
    );
    const said = await text(SMALL_LESSON.replace(/ {2}Lift .*\n/, `${long.join('\n')}`));
    expect(said).toContain('Paragraph 119');
    expect(said).toMatch(/page 1 of [3-9]/);
  });

  it('tells of a word that is too wide, with the line it stands in', () => {
    const wide = SMALL_LESSON.replace('- name: The first', `- name: ${'wide'.repeat(30)}`);
    const { faults } = layOut(handout(proved('a.yaml', bytesOf(wide)), 'colour'), { paper: 'a4' });
    expect(faults).toMatchObject([{ code: 'word-too-wide', origin: { line: 10, column: 5 } }]);
  });

  it('tells of a character that the fonts do not have', () => {
    const odd = SMALL_LESSON.replace('A wall behind.', 'A 壁 behind.');
    const { faults } = layOut(handout(proved('a.yaml', bytesOf(odd)), 'colour'), { paper: 'a4' });
    expect(faults).toMatchObject([{ code: 'missing-glyph', what: '壁', origin: { line: 18 } }]);
  });
});
