/** What a lesson has taught, as the stuff that exercises are made of: every sighting of every case, with what solves it. */
import { type Address, goalAt, isSolvedAddress, stuckSlots, writeAddress } from '../cube/address.ts';
import { caseOf, familyOf, upToU } from '../cube/cases.ts';
import type { Cube } from '../cube/cube.ts';
import { type Goal, SLOTS, type Slot } from '../cube/goal.ts';
import { cubeWithPair } from '../cube/place-pair.ts';
import { findSolutions, type Solution } from '../cube/search/find.ts';
import { setUpFor } from '../cube/search/set-up-for.ts';
import { prove } from '../cube/solves.ts';
import { lengthOf, type Turn, writeTurns } from '../cube/turns.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import type { ProvedCase } from '../lesson/proved.ts';
import { carried } from './carry.ts';
import { doing, type Leading } from './difficulty.ts';
import { type Sighting, sightingOf } from './sighting.ts';

/** A sighting that was taught, with what is recommended for it. */
export interface Seen extends Sighting {
  /** `UFR:R UB:U FL`: what makes two exercises the same. */
  readonly key: string;
  /** The case that it is a sighting of. */
  readonly caseText: string;
  readonly recommended: readonly Turn[];
}

export interface Material {
  readonly lesson: Lesson;
  readonly leading: Leading;
  /** In the order of the lesson, then by turns of U, then by slot. */
  readonly seen: readonly Seen[];
  /** The shortest solutions, and those of one turn more. */
  readonly solutionsOf: (address: Address, slot: Slot, open: readonly Slot[]) => readonly Solution[];
  /** Not the inverse of any of `avoid`, nor of a shortest one where none is named. */
  readonly setUp: (address: Address, slot: Slot, avoid: readonly Turn[] | undefined) => readonly Turn[];
  /** With a slot more open there may be shorter ways than the coach's. */
  readonly recommended: (seen: Seen, open: readonly Slot[]) => readonly Turn[];
}

/** The cube that an address is drawn and solved from: the pair there, all else home. */
export const cubeOf = (address: Address, slot: Slot): { cube: Cube; goal: Goal } => ({
  cube: cubeWithPair(address, slot),
  goal: goalAt(address, slot),
});

function remembered<A extends readonly unknown[], T>(make: (...args: A) => T, keyOf: (...args: A) => string) {
  const known = new Map<string, T>();
  return (...args: A): T => {
    const key = keyOf(...args);
    const found = known.get(key) ?? make(...args);
    known.set(key, found);
    return found;
  };
}

const keyOf = (address: Address, slot: Slot, more = ''): string => `${writeAddress(address)} ${slot}${more}`;

/** The cheapest for the hands; among equals the first by its turns. */
function easiestOf(solutions: readonly Solution[], leading: Leading): readonly Turn[] {
  const ranked = solutions.map(({ turns }) => ({ turns, cost: doing(turns, leading) }));
  return ranked.reduce((a, b) => (b.cost < a.cost ? b : a)).turns;
}

/** By case: the first case of the lesson that lists a solution, else the first. */
function taughtCases(proved: ProvedLesson): Map<string, ProvedCase> {
  const taught = new Map<string, ProvedCase>();
  for (const one of proved.cases) {
    if (isSolvedAddress(one.address)) continue;
    const text = writeAddress(caseOf(one.address));
    const before = taught.get(text);
    if (!before || (before.solutions.length === 0 && one.solutions.length > 0)) taught.set(text, one);
  }
  return taught;
}

/** What the coach recommends, seen from elsewhere; proved with every slot kept, else nothing. */
function coachSolution(one: ProvedCase, address: Address, slot: Slot): readonly Turn[] | undefined {
  const listed = one.solutions[0]?.solution.turns;
  const turns = listed && carried({ address: one.address, slot: one.case.slot, turns: listed }, { address, slot });
  if (!turns) return undefined;
  const { cube, goal } = cubeOf(address, slot);
  return prove(cube, turns, goal).verdict === 'solves' ? turns : undefined;
}

export function materialOf(proved: ProvedLesson, leading: Leading): Material {
  const { lesson } = proved;
  const only = lesson.practice?.only;
  const searched = (longer: number) =>
    remembered(
      (address: Address, slot: Slot, open: readonly Slot[]) =>
        findSolutions(cubeWithPair(address, slot), goalAt(address, slot, open), { longer }).solutions,
      (address, slot, open) => keyOf(address, slot, open.join('')),
    );
  const shortestOf = searched(0);
  const shown = SLOTS.filter((s) => proved.cases.some((c) => c.case.slot === s));
  const slots = only && only.slots.length > 0 ? only.slots : shown;
  const seen: Seen[] = [];
  for (const [caseText, one] of taughtCases(proved)) {
    if (only && only.families.length > 0 && !only.families.includes(familyOf(one.address))) continue;
    for (const address of upToU(caseOf(one.address))) {
      for (const slot of slots) {
        if (only && only.stuck.length > 0 && !stuckSlots(address, slot).some((s) => only.stuck.includes(s))) continue;
        const recommended = coachSolution(one, address, slot) ?? easiestOf(shortestOf(address, slot, []), leading);
        if (only?.turns !== undefined && lengthOf(recommended) > only.turns) continue;
        seen.push({ ...sightingOf(address, slot), key: keyOf(address, slot), caseText, recommended });
      }
    }
  }
  return {
    lesson,
    leading,
    seen,
    solutionsOf: searched(1),
    setUp: remembered(
      (address: Address, slot: Slot, avoid: readonly Turn[] | undefined) =>
        setUpFor(address, slot, avoid ? [avoid] : []),
      (address, slot, avoid) => keyOf(address, slot, avoid && writeTurns(avoid)),
    ),
    recommended: (one, open) =>
      open.length === 0 ? one.recommended : easiestOf(shortestOf(one.address, one.slot, open), leading),
  };
}
