/** Lesson files named on the command line -> loaded lessons, with every problem placed. */
import { type Loaded, loadLesson } from '../lesson/load.ts';
import type { PlacedProblem } from '../lesson/source.ts';
import { placeProblem } from '../lesson/source.ts';
import { readBytes } from './files.ts';
import type { Io } from './io.ts';
import { problemText, problemTextIn } from './report.ts';

export interface LoadedFile {
  readonly file: string;
  readonly loaded: Loaded | undefined;
  readonly problems: readonly PlacedProblem[];
  /** The problems as shown to people. */
  readonly shown: readonly string[];
}

export async function loadFile(file: string, io: Io): Promise<LoadedFile> {
  const bytes = await readBytes(io.folder, file);
  if ('unreadable' in bytes) {
    const problem: PlacedProblem = {
      severity: 'error',
      code: 'file-unreadable',
      file,
      line: 1,
      column: 1,
      message: bytes.unreadable,
      hint: 'check the name and the folder',
    };
    return { file, loaded: undefined, problems: [problem], shown: [problemText(problem, [], io)] };
  }
  const loaded = loadLesson(file, bytes);
  return {
    file,
    loaded,
    problems: loaded.problems.map((p) => placeProblem(p, loaded.source)),
    shown: loaded.problems.map((p) => problemTextIn(p, loaded.source, io)),
  };
}
