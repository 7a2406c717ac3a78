/** What is built can be marked: a claims file that marking would refuse is refused when it is built. */
import { readdirSync } from 'node:fs';
import { expect, it, vi } from 'vitest';
import { SMALL_LESSON } from '../lesson/small-lesson.ts';
import { command, newFolder, put } from './command.ts';

// A class of thousands takes minutes to print: the limit is lowered in place of it.
vi.mock('../../src/marking/limits.ts', async (original) => ({ ...(await original<object>()), MOST_CLAIMS: 20 }));

const LESSON = SMALL_LESSON.replace('family:', 'practice: { items: { edge: 3, solve: 2 } }\nfamily:');

it('more claims than can be marked are not built, and nothing is written', async () => {
  const folder = newFolder();
  const build = async (students: number) => {
    const rows = Array.from({ length: students }, (_, i) => `S${i}`);
    put(folder, 'class.csv', `code\n${rows.join('\n')}\n`);
    return command(folder, ['build', put(folder, 'a.yaml', LESSON), '--roster', 'class.csv', '--out', 'o', '--json']);
  };
  const many = await build(8);
  expect(many.code).toBe(1);
  expect(many.err).toMatch(
    /^turnsheet: o\/a\.claims\.json has \d+ claims, and 20 is the most that "mark" reads: build the roster in parts; nothing was changed$/m,
  );
  expect(JSON.parse(many.out)).toMatchObject({ ok: false, files: [] });
  expect(readdirSync(folder)).not.toContain('o');

  expect((await build(1)).code).toBe(0);
  put(folder, 'a.csv', 'student,item,answer\nS0,1,R\n');
  expect((await command(folder, ['mark', 'o/a.claims.json', 'a.csv'])).code).toBe(0);
});
