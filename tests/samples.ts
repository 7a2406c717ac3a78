/**
 * The sample lessons. Each is read and proved once for all suites: they share a process (see vitest.config.ts), and proving
 * one takes longer than most rows that ask for it.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { type Loaded, loadLesson } from '../src/lesson/load.ts';
import type { ProvedLesson } from '../src/lesson/prove.ts';
import type { Variation } from '../src/lesson/vary.ts';

const FOLDER = new URL('../lessons/', import.meta.url);

/** Without `.yaml`. */
export const SAMPLES: readonly string[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => name.replace('.yaml', ''));

/** The file of a sample lesson. */
export const sampleBytes = (name: string): Uint8Array => readFileSync(new URL(`${name}.yaml`, FOLDER));

export const sampleText = (name: string): string => new TextDecoder().decode(sampleBytes(name));

const known = new Map<string, Loaded>();

/** A sample as it was read; its `again` proves each variation once. */
export function loadedSample(name: string): Loaded {
  const loaded = known.get(name) ?? loadLesson(`${name}.yaml`, sampleBytes(name));
  known.set(name, loaded);
  return loaded;
}

/** A sample proved for a class; throws if anything is wrong with it, or could be better. */
export function provedSample(name: string, variation: Variation = {}): ProvedLesson {
  const { proved, problems } = loadedSample(name).again(variation);
  if (!proved || problems.length > 0) throw new Error(`${name}: ${problems.map(({ message }) => message).join('; ')}`);
  return proved;
}
