/** Builds that write into one folder at once, and one that was ended in the midst of writing. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readPdf } from '../../src/audit/pdf-text.ts';
import { SMALL_LESSON } from '../lesson/small-lesson.ts';
import { command, newFolder, put } from './command.ts';

const LESSON = SMALL_LESSON.replace('family:', 'practice: { items: { edge: 3, solve: 2 } }\nfamily:');

describe('builds into one folder', () => {
  it('at once leave the files of one of them, whole', async () => {
    const folder = newFolder();
    for (const name of ['x', 'y', 'z']) mkdirSync(join(folder, name));
    put(folder, 'x/a.yaml', LESSON);
    put(folder, 'y/a.yaml', LESSON.replace(/title: .*/, 'title: Another'));
    put(folder, 'z/a.yaml', LESSON.replace(/title: .*/, 'title: A third'));
    for (let round = 0; round < 4; round++) {
      const done = await Promise.all(
        ['x', 'y', 'z'].map((name) => command(folder, ['build', `${name}/a.yaml`, '--out', 'o'])),
      );
      expect(done.map(({ code }) => code)).toEqual([0, 0, 0]);
      const { lesson, edition, sheets } = JSON.parse(readFileSync(join(folder, 'o/a.claims.json'), 'utf8'));
      expect(readdirSync(join(folder, 'o')).sort()).toEqual(['a.claims.json', ...sheets].sort());
      for (const sheet of sheets) {
        const { pages } = await readPdf(readFileSync(join(folder, 'o', sheet)));
        expect(pages[0]!.text).toContain(lesson);
        if (sheet === 'a.pdf') expect(pages[0]!.text).toContain(edition);
      }
    }
  });

  it('after one that was killed begin with what was there before it', async () => {
    const folder = newFolder();
    put(folder, 'a.yaml', LESSON);
    await command(folder, ['build', 'a.yaml', '--out', 'o']);
    const out = join(folder, 'o');
    const before = readFileSync(join(out, 'a.claims.json'), 'utf8');
    // As it stands between two files: the claims are replaced, a sheet is new, another is not in its place yet.
    writeFileSync(join(out, 'a.claims.json.turnsheet-old'), before);
    writeFileSync(join(out, 'a.claims.json'), '{}');
    writeFileSync(join(out, 'a-plan.pdf'), 'new');
    writeFileSync(join(out, 'a.pdf.0123456789ab.turnsheet-new'), 'half');
    const { pid } = spawnSync(process.execPath, ['-e', '0']);
    writeFileSync(join(out, '.turnsheet-lock'), JSON.stringify({ pid, made: ['a-plan.pdf', '../a.yaml'] }));
    put(folder, 'b.yaml', SMALL_LESSON);
    expect((await command(folder, ['build', 'b.yaml', '--out', 'o'])).code).toBe(0);
    expect(readFileSync(join(out, 'a.claims.json'), 'utf8')).toBe(before);
    expect(readdirSync(out).sort()).toEqual(
      ['a-key.pdf', 'a-practice.pdf', 'a.claims.json', 'a.pdf', 'b.claims.json', 'b.pdf'].sort(),
    );
    expect(existsSync(join(folder, 'a.yaml'))).toBe(true);
  });

  it('of a file that is spelt in two ways write it once, and tell of sheets that would be one', async () => {
    const folder = newFolder();
    put(folder, 'a.yaml', LESSON);
    put(folder, 'all.yaml', 'course: All\nlessons:\n  - lesson: a.yaml\n');
    const twice = await command(folder, ['build', './a.yaml', 'all.yaml', '--out', 'o']);
    expect([twice.code, readdirSync(join(folder, 'o')).filter((name) => name === 'a.pdf')]).toEqual([0, ['a.pdf']]);
    put(folder, 'a-key.yaml', SMALL_LESSON);
    const clash = await command(folder, ['build', 'a.yaml', 'a-key.yaml', '--out', 'p']);
    expect([clash.code, clash.err]).toEqual([1, expect.stringMatching(/two of the sheets would both be p.a-key\.pdf/)]);
    expect(existsSync(join(folder, 'p'))).toBe(false);
  });
});
