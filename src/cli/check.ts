/** `turnsheet check`: what is wrong with lessons. */
import { betterSolutions } from '../lesson/better.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { ProvedRules } from '../lesson/prove-rules.ts';
import { rulesOfSomeWays } from '../lesson/rule-ways.ts';
import { type NamedCourse, nameCourses } from './courses.ts';
import { documentOf, type ExitCode, type Io } from './io.ts';
import { type Found, type LoadedFile, loadFile, placed } from './load-files.ts';
import type { CheckOptions } from './options.ts';
import { countErrors, counted, tell } from './report.ts';

/** What keeps a proved lesson from being printed on the usual paper; what prints is loaded for a lesson that is. */
async function pageProblems({ loaded }: LoadedFile): Promise<Found[]> {
  if (!loaded?.proved) return [];
  const { printProblems } = await import('../sheets/printed.ts');
  const problems = printProblems(loaded.proved, { paper: 'a4', ink: 'colour' });
  return problems.map((problem) => ({ problem, source: loaded.source }));
}

/** What keeps the chart of a course from being printed, once its lessons are proved; it counts no pages. */
async function chartProblems({ course, lessons }: NamedCourse, proved: ReadonlyMap<string, ProvedLesson>) {
  const evenings = course.evenings.map((evening, i) => ({ evening, proved: proved.get(lessons[i]!) }));
  const taught = evenings.flatMap(({ evening, proved: one }) =>
    one ? [{ evening, proved: one, pages: 0, practised: new Map<string, number>() }] : [],
  );
  if (taught.length < evenings.length) return [];
  const { printCourse } = await import('../sheets/printed-course.ts');
  const { problems } = printCourse(course, taught, { paper: 'a4', ink: 'colour' });
  return problems.map((problem): Found => ({ problem, source: course.source }));
}

/** What could be better in a lesson that is right. */
function hints({ loaded }: LoadedFile): Found[] {
  if (!loaded?.proved) return [];
  const found = [...rulesOfSomeWays(loaded.proved), ...betterSolutions(loaded.proved)];
  return found.map((problem) => ({ problem, source: loaded.source }));
}

/** What is proved of the rules, a line each, and what they cost. */
function rulesText({ rules, table: { cost } }: ProvedRules): string {
  const lines = rules.flatMap(({ said, proved, claim }) => {
    const { contrast, contrasts, excluded } = claim;
    const where = claim.holds === claim.sightings ? `all ${claim.sightings}` : `${claim.holds} of ${claim.sightings}`;
    const elsewhere = excluded > 0 ? `, and would in ${contrast} of the ${excluded} that it excludes` : '';
    const turned = contrasts.length > 1 ? contrasts : [];
    const ways = proved.isEveryWay ? 'every way' : `${claim.ways.work} of its ${claim.ways.allowed} ways`;
    return [
      `  rule ${said.number}: holds in ${where} sightings, ${ways}${elsewhere}`,
      ...turned.map(({ without, holds, sightings }) =>
        sightings > 0
          ? `    with all but "${without}" it would in ${holds} of ${sightings}`
          : `    no sighting meets all but "${without}"`,
      ),
    ];
  });
  const over =
    cost && `  following them takes ${cost.mean.toFixed(1)} turns over the shortest on average, ${cost.worst} at worst`;
  return `${[...lines, ...(over ? [over] : [])].join('\n')}\n`;
}

export async function check(options: CheckOptions, io: Io): Promise<ExitCode> {
  const all: Found[] = [];
  const claims: unknown[] = [];
  const named = await nameCourses(options.files, io);
  all.push(...named.found);
  tell(named.found, io);
  const provedLessons = new Map<string, ProvedLesson>();
  for (const file of named.lessons) {
    const one = await loadFile(file, io, named);
    const found = [...one.found, ...(await pageProblems(one)), ...hints(one)];
    all.push(...found);
    claims.push(...(one.loaded?.claims ?? []), ...(one.loaded?.ruleClaims ?? []), ...(one.loaded?.factClaims ?? []));
    tell(found, io);
    const proved = countErrors(found) === 0 ? one.loaded?.proved : undefined;
    if (proved) provedLessons.set(file, proved);
    if (proved && !options.json) {
      const facts = proved.factClaims.length > 0 ? `, ${counted(proved.factClaims.length, 'fact')}` : '';
      const solutions = counted(proved.claims.length, 'solution');
      io.err(`${file}: ${counted(proved.cases.length, 'case')}, ${solutions}${facts} proved\n`);
      for (const { claim, solution } of proved.cases.flatMap((c) => c.solutions)) {
        if (solution.chosen) io.err(`  ${claim.id} chosen: ${claim.solution}\n`);
      }
      if (proved.rules) io.err(rulesText(proved.rules));
    }
  }
  for (const course of named.courses) {
    const found = await chartProblems(course, provedLessons);
    all.push(...found);
    tell(found, io);
  }
  const errors = countErrors(all);
  if (errors > 0 && !options.json) io.err(`${counted(errors, 'error')}\n`);
  if (options.json) {
    io.out(documentOf({ ok: errors === 0, problems: all.map(placed), claims }));
  }
  return errors > 0 ? 1 : 0;
}
