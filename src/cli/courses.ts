/** Course files among those named: each becomes its lessons, and a chart of its own. */
import { normalize } from 'node:path';
import { type Course, isCourse, readCourse } from '../lesson/course.ts';
import { sourceOfBytes } from '../lesson/load.ts';
import type { Source } from '../lesson/source.ts';
import { readBytes, seenFrom } from './files.ts';
import type { Io } from './io.ts';
import type { Found } from './load-files.ts';

export interface NamedCourse {
  readonly file: string;
  readonly course: Course;
  /** By evening: the lesson file as seen from where the command runs. */
  readonly lessons: readonly string[];
}

export interface Named {
  /** Lesson files, those of courses among them, each once, in their order. */
  readonly lessons: readonly string[];
  readonly courses: readonly NamedCourse[];
  readonly found: readonly Found[];
  /** By file, the texts that were read. */
  readonly sources: ReadonlyMap<string, Source>;
}

/** What is at a file: its text, why there is none, or undefined where it is no text. */
type Read = (file: string) => Promise<Source | { readonly unreadable: string } | undefined>;

const isSource = (read: Awaited<ReturnType<Read>>): read is Source => read !== undefined && 'text' in read;

/** Reads each file once. */
function reader(io: Io, sources: Map<string, Source>): Read {
  return async (file) => {
    const known = sources.get(file);
    if (known) return known;
    const bytes = await readBytes(io.folder, file);
    if ('unreadable' in bytes) return bytes;
    const source = sourceOfBytes(file, bytes);
    if (source) sources.set(file, source);
    return source;
  };
}

/** The lessons that a course names must be there, and be lessons. */
async function missingLessons({ course, lessons }: NamedCourse, read: Read): Promise<Found[]> {
  const found: Found[] = [];
  for (const [i, file] of lessons.entries()) {
    const there = await read(file);
    const { lesson, span } = course.evenings[i]!;
    const tell = (message: string, hint: string): void => {
      found.push({ problem: { code: 'course-lesson-missing', span, message, hint }, source: course.source });
    };
    if (there && 'unreadable' in there) {
      tell(`"${lesson}": ${there.unreadable}`, 'name the file as it is seen from the folder of this course file');
    } else if (there && isCourse(there)) {
      tell(`"${lesson}" is a course and not a lesson`, 'name the lessons of that course one by one');
    }
  }
  return found;
}

/** A file that cannot be read is taken for a lesson, and told of when it is loaded. */
export async function nameCourses(files: readonly string[], io: Io): Promise<Named> {
  const lessons: string[] = [];
  const courses: NamedCourse[] = [];
  const found: Found[] = [];
  const sources = new Map<string, Source>();
  const read = reader(io, sources);
  for (const file of files) {
    const source = await read(file);
    if (!isSource(source) || !isCourse(source)) {
      // As a course spells it, so that a file named twice is one.
      lessons.push(normalize(file));
      continue;
    }
    const { course, problems } = readCourse(source);
    found.push(...problems.map((problem) => ({ problem, source })));
    if (!course) continue;
    const named = { file, course, lessons: course.evenings.map(({ lesson }) => seenFrom(file, lesson)) };
    found.push(...(await missingLessons(named, read)));
    courses.push(named);
    lessons.push(...named.lessons);
  }
  const isTold = new Set(found.map(({ problem }) => problem.code)).has('course-lesson-missing');
  // A lesson that is not there, or is a course, was told of where the course names it.
  const there = isTold ? await readable(lessons, files, read) : lessons;
  return { lessons: [...new Set(there)], courses, found, sources };
}

async function readable(lessons: readonly string[], named: readonly string[], read: Read): Promise<string[]> {
  const there: string[] = [];
  for (const file of lessons) {
    const source = await read(file);
    const isThere = named.includes(file) || !(source && 'unreadable' in source);
    if (isThere && !(isSource(source) && isCourse(source))) there.push(file);
  }
  return there;
}
