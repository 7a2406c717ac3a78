/** Lesson files named on the command line -> loaded lessons and problems with their places. */
import { type Loaded, loadLesson } from '../lesson/load.ts';
import type { Problem } from '../lesson/problem.ts';
import { type PlacedProblem, placeProblem, type Source, sourceOf } from '../lesson/source.ts';
import type { Variation } from '../lesson/vary.ts';
import { readBytes } from './files.ts';
import type { Io } from './io.ts';

/** A problem and the text that it is about. */
export interface Found {
  readonly problem: Problem;
  readonly source: Source;
}

export const placed = ({ problem, source }: Found): PlacedProblem => placeProblem(problem, source);

export interface LoadedFile {
  readonly file: string;
  readonly loaded: Loaded | undefined;
  readonly found: readonly Found[];
}

/** `of`: see loadLesson. */
export async function loadFile(
  file: string,
  io: Io,
  variation: Variation = {},
  of: 'all' | 'cases' = 'all',
): Promise<LoadedFile> {
  const bytes = await readBytes(io.folder, file);
  if ('unreadable' in bytes) {
    const span = { start: 0, end: 0 };
    const hint = 'check the name and the folder';
    const problem: Problem = { code: 'file-unreadable', span, message: bytes.unreadable, hint };
    return { file, loaded: undefined, found: [{ problem, source: sourceOf(file, '') }] };
  }
  const loaded = loadLesson(file, bytes, variation, of);
  return { file, loaded, found: loaded.problems.map((problem) => ({ problem, source: loaded.source })) };
}
