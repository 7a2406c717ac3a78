/** The second reader of notation, which shares nothing with the engine. */
import type { Layer, Turn } from './stickers.ts';

/** `at`: offset into the text, UTF-16 units from 0, of the first character that cannot be read. */
export type TurnsRead =
  | { readonly ok: true; readonly turns: readonly Turn[] }
  | { readonly ok: false; readonly at: number; readonly fault: string };

/** Nested repeats grow without bound: `((((R)999)999)999)999`. No sequence for a human comes near this. */
const MOST_TURNS = 10_000;

// `Rr` and `RU2` read on without spaces, so a suffix belongs to the letter before it; the 2 of `2Rw` counts as a prefix
// only where no turn stands directly before it. Without that rule `R2Rw` would have two readings.
const PREFIXED_WIDE = /2([UDLRFB])w(2['’′]?|['’′])?/y;
const ONE_TURN = /([UDLRFB]w?|[udlrfb]|[MESxyz])(2['’′]?|['’′])?/y;
const GROUP_END = /\)(?:([1-9]\d*)|(['’′]))?/y;

interface Group {
  readonly opened: number;
  readonly turns: Turn[];
}

function layerOf(letters: string): Layer {
  return (/[udlrfb]/.test(letters) ? `${letters.toUpperCase()}w` : letters) as Layer;
}

function quartersOf(suffix: string | undefined): Turn['quarters'] {
  if (suffix === undefined) return 1;
  return suffix.startsWith('2') ? 2 : 3;
}

function inverse(turns: readonly Turn[]): Turn[] {
  return turns.toReversed().map(({ layer, quarters }) => ({ layer, quarters: (4 - quarters) as Turn['quarters'] }));
}

/**
 * Reads faces, wide turns (Rw, 2Rw, r), slices, rotations, and groups with a number of repeats or an inverse, nested
 * or not. Spaces may be left out between turns, never stand inside one. Groups come out expanded.
 */
export function readTurns(text: string): TurnsRead {
  const groups: Group[] = [{ opened: 0, turns: [] }];
  let at = 0;
  let afterSpace = true;
  const match = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    return pattern.exec(text);
  };
  while (at < text.length) {
    const group = groups.at(-1)!;
    const space = match(/\s+/y);
    if (space) {
      at += space[0].length;
      afterSpace = true;
      continue;
    }
    if (text[at] === '(') {
      groups.push({ opened: at, turns: [] });
      at += 1;
      afterSpace = true;
      continue;
    }
    const end = match(GROUP_END);
    if (end) {
      const outer = groups.at(-2);
      if (!outer) return { ok: false, at, fault: 'a bracket closes that was never opened' };
      if (group.turns.length === 0) return { ok: false, at, fault: 'an empty group' };
      const repeats = Number(end[1] ?? 1);
      if (outer.turns.length + group.turns.length * repeats > MOST_TURNS) {
        return { ok: false, at, fault: `more than ${MOST_TURNS} turns` };
      }
      const once = end[2] === undefined ? group.turns : inverse(group.turns);
      for (let i = 0; i < repeats; i++) outer.turns.push(...once);
      groups.pop();
      at += end[0].length;
      afterSpace = false;
      continue;
    }
    const turn = (afterSpace ? match(PREFIXED_WIDE) : null) ?? match(ONE_TURN);
    if (!turn) return { ok: false, at, fault: `'${String.fromCodePoint(text.codePointAt(at)!)}' is no turn` };
    const letters = turn[0].startsWith('2') ? `${turn[1]}w` : turn[1]!;
    group.turns.push({ layer: layerOf(letters), quarters: quartersOf(turn[2]) });
    if (group.turns.length > MOST_TURNS) return { ok: false, at, fault: `more than ${MOST_TURNS} turns` };
    at += turn[0].length;
    afterSpace = false;
  }
  if (groups.length > 1) return { ok: false, at: groups.at(-1)!.opened, fault: 'a bracket is never closed' };
  return { ok: true, turns: groups[0]!.turns };
}

/** Outer turns as the regulations' outer block turn metric counts them; a slice turn is two, a rotation none. */
export function lengthOf(turns: readonly Turn[]): number {
  return turns.reduce((sum, { layer }) => sum + (/[xyz]/.test(layer) ? 0 : /[MES]/.test(layer) ? 2 : 1), 0);
}

/** One turn written the way claims and paper write it, with an ASCII prime. */
export const PRINTED_TURN = /^(?:2?[UDLRFB]w|[UDLRFBudlrfbMESxyz])(?:2'?|')?$/;

/** Groups expanded, single spaces, ASCII primes. The empty text is the sequence of no turns. */
export function isPlainSequence(text: string): boolean {
  return text === '' || text.split(' ').every((token) => PRINTED_TURN.test(token));
}
