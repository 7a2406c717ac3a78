// `npm run bench`: the benches of bench/, then cold builds of the first lesson: whole processes, node's start included.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { benchPractice } from './bench-practice.mjs';
import { benchWatch } from './bench-watch.mjs';
import { ensureBuilt, ensureInstalled, root, runPackage } from './prepare.mjs';

ensureInstalled();
ensureBuilt();
runPackage('vitest', ['bench', '--run', '--reporter=default']);

const RUNS = 15;
const MEMORY_LINE = 'peak memory KB ';
const REPORT = `data:text/javascript,process.on('exit',()=>console.error('${MEMORY_LINE}'+process.resourceUsage().maxRSS))`;

function coldBuild(out) {
  const start = performance.now();
  const args = ['--import', REPORT, 'dist/bin.js', 'build', 'lessons/edge-away.yaml', '--out', out];
  const { stderr, status } = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
  const wall = performance.now() - start;
  if (status !== 0) throw new Error(stderr);
  return { wall, memory: Number(stderr.split(MEMORY_LINE)[1]) };
}

const out = mkdtempSync(join(tmpdir(), 'turnsheet-bench-'));
const runs = Array.from({ length: RUNS }, () => coldBuild(out));
rmSync(out, { recursive: true });
const walls = runs.map((r) => r.wall).sort((a, b) => a - b);
const memory = Math.max(...runs.map((r) => r.memory)) / 1024;
const ms = (n) => `${n.toFixed(0)} ms`;
console.log(
  `cold build of lessons/edge-away.yaml, ${RUNS} processes: median ${ms(walls[RUNS >> 1])}, ` +
    `fastest ${ms(walls[0])}, slowest ${ms(walls.at(-1))}; peak memory ${memory.toFixed(0)} MB`,
);
benchPractice();
await benchWatch();
