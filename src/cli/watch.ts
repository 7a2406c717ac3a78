/** `turnsheet build --watch`: builds again what a save changed, until it is stopped. */
import { resolve } from 'node:path';
import { watch as watchFiles } from 'chokidar';
import { build } from './build.ts';
import type { ExitCode, Io } from './io.ts';
import type { BuildOptions } from './options.ts';

/** Editors write a file in several steps: what follows at once belongs to the same save. Milliseconds. */
const SETTLE = 15;

/** The first build is of all lessons, each further one of those that were saved; a failed one leaves the last good files. */
export async function watch(options: BuildOptions, io: Io): Promise<ExitCode> {
  const first = await build(options, io);
  if (first === 2) return first;
  const saved = new Set<string>();
  let building = Promise.resolve();
  let timer: NodeJS.Timeout | undefined;
  const rebuild = (): void => {
    const files = options.files.filter((file) => saved.has(resolve(io.folder, file)));
    saved.clear();
    building = building.then(async () => {
      await build({ ...options, files }, io);
    });
  };
  const watcher = watchFiles(
    options.files.map((file) => resolve(io.folder, file)),
    { ignoreInitial: true },
  );
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
