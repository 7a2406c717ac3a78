/** Lesson file -> Lesson. Whatever is wrong is collected; what could be understood goes on to be proved all the same. */
import { isMap } from 'yaml';
import { z } from 'zod';
import {
  type Colour,
  coloursHeld,
  type FaceColours,
  type Hold,
  oppositeColour,
  USUAL_SCHEME,
} from '../cube/colours.ts';
import { readTurns } from '../cube/notation.ts';
import type { Turn } from '../cube/turns.ts';
import { formatProblems } from './format-problems.ts';
import type { Case, Lesson, Part, Prose, Solution } from './lesson.ts';
import { listed } from './likely.ts';
import type { Problem, Span } from './problem.ts';
import { readProse } from './prose.ts';
import { type CaseFile, caseSchema, lessonSchema, partSchema } from './schema.ts';
import { positionAt, type Source } from './source.ts';
import { isStructural } from './yaml-errors.ts';
import { dataOf, nodeAt, type Path, parseYaml, spanAt, valueOffsets, type YamlText } from './yaml-text.ts';

/** Characters; no lesson comes near it, and reading stays quick. */
const LARGEST = 1_000_000;

interface Reader {
  readonly yaml: YamlText;
  readonly problems: Problem[];
}

function proseAt(r: Reader, path: Path, text: string | undefined): Prose {
  if (text === undefined) return [];
  const { prose, problems } = readProse(text, valueOffsets(r.yaml, path));
  r.problems.push(...problems);
  return prose;
}

/** Undefined where they cannot be read or there are none: told. */
function turnsAt(r: Reader, path: Path, text: string): Turn[] | undefined {
  const reading = readTurns(text);
  if (!reading.ok) {
    const start = valueOffsets(r.yaml, path)(reading.at);
    const span = { start, end: start + Math.max(1, reading.size) };
    r.problems.push({ code: 'turns-unreadable', span, message: reading.message, hint: reading.hint });
    return undefined;
  }
  if (reading.turns.length === 0) {
    const message = 'no turns are written here';
    r.problems.push({ code: 'turns-missing', span: spanAt(r.yaml, path), message, hint: "write them, as in R U' R'" });
    return undefined;
  }
  return reading.turns;
}

/** The colours of a hold given by cross and front colour; undefined where no cube can be held so: told. */
function holdAt(r: Reader, path: Path, cross: Colour, front: Colour): Held | undefined {
  const hold = { up: oppositeColour(USUAL_SCHEME, cross), front };
  const colours = coloursHeld(USUAL_SCHEME, hold);
  if (colours) return { hold, colours };
  const fronts = Object.values(USUAL_SCHEME).filter((c) => c !== cross && c !== hold.up);
  const message =
    front === cross
      ? `${front} cannot be down and in front at once`
      : `${front} is opposite to ${cross}: with ${cross} down it is up, not in front`;
  const at = nodeAt(r.yaml, [...path, 'front']) ? [...path, 'front'] : path;
  r.problems.push({ code: 'hold-impossible', span: spanAt(r.yaml, at), message, hint: `front is ${listed(fronts)}` });
  return undefined;
}

interface Held {
  readonly hold: Hold;
  readonly colours: FaceColours;
}

function solutionAt(r: Reader, path: Path, written: CaseFile['solutions'][number]): Solution | undefined {
  const isText = typeof written === 'string';
  const turnsPath = isText ? path : [...path, 'turns'];
  const turns = turnsAt(r, turnsPath, isText ? written : written.turns);
  const remark = isText ? [] : proseAt(r, [...path, 'remark'], written.remark);
  return turns && { turns, remark, span: spanAt(r.yaml, turnsPath) };
}

/** `lessonHeld` is undefined where the lesson's own hold could not be read: its cases are then read in some hold. */
function caseAt(
  r: Reader,
  path: Path,
  number: number,
  written: CaseFile,
  lessonHeld: Held | undefined,
): Case | undefined {
  const setup = turnsAt(r, [...path, 'setup'], written.setup);
  const solutions = written.solutions.map((s, i) => solutionAt(r, [...path, 'solutions', i], s));
  const watch = proseAt(r, [...path, 'watch'], written.watch);
  const slot = written.slot ?? 'FR';
  const open = written.open ?? [];
  const ownAt = open.indexOf(slot);
  if (ownAt >= 0) {
    const message = `${slot} is the pair's own slot, which is always open`;
    const span = spanAt(r.yaml, [...path, 'open', ownAt]);
    r.problems.push({ code: 'slot-open', span, message, hint: `leave ${slot} out` });
  }
  const held =
    written.hold && lessonHeld
      ? holdAt(
          r,
          [...path, 'hold'],
          written.hold.cross ?? lessonHeld.colours.D,
          written.hold.front ?? lessonHeld.hold.front,
        )
      : (lessonHeld ?? SOME_HOLD);
  if (!setup || !held) return undefined;
  return {
    number,
    name: written.name,
    ...held,
    slot,
    open,
    setup,
    setupSpan: spanAt(r.yaml, [...path, 'setup']),
    solutions: solutions.filter((s) => s !== undefined),
    watch,
    span: spanAt(r.yaml, path),
  };
}

const SOME_HOLD: Held = { hold: { up: USUAL_SCHEME.U, front: USUAL_SCHEME.F }, colours: USUAL_SCHEME };

/** The list of cases and headings; an item that does not fit is told and passed over. */
function partsAt(r: Reader, items: readonly unknown[], held: Held | undefined): Part[] {
  const parts: { heading: string | undefined; text: Prose; cases: Case[]; span: Span }[] = [];
  let number = 0;
  items.forEach((item, i) => {
    const path = ['cases', i];
    const span = spanAt(r.yaml, path);
    const isPart = typeof item === 'object' && item !== null && 'part' in item;
    if (isPart) {
      const part = partSchema.safeParse(item);
      if (!part.success) r.problems.push(...formatProblems(r.yaml, part.error, path));
      else {
        parts.push({ heading: part.data.part, text: proseAt(r, [...path, 'text'], part.data.text), cases: [], span });
      }
      return;
    }
    number++;
    if (parts.length === 0) parts.push({ heading: undefined, text: [], cases: [], span });
    const written = caseSchema.safeParse(item);
    if (!written.success) r.problems.push(...formatProblems(r.yaml, written.error, path));
    const read = written.success && caseAt(r, path, number, written.data, held);
    if (read) parts.at(-1)!.cases.push(read);
  });
  return parts;
}

/** A fault of the file as a whole; nothing of it can be read then. */
function wholeFileProblem(source: Source, yaml: YamlText | undefined): Problem | undefined {
  const span = { start: 0, end: 0 };
  if (source.text.length > LARGEST) {
    const message = `the file has ${source.text.length} characters; a lesson has at most ${LARGEST}`;
    return { code: 'file-huge', span, message, hint: 'check that it is a lesson' };
  }
  if (!yaml || yaml.problems.length > 0) return undefined;
  const { contents } = yaml.document;
  if (contents === null || source.text.trim() === '') {
    return { code: 'file-empty', span, message: 'there is no lesson in this file', hint: 'copy a sample lesson' };
  }
  if (!isMap(contents)) {
    const message = 'this is not a lesson: a lesson is a table of keys';
    return { code: 'not-a-lesson', span, message, hint: 'begin with a line such as "title: The edge is away"' };
  }
  return undefined;
}

/** The keys of a lesson, its cases left to be read one by one. */
const headSchema = lessonSchema.extend({ cases: z.array(z.unknown()).min(1) });
type Head = z.infer<typeof headSchema>;

/** What of the head is right, when not all is. */
function usableHead(data: Record<string, unknown>): Partial<Head> {
  const usable: Record<string, unknown> = {};
  for (const [key, schema] of Object.entries(headSchema.shape)) {
    const value = schema.safeParse(data[key]);
    if (value.success) usable[key] = value.data;
  }
  return usable;
}

/** Of a line that was changed in order to be read, only what YAML found is told. */
function withoutMended({ yaml, problems }: Reader): Problem[] {
  const byYaml = yaml.problems;
  const lines = new Set(byYaml.filter(isStructural).map((p) => positionAt(yaml.source, p.span.start).line));
  return problems.filter((p) => byYaml.includes(p) || !lines.has(positionAt(yaml.source, p.span.start).line));
}

/**
 * Problems of every part are found in one go. A lesson is given back even then, with what could be understood, so that
 * the rest can be proved; with problems it is not whole.
 */
export function readLesson(source: Source): { lesson: Lesson | undefined; problems: Problem[] } {
  const tooLarge = wholeFileProblem(source, undefined);
  if (tooLarge) return { lesson: undefined, problems: [tooLarge] };
  const yaml = parseYaml(source.text);
  const notOne = wholeFileProblem(source, yaml);
  if (notOne) return { lesson: undefined, problems: [notOne] };
  const r: Reader = { yaml, problems: [...yaml.problems] };
  const data = dataOf(yaml);
  if (typeof data !== 'object' || data === null || Array.isArray(data))
    return { lesson: undefined, problems: r.problems };

  const whole = headSchema.safeParse(data);
  if (!whole.success) r.problems.push(...formatProblems(yaml, whole.error, []));
  const head: Partial<Head> = whole.success ? whole.data : usableHead(data as Record<string, unknown>);
  const held = head.hold && holdAt(r, ['hold'], head.hold.cross, head.hold.front);
  const lesson: Lesson = {
    source,
    title: head.title ?? '',
    club: head.club,
    course: head.course,
    audience: head.for,
    language: head.language ?? 'en',
    ...(held ?? SOME_HOLD),
    families: head.family === undefined ? [] : [head.family].flat(),
    text: proseAt(r, ['text'], head.text),
    watch: proseAt(r, ['watch'], head.watch),
    parts: partsAt(r, head.cases ?? [], held),
  };
  return { lesson, problems: withoutMended(r) };
}
