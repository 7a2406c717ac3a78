/** What a lesson has taught, as the stuff that exercises are made of: every sighting of every case, with what solves it. */

import type { Cube } from '../cube/cube.ts';
import { prove } from '../cube/solves.ts';
import { lengthOf, type Turn } from '../cube/turns.ts';
import type { Lesson } from '../lesson/lesson.ts';
import type { PracticeFilter } from '../lesson/practice.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import { type ProvedLessonRule, ruleFinder } from '../lesson/prove-rules.ts';
import type { ProvedCase } from '../lesson/proved.ts';
import { fits } from '../rules/rules.ts';
import { askedOnTheWay, treeOf } from '../rules/tree.ts';
import { type Address, goalAt, isSolvedAddress, stuckSlots, writeAddress } from '../steps/pair/address.ts';
import { caseOf, familyOf, upToU } from '../steps/pair/cases.ts';
import { featuresOf, isComparison } from '../steps/pair/features.ts';
import { cubeWithPair } from '../steps/pair/place-pair.ts';
import { findSolutions } from '../steps/pair/search/find.ts';
import type { PairGoal } from '../steps/pair/slots.ts';
import { SLOTS, type Slot } from '../steps/pair/slots.ts';
import { carried } from './carry.ts';
import { doing, type Leading } from './difficulty.ts';
import { type SeenPair, seenPair } from './seen-pair.ts';
import type { SetUps } from './set-ups.ts';

/** A sighting that was taught, with what is recommended for it. */
export interface Seen extends SeenPair {
  /** `UFR:R UB:U FL`: what makes two exercises the same. */
  readonly key: string;
  /** The case that it is a sighting of. */
  readonly caseText: string;
  readonly recommended: readonly Turn[];
  /** How often two colours are compared before it is known which of the lesson's rules applies. */
  readonly comparisons: number;
  /** The rule that applies does not hold here. */
  readonly isException: boolean;
}

export interface Material {
  readonly lesson: Lesson;
  readonly leading: Leading;
  /** In the order of the lesson, then by turns of U, then by slot. */
  readonly seen: readonly Seen[];
  readonly setUps: SetUps;
  /** The rows of the lesson's table; none if it has no rules. */
  readonly rules: readonly ProvedLessonRule[];
  /** Index of the row that applies, the cube held as it is. */
  readonly ruleOf: (seen: Pick<Seen, 'address' | 'slot'>) => number | undefined;
  /** With a slot more open there may be shorter ways than the coach's. */
  readonly recommended: (seen: Seen, open: readonly Slot[]) => readonly Turn[];
  /** The easiest of the shortest. */
  readonly shortest: (seen: Seen, open: readonly Slot[]) => readonly Turn[];
}

/** The cube that an address is drawn and solved from: the pair there, all else home. */
export const cubeOf = (address: Address, slot: Slot): { cube: Cube; goal: PairGoal } => ({
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
function easiestOf(solutions: readonly (readonly Turn[])[], leading: Leading): readonly Turn[] {
  const ranked = solutions.map((turns) => ({ turns, cost: doing(turns, leading) }));
  return ranked.reduce((a, b) => (b.cost < a.cost ? b : a)).turns;
}

/** By case: all that the lesson shows of it. */
function taughtCases(proved: ProvedLesson): Map<string, ProvedCase[]> {
  const taught = new Map<string, ProvedCase[]>();
  for (const one of proved.cases) {
    if (isSolvedAddress(one.address)) continue;
    const text = writeAddress(caseOf(one.address));
    taught.set(text, [...(taught.get(text) ?? []), one]);
  }
  return taught;
}

/** A solution of the coach, seen from elsewhere; proved with every slot kept, else nothing. */
function fromElsewhere(one: ProvedCase, turns: readonly Turn[], address: Address, slot: Slot): readonly Turn[][] {
  const seen = carried({ address: one.address, slot: one.case.slot, turns }, { address, slot });
  const { cube, goal } = cubeOf(address, slot);
  return prove(cube, seen, goal).verdict === 'solves' ? [seen] : [];
}

/** What the coach recommends for this slot; else the easiest of what is recommended for others, as it is done here. */
function coachSolution(
  cases: readonly ProvedCase[],
  address: Address,
  slot: Slot,
  leading: Leading,
): readonly Turn[] | undefined {
  const here = cases.filter((one) => one.case.slot === slot && one.solutions.length > 0);
  const first = here[0] && fromElsewhere(here[0], here[0].solutions[0]!.solution.turns, address, slot)[0];
  if (first) return first;
  const all = cases.flatMap((one) =>
    one.solutions.flatMap(({ solution }) => fromElsewhere(one, solution.turns, address, slot)),
  );
  return all.length > 0 ? easiestOf(all, leading) : undefined;
}

type Ruled = Pick<Material, 'rules' | 'ruleOf'>;

function rulesOf({ rules: proved }: ProvedLesson): Ruled {
  const rules = proved?.rules ?? [];
  const find = proved && ruleFinder(proved);
  return {
    rules,
    ruleOf: ({ address, slot }) => {
      const rule = find?.(address, slot);
      return rule && rules.indexOf(rule);
    },
  };
}

/** What its rules make of a sighting: what is to be compared first, and whether the rule fails it. */
function recognition({ rules: proved }: ProvedLesson, { ruleOf }: Ruled) {
  const tree = proved && treeOf(proved.table);
  const comparisons = (proved?.rules ?? []).map((_, i) => askedOnTheWay(tree!, i).filter(isComparison).length);
  const exceptions = new Set(
    (proved?.rules ?? []).flatMap((rule) =>
      rule.proved.exceptions.map(({ sighting }) => keyOf(sighting.address, sighting.seen)),
    ),
  );
  return (address: Address, slot: Slot): Pick<Seen, 'comparisons' | 'isException'> => {
    const at = ruleOf({ address, slot });
    return {
      comparisons: at === undefined ? 0 : comparisons[at]!,
      isException: exceptions.has(keyOf(address, slot)),
    };
  };
}

/** Of the two sides R and L the one that is turned first. */
const firstHand = (turns: readonly Turn[]): 'right' | 'left' | undefined => {
  const first = turns.find(({ kind, letter }) => kind !== 'rotation' && (letter === 'R' || letter === 'L'));
  return first && (first.letter === 'R' ? 'right' : 'left');
};

/** Whether a lesson practises it, as far as that shows before it is known what solves it. */
function isWanted(address: Address, slot: Slot, only: PracticeFilter, { ruleOf }: Ruled): boolean {
  const { families, stuck, rules, see } = only;
  if (families.length > 0 && !families.includes(familyOf(address))) return false;
  if (stuck.length > 0 && !stuckSlots(address, slot).some((s) => stuck.includes(s))) return false;
  if (rules.length > 0 && !rules.includes((ruleOf({ address, slot }) ?? -1) + 1)) return false;
  return see.length === 0 || fits({ address, seen: slot, features: featuresOf({ address, seen: slot }) }, see);
}

/** `setUps` serves all variations of a lesson: it knows no lesson. */
export function materialOf(proved: ProvedLesson, leading: Leading, setUps: SetUps): Material {
  const { lesson } = proved;
  const only = lesson.practice?.only;
  const ruled = rulesOf(proved);
  const recognised = recognition(proved, ruled);
  const shortestOf = remembered(
    (address: Address, slot: Slot, open: readonly Slot[]) =>
      findSolutions(cubeWithPair(address, slot), goalAt(address, slot, open)).solutions.map(({ turns }) => turns),
    (address, slot, open) => keyOf(address, slot, open.join('')),
  );
  const shown = SLOTS.filter((s) => proved.cases.some((c) => c.case.slot === s));
  const slots = only && only.slots.length > 0 ? only.slots : shown;
  const seen: Seen[] = [];
  for (const [caseText, cases] of taughtCases(proved)) {
    for (const address of upToU(caseOf(cases[0]!.address))) {
      for (const slot of slots) {
        if (only && !isWanted(address, slot, only, ruled)) continue;
        const recommended =
          coachSolution(cases, address, slot, leading) ?? easiestOf(shortestOf(address, slot, []), leading);
        if (only?.turns !== undefined && lengthOf(recommended) > only.turns) continue;
        if (only?.hand !== undefined && firstHand(recommended) !== only.hand) continue;
        seen.push({
          ...seenPair(address, slot),
          key: keyOf(address, slot),
          caseText,
          recommended,
          ...recognised(address, slot),
        });
      }
    }
  }
  const shortest = (one: Seen, open: readonly Slot[]): readonly Turn[] =>
    easiestOf(shortestOf(one.address, one.slot, open), leading);
  return {
    lesson,
    leading,
    seen,
    setUps,
    ...ruled,
    recommended: (one, open) => (open.length === 0 ? one.recommended : shortest(one, open)),
    shortest,
  };
}
