/** Reading the list of cases and the headings between them. */

import type { FaceColours } from '../cube/colours.ts';
import { writeTurns } from '../cube/turns.ts';
import type { OwnFields } from '../steps/lesson-part.ts';
import type { Subject, Where } from '../steps/subject.ts';
import { likelyWord } from '../text/likely.ts';
import { formatProblems, tablesOf } from './format-problems.ts';
import { type CaseRead, type Part, plainCase, type Solution } from './lesson.ts';
import type { Problem } from './problem.ts';
import { addressAt, type Held, holdAt, proseAt, type Reader, SOME_HOLD, tell, textLineAt, turnsAt } from './reader.ts';
import { type CaseFile, type EveryFile, partSchema } from './schema.ts';
import { isOnMendedLine, type Path, spanAt } from './yaml-text.ts';

/** What the cases of a lesson have from it. */
interface Frame {
  readonly scheme: FaceColours;
  /** Undefined where the lesson's own hold could not be read: its cases are then read in some hold. */
  readonly held: Held | undefined;
}

type SolutionFile = Exclude<NonNullable<CaseFile['solutions']>, string>[number];

function solutionAt(r: Reader, path: Path, number: number, written: SolutionFile): Solution | undefined {
  const isText = typeof written === 'string';
  const turnsPath = isText ? path : [...path, 'turns'];
  const turns = turnsAt(r, turnsPath, isText ? written : written.turns);
  const remark = isText ? [] : proseAt(r, [...path, 'remark'], written.remark);
  return turns && { number, chosen: false, turns, remark, span: spanAt(r.yaml, turnsPath) };
}

/** A list in which each item is one turn is one solution in pieces. */
function isPieces(written: readonly SolutionFile[]): boolean {
  return (
    written.length >= 3 &&
    written.every((s) => typeof s === 'string' && /^\s*[UDRLFBMESxyzrludfb]w?[2'’′]*\s*$/.test(s))
  );
}

function solutionsAt(r: Reader, path: Path, written: CaseFile['solutions']): (Solution | undefined)[] {
  if (written === undefined) return [];
  if (typeof written === 'string') return [solutionAt(r, path, 1, written)];
  if (isPieces(written)) {
    const message = 'this is a list of single turns, each of which would be a solution';
    const hint = `write them as one text: - ${written.join(' ')}`;
    return [tell(r, path, { code: 'turns-not-text', message, hint })];
  }
  return written.map((s, i) => solutionAt(r, [...path, i], i + 1, s));
}

function heldAt(r: Reader, path: Path, written: CaseFile['hold'], { scheme, held }: Frame): Held | undefined {
  if (!held) return SOME_HOLD;
  if (!written) return held;
  const cross = written.cross ?? held.colours.D;
  return holdAt(r, [...path, 'hold'], scheme, { cross, front: written.front ?? held.hold.front });
}

function solutionsTwice(solutions: readonly Solution[]): Problem[] {
  const texts = solutions.map((s) => writeTurns(s.turns));
  return solutions.flatMap(({ number, span }, i) => {
    const first = texts.indexOf(texts[i]!);
    if (first === i) return [];
    const message = `solution ${number} of this case is solution ${solutions[first]!.number} again`;
    return [{ code: 'solution-twice', span, message, hint: 'take one of them out' }];
  });
}

/** The set-up as written, or the address in its place. */
function fromAt(r: Reader, path: Path, written: CaseFile, where: Where): CaseRead['from'] | undefined {
  if (written.setup !== undefined && written.address !== undefined) {
    const message = 'this case has both a set-up and an address';
    return tell(r, [...path, 'address'], { code: 'case-named-twice', message, hint: 'keep the one you mean' });
  }
  if (written.setup !== undefined) {
    const setup = turnsAt(r, [...path, 'setup'], written.setup);
    return setup && { setup };
  }
  if (written.address === undefined) {
    if (isOnMendedLine(r.yaml, 'setup')) return undefined;
    const message = 'a case needs the key "setup", or "address" in its place';
    return tell(r, [...path, 'setup'], { code: 'key-missing', message, hint: "add setup: R U' R'" });
  }
  const there = addressAt(r, [...path, 'address'], written.address, where);
  return there && { address: there.address };
}

function caseAt(r: Reader, path: Path, number: number, written: CaseFile, frame: Frame): CaseRead | undefined {
  const read = solutionsAt(r, [...path, 'solutions'], written.solutions);
  const solutions = read.filter((s) => s !== undefined);
  r.problems.push(...solutionsTwice(solutions));
  const wrong: Problem[] = [];
  const where = r.format.step.lesson.whereOf(written as OwnFields, (told, ...at) =>
    wrong.push({ ...told, span: spanAt(r.yaml, [...path, ...at]) }),
  );
  const from = fromAt(r, path, written, where);
  const watch = proseAt(r, [...path, 'watch'], written.watch);
  const name = textLineAt(r, [...path, 'name'], written.name);
  r.problems.push(...wrong);
  const held = heldAt(r, path, written.hold, frame);
  if (!from || !held) return undefined;
  const setupSpan = spanAt(r.yaml, [...path, 'address' in from ? 'address' : 'setup']);
  const isWhole = !read.includes(undefined);
  return { number, name, ...held, where, from, setupSpan, solutions, isWhole, watch, span: spanAt(r.yaml, path) };
}

/** Those named, told if one is not of the family. */
function onlyAt(r: Reader, path: Path, family: string, only: readonly string[], where: Where): Subject[] {
  const { step } = r.format;
  return only.flatMap((text, i) => {
    const at = [...path, 'only', i];
    const there = addressAt(r, at, text, where);
    if (!there || there.family === family) return there ?? [];
    const near = likelyWord(text, step.cases(family)?.map(({ address }) => address) ?? []);
    const message = `${text} is a case of ${there.family}, not of ${family}`;
    const hint = near ? `${near} was likely meant` : `take it out, or name it under every: ${there.family}`;
    return tell(r, at, { code: 'address-elsewhere', message, hint }) ?? [];
  });
}

function allOf(r: Reader, path: Path, family: string): readonly Subject[] {
  const cases = r.format.step.cases(family);
  if (cases) return cases;
  const message = `${family} has too many cases to list them all`;
  const hint = 'name some of them by address: only: [...]';
  return tell(r, [...path, 'every'], { code: 'value-kind', message, hint }) ?? [];
}

/** A case for each of a family, or for those named. */
function everyAt(r: Reader, path: Path, first: number, written: EveryFile, frame: Frame): CaseRead[] {
  const { every, only } = written;
  const where = r.format.step.lesson.whereOf(written as OwnFields, () => undefined);
  const chosen = only ? onlyAt(r, path, every, only, where) : allOf(r, path, every);
  const held = heldAt(r, path, written.hold, frame);
  if (!held) return [];
  const span = spanAt(r.yaml, path);
  return chosen.map(({ address }, i) => ({
    ...plainCase(first + i, { ...held, where }, span),
    from: { address },
    solutions: [],
    isWhole: true,
  }));
}

const has = (item: unknown, key: string): boolean => typeof item === 'object' && item !== null && key in item;

/** The list of cases and headings; an item that does not fit is told and passed over. */
export function partsAt(r: Reader, items: readonly unknown[], frame: Frame): Part[] {
  const parts: (Omit<Part, 'cases'> & { cases: CaseRead[] })[] = [];
  let number = 0;
  const add = (cases: readonly CaseRead[], path: Path): void => {
    if (parts.length === 0) {
      parts.push({ heading: undefined, again: false, text: [], cases: [], span: spanAt(r.yaml, path) });
    }
    parts.at(-1)!.cases.push(...cases);
  };
  items.forEach((item, i) => {
    const path = ['cases', i];
    const schema = has(item, 'part') ? partSchema : has(item, 'every') ? r.format.every : r.format.case;
    const read = schema.safeParse(item);
    if (!read.success) {
      r.problems.push(...formatProblems(r.yaml, read.error, path, tablesOf(r.format)));
      number++;
    } else if ('part' in read.data) {
      const heading = textLineAt(r, [...path, 'part'], read.data.part);
      const text = proseAt(r, [...path, 'text'], read.data.text);
      parts.push({ heading, again: read.data.again ?? false, text, cases: [], span: spanAt(r.yaml, path) });
    } else if ('every' in read.data) {
      const cases = everyAt(r, path, number + 1, read.data, frame);
      number += cases.length;
      add(cases, path);
    } else {
      number++;
      const one = caseAt(r, path, number, read.data, frame);
      add(one ? [one] : [], path);
    }
  });
  return parts;
}
