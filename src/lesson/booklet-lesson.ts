/** The catalogue as a lesson: every case in all four positions of its pair, so that it is proved as lessons are. */

import { coloursHeld, type FaceColours, type Hold, USUAL_SCHEME } from '../cube/colours.ts';
import { easiestOf } from '../cube/search/for-hands.ts';
import { costAsWritten, HANDS } from '../cube/search/hands.ts';
import { fromTheSide } from '../cube/sides.ts';
import { TRIGGERS } from '../cube/triggers.ts';
import { type Turn, writeTurns } from '../cube/turns.ts';
import { type Address, goalAt, isSolvedAddress } from '../steps/pair/address.ts';
import { casesOf, type Family } from '../steps/pair/cases.ts';
import { cubeWithPair } from '../steps/pair/place-pair.ts';
import { findSolutions } from '../steps/pair/search/find.ts';
import { setUpFor } from '../steps/pair/set-up-for.ts';
import { QUARTERS_FROM_FRONT_RIGHT, SLOTS, type Slot } from '../steps/pair/slots.ts';
import type { Case, Lesson, Part, Solution } from './lesson.ts';
import { sourceOf } from './source.ts';

const OWN: Slot = 'FR';
/** Of so many solutions the way for hands is worked out in full: with more a few cases change, and it takes long. */
const WORKED_OUT = 3;
const NOWHERE = { start: 0, end: 0 };
const HOLD: Hold = { up: 'yellow', front: 'green' };
const COLOURS: FaceColours = coloursHeld(USUAL_SCHEME, HOLD)!;

const solution = (number: number, turns: readonly Turn[]): Solution => ({
  number,
  chosen: true,
  turns,
  remark: [],
  span: NOWHERE,
});

/** Face turns of all solutions of up to one turn more than the shortest, own slot FR. */
function allOf(address: Address): readonly (readonly Turn[])[] {
  const { solutions } = findSolutions(cubeWithPair(address, OWN), goalAt(address, OWN), { longer: 1 });
  return solutions.map(({ turns }) => turns);
}

/** The shortest that is easiest as it is written, and what is easiest of all, if that is another. */
function solutionsOf(all: readonly (readonly Turn[])[]): Solution[] {
  const [first] = all
    .filter((turns) => turns.length === all[0]!.length)
    .map((turns) => ({ turns, cost: costAsWritten(turns, HANDS) }))
    .sort((a, b) => a.cost - b.cost);
  const best = easiestOf(all, HANDS, { workedOut: WORKED_OUT });
  const isOther = best !== undefined && writeTurns(best.turns) !== writeTurns(first!.turns);
  return [solution(1, first!.turns), ...(isOther ? [solution(2, best.turns)] : [])];
}

function caseOf(address: Address, slot: Slot, number: number, all: readonly (readonly Turn[])[]): Case {
  const solutions = solutionsOf(all.map((turns) => fromTheSide(turns, QUARTERS_FROM_FRONT_RIGHT[slot])));
  return {
    number,
    name: undefined,
    hold: HOLD,
    colours: COLOURS,
    slot,
    open: [],
    setup: setUpFor(
      address,
      slot,
      solutions.map(({ turns }) => turns),
    ),
    made: true,
    setupSpan: NOWHERE,
    solutions,
    watch: [],
    span: NOWHERE,
  };
}

/** A part a family, four cases an address in the order of SLOTS; numbered as the addresses are in the catalogue. */
export function bookletLesson(families: readonly Family[]): Lesson {
  let number = 0;
  const parts = families.map((family): Part => {
    const addresses = casesOf(family).filter((address) => !isSolvedAddress(address));
    return {
      heading: undefined,
      // The same case from four sides is no slip here.
      again: true,
      text: [],
      cases: addresses.flatMap((address) => {
        const all = allOf(address);
        return SLOTS.map((slot) => caseOf(address, slot, ++number, all));
      }),
      span: NOWHERE,
    };
  });
  return {
    source: sourceOf('cases', ''),
    title: undefined,
    club: undefined,
    course: undefined,
    audience: undefined,
    language: 'en',
    scheme: USUAL_SCHEME,
    hold: HOLD,
    colours: COLOURS,
    hand: 'right',
    wide: 'Rw',
    clubWords: {},
    shows: { undo: false, states: false },
    triggers: TRIGGERS,
    hands: HANDS,
    claims: [],
    families: [],
    familySpan: NOWHERE,
    rules: [],
    cards: undefined,
    plan: undefined,
    practice: undefined,
    text: [],
    watch: [],
    parts,
  };
}
