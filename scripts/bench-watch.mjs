// How long after a save the handout is there: `turnsheet build --watch` on the first lesson, saved again and again.
import { spawn } from 'node:child_process';
import { copyFileSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from './prepare.mjs';

const SAVES = 40;
const sleep = (ms) => new Promise((done) => setTimeout(done, ms));

export async function benchWatch() {
  const folder = mkdtempSync(join(tmpdir(), 'turnsheet-watch-'));
  const lesson = join(folder, 'edge-away.yaml');
  const pdf = join(folder, 'out/edge-away.pdf');
  copyFileSync(join(root, 'lessons/edge-away.yaml'), lesson);
  const text = readFileSync(lesson, 'utf8');
  const child = spawn(
    process.execPath,
    [join(root, 'dist/bin.js'), 'build', '--watch', lesson, '--out', join(folder, 'out')],
    {
      stdio: ['ignore', 'ignore', 'pipe'],
    },
  );
  await new Promise((ready) => child.stderr.on('data', (data) => String(data).includes('watching') && ready()));
  const times = [];
  for (let i = 0; i < SAVES; i++) {
    const before = statSync(pdf).mtimeMs;
    const start = performance.now();
    writeFileSync(lesson, text.replace('The edge waits', `The edge waits ${i}`));
    while (performance.now() - start < 5000) {
      if (statSync(pdf).mtimeMs !== before) break;
      await sleep(1);
    }
    times.push(performance.now() - start);
    await sleep(120);
  }
  child.kill('SIGINT');
  rmSync(folder, { recursive: true });
  times.sort((a, b) => a - b);
  const at = (share) => `${times[Math.floor(share * (SAVES - 1))].toFixed(0)} ms`;
  console.log(`from a save to its handout, ${SAVES} saves: median ${at(0.5)}, 95 % within ${at(0.95)}, worst ${at(1)}`);
}
