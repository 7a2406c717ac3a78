/**
 * Some turns with all borders at which they can be parted: between two turns, and inside a turn, which is then done in two
 * turns of its kind (R2 as R R, R as R2 R'). A turn is parted once at most. The turns between two borders are a span; of
 * spans it is known at once which have the same turns, and which have those that take another's back.
 */
import { inverse, type Quarters, type Turn, turnOf } from '../turns.ts';

/** From 0: before each turn one, then two inside it, and one after the last turn. */
export type Border = number;
/** Stands for some turns: the same number for the same turns, 0 for none. */
type Word = number;

const A_TURN = 3;
/** More than there are words: two for each of (3 n)² / 2 spans. */
const MOST_WORDS = 2 ** 24;

export const isInside = (border: Border): boolean => border % A_TURN !== 0;
/** Which turn a border stands before or in, from 0. */
export const turnAt = (border: Border): number => Math.floor(border / A_TURN);
const borderBefore = (turn: number): Border => A_TURN * turn;

/** Of two borders with turns between them: whether it is one turn, or what is left of one. */
export const isOneTurn = (from: Border, to: Border): boolean => to <= borderBefore(turnAt(from) + 1);

/** The two turns that a turn with a border inside is done in. */
export function partedAt(border: Border, turns: readonly Turn[]): readonly [Turn, Turn] {
  const { kind, letter, quarters } = turns[turnAt(border)]!;
  const done = ([1, 2, 3] as const).filter((some) => some !== quarters)[(border % A_TURN) - 1]!;
  return [turnOf(kind, letter, done), turnOf(kind, letter, ((quarters - done + 4) % 4) as Quarters)];
}

/** The turns between two borders. */
export function turnsBetween(from: Border, to: Border, turns: readonly Turn[]): Turn[] {
  const first = isInside(from) ? [partedAt(from, turns)[1]] : [];
  const last = isInside(to) ? [partedAt(to, turns)[0]] : [];
  return [...first, ...turns.slice(turnAt(from) + first.length, turnAt(to)), ...last];
}

export interface Spans {
  /** How many borders there are. */
  readonly borders: number;
  /** Whether there are turns between two borders; there are none between two inside one turn. */
  readonly isSpan: (from: Border, to: Border) => boolean;
  /** Where the span ends that begins at a border and has these turns. */
  readonly endOf: (from: Border, turns: readonly Turn[]) => Border | undefined;
  /** Likewise, with the turns that take a span back. */
  readonly endOfBack: (from: Border, of: readonly [Border, Border]) => Border | undefined;
}

export function spansOf(turns: readonly Turn[]): Spans {
  const borders = A_TURN * turns.length + 1;
  const words = new Map<number, Word>();
  const longer = (word: Word, turn: Turn): Word => {
    const key = 64 * word + turn.index;
    const known = words.get(key) ?? words.size + 1;
    words.set(key, known);
    return known;
  };
  /** By border before and border after; 0 for no span. */
  const wordIn = new Int32Array(borders * borders);
  const backOf = new Int32Array(borders * borders);
  const ends = new Map<number, Border>();

  for (let from = 0; from < borders; from++) {
    const note = (to: Border, word: Word): Word => {
      wordIn[from * borders + to] = word;
      ends.set(from * MOST_WORDS + word, to);
      return word;
    };
    let turn = turnAt(from);
    let word = isInside(from) ? note(borderBefore(++turn), longer(0, partedAt(from, turns)[1])) : 0;
    for (; turn < turns.length; turn++) {
      const before = borderBefore(turn);
      for (const to of [before + 1, before + 2]) note(to, longer(word, partedAt(to, turns)[0]));
      word = note(before + A_TURN, longer(word, turns[turn]!));
    }
  }

  const undo = (turn: Turn): Turn => inverse([turn])[0]!;
  for (let to = 0; to < borders; to++) {
    const note = (from: Border, word: Word): Word => {
      backOf[from * borders + to] = word;
      return word;
    };
    let turn = turnAt(to);
    let word = isInside(to) ? note(borderBefore(turn), longer(0, undo(partedAt(to, turns)[0]))) : 0;
    for (turn--; turn >= 0; turn--) {
      const before = borderBefore(turn);
      for (const from of [before + 1, before + 2]) note(from, longer(word, undo(partedAt(from, turns)[1])));
      word = note(before, longer(word, undo(turns[turn]!)));
    }
  }

  const ending = (from: Border, word: Word): Border | undefined => ends.get(from * MOST_WORDS + word);
  return {
    borders,
    isSpan: (from, to) => wordIn[from * borders + to] !== 0,
    endOf: (from, some) => ending(from, some.reduce(longer, 0)),
    endOfBack: (at, [from, to]) => ending(at, backOf[from * borders + to]!),
  };
}
