/** `turnsheet build`: lessons to PDF files with their claims. */
import { basename, extname, join, normalize } from 'node:path';
import { writePdf } from '../layout/pdf.ts';
import type { Loaded } from '../lesson/load.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { Source } from '../lesson/source.ts';
import { editionSuffix, type Variation } from '../lesson/vary.ts';
import { tooLarge } from '../marking/claims-file.ts';
import { claimsFile, pdfName } from '../sheets/claims.ts';
import type { TaughtEvening } from '../sheets/course-chart.ts';
import { makingOf } from '../sheets/making.ts';
import { casePictures } from '../sheets/pictures.ts';
import { type PrintedSheet, printLesson } from '../sheets/printed.ts';
import { printCourse } from '../sheets/printed-course.ts';
import { type NamedCourse, nameCourses } from './courses.ts';
import { type OutFile, writeAll } from './files.ts';
import { documentOf, type ExitCode, type Io } from './io.ts';
import { loadEarlier } from './load-earlier.ts';
import { type Found, type LoadedFile, loadFile, placed } from './load-files.ts';
import { type Edition, type LoadedRoster, loadRoster } from './load-roster.ts';
import type { BuildOptions } from './options.ts';
import { countErrors, counted, progress, tell } from './report.ts';

const nameOf = (file: string): string => basename(file, extname(file));
const editionName = (file: string, variation: Variation): string => `${nameOf(file)}${editionSuffix(variation)}`;

/** The pictures of the cases as SVG files, for slides and screens. */
async function picturesOf(name: string, proved: ProvedLesson, { out, ink }: BuildOptions): Promise<OutFile[]> {
  const { writeSvg } = await import('../svg/write-svg.ts');
  return casePictures(proved, makingOf(proved, ink)).map(({ number, title, scene }) => ({
    path: join(out, `${name}-pictures`, `${number}.svg`),
    bytes: writeSvg(scene, title),
  }));
}

/** The claims file of a lesson as it is written, and why "mark" could not read it, where it could not. */
function claimsOf(
  file: string,
  { edition }: ProvedLesson,
  sheets: readonly PrintedSheet[],
  { out, variation }: BuildOptions,
): { claims: OutFile; refused?: string } {
  const name = editionName(file, variation);
  const path = join(out, `${name}.claims.json`);
  const document = claimsFile(sheets, name, basename(file), edition);
  const claims = { path, bytes: documentOf(document) };
  const why = tooLarge(document.claims.length, Buffer.byteLength(claims.bytes));
  return why === undefined ? { claims } : { claims, refused: `${path} ${why}: build the roster in parts` };
}

async function filesOf(
  file: string,
  proved: ProvedLesson,
  sheets: readonly PrintedSheet[],
  claims: OutFile,
  options: BuildOptions,
): Promise<OutFile[]> {
  const name = editionName(file, options.variation);
  const pdfs = sheets.map(async (sheet) => ({
    path: join(options.out, pdfName(name, sheet)),
    bytes: await writePdf(sheet.pages),
  }));
  return [...(await Promise.all(pdfs)), claims, ...(options.pictures ? await picturesOf(name, proved, options) : [])];
}

/** Who gets a practice paper: the students of a roster, or nobody in particular; with the lessons of evenings before. */
async function seat(
  file: string,
  loaded: Loaded,
  known: ReadonlyMap<string, LoadedFile>,
  { roster, variation }: BuildOptions,
  io: Io,
): Promise<LoadedRoster> {
  const earlier = await loadEarlier(file, loaded, known, io);
  if (roster !== undefined) {
    const { found, ...ofClass } = await loadRoster(roster, loaded, variation, earlier, io);
    return { ...ofClass, found: [...earlier.found, ...found] };
  }
  const { proved } = loaded;
  const anyone = proved ? [{ code: undefined, proved, level: undefined, earlier: earlier.as(variation) }] : [];
  return { students: anyone, found: earlier.found };
}

/** Two lessons that would be written to the same place. */
function clash(files: readonly string[]): string | undefined {
  const names = files.map(nameOf);
  return names.find((name, i) => names.indexOf(name) !== i);
}

/** Why files of two lessons cannot be written: a sheet of one is called as one of the other. */
function twice(files: readonly OutFile[]): string | undefined {
  const paths = files.map(({ path }) => path);
  const path = paths.find((one, i) => paths.indexOf(one) !== i);
  return path && `two of the sheets would both be ${path}: build the lessons to different folders`;
}

/** A lesson that is proved and laid out. */
interface Built {
  readonly proved: ProvedLesson;
  readonly sheets: readonly PrintedSheet[];
  readonly practised: ReadonlyMap<string, number>;
}

/** The handouts of a class that holds its cubes in more than one way, and how many copies of each. */
async function handoutsFor(
  file: string,
  source: Source,
  editions: readonly Edition[],
  options: BuildOptions,
): Promise<{ files: OutFile[]; found: Found[]; copies: Copies[] }> {
  const files: OutFile[] = [];
  const found: Found[] = [];
  const copies: Copies[] = [];
  for (const { variation, proved, copies: count } of editions) {
    const path = join(options.out, `${editionName(file, variation)}.pdf`);
    copies.push({ path, copies: count });
    // That of the lesson as it is built for all is there already.
    if (editionSuffix(variation) === editionSuffix(options.variation)) continue;
    const { paper, ink } = options;
    const { sheets, problems } = printLesson(proved, { paper, ink, only: [''] });
    found.push(...problems.map((problem) => ({ problem, source })));
    const own = { ...options, variation, pictures: false };
    files.push(...(await filesOf(file, proved, sheets, claimsOf(file, proved, sheets, own).claims, own)));
  }
  return { files, found, copies };
}

/** For the one who stands at the copier. */
const copiesSaid = (copies: readonly Copies[]): string[] =>
  copies.length === 0
    ? []
    : [`copies of handouts: ${copies.map(({ path, copies: count }) => `${count} of ${basename(path)}`).join(', ')}`];

/** How often a file is to be printed. */
interface Copies {
  readonly path: string;
  readonly copies: number;
}

/** The chart of a course whose lessons are all there, and what keeps it from being printed. */
async function chartOf(
  { file, course, lessons }: NamedCourse,
  built: ReadonlyMap<string, Built>,
  { out, paper, ink }: BuildOptions,
): Promise<{ files: OutFile[]; found: Found[] }> {
  const taught = course.evenings.map((evening, i): TaughtEvening => {
    const { proved, sheets, practised } = built.get(lessons[i]!)!;
    const pages = sheets.reduce((sum, sheet) => sum + sheet.pages.frames.length, 0);
    return { evening, proved, pages, practised };
  });
  const { pages, claims, problems } = printCourse(course, taught, { paper, ink });
  if (problems.length > 0) return { files: [], found: problems.map((problem) => ({ problem, source: course.source })) };
  const name = nameOf(file);
  const files = [
    { path: join(out, `${name}.pdf`), bytes: await writePdf(pages) },
    {
      path: join(out, `${name}.claims.json`),
      bytes: documentOf(claimsFile([{ suffix: '', pages, claims }], name, basename(file))),
    },
  ];
  return { files, found: [] };
}

export async function build(options: BuildOptions, io: Io): Promise<ExitCode> {
  const named = await nameCourses(options.files, io);
  const double = clash([...named.lessons, ...named.courses.map(({ file }) => file)]);
  // A course that names itself is told of where it does.
  if (double !== undefined && countErrors(named.found) === 0) {
    io.err(`turnsheet: two of the files would both be written to ${double}.pdf: build them to different folders\n`);
    return 2;
  }
  const all: Found[] = [...named.found];
  tell(named.found, io);
  const files: OutFile[] = [];
  const built = new Map<string, Built>();
  const known = new Map<string, LoadedFile>();
  const said: string[] = [];
  const copies: Copies[] = [];
  let refused: string | undefined;
  const step = progress(io, named.lessons.length, options.json);
  for (const file of named.lessons) {
    step(file);
    const one = await loadFile(file, io, { ...named, variation: options.variation });
    known.set(normalize(file), one);
    const { loaded, found } = one;
    const proved = loaded?.proved;
    const { paper, ink } = options;
    const seated = loaded && (await seat(file, loaded, known, options, io));
    // What was told of the lesson once is not told again for a student.
    const ofClass = (seated?.found ?? []).filter((f) => !found.some((g) => g.problem.span === f.problem.span));
    const isWhole = countErrors(ofClass) === 0;
    const printed = proved && seated && isWhole ? printLesson(proved, { paper, ink, ...seated }) : undefined;
    const ofPage: Found[] = (printed?.problems ?? []).map((problem) => ({ problem, source: loaded!.source }));
    const told = [...found, ...ofClass, ...ofPage];
    all.push(...told);
    tell(told, io);
    if (!proved || !printed || countErrors(ofPage) > 0) continue;
    built.set(file, { proved, sheets: printed.sheets, practised: printed.practised });
    const { claims, refused: why } = claimsOf(file, proved, printed.sheets, options);
    refused ??= why;
    if (refused === undefined) files.push(...(await filesOf(file, proved, printed.sheets, claims, options)));
    const handouts = await handoutsFor(file, loaded!.source, seated?.editions ?? [], options);
    all.push(...handouts.found);
    tell(handouts.found, io);
    files.push(...handouts.files);
    copies.push(...handouts.copies);
    said.push(`${file}: ${counted(proved.cases.length, 'case')}, ${counted(proved.claims.length, 'solution')} proved`);
  }
  step(undefined);
  if (countErrors(all) === 0) {
    for (const course of named.courses) {
      const chart = await chartOf(course, built, options);
      files.push(...chart.files);
      all.push(...chart.found);
      tell(chart.found, io);
    }
  }
  const errors = countErrors(all);
  refused ??= twice(files);
  const failure = errors > 0 ? undefined : (refused ?? (await writeAll(io.folder, files)));
  const ok = errors === 0 && failure === undefined;
  if (failure) io.err(`turnsheet: ${failure}; nothing was changed\n`);
  const paths = ok ? files.map((f) => f.path) : [];
  const ofCopies = ok && copies.length > 0 ? { copies } : {};
  if (options.json)
    io.out(documentOf({ ok, problems: all.map(placed), files: paths, ...ofCopies, ...(failure && { failure }) }));
  else if (ok) io.err(`${[...said, ...paths.map((p) => `  ${p}`), ...copiesSaid(copies)].join('\n')}\n`);
  else if (errors > 0) {
    io.err(`${counted(errors, 'error')}; nothing was written, and files of earlier builds are as they were\n`);
  }
  return ok ? 0 : 1;
}
