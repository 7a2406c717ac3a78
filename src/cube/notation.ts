/**
 * Reading turns as people write them. Read are: faces, wide turns (`Rw`, `2Rw`, and `r` as the trade writes it), slices
 * M E S, rotations x y z; after each nothing, a prime (' ’ ′), 2, or 2'; groups with a number of repeats `(R U R' U')3`
 * and a group's inverse `(R U R')'`. Spaces may be left out.
 */
import { FACES } from './faces.ts';
import { inverse, type Quarters, type Turn, type TurnKind, turnOf } from './turns.ts';

export interface ReadingError {
  /** Offset of the first character that cannot be read, in UTF-16 units, and how many belong to it (0 at the end). */
  readonly at: number;
  readonly size: number;
  readonly message: string;
  /** What would be right. */
  readonly hint: string;
}

export type Reading =
  | { readonly ok: true; readonly turns: Turn[]; readonly smallWide: boolean }
  | ({ readonly ok: false } & ReadingError);

/** More turns than any solution or set-up has use for; keeps nested repeats from growing without end. */
export const MOST_TURNS = 400;

const PRIMES = "'’′";
/** Marks that are taken for a prime by eye but are other characters. */
export const FALSE_PRIMES = '`´‘ʹʼˈ‛＇';
/** Marks that are taken for two primes. */
export const DOUBLE_PRIMES = '"”“″';
/** Letters of other alphabets that look like one of ours. */
export const LOOKALIKES: Readonly<Record<string, string>> = {
  В: 'B',
  М: 'M',
  Е: 'E',
  Ѕ: 'S',
  х: 'x',
  у: 'y',
  г: 'r',
  Β: 'B',
  Μ: 'M',
  Ε: 'E',
  Ζ: 'z',
};
const SPACE = /\s/;
/** Space, digit and letter tests come before the regular expressions: reading is most of the time that proving takes. */
const isSpace = (c: string): boolean => c === ' ' || SPACE.test(c);
const isDigit = (c: string | undefined): boolean => c !== undefined && c >= '0' && c <= '9' && c.length === 1;
const isPrime = (c: string | undefined): boolean => c === "'" || c === '′' || c === '’';

interface Letter {
  readonly kind: TurnKind;
  readonly letter: Turn['letter'];
  /** A small letter of a face, which the trade writes for the wide turn. */
  readonly small: boolean;
}

const LETTERS: ReadonlyMap<string, Letter> = new Map<string, Letter>([
  ...FACES.map((f): [string, Letter] => [f, { kind: 'face', letter: f, small: false }]),
  ...FACES.map((f): [string, Letter] => [f.toLowerCase(), { kind: 'wide', letter: f, small: true }]),
  ...(['M', 'E', 'S'] as const).map((s): [string, Letter] => [s, { kind: 'slice', letter: s, small: false }]),
  ...(['x', 'y', 'z'] as const).map((a): [string, Letter] => [a, { kind: 'rotation', letter: a, small: false }]),
]);

class Unreadable extends Error {
  readonly error: ReadingError;
  constructor(error: ReadingError) {
    super(error.message);
    this.error = error;
  }
}

function fail(at: number, size: number, message: string, hint: string): never {
  throw new Unreadable({ at, size, message, hint });
}

/** A backtick by its name: where turns are marked by backticks it would be lost. */
const quoted = (s: string): string => (s === '`' ? 'a backtick' : s === '"' ? `'"'` : `"${s}"`);

/** A reader over one text; `next` is the offset of the next character. */
interface Reader {
  readonly text: string;
  next: number;
  smallWide: boolean;
}

/** The amount after a turn's letter: nothing, a prime, 2 or 2'. The letter, with what belongs to it, starts at `from`. */
function readQuarters(r: Reader, from: number): Quarters {
  const { text } = r;
  const start = r.next;
  let quarters: Quarters = 1;
  if (text[r.next] === '2') {
    quarters = 2;
    r.next++;
    if (isPrime(text[r.next])) r.next++;
  } else if (isPrime(text[r.next])) {
    quarters = 3;
    r.next++;
  }
  const after = text[r.next];
  if (after !== undefined && !isSpace(after) && !LETTERS.has(after)) failAfterTurn(r, from, start, after);
  return quarters;
}

/** Fails where what touches a turn is a way of writing its amount that is not read; else a new turn may start there. */
function failAfterTurn({ text, next }: Reader, from: number, start: number, after: string): void {
  const base = text.slice(from, start);
  const suffix = text.slice(start, next);
  const half = suffix.startsWith('2');
  if (isPrime(after) || DOUBLE_PRIMES.includes(after)) {
    const message = isPrime(after) ? 'two primes in a row' : `${quoted(after)} is not a prime`;
    fail(next, 1, message, `write ${base}' for one turn back, ${base}2 for a half turn`);
  }
  if (isDigit(after)) {
    const at = suffix === '2' ? start : next;
    const digits = digitsAt(text, at);
    if (suffix !== '' && suffix !== '2')
      fail(
        at,
        digits.length,
        `"${digits}" stands after the prime`,
        `write ${base}2 for a half turn, ${base}' for one back`,
      );
    if (base === 'x' && text[from - 1] === ')')
      fail(
        from,
        1 + digits.length,
        '"x" is a rotation, not "times"',
        'the number stands right after the bracket: (R U)3',
      );
    const right: Record<string, string> = { '1': `write ${base}`, '3': `write ${base}'` };
    fail(
      at,
      digits.length,
      `nothing is turned "${digits}" times`,
      right[digits] ?? `write ${base}, ${base}2 or ${base}'`,
    );
  }
  if (FALSE_PRIMES.includes(after))
    fail(next, 1, `${quoted(after)} is not a prime`, `write ${base}${half ? "2'" : "'"} with the straight sign '`);
  if (after === 'i' || after === '-' || after === '−' || after === '–')
    fail(next, 1, `${quoted(after)} is not how a turn back is written`, `write ${base}${half ? '2' : "'"}`);
  if (after === '+') fail(next, 1, '"+" is not part of a turn', `write ${base} or ${base}2`);
  if (after === 'w') {
    const letter = LETTERS.get(base);
    if (letter?.kind !== 'face' && letter?.kind !== 'wide')
      fail(next, 1, '"w" belongs right after the letter of a face', 'leave it out');
    const amount = suffix || (/^(2['’′]?|['’′])/.exec(text.slice(next + 1))?.[0] ?? '');
    const message = letter.kind === 'wide' ? '"w" belongs to a capital letter' : '"w" stands too late';
    fail(next, 1, message, `write ${letter.letter}w${amount}`);
  }
}

const digitsAt = (text: string, at: number): string => /^\d+/.exec(text.slice(at))?.[0] ?? '';

function readTurn(r: Reader): Turn {
  const { text } = r;
  const start = r.next;
  if (isDigit(text[start])) readLayers(r);
  const letter = LETTERS.get(text[r.next] ?? '');
  if (!letter) failAtLetter(text, r.next);
  r.next++;
  let { kind } = letter;
  if (kind === 'face' && text[r.next] === 'w') {
    kind = 'wide';
    r.next++;
  }
  r.smallWide ||= letter.small;
  return turnOf(kind, letter.letter, readQuarters(r, start));
}

/** The number of layers before a wide turn: 2 and nothing else (regulations, guideline 12a2+). */
function readLayers(r: Reader): void {
  const { text, next: at } = r;
  const layers = digitsAt(text, at);
  const letter = LETTERS.get(text[at + layers.length] ?? '');
  if (layers === '2' && letter?.kind === 'face' && text[at + 2] === 'w') {
    r.next++;
    return;
  }
  const before = text.slice(0, at).trimEnd();
  if (before.endsWith(')'))
    fail(at, layers.length, `"${layers}" stands apart from its bracket`, 'write the number right after it: (R U)3');
  if (isPrime(before.at(-1)) && before.at(-2) === ')')
    fail(at, layers.length, `"${layers}" stands after the prime`, "write the number before the prime: (R U)3'");
  if (!letter)
    fail(
      at,
      layers.length,
      `"${layers}" stands alone`,
      'write a number right after its turn, as in R2, or leave it out',
    );
  const face = letter.kind === 'face' || letter.kind === 'wide' ? letter.letter : 'R';
  fail(
    at,
    layers.length,
    `"${layers}" cannot stand before a turn here`,
    `write ${face} for one layer, ${face}w for two; a half turn is ${face}2`,
  );
}

function failAtLetter(text: string, at: number): never {
  const point = text.codePointAt(at);
  if (point === undefined) fail(at, 0, 'the turns end too soon', 'write the turn that is missing');
  const letter = String.fromCodePoint(point);
  const size = letter.length;
  if (/^[XYZ]$/.test(letter))
    fail(at, 1, `"${letter}" is not a turn`, `a rotation of the whole cube is a small letter: ${letter.toLowerCase()}`);
  if (/^[mes]$/.test(letter))
    fail(at, 1, `"${letter}" is not a turn`, `a slice is a capital letter: ${letter.toUpperCase()}`);
  if (/^[×*·]$/.test(letter))
    fail(at, 1, `"${letter}" is not read here`, 'a number of repeats stands right after the bracket: (R U)3');
  if (letter === '[' || letter === ']')
    fail(at, 1, `"${letter}" is not read here`, 'a rotation is written x, y or z; a group stands in round brackets');
  if (letter === '"') fail(at, 1, 'a quotation mark among the turns', "for a turn back type ' once after the letter");
  if ((PRIMES + FALSE_PRIMES + DOUBLE_PRIMES).includes(letter))
    fail(at, 1, 'a prime without a turn before it', "write it right after the letter: R'");
  if (/^[,;.:|/]$/.test(letter)) fail(at, 1, `"${letter}" stands between turns`, 'part turns by a space only');
  if (/^[\p{Cf}\p{Cc}\p{Cs}]$/u.test(letter)) fail(at, size, 'an invisible character among the turns', 'delete it');
  // Keyboards on which the accent is a dead key set it on the letter that is typed next: R´U comes out as RÚ.
  if (/^\p{M}$/u.test(letter) || LETTERS.has(letter.normalize('NFD')[0] ?? ''))
    fail(at, size, 'an accent on a letter', "for a turn back type the straight sign ' after the letter: R'");
  const alike = LOOKALIKES[letter] ?? letter.normalize('NFKC');
  if (alike !== letter && (LETTERS.has(alike) || isDigit(alike) || isPrime(alike)))
    fail(at, size, `"${letter}" only looks like ${alike}`, `type a plain ${alike}`);
  fail(at, size, `"${letter}" is not a turn`, 'turns are U D R L F B, wide Rw, slices M E S, rotations x y z');
}

/** What follows a closing bracket: a number of repeats, a prime, both, or nothing. */
function readRepeats(r: Reader, turns: Turn[]): Turn[] {
  const at = r.next;
  const digits = isDigit(r.text[at]) ? digitsAt(r.text, at) : '';
  r.next += digits.length;
  const back = isPrime(r.text[r.next]);
  if (back) r.next++;
  const repeats = digits === '' ? 1 : Number(digits);
  if (repeats === 0)
    fail(at, digits.length, 'a group repeated 0 times does nothing', 'leave the group out, or write how often');
  if (repeats * turns.length > MOST_TURNS)
    fail(at, digits.length, `more than ${MOST_TURNS} turns`, 'repeat the group less often');
  const once = back ? inverse(turns) : turns;
  return Array.from({ length: repeats }, () => once).flat();
}

/** Turns up to the end of the text, or to the bracket that closes the group opened at `opened`. */
function readSeries(r: Reader, opened: number | undefined, depth: number): Turn[] {
  const turns: Turn[] = [];
  for (;;) {
    while (r.next < r.text.length && isSpace(r.text[r.next]!)) r.next++;
    if (r.next >= r.text.length) {
      if (opened !== undefined) fail(opened, 1, 'this bracket is never closed', 'close it: )');
      return turns;
    }
    const at = r.next;
    if (r.text[at] === '(') {
      if (depth === 8) fail(at, 1, 'brackets more than 8 deep', 'write the turns out');
      r.next++;
      const group = readSeries(r, at, depth + 1);
      if (group.length === 0) fail(at, r.next - at, 'nothing between the brackets', 'leave them out');
      turns.push(...readRepeats(r, group));
    } else if (r.text[at] === ')') {
      if (opened === undefined)
        fail(at, 1, 'this bracket was never opened', 'open it before the first turn of the group: (');
      r.next++;
      return turns;
    } else {
      turns.push(readTurn(r));
    }
    if (turns.length > MOST_TURNS) fail(at, 1, `more than ${MOST_TURNS} turns`, 'split the text');
  }
}

/** Never throws; an empty text is no turns. */
export function readTurns(text: string): Reading {
  const r: Reader = { text, next: 0, smallWide: false };
  try {
    const turns = readSeries(r, undefined, 0);
    return { ok: true, turns, smallWide: r.smallWide };
  } catch (e) {
    if (e instanceof Unreadable) return { ok: false, ...e.error };
    throw e;
  }
}
