/** Lesson file -> Lesson. Whatever is wrong is collected; what could be understood goes on to be proved all the same. */
import { isMap } from 'yaml';
import { z } from 'zod';
import { type FaceColours, isWrongScheme, readScheme, USUAL_SCHEME } from '../cube/colours.ts';
import { HANDS, type HandModel } from '../cube/search/hands.ts';
import { TRIGGERS, type TriggerList } from '../cube/triggers.ts';
import type { Turn } from '../cube/turns.ts';
import type { OwnFields } from '../steps/lesson-part.ts';
import { stepNamed, USUAL_STEP } from '../steps/steps.ts';
import { formatProblems, tablesOf } from './format-problems.ts';
import type { Lesson, LessonClaim } from './lesson.ts';
import { NOWHERE, type Problem } from './problem.ts';
import { partsAt } from './read-case.ts';
import { factsAt, unknownFacts } from './read-facts.ts';
import { practiceAt } from './read-practice.ts';
import { rulesAt } from './read-rules.ts';
import { holdAt, proseAt, type Reader, SOME_HOLD, tell, tellUnprintable, textLineAt, turnsAt } from './reader.ts';
import { type Format, formatOf, lessonSchema } from './schema.ts';
import { positionAt, type Source } from './source.ts';
import { isStructural } from './yaml-errors.ts';
import { dataOf, parseYaml, spanAt, type YamlText } from './yaml-text.ts';

/** Characters; no lesson comes near it, and reading stays quick. */
const LARGEST = 1_000_000;

/** A fault of the file as a whole; nothing of it can be read then. */
function wholeFileProblem({ source, document }: YamlText): Problem | undefined {
  const span = NOWHERE;
  if (document.contents === null || source.text.trim() === '') {
    return { code: 'file-empty', span, message: 'there is no lesson in this file', hint: 'copy a sample lesson' };
  }
  if (isMap(document.contents)) return undefined;
  const message = 'this is not a lesson: a lesson is a table of keys';
  return { code: 'not-a-lesson', span, message, hint: 'begin with a line such as "title: The edge is away"' };
}

/** The keys of a lesson, its cases, rules and facts left to be read one by one. */
const headOf = ({ lesson, rule }: Format) => {
  const list = z.array(z.unknown()).min(1);
  const head = lesson.extend({ cases: list, rules: list.optional(), facts: lessonSchema.shape.facts });
  return rule ? head : (head.omit({ rules: true, facts: true }) as unknown as typeof head);
};
type HeadSchema = ReturnType<typeof headOf>;
type Head = z.infer<HeadSchema>;

/** What of the head is right, when not all is. */
function usableHead(data: Record<string, unknown>, headSchema: HeadSchema): Partial<Head> {
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

/** The colours of the club's cubes; each of the six once. */
function schemeAt(r: Reader, written: Head['scheme']): FaceColours {
  if (!written) return USUAL_SCHEME;
  const { up, front, right, down, back, left } = written;
  const read = readScheme([up, front, right, down, back, left]);
  if (!isWrongScheme(read)) return read;
  const hint = 'give each of the six faces a colour of its own (regulations, 3a3)';
  tell(r, ['scheme'], { code: 'scheme-impossible', message: read.wrong, hint });
  return USUAL_SCHEME;
}

/** What the lesson promises, each with the place where it does. */
function claimsAt(r: Reader, { claims = {} }: Partial<Head>): LessonClaim[] {
  const span = (key: string) => spanAt(r.yaml, ['claims', key]);
  const found: LessonClaim[] = [];
  if (claims.cases) found.push({ claim: 'cases', is: claims.cases, span: span('cases') });
  if (claims.turns !== undefined) found.push({ claim: 'turns', most: claims.turns, span: span('turns') });
  if (claims.rotations) found.push({ claim: 'rotations', span: span('rotations') });
  for (const promise of r.format.step.lesson.promises(claims as OwnFields)) {
    found.push({ claim: 'own', promise, span: span(promise.claim) });
  }
  return found;
}

function clubWordsAt(r: Reader, written: Head['words'] = {}): Lesson['clubWords'] {
  for (const [term, word] of Object.entries(written)) if (word) tellUnprintable(r, ['words', term], word);
  return written;
}

/** Our figures, with those of the club in their place; a lesson that promises not to turn the cube is chosen for likewise. */
function handsOf({ hands = {}, claims }: Pick<Head, 'hands' | 'claims'>): HandModel {
  const {
    half = HANDS.half,
    wide = HANDS.wide,
    regrip = HANDS.regrip,
    flow = HANDS.flow,
    allow = [],
    ...quarter
  } = hands;
  const given = Object.fromEntries(Object.entries(quarter).filter(([, cost]) => cost !== undefined));
  return {
    quarter: { ...HANDS.quarter, ...given },
    half,
    wide,
    regrip,
    flow,
    allow,
    still: claims?.rotations === 'none',
  };
}

/** Our triggers, and the club's; of turns that can be seen from any side. */
function triggersAt(r: Reader, written: Head['triggers'] = {}): TriggerList {
  const own: Record<string, readonly Turn[]> = {};
  for (const [name, text] of Object.entries(written)) {
    const turns = turnsAt(r, ['triggers', name], text);
    if (turns?.some((turn) => turn.kind !== 'face')) {
      const message = 'a trigger is written with turns of the six faces';
      tell(r, ['triggers', name], { code: 'turns-unreadable', message, hint: "as in R' F R F'" });
    } else if (turns) own[name] = turns;
  }
  return { ...TRIGGERS, ...own };
}

/** A lesson with what was wrong while it was read: the two stay together until it is proved. */
export interface ReadLesson {
  readonly lesson: Lesson | undefined;
  readonly problems: readonly Problem[];
}

/**
 * Problems of every part are found in one go. A lesson is given back even then, with what could be understood, so that
 * the rest can be proved; with problems it is not whole.
 */
export function readLesson(source: Source): ReadLesson {
  if (source.text.length > LARGEST) {
    const message = `the file has ${source.text.length} characters; a lesson has at most ${LARGEST}`;
    const hint = 'check that it is a lesson';
    return { lesson: undefined, problems: [{ code: 'file-huge', span: NOWHERE, message, hint }] };
  }
  const yaml = parseYaml(source);
  const notOne = yaml.problems.length > 0 ? undefined : wholeFileProblem(yaml);
  if (notOne) return { lesson: undefined, problems: [notOne] };
  const data = dataOf(yaml);
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    return { lesson: undefined, problems: yaml.problems };
  }

  const step = stepNamed(String((data as Record<string, unknown>)['step'])) ?? USUAL_STEP;
  const format = formatOf(step);
  const r: Reader = { format, yaml, problems: [...yaml.problems] };
  const headSchema = headOf(format);
  const whole = headSchema.safeParse(data);
  if (!whole.success) r.problems.push(...formatProblems(yaml, whole.error, [], tablesOf(format)));
  const head: Partial<Head> = whole.success ? whole.data : usableHead(data as Record<string, unknown>, headSchema);
  if (head.choose === 'rules' && !head.rules) {
    const message = 'solutions are to be chosen by the rules of the lesson, and it has none';
    tell(r, ['choose'], { code: 'choose-without-rules', message, hint: 'add rules, or write choose: easiest' });
  }
  const scheme = schemeAt(r, head.scheme);
  const held = head.hold && holdAt(r, ['hold'], scheme, head.hold);
  const triggers = triggersAt(r, head.triggers);
  const lesson: Lesson = {
    source,
    title: textLineAt(r, ['title'], head.title),
    club: textLineAt(r, ['club'], head.club),
    course: textLineAt(r, ['course'], head.course),
    audience: textLineAt(r, ['for'], head.for),
    step,
    language: head.language ?? 'en',
    scheme,
    ...(held ?? SOME_HOLD),
    hand: head.hand ?? 'right',
    wide: head.wide ?? 'Rw',
    clubWords: clubWordsAt(r, head.words),
    shows: {
      undo: head.show?.includes('undo') ?? false,
      states: head.show?.includes('states') ?? false,
      why: head.show?.includes('why') ?? false,
    },
    triggers,
    hands: handsOf(head),
    choose: head.choose ?? (head.rules ? 'rules' : 'none'),
    addShortest: head.show?.includes('shortest') ?? false,
    claims: claimsAt(r, head),
    families: head.family === undefined ? [] : [head.family].flat(),
    familySpan: spanAt(yaml, ['family']),
    cards: head.cards?.duplex,
    plan: head.plan && { ...head.plan, span: spanAt(yaml, ['plan']) },
    rules: rulesAt(r, head.rules ?? [], triggers),
    facts: factsAt(r, head.facts ?? {}, triggers),
    text: proseAt(r, ['text'], head.text),
    watch: proseAt(r, ['watch'], head.watch),
    parts: partsAt(r, head.cases ?? [], { scheme, held }),
    practice: practiceAt(r, head.practice, head.rules?.length ?? 0),
  };
  // Where the table of facts itself is no table, that is told.
  if (head.facts || !('facts' in data)) r.problems.push(...unknownFacts(lesson, Object.keys(head.facts ?? {})));
  if (whole.success && r.problems.length === 0 && lesson.parts.every((part) => part.cases.length === 0)) {
    const message = 'there are headings here and no cases';
    tell(r, ['cases'], { code: 'value-kind', message, hint: "add one: - setup: R U' R'" });
  }
  return { lesson, problems: withoutMended(r) };
}
