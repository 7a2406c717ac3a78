import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { SMALL_LESSON } from '../lesson/small-lesson.ts';
import { command, newFolder, put } from './command.ts';

describe('new', () => {
  it('writes a lesson that builds, and names the schema for editors', async () => {
    const folder = newFolder();
    expect(await command(folder, ['new', 'sub/mine.yaml'])).toMatchObject({ code: 0, out: '' });
    const schema = /\$schema=(\S+)/.exec(readFileSync(join(folder, 'sub/mine.yaml'), 'utf8'))![1]!;
    expect(existsSync(join(folder, 'sub', schema))).toBe(true);
    const { code, err } = await command(folder, ['build', 'sub/mine.yaml']);
    expect([code, err.split('\n')[0]]).toEqual([0, 'sub/mine.yaml: 3 cases, 2 solutions proved']);
  });

  it('leaves a file that is there alone', async () => {
    const folder = newFolder();
    put(folder, 'mine.yaml', 'mine');
    expect(await command(folder, ['new', 'mine.yaml'])).toMatchObject({
      code: 1,
      err: expect.stringMatching(/is there already/),
    });
    expect(readFileSync(join(folder, 'mine.yaml'), 'utf8')).toBe('mine');
  });
});

describe('build --watch', () => {
  /** Waits for something that another part brings about; fails when it does not come. */
  async function until(isSo: () => boolean, what: string): Promise<void> {
    for (let tries = 0; tries < 500; tries++) {
      if (isSo()) return;
      await new Promise((next) => setTimeout(next, 10));
    }
    throw new Error(`did not come: ${what}`);
  }

  it('builds what is saved, shows problems, and keeps the last good file', async () => {
    const folder = newFolder();
    put(folder, 'a.yaml', SMALL_LESSON);
    put(folder, 'b.yaml', SMALL_LESSON);
    const stop = new AbortController();
    let said = '';
    const heard = (text: string): void => {
      said += text;
    };
    const running = command(folder, ['build', '--watch', 'a.yaml', 'b.yaml'], { stop: stop.signal, heard });
    const pdf = join(folder, 'out/a.pdf');
    await until(() => existsSync(pdf) && existsSync(join(folder, 'out/b.claims.json')), 'the first build');
    // Until the watcher is ready a save could go by unseen: saved again and again.
    const first = readFileSync(pdf);
    const other = statSync(join(folder, 'out/b.pdf')).mtimeMs;
    let n = 0;
    await until(() => {
      if (n++ % 30 === 0) writeFileSync(join(folder, 'a.yaml'), SMALL_LESSON.replace('A small', `Larger ${n}`));
      return !readFileSync(pdf).equals(first);
    }, 'the second build');
    expect(statSync(join(folder, 'out/b.pdf')).mtimeMs).toBe(other);
    // Saves that came after are built too before the next one.
    let good = first;
    for (let now = readFileSync(pdf); !now.equals(good); now = readFileSync(pdf)) {
      good = now;
      await new Promise((settled) => setTimeout(settled, 400));
    }
    writeFileSync(join(folder, 'a.yaml'), SMALL_LESSON.replace("- L' U L R U R'", "- L' U L R U R"));
    await until(() => said.includes('nothing was written'), 'the failing build');
    stop.abort();
    const { code, err } = await running;
    expect(code).toBe(0);
    expect(err).toMatch(/a\.yaml:13:9: error: .*solution-fails/);
    expect(readFileSync(pdf).equals(good)).toBe(true);
  });
});
