/**
 * Exact search: every shortest solution, and the next longer ones. Lengths are searched one after the other, each in
 * full before the next, so that the first length with a solution is proved to be the shortest.
 */
import { CORNER_PIECES, type Cube, copyOf, homeSpot, type Piece, turnFace } from '../../../cube/cube.ts';
import { FACES, type Face } from '../../../cube/faces.ts';
import { areHome, type Goal } from '../../../cube/goal.ts';
import type { Answer, FindOptions } from '../../../cube/search/answer.ts';
import { faceTurnsIn, type Limits, MOST_TURNS_NEEDED, type StopConditions } from '../../../cube/search/limits.ts';
import { followersAmong, isNormal, MAY_FOLLOW } from '../../../cube/search/normal-form.ts';
import { CORNER_AFTER, EDGE_AFTER, type FaceTurn } from '../../../cube/spots.ts';
import { TURNS } from '../../../cube/turns.ts';
import { centreAt, seenAt } from '../../../cube/view.ts';
import { frameOf, keyIn, maskIn, slotOfGoal } from './frame.ts';
import { halfWordIndex } from './half-word-index.ts';
import { type Budget, eachWord } from './words.ts';

const afterTable = (piece: Piece): Uint8Array => (piece < CORNER_PIECES ? CORNER_AFTER : EDGE_AFTER);

function areHomeAfter(spots: Uint8Array, turns: Uint8Array, length: number, pieces: readonly Piece[]): boolean {
  for (const piece of pieces) {
    const after = afterTable(piece);
    let spot = spots[piece]!;
    for (let i = 0; i < length; i++) spot = after[24 * turns[i]! + spot]!;
    if (spot !== homeSpot(piece)) return false;
  }
  return true;
}

/** Puts opposite faces that the frame turned into the wrong order right; a word of the walk has at most two in a row. */
function putInOrder(word: Uint8Array, from: number): void {
  for (let i = from + 1; i < word.length; i++) {
    const one = word[i - 1]!;
    const two = word[i]!;
    if (MAY_FOLLOW[18 * one + two] === 1) continue;
    word[i - 1] = two;
    word[i] = one;
  }
}

/** All that stays the same from length to length. Written turns are the viewer's; the walk's are those of the frame. */
interface Search {
  /** Lengths below this one hold no solution, because of the limits. */
  readonly least: number;
  /** Lengths above this one hold none. */
  readonly greatest: number;
  /** Visits each solution of a length, in written turns, until a visit returns true; whether it has seen all. */
  eachSolution(length: number, budget: Budget, visit: (word: Uint8Array) => boolean): boolean;
}

function searchFor(cube: Cube, goal: Pick<Goal, 'base' | 'pieces'>, limits: Limits): Search {
  const { pieces } = goal;
  const { faces = FACES } = limits;
  const begins = faceTurnsIn(limits.begins ?? []);
  const ends = faceTurnsIn(limits.ends ?? []);
  const isAllowed = Array.from({ length: 18 }, (_, t) => faces.includes(FACES[Math.floor(t / 3)]!));
  const least = Math.max(begins.length, ends.length);

  const centreOf = Uint8Array.from(isAllowed, (_, t) => turnOfCentre(t, (face) => centreAt(cube.view, face)));
  const states = [copyOf(cube)];
  for (const t of begins) {
    const next = copyOf(states.at(-1)!);
    turnFace(next, centreOf[t]!);
    states.push(next);
  }
  const start = states.pop()!;
  const isPastGoal = states.some((state) => areHome(state, pieces));
  const canBe = isNormal(begins) && isNormal(ends) && [...begins, ...ends].every((t) => isAllowed[t]) && !isPastGoal;
  // Whatever follows a goal that is reached would have passed through it.
  const greatest = !canBe ? -1 : areHome(start, pieces) ? begins.length : Number.POSITIVE_INFINITY;

  const obeys = (word: Uint8Array): boolean =>
    isNormal(word) &&
    word.every((t) => isAllowed[t]) &&
    ends.every((t, i) => word[word.length - ends.length + i] === t);

  const frame = frameOf(slotOfGoal(goal));
  const index = halfWordIndex(maskIn(frame, pieces));
  const key = keyIn(frame, start);
  const writtenOf = frame.turnsBack.map((t) => turnOfCentre(t, (centre) => seenAt(cube.view, centre)));
  const followers = followersAmong(writtenOf.flatMap((written, t) => (isAllowed[written] ? [t] : [])));

  return {
    least,
    greatest,
    eachSolution(length, budget, visit) {
      const written = Uint8Array.from({ length }, (_, i) => begins[i] ?? 0);
      const byCentre = new Uint8Array(length);
      return eachWord(index, key, length - begins.length, followers, budget, (word) => {
        for (let i = 0; i < word.length; i++) written[begins.length + i] = writtenOf[word[i]!]!;
        for (let i = 0; i < length; i++) byCentre[i] = centreOf[written[i]!]!;
        // Most words that are right by their key disturb kept slots; this holds in whatever order opposite faces stand.
        if (!areHomeAfter(cube.spots, byCentre, length, pieces)) return false;
        putInOrder(written, begins.length);
        if (!obeys(written)) return false;
        for (let i = 0; i < length; i++) byCentre[i] = centreOf[written[i]!]!;
        for (let i = 0; i < length; i++) if (areHomeAfter(cube.spots, byCentre, i, pieces)) return false;
        return visit(written);
      });
    },
  };
}

/** A turn of a face, renamed as its face is. */
const turnOfCentre = (turn: FaceTurn, rename: (face: Face) => Face): FaceTurn =>
  3 * FACES.indexOf(rename(FACES[Math.floor(turn / 3)]!)) + (turn % 3);

function budgetOf({ nodes = Number.POSITIVE_INFINITY, stop = () => false }: StopConditions): Budget {
  return { nodes, stop };
}

const byLengthThenTurn = (a: Uint8Array, b: Uint8Array): number => {
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  return a.length - b.length || (a[i] ?? 0) - (b[i] ?? 0);
};

/**
 * All shortest solutions of a state, and those of up to `longer` turns more: in normal form, each once, none that has
 * reached the goal before its end. The state may be any: neither the base nor anything else need be whole. A cube
 * solved already has one solution, the empty one, and none longer.
 *
 * A solution of n turns is met in the middle: its first n - 5 turns are walked, the last five looked up.
 */
export function findSolutions(cube: Cube, goal: Pick<Goal, 'base' | 'pieces'>, options: FindOptions = {}): Answer {
  const { longer = 0, most = MOST_TURNS_NEEDED } = options;
  const search = searchFor(cube, goal, options);
  const budget = budgetOf(options);
  const words: Uint8Array[] = [];
  let shortest: number | undefined;
  let searched = -1;
  for (let length = 0; length <= Math.min(most, (shortest ?? most) + longer); length++) {
    const isEmpty = length < search.least || length > search.greatest;
    const whole =
      isEmpty ||
      search.eachSolution(length, budget, (word) => {
        words.push(word.slice());
        shortest ??= length;
        return false;
      });
    if (!whole) break;
    searched = length;
  }
  return {
    shortest,
    solutions: words.sort(byLengthThenTurn).map((word) => ({
      turns: Array.from(word, (t) => TURNS[t]!),
      length: word.length,
    })),
    searched,
    proved: shortest !== undefined && searched >= shortest + longer,
  };
}

/** The length of a shortest solution and nothing else: ends with the first solution that it meets. */
export function shortestLength(
  cube: Cube,
  goal: Pick<Goal, 'base' | 'pieces'>,
  options: StopConditions = {},
): { shortest: number | undefined; proved: boolean } {
  const search = searchFor(cube, goal, {});
  const budget = budgetOf(options);
  let shortest: number | undefined;
  for (let length = 0; length <= (options.most ?? MOST_TURNS_NEEDED) && shortest === undefined; length++) {
    const whole = search.eachSolution(length, budget, () => {
      shortest = length;
      return true;
    });
    if (!whole) break;
  }
  return { shortest, proved: shortest !== undefined };
}
