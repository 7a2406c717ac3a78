/** One command, from its arguments to its exit code. */
import pkg from '../../package.json' with { type: 'json' };
import { helpText } from './help.ts';
import type { ExitCode, Io } from './io.ts';
import { type Options, readOptions } from './options.ts';

/** Commands are loaded when they are called: a check needs no PDF writer. */
async function dispatch(options: Options, io: Io): Promise<ExitCode> {
  switch (options.command) {
    case 'help':
      io.out(helpText(options.about));
      return 0;
    case 'version':
      io.out(`${pkg.version}\n`);
      return 0;
    case 'check':
      return (await import('./check.ts')).check(options, io);
    case 'build':
      if (options.watch) return (await import('./watch.ts')).watch(options, io);
      return (await import('./build.ts')).build(options, io);
    case 'new':
      return (await import('./new.ts')).newLesson(options, io);
    case 'find':
      return (await import('./find.ts')).find(options, io);
    case 'explain':
      return (await import('./explain.ts')).explainTurns(options, io);
    case 'cases':
      return (await import('./cases.ts')).cases(options, io);
    case 'rules':
      return (await import('./rules.ts')).rules(options, io);
    case 'mark':
      if (options.type) return (await import('./mark-typed.ts')).markTyped(options, io);
      return (await import('./mark.ts')).mark(options, io);
    case 'verify':
      return (await import('./verify.ts')).verify(options, io);
  }
}

export async function run(args: readonly string[], io: Io): Promise<ExitCode> {
  const options = readOptions(args);
  if ('usage' in options) {
    io.err(`turnsheet: ${options.usage}\nTry: npx turnsheet help\n`);
    return 2;
  }
  try {
    return await dispatch(options, io);
  } catch (e) {
    const what = e instanceof Error ? e.message : String(e);
    io.err(`turnsheet: a fault in turnsheet itself: ${what}\nPlease report it with the lesson that led to it.\n`);
    if (io.env['TURNSHEET_DEBUG'] && e instanceof Error) io.err(`${e.stack}\n`);
    return 3;
  }
}
