/** The earlier lessons that a lesson's practice names -> those lessons as they are for a student. */
import type { Loaded } from '../lesson/load.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { Variation } from '../lesson/vary.ts';
import { seenFrom } from './files.ts';
import type { Io } from './io.ts';
import { type Found, type LoadedFile, loadFile } from './load-files.ts';
import { countErrors } from './report.ts';

export interface Earlier {
  readonly found: readonly Found[];
  /** The latest first; one object a variation, so that students of one share what is worked out for them. */
  readonly as: (variation: Variation) => readonly ProvedLesson[];
}

/**
 * `file`: of the lesson, from whose folder the others are named. `known`: those that are loaded already, by the name under
 * which they are found from here.
 */
export async function loadEarlier(
  file: string,
  { proved, source }: Loaded,
  known: ReadonlyMap<string, LoadedFile>,
  io: Io,
): Promise<Earlier> {
  const found: Found[] = [];
  const lessons: Loaded[] = [];
  for (const named of proved?.lesson.practice?.earlier ?? []) {
    const path = seenFrom(file, named.file);
    // Its cases come back, its rules do not.
    const one = known.get(path) ?? (await loadFile(path, io, { of: 'cases' }));
    if (one.loaded) {
      lessons.push(one.loaded);
      // Hints and warnings of another lesson are told when that one is built.
      if (countErrors(one.found) > 0) found.push(...one.found);
    } else {
      const [first] = one.found;
      found.push({ problem: { ...first!.problem, span: named.span }, source });
    }
  }
  const asked = new Map<string, readonly ProvedLesson[]>();
  const as: Earlier['as'] = (variation) => {
    const key = JSON.stringify(variation);
    const there = asked.get(key) ?? lessons.flatMap(({ again }) => again(variation).proved ?? []);
    asked.set(key, there);
    return there;
  };
  return { found, as };
}
