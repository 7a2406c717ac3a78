/** `turnsheet cases --print`: the catalogue as a booklet. */
import { basename, extname, join } from 'node:path';
import { layOut } from '../layout/layout.ts';
import { writePdf } from '../layout/pdf.ts';
import { bookletLesson } from '../lesson/booklet-lesson.ts';
import { ProvedLesson } from '../lesson/prove.ts';
import { booklet, type Coverage } from '../sheets/booklet.ts';
import { claimsFile } from '../sheets/claims.ts';
import { makingOf } from '../sheets/making.ts';
import type { Step } from '../steps/step.ts';
import { writeAll } from './files.ts';
import { documentOf, type ExitCode, type Io } from './io.ts';
import { type Found, loadFile, placed } from './load-files.ts';
import type { PrintOptions } from './options.ts';
import { countErrors, counted, tell } from './report.ts';

const NAME = 'cases';

/** Where the lessons show each case, `edge-away 3`; undefined if none was named. */
async function coverageOf(
  files: readonly string[],
  io: Io,
): Promise<{ coverage: Coverage | undefined; found: Found[] }> {
  const coverage = new Map<string, string[]>();
  const found: Found[] = [];
  for (const file of files) {
    const one = await loadFile(file, io);
    found.push(...one.found);
    for (const { subject, case: c } of one.loaded?.proved?.cases ?? []) {
      const key = subject.caseAddress;
      coverage.set(key, [...(coverage.get(key) ?? []), `${basename(file, extname(file))} ${c.number}`]);
    }
  }
  return { coverage: files.length > 0 ? coverage : undefined, found };
}

export async function printBooklet(
  step: Step,
  families: readonly string[],
  { out, paper, ink, lessons }: PrintOptions,
  asJson: boolean,
  io: Io,
): Promise<ExitCode> {
  const { coverage, found } = await coverageOf(lessons, io);
  tell(found, io);
  const answer = (ok: boolean, files: readonly string[]): ExitCode => {
    if (asJson) io.out(documentOf({ ok, problems: found.map(placed), files }));
    return ok ? 0 : 1;
  };
  if (countErrors(found) > 0) {
    io.err(`${counted(countErrors(found), 'error')}; nothing was written\n`);
    return answer(false, []);
  }
  const { proved, problems } = ProvedLesson.prove({ lesson: bookletLesson(step, families), problems: [] });
  if (!proved) throw new Error(`the catalogue is not proved: ${problems[0]?.message}`);
  const rows = step.find.catalogue(families, 0, {}).filter(({ shortest }) => shortest > 0);
  const solutions = new Map(rows.map((row) => [row.address, row.solutions]));
  const sheet = booklet(proved, { families, solutions, coverage }, makingOf(proved, ink));
  const { pages, faults } = layOut(sheet, { paper });
  if (faults.length > 0) throw new Error(`the booklet cannot be laid out: ${faults[0]!.code} ${faults[0]!.what}`);
  const claims = claimsFile([{ suffix: '', pages, claims: proved.claims }], NAME, NAME);
  const files = [
    { path: join(out, `${NAME}.pdf`), bytes: await writePdf(pages) },
    { path: join(out, `${NAME}.claims.json`), bytes: documentOf(claims) },
  ];
  const failure = await writeAll(io.folder, files);
  if (failure) {
    io.err(`turnsheet: ${failure}; nothing was changed\n`);
    return answer(false, []);
  }
  const paths = files.map(({ path }) => path);
  io.err(
    `${counted(rows.length, 'case')} from four sides on ${counted(pages.frames.length, 'page')}, ` +
      `${counted(proved.claims.length, 'solution')} proved\n${paths.map((path) => `  ${path}\n`).join('')}`,
  );
  return answer(true, paths);
}
