/** `turnsheet build --watch`: builds again what a save changed, until it is stopped. */
import { resolve } from 'node:path';
import { watch as watchFiles } from 'chokidar';
import { build } from './build.ts';
import { nameCourses } from './courses.ts';
import type { ExitCode, Io } from './io.ts';
import type { BuildOptions } from './options.ts';

/** Editors write a file in several steps: what follows at once belongs to the same save. Milliseconds. */
const SETTLE = 15;

/** By file that was named: all whose change changes what is made of it, in full. A course is made of its lessons too. */
async function partsOf(files: readonly string[], io: Io): Promise<Map<string, string[]>> {
  const parts = new Map<string, string[]>();
  for (const file of files) {
    const { courses } = await nameCourses([file], io);
    const all = [file, ...courses.flatMap(({ lessons }) => lessons)];
    parts.set(
      file,
      all.map((one) => resolve(io.folder, one)),
    );
  }
  return parts;
}

/** The first build is of all lessons, each further one of those that were saved; a failed one leaves the last good files. */
export async function watch(options: BuildOptions, io: Io): Promise<ExitCode> {
  const first = await build(options, io);
  if (first === 2) return first;
  const parts = await partsOf(options.files, io);
  const saved = new Set<string>();
  let building = Promise.resolve();
  let timer: NodeJS.Timeout | undefined;
  const rebuild = (): void => {
    const files = options.files.filter((file) => parts.get(file)!.some((part) => saved.has(part)));
    saved.clear();
    building = building.then(async () => {
      await build({ ...options, files }, io);
    });
  };
  const watcher = watchFiles([...parts.values()].flat(), { ignoreInitial: true });
  watcher.on('all', (event, path) => {
    if (event !== 'change' && event !== 'add') return;
    saved.add(resolve(path));
    clearTimeout(timer);
    timer = setTimeout(rebuild, SETTLE);
  });
  await new Promise<void>((ready) => watcher.once('ready', ready));
  io.err('watching; stop with Ctrl-C\n');
  await new Promise<void>((stopped) => {
    if (io.stop.aborted) stopped();
    io.stop.addEventListener('abort', () => stopped(), { once: true });
  });
  clearTimeout(timer);
  await building;
  await watcher.close();
  return 0;
}
