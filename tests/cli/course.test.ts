/** Course files: built with all their lessons, charted, and told of where they are wrong. */
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readPdf } from '../../src/audit/pdf-text.ts';
import { SMALL_LESSON } from '../lesson/small-lesson.ts';
import { command, newFolder, put } from './command.ts';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '../..');
const COURSE = [
  'course: Short course',
  'lessons:',
  '  - lesson: one.yaml',
  '    date: 2026-01-12',
  '  - lesson: sub/two.yaml',
];
function folderWith(...course: string[]): string {
  const folder = newFolder();
  mkdirSync(join(folder, 'sub'));
  put(folder, 'one.yaml', SMALL_LESSON);
  put(folder, 'sub/two.yaml', SMALL_LESSON.replace('A small lesson', 'Another lesson'));
  put(folder, 'course.yaml', `${course.join('\n')}\n`);
  return folder;
}

async function problemsOf(...course: string[]) {
  const { out } = await command(folderWith(...course), ['check', 'course.yaml', '--json']);
  return (
    JSON.parse(out) as { problems: { code: string; line: number; column: number; hint: string }[] }
  ).problems.filter(({ code }) => !code.startsWith('solution-'));
}

describe('a course', () => {
  it('is built with its lessons and a chart', async () => {
    const folder = folderWith(...COURSE);
    const { code, err } = await command(folder, ['build', 'course.yaml']);
    expect(code, err).toBe(0);
    for (const name of ['one.pdf', 'two.pdf', 'course.pdf', 'course.claims.json']) {
      expect([name, existsSync(join(folder, 'out', name))]).toEqual([name, true]);
    }
    const { pages } = await readPdf(readFileSync(join(folder, 'out/course.pdf')));
    const text = pages.map((p) => p.text).join('\n');
    for (const said of ['Short course', '2026-01-12', 'Another lesson', '2 of 167 cases shown'])
      expect(text).toContain(said);
    const { claims } = JSON.parse(readFileSync(join(folder, 'out/course.claims.json'), 'utf8'));
    expect(claims).toHaveLength(167);
    const shown = claims.filter((c: { evenings: number[] }) => c.evenings.length > 0);
    expect(shown.map((c: { case: string; evenings: number[] }) => c.evenings)).toEqual([
      [1, 2],
      [1, 2],
    ]);
    expect(claims.every((c: { page: number; sheet: string }) => c.page > 0 && c.sheet === 'course.pdf')).toBe(true);
  });

  it('is built as the sample: every case of eight families is shown', async () => {
    const folder = newFolder();
    const course = join(ROOT, 'lessons/courses/autumn.yaml');
    const { code } = await command(folder, ['build', course, '--out', 'made']);
    expect(code).toBe(0);
    const { claims } = JSON.parse(readFileSync(join(folder, 'made/autumn.claims.json'), 'utf8'));
    const never = claims.filter((c: { evenings: number[] }) => c.evenings.length === 0);
    expect(new Set(never.map((c: { family: string }) => c.family))).toEqual(new Set(['away-away']));
  });

  it('writes nothing if one of its lessons has errors', async () => {
    const folder = folderWith(...COURSE);
    put(folder, 'sub/two.yaml', SMALL_LESSON.replace("L' U L R U R'", "L' U L R U R"));
    const { code, err } = await command(folder, ['build', 'course.yaml']);
    expect(code).toBe(1);
    expect(err).toMatch(/sub\/two\.yaml:13:9: error/);
    expect(existsSync(join(folder, 'out'))).toBe(false);
  });

  it.each([
    ['a lesson that is not there', [...COURSE.slice(0, 4), '  - lesson: tow.yaml'], 'course-lesson-missing', 5, 13],
    ['a lesson twice', [...COURSE, '  - lesson: one.yaml'], 'course-lesson-twice', 6, 13],
    ['dates that go back', [...COURSE, '    date: 2026-01-05'], 'course-dates', 6, 11],
    ['a date that is none', [...COURSE, '    date: 2026-02-30'], 'value-unknown', 6, 11],
    ['an unknown key', [...COURSE, '    dat: 2026-02-20'], 'key-unknown', 6, 5],
    ['no lessons', ['course: Short course', 'lessons: []'], 'value-kind', 2, 10],
    ['a course without lessons', ['course: Short course'], 'key-missing', 1, 1],
    ['no name', COURSE.slice(1), 'key-missing', 1, 1],
    ['a course in a course', ['course: A', 'lessons:', '  - lesson: course.yaml'], 'course-lesson-missing', 3, 13],
  ])('tells of %s', async (_, course, code, line, column) => {
    expect((await problemsOf(...course))[0]).toMatchObject({ code, line, column });
  });

  it('that names itself is told so, and of nothing else', async () => {
    const problems = await problemsOf('course: A', 'lessons:', '  - lesson: course.yaml');
    expect(problems).toMatchObject([{ code: 'course-lesson-missing', line: 3, column: 13 }]);
  });

  it('is told where its texts cannot be printed, by "check" too', async () => {
    const rows: readonly (readonly [string, string, number, number])[] = [
      ['course: Short 課程', 'print-glyph-missing', 1, 15],
      [`course: Short\nclub: ${'c'.repeat(300)}`, 'print-word-too-wide', 2, 7],
      // A word that a text has room for, and a heading has not.
      [`course: ${'W'.repeat(55)}`, 'print-word-too-wide', 1, 9],
    ];
    for (const [head, code, line, column] of rows) {
      const folder = folderWith(head, ...COURSE.slice(1));
      for (const args of [
        ['check', 'course.yaml', '--json'],
        ['build', 'course.yaml', '--json'],
      ]) {
        const { code: exit, out } = await command(folder, args);
        const [first] = JSON.parse(out).problems.filter(({ severity }: { severity: string }) => severity === 'error');
        expect([args[0], exit, first]).toMatchObject([args[0], 1, { code, file: 'course.yaml', line, column }]);
      }
    }
  });

  it('has a chart though its name is too long for the foot of a page', async () => {
    const folder = folderWith(`course: ${'A long name '.repeat(20)}`, ...COURSE.slice(1));
    expect(await command(folder, ['build', 'course.yaml'])).toMatchObject({ code: 0 });
  });

  it('may name a lesson by its whole path', async () => {
    const elsewhere = folderWith(...COURSE);
    const folder = folderWith('course: A', 'lessons:', `  - lesson: ${join(elsewhere, 'one.yaml')}`);
    const { code, out } = await command(folder, ['build', 'course.yaml', '--json']);
    expect([code, JSON.parse(out)]).toMatchObject([0, { ok: true }]);
  });

  it('is named once though its lessons are named too', async () => {
    const folder = folderWith(...COURSE);
    const { out } = await command(folder, ['build', 'course.yaml', 'one.yaml', '--json']);
    const { files } = JSON.parse(out) as { files: string[] };
    expect(new Set(files).size).toBe(files.length);
  });
});
