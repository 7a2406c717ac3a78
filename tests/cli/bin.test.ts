/** The process as a shell runs it: streams that close or are full, and an interrupt. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { existsSync, openSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { withLine } from '../lesson/small-lesson.ts';
import { newFolder, put } from './command.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

beforeAll(() => {
  const build = "import { ensureBuilt } from './scripts/prepare.mjs'; ensureBuilt();";
  execFileSync(process.execPath, ['--input-type=module', '-e', build], { cwd: ROOT });
});

type Stdio = 'pipe' | number;

function start(folder: string, args: readonly string[], [out, err]: readonly [Stdio, Stdio] = ['pipe', 'pipe']) {
  return spawn(process.execPath, [join(ROOT, 'dist/bin.js'), ...args], { cwd: folder, stdio: ['ignore', out, err] });
}

const ended = (child: ChildProcess): Promise<{ code: number | null; signal: string | null }> =>
  new Promise((done) => child.on('close', (code, signal) => done({ code, signal })));

/** As with `2>&1 | head -0`: nobody reads. */
async function unread(folder: string, ...args: readonly string[]): Promise<number | null> {
  const child = start(folder, args);
  child.stdout!.destroy();
  child.stderr!.destroy();
  return (await ended(child)).code;
}

describe.concurrent('the process', () => {
  it('does its work and tells its end, though nobody reads what it says', async () => {
    const folder = newFolder();
    put(folder, 'warned.yaml', withLine(18, '    watch: Case #1 and #2'));
    put(folder, 'bad.yaml', withLine(13, "      - L' U L R U' R'"));
    const codes = await Promise.all([unread(folder, 'build', 'warned.yaml'), unread(folder, 'check', 'bad.yaml')]);
    expect(codes).toEqual([0, 1]);
    expect(existsSync(join(folder, 'out/warned.claims.json'))).toBe(true);
  });

  it.skipIf(!existsSync('/dev/full'))('tells in one line of a disk that is full', async () => {
    const child = start(newFolder(), ['help'], [openSync('/dev/full', 'w'), 'pipe']);
    let said = '';
    child.stderr!.on('data', (text) => {
      said += text;
    });
    expect((await ended(child)).code).toBe(1);
    expect(said).toBe('turnsheet: what was asked for could not be written in full (ENOSPC)\n');
  });

  it.skipIf(process.platform === 'win32')('is ended by the first interrupt', async () => {
    const child = start(newFolder(), ['find', '--setup', "R U F' L2 D B' R2 U' F L D2 B", '--slot', 'FR']);
    // What is not whole is told before the search, which takes many seconds.
    await new Promise((told) => child.stderr!.once('data', told));
    const from = Date.now();
    child.kill('SIGINT');
    expect(await ended(child)).toEqual({ code: null, signal: 'SIGINT' });
    expect(Date.now() - from).toBeLessThan(5000);
  });
});
