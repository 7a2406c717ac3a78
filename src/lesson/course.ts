/** Course file -> Course: which lessons are taught, in which order and when. */
import { isMap } from 'yaml';
import { z } from 'zod';
import { USUAL_STEP } from '../steps/steps.ts';
import { about } from '../text/about.ts';
import { formatProblems, type Tables } from './format-problems.ts';
import type { TextLine } from './lesson.ts';
import type { Problem, Span } from './problem.ts';
import { type Reader, textLineAt } from './reader.ts';
import { formatOf, text } from './schema.ts';
import type { Source } from './source.ts';
import { dataOf, keySpan, parseYaml, spanAt } from './yaml-text.ts';

/** ISO 8601. */
const DATE = /^\d{4}-\d{2}-\d{2}$/;

const eveningSchema = z.strictObject({
  lesson: about(text(), 'The lesson file, as seen from the folder of the course file.', 'edge-away.yaml'),
  date: z
    .string()
    .meta({
      description: 'When it is taught, as year, month, day.',
      examples: ['2026-09-15'],
      pattern: DATE.source,
    })
    .optional(),
});

/** The course format: the one place where its keys are named. */
export const courseSchema = z.strictObject({
  course: about(text(), 'The name of the course.', 'Autumn course'),
  club: about(text(), 'The name of the club.', 'Ondrelby Cube Club').optional(),
  lessons: about(z.array(eveningSchema).min(1), 'The lessons in the order in which they are taught.'),
});

/** A line of a course. */
export interface Evening {
  /** From 1. */
  readonly number: number;
  /** The lesson file as it is written, seen from the course file. */
  readonly lesson: string;
  /** ISO 8601. */
  readonly date: string | undefined;
  /** Of the lesson's name. */
  readonly span: Span;
}

/** A course as read: evenings in order, each with its lesson. */
export interface Course {
  readonly source: Source;
  readonly title: TextLine;
  readonly club: TextLine | undefined;
  readonly evenings: readonly Evening[];
}

export interface ReadCourse {
  readonly course: Course | undefined;
  readonly problems: readonly Problem[];
}

const TABLES: Tables = {
  step: USUAL_STEP,
  at: (_, path) =>
    path.length === 0
      ? { name: 'a course', keys: Object.keys(courseSchema.shape) }
      : { name: 'an evening', keys: Object.keys(eveningSchema.shape) },
};

/** A file that lists lessons is a course, and one that is called a course and has nothing of a lesson; a lesson has cases. */
export const isCourse = (source: Source): boolean => {
  const yaml = parseYaml(source);
  const has = (key: string): boolean => keySpan(yaml, [], key) !== undefined;
  if (!isMap(yaml.document.contents) || has('cases')) return false;
  return has('lessons') || (has('course') && !has('title') && !has('hold'));
};

const isDate = (text: string): boolean => {
  const date = new Date(`${text}T00:00:00Z`);
  return DATE.test(text) && !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
};

function dateProblems(evenings: readonly Evening[], spanOf: (evening: Evening) => Span): Problem[] {
  const problems: Problem[] = [];
  let before: string | undefined;
  for (const evening of evenings) {
    const { date } = evening;
    if (date === undefined) continue;
    if (!isDate(date)) {
      const message = `"${date}" is no date`;
      const hint = 'write year, month and day with all their digits: 2026-09-15';
      problems.push({ code: 'value-unknown', span: spanOf(evening), message, hint });
    } else {
      if (before !== undefined && date <= before) {
        const message = `this evening is not after the one before it (${before})`;
        problems.push({ code: 'course-dates', span: spanOf(evening), message, hint: 'put the lessons in their order' });
      }
      before = date;
    }
  }
  return problems;
}

function lessonsTwice(evenings: readonly Evening[]): Problem[] {
  return evenings.flatMap(({ lesson, span }, i) => {
    const first = evenings.findIndex((other) => other.lesson === lesson);
    if (first === i) return [];
    const message = `${lesson} is evening ${first + 1} already`;
    return [{ code: 'course-lesson-twice' as const, span, message, hint: 'name another lesson, or take it out' }];
  });
}

/** A course's file -> the course; its lessons are not opened. What is wrong is among the problems. */
export function readCourse(source: Source): ReadCourse {
  const yaml = parseYaml(source);
  const r: Reader = { format: formatOf(USUAL_STEP), yaml, problems: [...yaml.problems] };
  const parsed = courseSchema.safeParse(dataOf(yaml));
  if (!parsed.success) {
    r.problems.push(...formatProblems(yaml, parsed.error, [], TABLES));
    return { course: undefined, problems: r.problems };
  }
  const { data } = parsed;
  const evenings = data.lessons.map(
    ({ lesson, date }, i): Evening => ({
      number: i + 1,
      lesson: lesson.trim(),
      date,
      span: spanAt(yaml, ['lessons', i, 'lesson']),
    }),
  );
  const spanOfDate = ({ number }: Evening): Span => spanAt(yaml, ['lessons', number - 1, 'date']);
  r.problems.push(...lessonsTwice(evenings), ...dateProblems(evenings, spanOfDate));
  const title = textLineAt(r, ['course'], data.course)!;
  return { course: { source, title, club: textLineAt(r, ['club'], data.club), evenings }, problems: r.problems };
}
