// A class of 30: papers of four pages and their keys by one command, whole processes. Acceptance: at most 3 s.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from './prepare.mjs';

const STUDENTS = 30;
const RUNS = 5;
/** Four pages of A4. */
const ITEMS = '{ likeness: 8, edge: 4, picture: 4, slip: 2, place: 4, solve: 8, drill: 6 }';

export function benchPractice() {
  const folder = mkdtempSync(join(tmpdir(), 'turnsheet-practice-'));
  const lesson = join(folder, 'class.yaml');
  const text = readFileSync(join(root, 'lessons/edge-away.yaml'), 'utf8');
  writeFileSync(lesson, text.replace(/^ {2}items: .*$/m, `  items: ${ITEMS}`));
  const roster = join(folder, 'class.csv');
  writeFileSync(roster, `code\n${Array.from({ length: STUDENTS }, (_, i) => `S${i + 1}\n`).join('')}`);
  const args = ['dist/bin.js', 'build', lesson, '--roster', roster, '--out', join(folder, 'out')];
  const walls = Array.from({ length: RUNS }, () => {
    const start = performance.now();
    const { status, stderr } = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
    if (status !== 0) throw new Error(stderr);
    return performance.now() - start;
  }).sort((a, b) => a - b);
  rmSync(folder, { recursive: true });
  const seconds = (ms) => `${(ms / 1000).toFixed(2)} s`;
  console.log(
    `${STUDENTS} practice papers of four pages with keys, ${RUNS} processes: median ${seconds(walls[RUNS >> 1])}, ` +
      `fastest ${seconds(walls[0])}, slowest ${seconds(walls.at(-1))}`,
  );
}
