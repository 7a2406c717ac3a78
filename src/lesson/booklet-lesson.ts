/** The catalogue as a lesson: every case as seen from all four sides, so that it is proved as lessons are. */

import { coloursHeld, type FaceColours, type Hold, USUAL_SCHEME } from '../cube/colours.ts';
import { byHands } from '../cube/search/for-hands.ts';
import { HANDS } from '../cube/search/hands.ts';
import { fromTheSide } from '../cube/sides.ts';
import { TRIGGERS } from '../cube/triggers.ts';
import { type Turn, writeTurns } from '../cube/turns.ts';
import type { Step } from '../steps/step.ts';
import type { Subject } from '../steps/subject.ts';
import { type CaseRead, chosenSolution, type Lesson, type Part, plainCase, type Solution } from './lesson.ts';
import { NOWHERE } from './problem.ts';
import { sourceOf } from './source.ts';

/** How many sides a case is seen from. */
export const SIDES = 4;
const HOLD: Hold = { up: 'yellow', front: 'green' };
const COLOURS: FaceColours = coloursHeld(USUAL_SCHEME, HOLD)!;

/** The easiest of the shortest, and the easiest of all, if that is another. */
function solutionsOf(all: readonly (readonly Turn[])[]): Solution[] {
  const [best] = byHands(all, HANDS);
  const [short] = byHands(
    all.filter(({ length }) => length === all[0]!.length),
    HANDS,
  );
  const isOther = writeTurns(best!.turns) !== writeTurns(short!.turns);
  return [short!, ...(isOther ? [best!] : [])].map(({ turns }, i) => chosenSolution(i + 1, turns, NOWHERE));
}

const caseOf = ({ address, where }: Subject, number: number, all: readonly (readonly Turn[])[]): CaseRead => ({
  ...plainCase(number, { hold: HOLD, colours: COLOURS, where }, NOWHERE),
  from: { address },
  solutions: solutionsOf(all),
  isWhole: true,
});

/** A part a family, each case seen from its four sides in order; numbered as the cases are listed. */
export function bookletLesson(step: Step, families: readonly string[]): Lesson {
  let number = 0;
  const parts = families.map(
    (family): Part => ({
      heading: undefined,
      // The same case from four sides is no slip here.
      again: true,
      text: [],
      cases: (step.cases(family) ?? []).flatMap((subject) => {
        const all = step.solutions(subject, 1).solutions.map(({ turns }) => turns);
        return Array.from({ length: SIDES }, (_, quarters) =>
          caseOf(
            step.turned(subject, quarters),
            ++number,
            all.map((turns) => fromTheSide(turns, quarters)),
          ),
        );
      }),
      span: NOWHERE,
    }),
  );
  return {
    source: sourceOf('cases', ''),
    title: undefined,
    club: undefined,
    course: undefined,
    audience: undefined,
    step,
    language: 'en',
    scheme: USUAL_SCHEME,
    hold: HOLD,
    colours: COLOURS,
    hand: 'right',
    wide: 'Rw',
    clubWords: {},
    shows: { undo: false, states: false, why: false },
    triggers: TRIGGERS,
    facts: [],
    hands: HANDS,
    choose: 'none',
    addShortest: false,
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
