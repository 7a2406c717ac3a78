/** `turnsheet build`: lessons to PDF files with their claims. */
import { basename, extname, join } from 'node:path';
import { layOut } from '../layout/layout.ts';
import { writePdf } from '../layout/pdf.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { PlacedProblem } from '../lesson/source.ts';
import { type ClaimsFile, printedClaims } from '../sheets/claims.ts';
import { problemOfFault } from '../sheets/faults.ts';
import { handout } from '../sheets/handout.ts';
import { casePictures } from '../sheets/pictures.ts';
import { type OutFile, writeAll } from './files.ts';
import type { ExitCode, Io } from './io.ts';
import { loadFile } from './load-files.ts';
import type { BuildOptions } from './options.ts';
import { counted, problemText, progress } from './report.ts';

const nameOf = (file: string): string => basename(file, extname(file));

const json = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;

/** The pictures of the cases as SVG files, for slides and screens. */
async function picturesOf(name: string, proved: ProvedLesson, { out, ink }: BuildOptions): Promise<OutFile[]> {
  const { writeSvg } = await import('../svg/write-svg.ts');
  return casePictures(proved, ink).map(({ number, title, scene }) => ({
    path: join(out, `${name}-pictures`, `${number}.svg`),
    bytes: writeSvg(scene, title),
  }));
}

/** The files of one lesson, or what keeps it from being printed. */
async function filesOf(
  file: string,
  proved: ProvedLesson,
  options: BuildOptions,
): Promise<{ files: OutFile[]; problems: PlacedProblem[] }> {
  const name = nameOf(file);
  const sheet = `${name}.pdf`;
  const { pages, faults } = layOut(handout(proved, options.ink), { paper: options.paper });
  if (faults.length > 0) return { files: [], problems: faults.map((f) => problemOfFault(f, file)) };
  // Without its folder, so that the same lesson gives the same bytes wherever it lies.
  const shortName = basename(file);
  const claims: ClaimsFile = {
    lesson: proved.lesson.title,
    file: shortName,
    sheets: [sheet],
    claims: printedClaims(proved, pages, sheet).map((claim) => ({ ...claim, file: shortName })),
  };
  return {
    files: [
      { path: join(options.out, sheet), bytes: await writePdf(pages) },
      { path: join(options.out, `${name}.claims.json`), bytes: json(claims) },
      ...(options.pictures ? await picturesOf(name, proved, options) : []),
    ],
    problems: [],
  };
}

/** Two lessons that would be written to the same place. */
function clash(files: readonly string[]): string | undefined {
  const names = files.map(nameOf);
  return names.find((name, i) => names.indexOf(name) !== i);
}

export async function build(options: BuildOptions, io: Io): Promise<ExitCode> {
  const double = clash(options.files);
  if (double !== undefined) {
    io.err(`turnsheet: two of the lessons would both be written to ${double}.pdf: build them to different folders\n`);
    return 2;
  }
  const problems: PlacedProblem[] = [];
  const files: OutFile[] = [];
  const built: string[] = [];
  const step = progress(io, options.files.length, options.json);
  for (const file of options.files) {
    step(file);
    const { loaded, problems: found, shown } = await loadFile(file, io);
    problems.push(...found);
    for (const text of shown) io.err(`${text}\n`);
    if (!loaded?.proved) continue;
    const made = await filesOf(file, loaded.proved, options);
    for (const problem of made.problems) io.err(`${problemText(problem, [], io)}\n`);
    problems.push(...made.problems);
    files.push(...made.files);
    const { cases, claims } = loaded.proved;
    built.push(`${file}: ${counted(cases.length, 'case')}, ${counted(claims.length, 'solution')} proved`);
  }
  step(undefined);
  const errors = problems.filter((p) => p.severity === 'error').length;
  const failure = errors > 0 ? undefined : await writeAll(io.folder, files);
  const ok = errors === 0 && failure === undefined;
  if (failure) io.err(`turnsheet: ${failure}\n`);
  const paths = ok ? files.map((f) => f.path) : [];
  if (options.json) io.out(json({ ok, problems, files: paths }));
  else if (ok) io.err(`${[...built, ...paths.map((p) => `  ${p}`)].join('\n')}\n`);
  else if (errors > 0) io.err(`${counted(errors, 'error')}; nothing was written\n`);
  return ok ? 0 : 1;
}
