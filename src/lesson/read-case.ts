/** Reading the list of cases and the headings between them. */

import type { FaceColours } from '../cube/colours.ts';
import type { HandModel } from '../cube/search/hands.ts';
import { lengthOf, type Turn, writeTurns } from '../cube/turns.ts';
import { type Address, isSolvedAddress, writeAddress } from '../steps/pair/address.ts';
import { casesOf, familyOf } from '../steps/pair/cases.ts';
import { doSetUp } from '../steps/pair/set-up.ts';
import { setUpFor } from '../steps/pair/set-up-for.ts';
import { likelyWord } from '../text/likely.ts';
import { type Choice, chosenSolution } from './choose.ts';
import { formatProblems } from './format-problems.ts';
import type { Case, Part, Solution } from './lesson.ts';
import type { Problem } from './problem.ts';
import { addressAt, type Held, holdAt, proseAt, type Reader, SOME_HOLD, textLineAt, turnsAt } from './reader.ts';
import { type CaseFile, caseSchema, type EveryFile, everySchema, partSchema } from './schema.ts';
import { isOnMendedLine, type Path, spanAt } from './yaml-text.ts';

/** What the cases of a lesson have from it. */
interface Frame {
  readonly scheme: FaceColours;
  /** Undefined where the lesson's own hold could not be read: its cases are then read in some hold. */
  readonly held: Held | undefined;
  /** How solutions are chosen for cases that list none; not at all if left out. */
  readonly choose: Choice | undefined;
  /** Whether to add a shortest solution where none is listed. */
  readonly addShortest: boolean;
  readonly hands: HandModel;
  readonly withoutTurningTheCube: boolean;
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
    r.problems.push({ code: 'turns-not-text', span: spanAt(r.yaml, path), message, hint });
    return [undefined];
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

const turnsOf = (solutions: readonly Solution[]): (readonly Turn[])[] => solutions.map(({ turns }) => turns);

interface WrittenSetUp {
  readonly setup: Turn[];
  readonly made: boolean;
  /** That it is made for. */
  readonly address?: Address;
}

/** The set-up as written, or made for an address. */
function setupAt(r: Reader, path: Path, written: CaseFile, solutions: readonly Solution[]): WrittenSetUp | undefined {
  if (written.setup !== undefined && written.address !== undefined) {
    const message = 'this case has both a set-up and an address';
    const span = spanAt(r.yaml, [...path, 'address']);
    r.problems.push({ code: 'case-named-twice', span, message, hint: 'keep the one you mean' });
    return undefined;
  }
  if (written.setup !== undefined) {
    const setup = turnsAt(r, [...path, 'setup'], written.setup);
    return setup && { setup, made: false };
  }
  if (written.address === undefined) {
    if (isOnMendedLine(r.yaml, 'setup')) return undefined;
    const message = 'a case needs the key "setup", or "address" in its place';
    const span = spanAt(r.yaml, [...path, 'setup']);
    r.problems.push({ code: 'key-missing', span, message, hint: "add setup: R U' R'" });
    return undefined;
  }
  const address = addressAt(r, [...path, 'address'], written.address);
  if (!address) return undefined;
  return { setup: setUpFor(address, written.slot ?? 'FR', turnsOf(solutions)), made: true, address };
}

/** What the engine adds to the solutions that are written. */
function added(
  frame: Frame,
  { slot, open, setup, setupSpan }: Pick<Case, 'slot' | 'open' | 'setup' | 'setupSpan'>,
  written: readonly Solution[],
): Solution[] {
  const choice = written.length === 0 ? frame.choose : frame.addShortest ? 'shortest' : undefined;
  const setUp = choice ? doSetUp(setup, slot, open) : undefined;
  if (!choice || !setUp || 'fault' in setUp) return [];
  const turns = chosenSolution(setUp, choice, frame.hands, frame.withoutTurningTheCube);
  if (!turns || written.some((s) => lengthOf(s.turns) <= lengthOf(turns))) return [];
  return [{ number: written.length + 1, chosen: true, turns, remark: [], span: setupSpan }];
}

function caseAt(r: Reader, path: Path, number: number, written: CaseFile, frame: Frame): Case | undefined {
  const read = solutionsAt(r, [...path, 'solutions'], written.solutions);
  const solutions = read.filter((s) => s !== undefined);
  r.problems.push(...solutionsTwice(solutions));
  const setup = setupAt(r, path, written, solutions);
  const watch = proseAt(r, [...path, 'watch'], written.watch);
  const name = textLineAt(r, [...path, 'name'], written.name);
  const slot = written.slot ?? 'FR';
  const open = [written.open ?? []].flat();
  const ownAt = open.indexOf(slot);
  if (ownAt >= 0) {
    const message = `${slot} is the pair's own slot, which is always open`;
    const span = spanAt(r.yaml, typeof written.open === 'string' ? [...path, 'open'] : [...path, 'open', ownAt]);
    r.problems.push({ code: 'slot-open', span, message, hint: `leave ${slot} out` });
  }
  const held = heldAt(r, path, written.hold, frame);
  if (!setup || !held) return undefined;
  const { made, address } = setup;
  const setupSpan = spanAt(r.yaml, [...path, made ? 'address' : 'setup']);
  const chosen = read.includes(undefined) ? [] : added(frame, { slot, open, setup: setup.setup, setupSpan }, solutions);
  const all = [...solutions, ...chosen];
  return {
    number,
    name,
    ...held,
    slot,
    open,
    // What was chosen is not to be given away either.
    setup: address && chosen.length > 0 ? setUpFor(address, slot, turnsOf(all)) : setup.setup,
    made,
    setupSpan,
    solutions: all,
    watch,
    span: spanAt(r.yaml, path),
  };
}

/** A case for each of a family, or for those named; told if one is not of it. */
function everyAt(r: Reader, path: Path, first: number, written: EveryFile, frame: Frame): Case[] {
  const { every, only } = written;
  const all = casesOf(every);
  const chosen = only
    ? only.flatMap((text, i) => {
        const at = [...path, 'only', i];
        const address = addressAt(r, at, text);
        if (!address || familyOf(address) === every) return address ? [address] : [];
        const near = likelyWord(text, all.map(writeAddress));
        const message = `${text} is a case of ${familyOf(address)}, not of ${every}`;
        const hint = near ? `${near} was likely meant` : `take it out, or name it under every: ${familyOf(address)}`;
        r.problems.push({ code: 'address-elsewhere', span: spanAt(r.yaml, at), message, hint });
        return [];
      })
    : all.filter((address) => !isSolvedAddress(address));
  const held = heldAt(r, path, written.hold, frame);
  if (!held) return [];
  const slot = written.slot ?? 'FR';
  const span = spanAt(r.yaml, path);
  return chosen.map((address, i) => {
    const setUp = { slot, open: [], setup: setUpFor(address, slot, []), setupSpan: span };
    const solutions = added(frame, setUp, []);
    const setup = setUpFor(address, slot, turnsOf(solutions));
    return { number: first + i, name: undefined, ...held, ...setUp, setup, made: true, solutions, watch: [], span };
  });
}

const has = (item: unknown, key: string): boolean => typeof item === 'object' && item !== null && key in item;

/** The list of cases and headings; an item that does not fit is told and passed over. */
export function partsAt(r: Reader, items: readonly unknown[], frame: Frame): Part[] {
  const parts: (Omit<Part, 'cases'> & { cases: Case[] })[] = [];
  let number = 0;
  const add = (cases: readonly Case[], path: Path): void => {
    if (parts.length === 0) {
      parts.push({ heading: undefined, again: false, text: [], cases: [], span: spanAt(r.yaml, path) });
    }
    parts.at(-1)!.cases.push(...cases);
  };
  items.forEach((item, i) => {
    const path = ['cases', i];
    const schema = has(item, 'part') ? partSchema : has(item, 'every') ? everySchema : caseSchema;
    const read = schema.safeParse(item);
    if (!read.success) {
      r.problems.push(...formatProblems(r.yaml, read.error, path));
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
