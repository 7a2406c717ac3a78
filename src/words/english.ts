/** English: all words that are printed, and those of pictures. */
import { booklet } from './english-booklet.ts';
import { course } from './english-course.ts';
import { explain } from './english-explain.ts';
import { marking } from './english-marking.ts';
import { markingSheets } from './english-marking-sheets.ts';
import { COLOUR, capital } from './english-phrases.ts';
import { plan } from './english-plan.ts';
import { practice } from './english-practice.ts';
import { rules } from './english-rules.ts';
import type { Colour, Side, TriggerSaid } from './said.ts';

const drawing = {
  /** The words on the open view's legend. */
  legend: { U: 'top', F: 'front', B: 'back', R: 'right', L: 'left' } as {
    readonly [side in Exclude<Side, 'D'>]: string;
  },
  /** How the cube is held. */
  hold: (down: Colour, front: Colour) => `${capital(COLOUR[down].name)} down, ${COLOUR[front].name} in front.`,
  legendDescription:
    'How to read the open view: the cube from straight above, its four sides folded outwards. ' +
    'The top is in the middle, the back above it, the front below it, left and right beside it. ' +
    'The outermost row of each side belongs to the bottom layer.',
};

const handout = {
  /** Never a name: papers of minors lie about. */
  whose: 'Code or initials',
  date: 'Date',
  hold: 'Hold',
  holdWords: (down: Colour, front: Colour) => `${COLOUR[down].name} down, ${COLOUR[front].name} in front`,
  /** The heading over the picture that explains the open view. */
  reading: 'How to read the pictures',
  /** Beside that picture: each side has its upper row next to the top. */
  outermost: 'Outermost row: the bottom layer.',
  setUp: 'Set up',
  solve: 'Solve',
  /** Over the second and further solutions. */
  or: 'or',
  turns: (count: number) => `${count} ${count === 1 ? 'turn' : 'turns'}`,
  /** Under the turns of a phase that is a trigger, or has one inside. */
  trigger: (does: string, { name, undone, times, inside }: TriggerSaid) =>
    `${does} · ${name}${undone ? ' undone' : ''}${times === 2 ? ' twice' : ''}${inside ? ' inside' : ''}`,
  /** A line to write a solution on. */
  yours: 'Your turns',
  /** Over the turns that take a set-up back. */
  undo: 'Back',
  /** What the shades of pictures mean in either ink, one a line; of their lines the step speaks. */
  signs: {
    colour: ['Pale: solved, keep it.', 'Grey: does not matter.', 'Ring: how many turns.'],
    mono: [
      'Letters: colours.',
      'Light grey: solved, keep it.',
      'White without a letter: does not matter.',
      'Ring: how many turns.',
    ],
  },
  promises: {
    all: (cases: number) => `All ${cases} cases`,
    selection: (cases: number, of: number) => `A selection: ${cases} of ${of} cases`,
    most: (turns: number) => `at most ${turns} turns`,
    noRotation: 'without turning the cube',
  },
  /** After the hold, on what is printed in a mirror. */
  leftHand: ' · for the left hand',
  /** The heading over the club's words, and a line of it. */
  clubWords: 'Words of our club',
  clubWord: (ours: string, theirs: string) => `${theirs}: what others call ${ours}`,
  /** The same without the title, where there is no room for it. */
  proved: (edition: string) => `set-ups and solutions proved, other words the coach’s · edition ${edition}`,
  /** At the foot of cards: over which edge the paper is turned. */
  cards: (title: string, turnedOver: 'long' | 'short') =>
    `${title} · print on both sides, turned over the ${turnedOver} edge`,
  foot: (title: string, edition: string) =>
    `${title} · set-ups and solutions proved, other words the coach’s · edition ${edition}`,
  page: (page: number, pages: number) => `page ${page} of ${pages}`,
};

export const english = {
  /** BCP 47. */
  language: 'en',
  colours: COLOUR,
  drawing,
  handout,
  booklet,
  rules,
  plan,
  course,
  marking,
  markingSheets,
  practice,
  explain,
};
