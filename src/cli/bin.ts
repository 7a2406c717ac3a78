#!/usr/bin/env node
/** The process: everything else gets what it needs handed in. */
import { asker } from './ask.ts';
import { run } from './run.ts';

// Whoever reads our output may have read enough, as `head` does.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (e: NodeJS.ErrnoException) => {
    if (e.code !== 'EPIPE') throw e;
    process.exit();
  });
}

const stop = new AbortController();
process.once('SIGINT', () => stop.abort());

const questions = asker(process.stdin, process.stderr);

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  ask: questions.ask,
  env: process.env,
  terminal: process.stderr.isTTY === true,
  folder: process.cwd(),
  stop: stop.signal,
});
questions.close();
