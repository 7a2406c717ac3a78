#!/usr/bin/env node
/** The process: everything else gets what it needs handed in. */
import { asker } from './ask.ts';
import type { Io } from './io.ts';
import { run } from './run.ts';

/**
 * Writes to a stream for as long as it takes anything. Whoever reads our output may have read enough, as `head` does: the
 * work is done all the same. What cannot be written for another reason, on a full disk such as, is told by `failed`.
 */
function writer(stream: NodeJS.WriteStream, failed: (code: string) => void): Io['out'] {
  let isOpen = true;
  stream.on('error', ({ code = 'unknown' }: NodeJS.ErrnoException) => {
    if (isOpen && code !== 'EPIPE') failed(code);
    isOpen = false;
  });
  return (text) => {
    if (isOpen) stream.write(text);
  };
}

const err = writer(process.stderr, () => undefined);
const out = writer(process.stdout, (code) => {
  err(`turnsheet: what was asked for could not be written in full (${code})\n`);
  process.once('exit', () => {
    process.exitCode ||= 1;
  });
});

const stop = new AbortController();
const questions = asker(process.stdin, process.stderr);

process.exitCode = await run(process.argv.slice(2), {
  out,
  err,
  ask: questions.ask,
  env: process.env,
  terminal: process.stderr.isTTY === true,
  folder: process.cwd(),
  get stop() {
    // A command that does not ask for it is ended by an interrupt, at once.
    if (process.listenerCount('SIGINT') === 0) process.once('SIGINT', () => stop.abort());
    return stop.signal;
  },
});
questions.close();
