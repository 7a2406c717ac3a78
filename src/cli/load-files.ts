/** Lesson files named on the command line -> loaded lessons and problems with their places. */
import { type Loaded, loadLesson, loadSource } from '../lesson/load.ts';
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

export interface Loading {
  readonly variation?: Variation;
  /** See loadLesson. */
  readonly of?: 'all' | 'cases';
  /** Files that were read already, by their name. */
  readonly sources?: ReadonlyMap<string, Source>;
}

/** A file that cannot be read, told of as a whole. */
export function unreadable(file: string, { unreadable: message }: { readonly unreadable: string }): Found {
  const hint = 'check the name and the folder';
  const problem: Problem = { code: 'file-unreadable', span: { start: 0, end: 0 }, message, hint };
  return { problem, source: sourceOf(file, '') };
}

export async function loadFile(file: string, io: Io, { variation, of, sources }: Loading = {}): Promise<LoadedFile> {
  const source = sources?.get(file);
  const bytes = source ? undefined : await readBytes(io.folder, file);
  if (bytes && 'unreadable' in bytes) {
    return { file, loaded: undefined, found: [unreadable(file, bytes)] };
  }
  const loaded = source ? loadSource(source, variation, of) : loadLesson(file, bytes!, variation, of);
  return { file, loaded, found: loaded.problems.map((problem) => ({ problem, source: loaded.source })) };
}
