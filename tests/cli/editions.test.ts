/** Editions of a lesson for other students: beside each other in one folder, and marked together. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readPdf } from '../../src/audit/pdf-text.ts';
import { SMALL_LESSON } from '../lesson/small-lesson.ts';
import { command, newFolder, put } from './command.ts';

const EDITIONS = [
  ['a', []],
  ['a-left', ['--hand', 'left']],
  ['a-red-down', ['--cross', 'red']],
  ['a-cube-wygbro', ['--scheme', 'white,red,green,yellow,orange,blue']],
] as const;

interface Claims {
  readonly edition: string;
  readonly claims: readonly { readonly id: string; readonly solution: string }[];
}

describe('editions', async () => {
  const folder = newFolder();
  put(folder, 'a.yaml', SMALL_LESSON);
  for (const [, options] of EDITIONS) await command(folder, ['build', 'a.yaml', '--out', 'o', ...options]);
  const claimsOf = (name: string): Claims => JSON.parse(readFileSync(join(folder, `o/${name}.claims.json`), 'utf8'));

  it('write files of their own, and say on the page which they are', async () => {
    const names = EDITIONS.flatMap(([name]) => [`${name}.claims.json`, `${name}.pdf`]);
    expect(readdirSync(join(folder, 'o')).sort()).toEqual(names.sort());
    const codes = EDITIONS.map(([name]) => claimsOf(name).edition);
    expect(new Set(codes).size).toBe(EDITIONS.length);
    for (const [i, [name]] of EDITIONS.entries()) {
      const { pages } = await readPdf(readFileSync(join(folder, `o/${name}.pdf`)));
      expect(pages[0]!.text).toContain(codes[i]);
      expect(pages[0]!.text.includes('for the left hand')).toBe(name === 'a-left');
    }
  });

  it('are marked together, by the edition or the file that is named as the paper', async () => {
    const [usual, left] = [claimsOf('a'), claimsOf('a-left')];
    const [here, mirrored] = [usual, left].map(({ claims }) => claims[0]!.solution);
    expect(mirrored).not.toBe(here);
    const rows = [
      `AB,${left.edition},1,${mirrored}`,
      `AB,a-left,1,${mirrored}`,
      `CD,${usual.edition},1,${here}`,
      `CD,${usual.edition},1,${mirrored}`,
      `EF,,1,${here}`,
    ];
    put(folder, 'answers.csv', `student,paper,item,answer\n${rows.join('\n')}\n`);
    const { out } = await command(folder, ['mark', 'o/a.claims.json', 'o/a-left.claims.json', 'answers.csv', '--json']);
    const marked = JSON.parse(out).rows.map((row: { matched: string; verdict: string }) => [row.matched, row.verdict]);
    expect(marked.slice(0, 3)).toEqual([
      ['a-left.1', 'solves'],
      ['a-left.1', 'solves'],
      ['a.1', 'solves'],
    ]);
    expect(marked[3]).toEqual(['a.1', expect.not.stringMatching(/^solves/)]);
    // Which of the two is meant is asked, not guessed, unless the roster says it.
    expect(marked[4]).toEqual(['', 'unmatched']);
    put(folder, 'class.csv', 'code,hand\nEF,\nGH,left\n');
    put(folder, 'more.csv', `student,item,answer\nEF,1,${here}\nGH,1,${mirrored}\n`);
    // Held against the handout that another student has, a right answer would be wrong.
    const alone = await command(folder, ['mark', 'o/a.claims.json', 'more.csv', '--roster', 'class.csv', '--json']);
    expect(JSON.parse(alone.out).rows).toMatchObject([
      { student: 'EF', verdict: 'solves' },
      { student: 'GH', verdict: 'unmatched', says: 'Your handout is another edition, “left”: it is not marked here.' },
    ]);
    const args = ['mark', 'o/a.claims.json', 'o/a-left.claims.json', 'more.csv', '--roster', 'class.csv', '--json'];
    const { rows: known } = JSON.parse((await command(folder, args)).out);
    expect(known.map((row: { matched: string; verdict: string }) => [row.matched, row.verdict])).toEqual([
      ['a.1', 'solves'],
      ['a-left.1', 'solves'],
    ]);
  });
});
