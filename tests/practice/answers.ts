/**
 * Exercises answered a second way: from printed turns and the words that describe a picture, with the second checker's
 * stickers alone. A piece is followed as the facelets that its stickers lie on.
 */
import { cornerOf, faceletsOf, faceOf, PLACES, type Place, type Slot } from '../../src/audit/places.ts';
import { isTrue } from '../../src/audit/printed-rules.ts';
import { readTurns } from '../../src/audit/read-turns.ts';
import { afterTurns, type Stickers, type Turn } from '../../src/audit/stickers.ts';
import { reprovePair } from '../audit/claims.ts';

const LETTERS: Readonly<Record<string, string>> = {
  top: 'U',
  bottom: 'D',
  front: 'F',
  back: 'B',
  right: 'R',
  left: 'L',
};
const SIDES: Readonly<Record<string, string>> = {
  up: 'U',
  down: 'D',
  'to the front': 'F',
  'to the back': 'B',
  'to the right': 'R',
  'to the left': 'L',
};

const placeOf = (words: string, more = ''): Place => {
  const letters = [
    ...`${more}${words
      .split(' ')
      .map((w) => LETTERS[w]!)
      .join('')}`,
  ]
    .sort()
    .join('');
  return PLACES.find((place) => [...place].sort().join('') === letters)!;
};
const slotOf = (words: string): Slot => placeOf(words) as Slot;
const slotsIn = (words: string): Slot[] =>
  [...words.matchAll(/(?:front|back) (?:right|left)/g)].map(([w]) => slotOf(w));

export interface Described {
  readonly slot: Slot;
  /** Of the slot's two faces, in the order of its name. */
  readonly colours: readonly [string, string];
  readonly cross: string;
  /** Facelets of the corner's stickers: bottom, then the slot's two faces. */
  readonly corner: readonly number[];
  readonly edge: readonly number[];
  readonly kept: readonly Slot[];
}

const turnsOf = (text: string): readonly Turn[] => {
  const read = readTurns(text);
  if (!read.ok) throw new Error(`'${text}' cannot be read: ${read.fault}`);
  return read.turns;
};

const moved = (facelets: readonly number[], by: Stickers): number[] => facelets.map((f) => by[f]!);

const ALL = ['U', 'D', 'R', 'L', 'F', 'B'].flatMap((layer) => ['', '2', "'"].map((suffix) => `${layer}${suffix}`));
const GOOD = ALL.filter((turn) => !/^[FB]('|$)/.test(turn));
const EFFECTS = new Map(ALL.map((turn) => [turn, afterTurns(turnsOf(turn))]));

/** All positions of a piece that some turns lead to. */
function reached(from: readonly number[], turns: readonly string[]): number[][] {
  const found = new Map<string, number[]>([[from.join(), [...from]]]);
  for (const at of found.values()) {
    for (const turn of turns) {
      const next = moved(at, EFFECTS.get(turn)!);
      if (!found.has(next.join())) found.set(next.join(), next);
    }
  }
  return [...found.values()];
}

const isAt = (facelets: readonly number[], place: Place): boolean =>
  facelets.every((f) => faceletsOf(place).includes(f));

function positionFrom(
  alt: string,
  piece: 'corner' | 'edge',
  slot: Slot,
  names: readonly string[],
): number[] | undefined {
  const home = [...faceletsOf(piece === 'corner' ? cornerOf(slot) : slot)];
  if (new RegExp(`The ${piece} is in its own slot, solved`).test(alt)) return home;
  const said = new RegExp(
    `The ${piece} is (on top at the|stuck in the|at the|in its own slot) ?(?:([a-z ]+?) slot|but \\w+|([a-z ]+?))?, (\\w+) (up|down|to the \\w+)\\.`,
  ).exec(alt);
  if (!said) throw new Error(`${piece}: ${alt}`);
  const [, how, inSlot, at, colour, side] = said;
  const more = how === 'on top at the' ? 'U' : piece === 'corner' && how !== 'at the' ? 'D' : '';
  const place = how === 'in its own slot' ? (piece === 'corner' ? cornerOf(slot) : slot) : placeOf(inSlot ?? at!, more);
  const sticker = names.indexOf(colour!);
  return reached(home, ALL).find((f) => isAt(f, place) && faceOf(f[sticker]!) === SIDES[side!]);
}

export function readPicture(alt: string): Described {
  const [, cross] = /(\w+) down, \w+ in front\./.exec(alt)!;
  const [, first, second, own] = /The pair (\w+) and (\w+) belongs in the ([a-z ]+) slot/.exec(alt)!;
  const slot = slotOf(own!);
  const colours = [first!, second!] as const;
  const down = cross!.toLowerCase();
  return {
    slot,
    colours,
    cross: down,
    corner: positionFrom(alt, 'corner', slot, [down, ...colours])!,
    edge: positionFrom(alt, 'edge', slot, colours)!,
    kept: slotsIn(/The ([^.]+) slots? (?:is|are) kept/.exec(alt)?.[1] ?? ''),
  };
}

/** Whether a set-up gives the picture. */
export function gives(setup: string, { slot, corner, edge }: Described): boolean {
  const by = afterTurns(turnsOf(setup));
  const now = [...moved(faceletsOf(cornerOf(slot)), by), ...moved(faceletsOf(slot), by)];
  return now.join() === [...corner, ...edge].join();
}

export function likeness({ corner, edge, cross, colours }: Described): string {
  const top = [cross, ...colours][corner.findIndex((f) => faceOf(f) === 'U')]!;
  const onTop = edge.some((f) => faceOf(f) === 'U');
  const telling = edge.findIndex((f) => (onTop ? 'U' : 'FB').includes(faceOf(f)));
  return top === colours[telling] ? 'like' : 'unlike';
}

export const edgeWord = ({ edge, slot }: Described): string =>
  reached(edge, GOOD).some((f) => f.join() === faceletsOf(slot).join()) ? 'good' : 'bad';

/** Whether words such as "The edge is at the top left, green to the left." are where a piece comes to. */
export function comesTo(d: Described, piece: 'corner' | 'edge', turns: string, words: string): boolean {
  const names = piece === 'corner' ? [d.cross, ...d.colours] : d.colours;
  // Words of the other piece are no answer, nor is a colour that it has not.
  if (!words.startsWith(`The ${piece} `)) return false;
  const said = positionFrom(words, piece, d.slot, names);
  return moved(d[piece], afterTurns(turnsOf(turns))).join() === said?.join();
}

export const solves = (setup: string, solution: string, { slot, kept }: Described): boolean => {
  const proof = reprovePair({ setup, solution, pair: slot, kept });
  return proof.verdict === 'solves' && proof.setupFaults.length === 0 && proof.solutionFaults.length === 0;
};

/** The turns taken back, without turns of U at the ends. */
const takenBack = (turns: string): string =>
  turns
    .split(' ')
    .reverse()
    .map((t) => (t.endsWith('2') ? t : t.endsWith("'") ? t.slice(0, -1) : `${t}'`))
    .join(' ');
const withoutU = (turns: string): string => turns.replace(/^(?:U['2]? )*|(?: U['2]?)*$/g, '');

export const isTakenBack = (setup: string, solution: string): boolean =>
  withoutU(takenBack(setup)) === withoutU(solution);

export const lengthOf = (turns: string): number => turns.split(' ').filter((t) => !/^[xyz]/.test(t)).length;

/** Every single turn in place of one of these that makes them solve: number, from 1, and turn. */
export function turnMends(setup: string, solution: string, d: Described): { turn: number; now: string }[] {
  const turns = solution.split(' ');
  return turns.flatMap((_, i) =>
    ALL.filter((now) => solves(setup, turns.with(i, now).join(' '), d)).map((now) => ({ turn: i + 1, now })),
  );
}

/** Every order of some things. */
export function orders<T>(items: readonly T[]): T[][] {
  if (items.length < 2) return [[...items]];
  return items.flatMap((item, i) => orders(items.toSpliced(i, 1)).map((rest) => [item, ...rest]));
}

/** Whether what is printed of a rule is so. */
export function ruleFits(text: string, d: Described): boolean {
  const read = isTrue(text, d);
  if (typeof read === 'object') throw new Error(`"${read.unread}" cannot be read`);
  return read;
}

const TOP = [1, 2, 3, 4, 49, 5, 6, 7, 8];
const ROWS = { front: [17, 18, 19], right: [25, 26, 27], back: [33, 34, 35], left: [9, 10, 11] };

/** The top and the row below it as a key describes them, by the colours of the faces U L F R B D. */
export function topWords(turns: string, colours: readonly string[]): string {
  const by = afterTurns(turnsOf(turns));
  const colourAt = (facelet: number): string => {
    const from = by.indexOf(facelet);
    return colours[from > 48 ? from - 49 : 'ULFRBD'.indexOf(faceOf(from))]!;
  };
  const row = (facelets: readonly number[]): string => facelets.map(colourAt).join(' ');
  const top = [0, 3, 6].map((i) => row(TOP.slice(i, i + 3))).join(', ');
  const around = Object.entries(ROWS).map(([side, facelets]) => `${side} ${row(facelets)}`);
  return `The top, row by row: ${top}. The row below it: ${around.join(', ')}.`;
}

export { slotsIn };
