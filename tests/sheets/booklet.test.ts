/** The booklet of cases: all four positions, every solution found on its page by the second checker. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { auditBuild } from '../../src/audit/audit-build.ts';
import { readPdf } from '../../src/audit/pdf-text.ts';
import { command, newFolder, put } from '../cli/command.ts';
import { SMALL_LESSON } from '../lesson/small-lesson.ts';

describe('cases --print', () => {
  it('shows each case from four sides, proved again and found on its page', async () => {
    const folder = newFolder();
    put(folder, 'small.yaml', SMALL_LESSON);
    const { code, err } = await command(folder, ['cases', 'home-home', '--print', 'small.yaml']);
    expect(code, err).toBe(0);
    // Six addresses have both pieces at home (the design's count of the catalogue), one of them solved.
    expect(err).toMatch(/^5 cases from four sides on \d pages, \d+ solutions proved\n/);
    const bytes = readFileSync(join(folder, 'out/cases.pdf'));
    const file = JSON.parse(readFileSync(join(folder, 'out/cases.claims.json'), 'utf8'));
    const { claims, faults } = await auditBuild(file, new Map([['cases.pdf', bytes]]));
    expect(faults).toEqual([]);
    expect(claims).toBe(file.claims.length);
    const positions = (file.claims as { case: string; pair: string; id: string }[]).filter((c) => c.id.endsWith('.1'));
    expect(positions).toHaveLength(20);
    expect(new Set(positions.map((c) => `${c.case} ${c.pair}`)).size).toBe(20);
    expect(positions.map((c) => c.pair).slice(0, 4)).toEqual(['FR', 'FL', 'BL', 'BR']);
    const { pages } = await readPdf(bytes);
    const text = pages.map((p) => p.text).join('\n');
    expect(text).toContain('0 of 5 shown in the lessons');
    expect(text).toContain('not shown in any lesson');
  });

  it('lists the shortest first, and a solution for hands that is at most one turn longer', async () => {
    const folder = newFolder();
    await command(folder, ['cases', 'home-top', '--print', '--paper', 'letter', '--ink', 'mono', '--out', 'print']);
    const file = JSON.parse(readFileSync(join(folder, 'print/cases.claims.json'), 'utf8'));
    for (const claim of file.claims) {
      if (claim.id.endsWith('.1')) expect(claim.length).toBe(claim.shortest);
      else expect(claim.length - claim.shortest).toBeLessThanOrEqual(1);
      // As a teacher would show it (common practice, no source): the cross stays at the bottom.
      expect(claim.solution).not.toMatch(/[xzwMES]/);
    }
  });

  it('says where lessons show a case, and writes nothing for a lesson with errors', async () => {
    const folder = newFolder();
    put(folder, 'small.yaml', SMALL_LESSON);
    put(folder, 'bad.yaml', SMALL_LESSON.replace("R U R'", 'R U R'));
    const bad = await command(folder, ['cases', 'top-away', '--print', 'bad.yaml', '--json']);
    expect(bad.code).toBe(1);
    expect(JSON.parse(bad.out)).toMatchObject({ ok: false, files: [], problems: [{ file: 'bad.yaml' }] });
    // A name that no font has signs for, and no line has room for.
    const odd = put(folder, `${'w'.repeat(200)}\u58c1.yaml`, SMALL_LESSON);
    expect(await command(folder, ['cases', 'top-away', '--print', 'small.yaml', odd])).toMatchObject({ code: 0 });
    const { pages } = await readPdf(readFileSync(join(folder, 'out/cases.pdf')));
    const text = pages.map((p) => p.text).join('\n');
    expect(text).toContain('2 of 18 shown in the lessons');
    expect(text).toMatch(/shown in small 1/);
  });

  it('refuses what does not go together', async () => {
    const refused = async (...args: string[]) => (await command(newFolder(), args)).err;
    expect(await refused('cases', '--print', '--every-keep')).toContain('leave --every-keep out');
    expect(await refused('cases', '--paper', 'a4')).toContain('--paper goes with --print');
    expect(await refused('cases', 'a.yaml')).toContain('lessons are named with --print');
  });
});
