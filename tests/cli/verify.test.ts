/** `turnsheet verify CLAIMS`: what was built is proved again; what is planted in it is told. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { SMALL_LESSON } from '../lesson/small-lesson.ts';
import { command, newFolder, put } from './command.ts';

interface File {
  claims: { id: string; kind: string; solution?: string; length?: number }[];
}

describe('verify', () => {
  const folder = newFolder();
  let built = '';
  beforeAll(async () => {
    const lesson = SMALL_LESSON.replace('family:', 'practice: { items: { edge: 2, solve: 2 } }\nfamily:');
    await command(folder, ['build', put(folder, 'a.yaml', lesson)]);
    built = readFileSync(join(folder, 'out/a.claims.json'), 'utf8');
  });
  const changed = (change: (file: File) => void): string => {
    const file = JSON.parse(built) as File;
    change(file);
    return put(folder, 'changed.claims.json', JSON.stringify(file));
  };

  it('proves what was built, and says what it leaves alone', async () => {
    const { claims } = JSON.parse(built) as File;
    const solutions = claims.filter(({ kind }) => kind === 'solution').length;
    const others = claims.length - solutions;
    expect([solutions > 2, others > 0]).toEqual([true, true]);
    const { code, err } = await command(folder, ['verify', 'out/a.claims.json']);
    const said = `out/a.claims.json: ${solutions} solutions proved again; ${others} claims of other kinds not looked at\n`;
    expect([code, err]).toEqual([0, said]);
    const { out } = await command(folder, ['verify', 'out/a.claims.json', '--json']);
    const file = { file: 'out/a.claims.json', claims: solutions, questions: 0, others, faults: [] };
    expect(JSON.parse(out)).toEqual({ ok: true, files: [file] });
  });

  it('tells of each claim what is wrong with it', async () => {
    const file = changed(({ claims }) => {
      const [one, other] = claims.filter(({ kind }) => kind === 'solution');
      one!.solution = one!.solution!.replace(/ [^ ]+$/, '');
      other!.length = 99;
    });
    const { code, err } = await command(folder, ['verify', file, 'out/a.claims.json']);
    expect(code).toBe(1);
    expect(err).toMatch(/^changed\.claims\.json: claim 1\.1: verdict: .*fails/m);
    expect(err).toMatch(/^changed\.claims\.json: claim 2\.1: length: .*99/m);
    expect(err).toMatch(/^changed\.claims\.json: \d+ faults in \d+ solutions proved again; /m);
    expect(err).toMatch(/^out\/a\.claims\.json: \d+ solutions proved again; /m);
    const { out } = await command(folder, ['verify', file, '--json']);
    const { ok, files } = JSON.parse(out);
    expect([ok, [...new Set(files[0].faults.map((f: { id: string }) => f.id))]]).toEqual([false, ['1.1', '2.1']]);
  });

  it.each([
    ['a file that is not there', 'no.claims.json', 'there is no such file'],
    ['a file that is no JSON', 'a.yaml', 'it is no JSON'],
  ])('tells of %s', async (_, file, says) => {
    const { code, err } = await command(folder, ['verify', file]);
    expect([code, err]).toEqual([1, expect.stringContaining(`${file}: ${says}`)]);
  });

  it('tells of JSON that is no claims file, and needs a file', async () => {
    put(folder, 'odd.json', '{ "claims": 3 }');
    const odd = await command(folder, ['verify', 'odd.json']);
    expect([odd.code, odd.err]).toEqual([1, expect.stringMatching(/^odd\.json: claims: /m)]);
    const none = await command(folder, ['verify']);
    expect([none.code, none.err]).toEqual([2, expect.stringContaining('"verify" needs the name of a claims file')]);
  });
});
