/** `turnsheet check`: what is wrong with lessons. */
import type { ExitCode, Io } from './io.ts';
import { loadFile } from './load-files.ts';
import type { CheckOptions } from './options.ts';
import { counted } from './report.ts';

export async function check(options: CheckOptions, io: Io): Promise<ExitCode> {
  const files = [];
  for (const file of options.files) files.push(await loadFile(file, io));
  const problems = files.flatMap((f) => f.problems);
  const claims = files.flatMap((f) => f.loaded?.claims ?? []);
  const errors = problems.filter((p) => p.severity === 'error').length;
  for (const { file, loaded, shown } of files) {
    for (const text of shown) io.err(`${text}\n`);
    const proved = loaded?.proved;
    if (proved && !options.json) {
      io.err(`${file}: ${counted(proved.cases.length, 'case')}, ${counted(proved.claims.length, 'solution')} proved\n`);
    }
  }
  if (errors > 0 && !options.json) io.err(`${counted(errors, 'error')}\n`);
  if (options.json) io.out(`${JSON.stringify({ ok: errors === 0, problems, claims }, undefined, 2)}\n`);
  return errors > 0 ? 1 : 0;
}
