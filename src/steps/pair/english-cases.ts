/** English of cases: where the pieces of a pair are, what a phase does with them. */
import { COLOUR, capital, facing, listed, placeWords } from '../../words/english-phrases.ts';
import type { Colour, PlaceName, Side } from '../../words/said.ts';
import type { Deed, PieceSaid, PieceWhere } from './said.ts';

const MISPLACED = { corner: 'twisted', edge: 'flipped' } as const;

function pieceWords(piece: 'corner' | 'edge', where: PieceWhere, colour: Colour, side: Side): string {
  const looks = facing(colour, side);
  switch (where.at) {
    case 'own-slot':
      return where.solved
        ? `The ${piece} is in its own slot, solved.`
        : `The ${piece} is in its own slot but ${MISPLACED[piece]}, ${looks}.`;
    case 'top':
      return `The ${piece} is on top at the ${placeWords(where.place.replace('U', ''))}, ${looks}.`;
    case 'slot':
      return `The ${piece} is stuck in the ${placeWords(where.place.replace('D', ''))} slot, ${looks}.`;
    case 'elsewhere':
      return `The ${piece} is at the ${placeWords(where.place)}, ${looks}.`;
  }
}

export const drawing = {
  /** The slot's edge place as seen, and the pair's colours in the order of that place's two sides. */
  pair: (first: Colour, second: Colour, ownSlot: PlaceName) =>
    `The pair ${COLOUR[first].name} and ${COLOUR[second].name} belongs in the ${placeWords(ownSlot)} slot.`,
  solved: 'It is solved.',
  /** The sticker `colour` looks towards `side`. */
  piece: pieceWords,
  /** Slots that are kept, by their edge places as seen; never empty. */
  kept: (slots: readonly PlaceName[]) =>
    slots.length === 1
      ? `The ${placeWords(slots[0]!)} slot is kept.`
      : `The ${listed(slots.map(placeWords))} slots are kept.`,
};

const SIDE: Readonly<Record<Side, string>> = {
  U: 'up',
  D: 'down',
  F: 'front',
  B: 'back',
  R: 'right',
  L: 'left',
};

/** The slot that a piece is stuck in; where a cross is not held down, whatever place it is at. */
const stuckIn = ({ where }: PieceSaid): string[] => {
  if (where.at === 'slot') return [placeWords(where.place.replace('D', ''))];
  return where.at === 'elsewhere' ? [placeWords(where.place)] : [];
};

/**
 * What catches the eye, for a narrow column: the slots that pieces are stuck in, else where the edge is; and, where that
 * leaves room, where the cross colour looks.
 */
function shortName(corner: PieceSaid, edge: PieceSaid): string {
  const stuck = [...new Set([...stuckIn(corner), ...stuckIn(edge)])];
  if (stuck.length > 1) return capital(stuck.join(', '));
  const looks = `${COLOUR[corner.colour].name} ${SIDE[corner.side]}`;
  if (stuck.length === 1) return capital(`${stuck[0]}, ${looks}`);
  const { where } = edge;
  if (where.at === 'own-slot') return `${where.solved ? 'Edge home' : capital(MISPLACED.edge)}, ${looks}`;
  return capital(`${looks}, edge ${placeWords(where.place.replace('U', ''))}`);
}

const DEEDS: Readonly<Record<Deed, string>> = {
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

/** In panels: what a case is called, what a phase does, which slots are open. */
export const cases = {
  /** A case that the coach gave no name: one short line. Cases that differ by less may share it. */
  named: shortName,
  /** Under the turns of a phase: what it does, a few letters wide. `was` is how the pair stood before it. */
  phase: (does: readonly Deed[], was: 'joined' | 'split' | undefined) =>
    does.map((deed) => (deed === 'insert' && does.length === 1 && was ? `insert ${was}` : DEEDS[deed])).join(' + '),
  /** Of the slot that a stuck piece came from. */
  stuckStaysOpen: 'The slot that a stuck piece comes out of need not be solved at the end.',
  /** Further slots that need not be solved. */
  open: (slots: readonly PlaceName[]) => `Also open: ${listed(slots.map(placeWords))}; need not be solved`,
};

/** Under the title of a lesson. */
export const promises = {
  everySlot: 'pairs from all four slots',
  slots: (slots: readonly PlaceName[]) =>
    `pairs of the ${listed(slots.map(placeWords))} ${slots.length === 1 ? 'slot' : 'slots'}`,
  kept: 'all other slots kept',
};
