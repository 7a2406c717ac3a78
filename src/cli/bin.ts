#!/usr/bin/env node
/** The process: everything else gets what it needs handed in. */
import { run } from './run.ts';

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  env: process.env,
  terminal: process.stderr.isTTY === true,
  folder: process.cwd(),
});
