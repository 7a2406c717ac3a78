/**
 * Rules as a student reads them: English statements about a pair, taken at their word, on the stickers. Nothing is known here
 * of what conditions a lesson wrote, nor of what it meant by them.
 */
import { cornerOf, faceletsOf, faceOf, PLACES, type Place, type Slot } from './places.ts';
import { afterTurns, type Stickers } from './stickers.ts';

/** A pair as a viewer sees it. */
export interface Seen {
  readonly slot: Slot;
  /** The colour of the cross by its name. */
  readonly cross: string;
  /** Where each sticker lies: of the corner the cross colour's first, then those of the slot's two faces; of the edge these. */
  readonly corner: readonly number[];
  readonly edge: readonly number[];
}

/** `state` stands as it is held, with its centres where they are on a cube of no turns. */
export function seenOf(state: Stickers, slot: Slot, cross: string): Seen {
  const now = (place: Place): number[] => faceletsOf(place).map((facelet) => state[facelet]!);
  return { slot, cross, corner: now(cornerOf(slot)), edge: now(slot) };
}

type Piece = 'corner' | 'edge';
const ROUND = ['FR', 'F', 'FL', 'L', 'BL', 'B', 'BR', 'R'];

const placeOf = (facelets: readonly number[]): Place =>
  PLACES.find((place) => place.length === facelets.length && facelets.every((f) => faceletsOf(place).includes(f)))!;
/** Round the vertical axis in eighths, from the front right over the front. */
const roundOf = (place: Place): number => ROUND.indexOf(place.replace(/[UD]/, ''));
const isTop = (place: Place): boolean => place.startsWith('U');
const moved = (facelets: readonly number[], by: Stickers): number[] => facelets.map((f) => by[f]!);

/** By the face that it is seen on, each colour of a piece: `D` the cross colour, else the face that it belongs on. */
const coloursOf = ({ slot, ...seen }: Seen, piece: Piece): Map<string, string> =>
  new Map(seen[piece].map((f, i) => [faceOf(f), (piece === 'corner' ? `D${slot}` : slot)[i]!]));

/** Colours of a piece on some faces. */
const on = (colours: ReadonlyMap<string, string>, faces: string): string[] =>
  [...colours].filter(([face]) => faces.includes(face)).map(([, colour]) => colour);

const SIDES: Readonly<Record<string, string>> = {
  up: 'U',
  down: 'D',
  'to the front': 'F',
  'to the back': 'B',
  'to the left': 'L',
  'to the right': 'R',
  'to the side': 'FBLR',
};

/** Colours that words name: none where there is no such colour, several where the words do not say which. */
function named(words: string, seen: Seen): string[] {
  const [, piece, colour] = /^the (corner|edge)'s (.+) colour$/.exec(words) ?? [];
  const beside = /^the corner's colour beside (.+)$/.exec(words);
  if (beside) {
    // In one row with it where it looks to the side; up or down, every other colour stands beside it.
    const colours = coloursOf(seen, 'corner');
    return beside[1] === seen.cross ? on(colours, 'FBLR').filter((c) => c !== 'D') : [];
  }
  const faces = { top: 'U', 'front or back': 'FB', 'left or right': 'LR' }[colour!];
  return faces === undefined ? [] : on(coloursOf(seen, piece as Piece), faces);
}

const GOOD_TURNS = [...'UDRL'].map((layer) => ({ layer: layer as 'U', quarters: 1 as const }));
const HALF_TURNS = [...'FB'].map((layer) => ({ layer: layer as 'F', quarters: 2 as const }));
const GOOD_MOVES = [...GOOD_TURNS, ...HALF_TURNS].map((turn) => afterTurns([turn]));

/** Whether turns of U, D, R, L and half turns of F and B can bring it home: all that they lead to is looked through. */
function isGood({ edge, slot }: Seen): boolean {
  const found = new Map([[edge.join(), edge]]);
  for (const at of found.values()) {
    for (const move of GOOD_MOVES) {
      const next = moved(at, move);
      if (!found.has(next.join())) found.set(next.join(), next);
    }
  }
  return found.has(faceletsOf(slot).join());
}

const U = afterTurns([{ layer: 'U', quarters: 1 }]);

/** The corner brought above the edge, or with it in one slot: undefined where it cannot be. */
function sidesMatch(seen: Seen): boolean | undefined {
  const edge = placeOf(seen.edge);
  if (isTop(edge)) return undefined;
  let { corner } = seen;
  for (let i = 0; i < 4 && roundOf(placeOf(corner)) !== roundOf(edge); i++) {
    if (!isTop(placeOf(corner))) return undefined;
    corner = moved(corner, U);
  }
  const [above, below] = [coloursOf({ ...seen, corner }, 'corner'), coloursOf(seen, 'edge')];
  return [...below].every(([face, colour]) => above.get(face) === 'D' || above.get(face) === colour);
}

/** Eighths between two columns, the shorter way. */
function apart(a: Place, b: Place): number {
  const way = (roundOf(a) - roundOf(b) + 8) % 8;
  return Math.min(way, 8 - way);
}
const distance = (a: Place, b: Place): string => (apart(a, b) === 0 ? 'same' : apart(a, b) <= 2 ? 'next' : 'across');

/** The turn of the top that brings the one on top over the slot of the other, an edge over the front or back of it. */
function turnBetween(corner: Place, edge: Place): string | undefined {
  if (isTop(corner) === isTop(edge)) return undefined;
  const [from, to] = isTop(corner)
    ? [roundOf(corner), roundOf(edge)]
    : [roundOf(edge), corner.includes('F') ? roundOf('UF') : roundOf('UB')];
  return ['none', 'U', 'U2', "U'"][((to - from + 8) % 8) / 2];
}

/** What looks down once a face that lifts the edge has taken the corner down with it. */
function downWhenHidden(seen: Seen, faces: string): string | undefined {
  const edge = placeOf(seen.edge);
  if (isTop(edge) || !isTop(placeOf(seen.corner))) return undefined;
  const layer = [...edge].find((face) => faces.includes(face))! as 'R';
  const lift = ([1, 3] as const)
    .map((quarters) => afterTurns([{ layer, quarters }]))
    .find((by) => isTop(placeOf(moved(seen.edge, by))))!;
  let { corner } = seen;
  for (let i = 0; i < 4; i++, corner = moved(corner, U)) {
    const after = placeOf(moved(corner, lift));
    if (isTop(after)) continue;
    return coloursOf({ ...seen, corner: moved(corner, lift) }, 'corner').get('D') === 'D' ? 'cross' : 'another';
  }
  return undefined;
}

/** Where a piece is, by the words that say it. */
const WHERE: Readonly<Record<string, (place: Place, own: Slot) => boolean>> = {
  'in its own slot': (place, own) => place === own || place === cornerOf(own),
  'on top': isTop,
  'in a foreign slot': (place, own) => !isTop(place) && place !== own && place !== cornerOf(own),
  'front right': (place) => roundOf(place) === 0,
  'front left': (place) => roundOf(place) === 2,
  'back left': (place) => roundOf(place) === 4,
  'back right': (place) => roundOf(place) === 6,
  'on top in front': (place) => place === 'UF',
  'on top at the back': (place) => place === 'UB',
  'on top at the left': (place) => place === 'UL',
  'on top at the right': (place) => place === 'UR',
  'in front': (place) => place.includes('F'),
  behind: (place) => place.includes('B'),
  'neither in front nor behind': (place) => !/[FB]/.test(place),
  'at the left': (place) => place.includes('L'),
  'at the right': (place) => place.includes('R'),
  'neither left nor right': (place) => !/[LR]/.test(place),
  "in or over the pair's own slot": (place, own) => distance(place, own) === 'same',
  "next to the pair's own slot": (place, own) => distance(place, own) === 'next',
  "across from the pair's own slot": (place, own) => distance(place, own) === 'across',
};
const FROM_CORNER: Readonly<Record<string, string>> = {
  'in one line with the corner': 'same',
  'next to the corner': 'next',
  'across from the corner': 'across',
};
const SLOTS_APART: Readonly<Record<string, readonly string[]>> = {
  'one slot': ['same'],
  'slots next to each other': ['next'],
  'slots across': ['across'],
  'two slots': ['next', 'across'],
};
const GOING_ROUND: Readonly<Record<string, number>> = {
  'next at the right': 1,
  'beyond, at the right': 3,
  'beyond, at the left': 5,
  'next at the left': 7,
};
const COLOUR = "the (?:edge's (?:top|front or back|left or right)|corner's (?:top|front or back|left or right)) colour";
const BESIDE = "the corner's colour beside \\w+";

const oneOf = (words: readonly string[]): string => {
  const any = `(?:${[...words].sort((a, b) => b.length - a.length).join('|')})`;
  return `(${any}(?:(?:, | or )${any})*)`;
};
/** Which of some words stand in an answer such as `up or down`. */
function said(answer: string, words: readonly string[]): string[] {
  const any = new RegExp([...words].sort((a, b) => b.length - a.length).join('|'), 'g');
  return answer.match(any) ?? [];
}

/** A form of statement, and whether it is so; undefined where its words name nothing to be seen, or not which of two. */
interface Form {
  readonly form: RegExp;
  readonly isSo: (words: readonly string[], seen: Seen) => boolean | undefined;
}

const FORMS: readonly Form[] = [
  {
    form: new RegExp(`the edge is ${oneOf(Object.keys(FROM_CORNER))}`, 'y'),
    isSo: ([answer], { corner, edge }) =>
      said(answer!, Object.keys(FROM_CORNER)).some(
        (words) => FROM_CORNER[words] === distance(placeOf(corner), placeOf(edge)),
      ),
  },
  {
    form: new RegExp(`corner and edge are in ${oneOf(Object.keys(SLOTS_APART))}`, 'y'),
    isSo: ([answer], { corner, edge }) => {
      const places = [placeOf(corner), placeOf(edge)] as const;
      if (places.some(isTop)) return undefined;
      return said(answer!, Object.keys(SLOTS_APART)).some((words) => SLOTS_APART[words]!.includes(distance(...places)));
    },
  },
  {
    form: /the edge is (good|bad)/y,
    isSo: ([answer], seen) => isGood(seen) === (answer === 'good'),
  },
  {
    form: new RegExp(`the (corner|edge) is ${oneOf(Object.keys(WHERE))}`, 'y'),
    isSo: ([piece, answer], seen) =>
      said(answer!, Object.keys(WHERE)).some((words) => WHERE[words]!(placeOf(seen[piece as Piece]), seen.slot)),
  },
  {
    form: new RegExp(`(\\w+) on the corner faces ${oneOf(Object.keys(SIDES))}`, 'y'),
    isSo: ([colour, answer], { cross, corner }) =>
      colour === cross
        ? said(answer!, Object.keys(SIDES)).some((words) => SIDES[words]!.includes(faceOf(corner[0]!)))
        : undefined,
  },
  {
    form: new RegExp(`(${COLOUR}) is (like|unlike) (${COLOUR}|${BESIDE})`, 'y'),
    isSo: ([one, answer, two], seen) => {
      const [a, b] = [named(one!, seen), named(two!, seen)];
      if (a.length === 0 || b.length === 0) return undefined;
      const likes = new Set(a.flatMap((x) => b.map((y) => x === y)));
      // Of several colours that could be meant a student may take any: it is so if it is so of one.
      return likes.has(answer === 'like');
    },
  },
  {
    form: /(?:the sides (match|do not match) when the corner is above the edge|their sides (match|do not match))/y,
    isSo: ([above, same], seen) => {
      const match = sidesMatch(seen);
      return match === undefined ? undefined : match === ((above ?? same) === 'match');
    },
  },
  {
    form: /(?:(another colour)|(\w+)) faces down once (R or L|F or B) has taken the corner down/y,
    isSo: ([another, colour, faces], seen) => {
      const down = downWhenHidden(seen, faces!.replace(' or ', ''));
      if (down === undefined || (another === undefined && colour !== seen.cross)) return undefined;
      return (down === 'another') === (another !== undefined);
    },
  },
  {
    form: new RegExp(`the turn of the top between them is ${oneOf(['none', "U'", 'U2', 'U'])}`, 'y'),
    isSo: ([answer], { corner, edge }) => {
      const turn = turnBetween(placeOf(corner), placeOf(edge));
      return turn === undefined ? undefined : answer!.split(/, | or /).includes(turn);
    },
  },
  {
    form: new RegExp(`going round the top, the edge is ${oneOf(Object.keys(GOING_ROUND))} of the corner`, 'y'),
    isSo: ([answer], { corner, edge }) => {
      const places = [placeOf(corner), placeOf(edge)] as const;
      if (!places.every(isTop)) return undefined;
      const way = (roundOf(places[1]) - roundOf(places[0]) + 8) % 8;
      return said(answer!, Object.keys(GOING_ROUND)).some((words) => GOING_ROUND[words] === way);
    },
  },
];
const BETWEEN = /, and |, | and /y;

/** Whether a statement, or several as one sentence, is so; or from where on it cannot be read. */
export function isTrue(sentence: string, seen: Seen): boolean | { readonly unread: string } {
  const text = `${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`.replaceAll('’', "'").replaceAll('′', "'");
  let at = 0;
  let isSo = true;
  while (true) {
    // The longest reading: "the edge is in front" goes on in "in front of" nothing, but "on top" in "on top at the left".
    const found = FORMS.flatMap(({ form, isSo: test }) => {
      form.lastIndex = at;
      const match = form.exec(text);
      return match ? [{ match, test }] : [];
    }).sort((a, b) => b.match[0].length - a.match[0].length)[0];
    if (!found) return { unread: text.slice(at) };
    isSo &&= found.test(found.match.slice(1), seen) === true;
    at += found.match[0].length;
    if (at === text.length) return isSo;
    BETWEEN.lastIndex = at;
    const between = BETWEEN.exec(text);
    if (!between) return { unread: text.slice(at) };
    at += between[0].length;
  }
}
