/** A pair as a subject: its address, seen with its own slot at one of the four, some slots open. */
import type { Cube } from '../../cube/cube.ts';
import type { Drawn } from '../../svg/emphasis.ts';
import type { Subject, Where } from '../subject.ts';
import { type Address, addressKey, goalAt, isSolvedAddress, writeAddress } from './address.ts';
import { caseOf, type Family, familyOf } from './cases.ts';
import { describeCase, pairSaid } from './describe.ts';
import { pairEmphasis } from './emphasis.ts';
import { cubeWithPair } from './place-pair.ts';
import type { PairGoal, Slot } from './slots.ts';
import { pairWords } from './words.ts';

/** Which pair is asked about. */
export interface PairWhere extends Where {
  /** The pair's own slot. */
  readonly slot: Slot;
  /** Further slots that need not be solved. */
  readonly open: readonly Slot[];
}

/** A subject of this step, with what only its own folder knows. */
export interface PairSubject extends Subject {
  readonly where: PairWhere;
  readonly goal: PairGoal;
  readonly at: Address;
  readonly family: Family;
  readonly side: Slot;
}

export const PAIRS = 'pairs';

/** How any cube is drawn for a goal. */
export const drawnFor = (goal: PairGoal): Drawn => ({
  emphasis: (cube) => pairEmphasis(cube, goal),
  describe: (cube, colours, words) => describeCase(cube, goal, colours, words),
});

/** Those with all else as solved as can be: papers ask for the same ones again and again. */
const known = new Map<string, PairSubject>();

/** `cube`: as it lies there; if left out, the pair at the address and all else as solved as can be. */
export function pairSubject(at: Address, where: PairWhere, cube?: Cube): PairSubject {
  if (cube) return subjectOn(cube, at, where);
  const key = `${addressKey(at)} ${where.slot} ${where.open.join(' ')}`;
  const subject = known.get(key) ?? subjectOn(cubeWithPair(at, where.slot), at, where);
  known.set(key, subject);
  return subject;
}

function subjectOn(cube: Cube, at: Address, where: PairWhere): PairSubject {
  const goal = goalAt(at, where.slot, where.open);
  return {
    step: PAIRS,
    where,
    cube,
    goal,
    at,
    address: writeAddress(at),
    caseAddress: writeAddress(caseOf(at)),
    family: familyOf(at),
    side: where.slot,
    isSolved: isSolvedAddress(at),
    ...drawnFor(goal),
    named: (colours, words) => {
      const { corner, edge } = pairSaid(cube, goal, colours);
      return pairWords(words).cases.named(corner, edge);
    },
    claim: () => ({ pair: where.slot, kept: goal.kept }),
  };
}

/** Every subject that comes to this step's functions is one of its own: the registry hands out no other. */
export const asPair = (subject: Subject): PairSubject => subject as PairSubject;
export const asPairWhere = (where: Where): PairWhere => where as PairWhere;
