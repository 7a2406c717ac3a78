/**
 * Exact search. Acceptance: over the catalogue 1 ms a search in the median and 100 ms at worst; the whole catalogue, every
 * address with every set of kept slots and the next longer solutions, at most 0.5 s in a process of its own.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { bench, describe } from 'vitest';
import { stuckSlots } from '../src/steps/pair/address.ts';
import { ADDRESSES } from '../src/steps/pair/cases.ts';
import { cubeWithPair } from '../src/steps/pair/place-pair.ts';
import { catalogue } from '../src/steps/pair/search/catalogue.ts';
import { findSolutions, shortestLength } from '../src/steps/pair/search/find.ts';
import { goalOf, type Slot } from '../src/steps/pair/slots.ts';

const OTHERS: readonly Slot[] = ['FL', 'BL', 'BR'];
const ROWS = ADDRESSES.flatMap((address) => {
  const possible = OTHERS.filter((slot) => !stuckSlots(address, 'FR').includes(slot));
  const sets = Array.from({ length: 8 }, (_, set) => OTHERS.filter((_, i) => set & (1 << i)));
  const consistent = sets.filter((kept) => kept.every((slot) => possible.includes(slot)));
  return consistent.map((kept) => ({ cube: cubeWithPair(address, 'FR'), goal: goalOf('FR', kept) }));
});

/** Median and worst of single searches; the first rounds, which compile, are left out. */
function report(name: string, search: (row: (typeof ROWS)[number]) => unknown): void {
  const times: number[] = [];
  for (let round = 0; round < 3; round++) {
    times.length = 0;
    for (const row of ROWS) {
      const start = performance.now();
      search(row);
      times.push(performance.now() - start);
    }
  }
  const sorted = times.sort((a, b) => a - b);
  const ms = (n: number): string => `${n.toFixed(2)} ms`;
  const sum = sorted.reduce((a, b) => a + b, 0);
  console.log(
    `${name}: median ${ms(sorted[sorted.length >> 1]!)}, worst ${ms(sorted.at(-1)!)}, all ${ROWS.length}: ${ms(sum)}`,
  );
}

report('shortest length', ({ cube, goal }) => shortestLength(cube, goal));
report('all shortest solutions', ({ cube, goal }) => findSolutions(cube, goal));
report('one turn longer too', ({ cube, goal }) => findSolutions(cube, goal, { longer: 1 }));

/** Whole processes: wall time, time of the processor and memory. */
function reportProcess(args: readonly string[]): void {
  const bin = 'dist/bin.js';
  if (!existsSync(bin)) return;
  const probe =
    "data:text/javascript,process.on('exit',()=>{const u=process.resourceUsage();" +
    "console.error('usage '+(u.userCPUTime+u.systemCPUTime)/1000+' '+u.maxRSS/1024)})";
  const runs = Array.from({ length: 15 }, () => {
    const start = performance.now();
    const { stderr } = spawnSync(process.execPath, ['--import', probe, bin, ...args], { encoding: 'utf8' });
    const [cpu, memory] = stderr.split('usage ')[1]!.split(' ').map(Number);
    return { wall: performance.now() - start, cpu: cpu!, memory: memory! };
  }).sort((a, b) => a.wall - b.wall);
  const [best, middle] = [runs[0]!, runs[runs.length >> 1]!];
  console.log(
    `turnsheet ${args.join(' ')}: wall ${best.wall.toFixed(0)} ms at best, ${middle.wall.toFixed(0)} in the median; ` +
      `processor ${best.cpu.toFixed(0)} ms; ${Math.max(...runs.map((r) => r.memory)).toFixed(0)} MB`,
  );
}

reportProcess(['find', '--pair', 'UFR:R UB:U', '--keep', 'FL,BL,BR', '--json']);
reportProcess(['cases', '--every-address', '--every-keep', '--longer', '1', '--json']);

describe('the catalogue', () => {
  bench('2,064 searches, one turn longer too', () => {
    catalogue(ADDRESSES, { everyKeep: true, longer: 1 });
  });
});
