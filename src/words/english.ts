/** English: all words that are printed, and those of pictures. */
import { booklet } from './english-booklet.ts';
import { course } from './english-course.ts';
import { marking } from './english-marking.ts';
import { markingSheets } from './english-marking-sheets.ts';
import { capital, listed, placeWords } from './english-phrases.ts';
import { plan } from './english-plan.ts';
import { practice } from './english-practice.ts';
import { rules } from './english-rules.ts';
import type {
  Colour,
  ColourWords,
  CommonWords,
  DeedName,
  DrawingWords,
  HandoutWords,
  PieceSaid,
  PieceWhere,
  Side,
} from './words.ts';

const colours: { readonly [colour in Colour]: ColourWords } = {
  white: { name: 'white', letter: 'W' },
  yellow: { name: 'yellow', letter: 'Y' },
  green: { name: 'green', letter: 'G' },
  blue: { name: 'blue', letter: 'B' },
  red: { name: 'red', letter: 'R' },
  orange: { name: 'orange', letter: 'O' },
};

const TOWARDS: Readonly<Record<Side, string>> = {
  U: 'up',
  D: 'down',
  F: 'to the front',
  B: 'to the back',
  R: 'to the right',
  L: 'to the left',
};

const MISPLACED = { corner: 'twisted', edge: 'flipped' } as const;

function pieceWords(piece: 'corner' | 'edge', where: PieceWhere, colour: Colour, side: Side): string {
  const facing = `${colours[colour].name} ${TOWARDS[side]}`;
  switch (where.at) {
    case 'own-slot':
      return where.solved
        ? `The ${piece} is in its own slot, solved.`
        : `The ${piece} is in its own slot but ${MISPLACED[piece]}, ${facing}.`;
    case 'top':
      return `The ${piece} is on top at the ${placeWords(where.place.replace('U', ''))}, ${facing}.`;
    case 'slot':
      return `The ${piece} is stuck in the ${placeWords(where.place.replace('D', ''))} slot, ${facing}.`;
    case 'elsewhere':
      return `The ${piece} is at the ${placeWords(where.place)}, ${facing}.`;
  }
}

const drawing: DrawingWords = {
  legend: { U: 'top', F: 'front', B: 'back', R: 'right', L: 'left' },
  hold: (down, front) => `${capital(colours[down].name)} down, ${colours[front].name} in front.`,
  pair: (first, second, ownSlot) =>
    `The pair ${colours[first].name} and ${colours[second].name} belongs in the ${placeWords(ownSlot)} slot.`,
  pairSolved: 'It is solved.',
  piece: pieceWords,
  kept: (slots) =>
    slots.length === 1
      ? `The ${placeWords(slots[0]!)} slot is kept.`
      : `The ${listed(slots.map(placeWords))} slots are kept.`,
  legendDescription:
    'How to read the open view: the cube from straight above, its four sides folded outwards. ' +
    'The top is in the middle, the back above it, the front below it, left and right beside it.',
};

function pieceShortly({ where, isAboveOwnSlot, colour, side }: PieceSaid): string {
  const facing = `${colours[colour].name} ${TOWARDS[side]}`;
  switch (where.at) {
    case 'own-slot':
      return where.solved ? 'at home' : `at home, ${facing}`;
    case 'top':
      return `on top${isAboveOwnSlot ? '' : ` at the ${placeWords(where.place.replace('U', ''))}`}, ${facing}`;
    case 'slot':
      return `in the ${placeWords(where.place.replace('D', ''))} slot, ${facing}`;
    case 'elsewhere':
      return `at the ${placeWords(where.place)}, ${facing}`;
  }
}

const DEEDS: Readonly<Record<DeedName, string>> = {
  'turn-cube': 'turn',
  'turn-top': 'top',
  'edge-out': 'edge out',
  'corner-out': 'corner out',
  'both-out': 'both out',
  'edge-in': 'edge in',
  'corner-in': 'corner in',
  'both-in': 'both in',
  join: 'join',
  split: 'to a split',
  regroup: 'to a new case',
  insert: 'insert',
  solve: 'in one go',
  shift: 'move',
};

const handout: HandoutWords = {
  name: 'Name',
  date: 'Date',
  hold: 'Hold',
  holdWords: (down, front) => `${colours[down].name} down, ${colours[front].name} in front`,
  reading: 'How to read the pictures',
  setUp: 'Set up',
  solve: 'Solve',
  or: 'or',
  caseName: (corner, edge) => `Corner ${pieceShortly(corner)}; edge ${pieceShortly(edge)}`,
  turns: (count) => `${count} ${count === 1 ? 'turn' : 'turns'}`,
  phase: (does, was) =>
    does.map((deed) => (deed === 'insert' && does.length === 1 && was ? `insert ${was}` : DEEDS[deed])).join(' + '),
  trigger: (does, { name, undone, times, inside }) =>
    `${does} · ${name}${undone ? ' undone' : ''}${times === 2 ? ' twice' : ''}${inside ? ' inside' : ''}`,
  yours: 'Your turns',
  undo: 'Back',
  signs: {
    lines: ['Heavy line: the pair.', 'Dashed: its own slot.', 'Thin line: the slot where a piece is stuck.'],
    colour: ['Pale: solved, to be kept.', 'Grey: does not matter.'],
    mono: ['Letters: colours.', 'Light grey: solved, to be kept.', 'White without a letter: does not matter.'],
  },
  stuckStaysOpen: 'The slot that a stuck piece leaves may end unsolved.',
  open: (slots) => `Also open: ${listed(slots.map(placeWords))}; need not be solved`,
  promises: {
    all: (cases) => `All ${cases} cases`,
    selection: (cases, of) => `A selection: ${cases} of ${of} cases`,
    most: (turns) => `at most ${turns} turns`,
    noRotation: 'without turning the cube',
    everySlot: 'pairs from all four slots',
    slots: (slots) => `pairs of the ${listed(slots.map(placeWords))} ${slots.length === 1 ? 'slot' : 'slots'}`,
    kept: 'all other slots kept',
  },
  clubWords: 'Words of our club',
  clubWord: (ours, theirs) => `${theirs}: what others call ${ours}`,
  proved: (edition) => `every solution proved · edition ${edition}`,
  cards: (title, turnedOver) => `${title} · print on both sides, turned over the ${turnedOver} edge`,
  foot: (title, edition) => `${title} · every solution proved · edition ${edition}`,
  page: (page, pages) => `page ${page} of ${pages}`,
};

export const english: CommonWords = {
  language: 'en',
  colours,
  drawing,
  handout,
  booklet,
  rules,
  plan,
  course,
  marking,
  markingSheets,
  practice,
};
