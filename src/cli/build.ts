/** `turnsheet build`: lessons to PDF files with their claims. */
import { basename, extname, join } from 'node:path';
import { writePdf } from '../layout/pdf.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import { claimsFile, pdfName } from '../sheets/claims.ts';
import { makingOf } from '../sheets/making.ts';
import { casePictures } from '../sheets/pictures.ts';
import { type PrintedSheet, printLesson } from '../sheets/printed.ts';
import { type OutFile, writeAll } from './files.ts';
import type { ExitCode, Io } from './io.ts';
import { type Found, loadFile, placed } from './load-files.ts';
import type { BuildOptions } from './options.ts';
import { countErrors, counted, progress, tell } from './report.ts';

const nameOf = (file: string): string => basename(file, extname(file));

const json = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;

/** The pictures of the cases as SVG files, for slides and screens. */
async function picturesOf(name: string, proved: ProvedLesson, { out, ink }: BuildOptions): Promise<OutFile[]> {
  const { writeSvg } = await import('../svg/write-svg.ts');
  return casePictures(proved, makingOf(proved, ink)).map(({ number, title, scene }) => ({
    path: join(out, `${name}-pictures`, `${number}.svg`),
    bytes: writeSvg(scene, title),
  }));
}

async function filesOf(
  file: string,
  proved: ProvedLesson,
  sheets: readonly PrintedSheet[],
  options: BuildOptions,
): Promise<OutFile[]> {
  const name = nameOf(file);
  const pdfs = sheets.map(async (sheet) => ({
    path: join(options.out, pdfName(name, sheet)),
    bytes: await writePdf(sheet.pages),
  }));
  return [
    ...(await Promise.all(pdfs)),
    { path: join(options.out, `${name}.claims.json`), bytes: json(claimsFile(sheets, name, basename(file))) },
    ...(options.pictures ? await picturesOf(name, proved, options) : []),
  ];
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
  const all: Found[] = [];
  const files: OutFile[] = [];
  const built: string[] = [];
  const step = progress(io, options.files.length, options.json);
  for (const file of options.files) {
    step(file);
    const { loaded, found } = await loadFile(file, io, options.variation);
    const proved = loaded?.proved;
    const printed = proved && printLesson(proved, options);
    const ofPage: Found[] = (printed?.problems ?? []).map((problem) => ({ problem, source: loaded!.source }));
    all.push(...found, ...ofPage);
    tell([...found, ...ofPage], io);
    if (!proved || !printed || countErrors(ofPage) > 0) continue;
    files.push(...(await filesOf(file, proved, printed.sheets, options)));
    const { cases, claims } = proved;
    built.push(`${file}: ${counted(cases.length, 'case')}, ${counted(claims.length, 'solution')} proved`);
  }
  step(undefined);
  const errors = countErrors(all);
  const failure = errors > 0 ? undefined : await writeAll(io.folder, files);
  const ok = errors === 0 && failure === undefined;
  if (failure) io.err(`turnsheet: ${failure}; nothing was changed\n`);
  const paths = ok ? files.map((f) => f.path) : [];
  if (options.json) io.out(json({ ok, problems: all.map(placed), files: paths, ...(failure && { failure }) }));
  else if (ok) io.err(`${[...built, ...paths.map((p) => `  ${p}`)].join('\n')}\n`);
  else if (errors > 0) {
    io.err(`${counted(errors, 'error')}; nothing was written, and files of earlier builds are as they were\n`);
  }
  return ok ? 0 : 1;
}
