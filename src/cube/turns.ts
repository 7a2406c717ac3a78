/**
 * The 54 turns that can be written, one shared object each: 18 of the faces, 18 wide, 9 of the slices,
 * 9 rotations of the whole cube. Letters and directions follow the competition regulations, article 12a; the slices,
 * which that article does not have, are the trade's: M turns as L does, E as D, S as F (regulations of 2010, 12a13).
 */
import { FACES, type Face } from './faces.ts';

export type TurnKind = 'face' | 'wide' | 'slice' | 'rotation';
export type Slice = 'M' | 'E' | 'S';
export type Axis = 'x' | 'y' | 'z';
/** Quarter turns clockwise: 3 is one counter-clockwise. */
export type Quarters = 1 | 2 | 3;

/** One written turn: regulations 12a. */
export interface Turn {
  /** 0..53, for tables by turn; a turn of a face has the number of its FaceTurn. */
  readonly index: number;
  /** Normal form, ASCII: `R2`, `Rw'`, `M`, `y'`. */
  readonly text: string;
  readonly kind: TurnKind;
  /** The face (wide turns too), slice or axis. */
  readonly letter: Face | Slice | Axis;
  readonly quarters: Quarters;
  /** Outer block turns, the regulations' measure: a face or wide turn 1, a rotation 0; a slice is two. */
  readonly length: 0 | 1 | 2;
}

const SUFFIX: Readonly<Record<Quarters, string>> = { 1: '', 2: '2', 3: "'" };
const LENGTH: Readonly<Record<TurnKind, 0 | 1 | 2>> = { face: 1, wide: 1, slice: 2, rotation: 0 };
const LETTERS: Readonly<Record<TurnKind, readonly Turn['letter'][]>> = {
  face: FACES,
  wide: FACES,
  slice: ['M', 'E', 'S'],
  rotation: ['x', 'y', 'z'],
};

/** In the order of their indices. */
export const TURNS: readonly Turn[] = (['face', 'wide', 'slice', 'rotation'] as const)
  .flatMap((kind) =>
    LETTERS[kind].flatMap((letter) => ([1, 2, 3] as const).map((q) => ({ kind, letter, quarters: q }))),
  )
  .map((t, index) => {
    const text = t.letter + (t.kind === 'wide' ? 'w' : '') + SUFFIX[t.quarters];
    return { ...t, index, text, length: LENGTH[t.kind] };
  });

const FIRST: Readonly<Record<TurnKind, number>> = { face: 0, wide: 18, slice: 36, rotation: 45 };

/** The one object that there is for such a turn. */
export function turnOf(kind: TurnKind, letter: Turn['letter'], quarters: Quarters): Turn {
  return TURNS[FIRST[kind] + 3 * LETTERS[kind].indexOf(letter) + quarters - 1]!;
}

const undone = (quarters: Quarters): Quarters => (4 - quarters) as Quarters;

/** What takes the turns back. */
export const inverse = (turns: readonly Turn[]): Turn[] =>
  turns.map((t) => turnOf(t.kind, t.letter, undone(t.quarters))).reverse();

/** The same, seen in a mirror to the left or right: R and L change places, and all but turns along x change direction. */
export function mirror(turns: readonly Turn[]): Turn[] {
  return turns.map((t) => {
    if (t.letter === 'M' || t.letter === 'x') return t;
    const letter = t.letter === 'R' ? 'L' : t.letter === 'L' ? 'R' : t.letter;
    return turnOf(t.kind, letter, undone(t.quarters));
  });
}

export const isTurnOfTop = (turn: Turn | undefined): boolean => turn?.kind === 'face' && turn.letter === 'U';

/** With quarter turns of U before them, as one turn with one of U that they begin with; a y that they begin with stays first. */
export function afterTop(quarters: number, turns: readonly Turn[]): Turn[] {
  const [first, ...rest] = turns;
  if (first?.letter === 'y') return [first, ...afterTop(quarters, rest)];
  const begins = isTurnOfTop(first);
  const all = (quarters + (begins ? first!.quarters : 0)) % 4;
  return [...(all === 0 ? [] : [turnOf('face', 'U', all as Quarters)]), ...(begins ? rest : turns)];
}

/** Outer block turns: see Turn.length. */
export const lengthOf = (turns: readonly Turn[]): number => turns.reduce((n, t) => n + t.length, 0);

/** How wide turns are spelt: by the regulations, or with the small letter that the trade uses. */
export type WideSpelling = 'Rw' | 'r';

/** A turn in ASCII, its wide turns as asked. */
export const spelt = ({ kind, text, letter }: Turn, wide: WideSpelling): string =>
  kind === 'wide' && wide === 'r' ? text.replace(`${letter}w`, letter.toLowerCase()) : text;

/** Normal form: ASCII, single spaces, groups written out. Only spelling changes: nothing is merged or reordered. */
export const writeTurns = (turns: readonly Turn[], wide: WideSpelling = 'Rw'): string =>
  turns.map((t) => spelt(t, wide)).join(' ');
