/**
 * How easily hands do a solution. The same face turns can be executed in many ways: turn the whole cube first, a wide turn
 * in place of the opposite face, a slice for two opposite faces. `easiest` finds the way that a coach would show: with no
 * turn of B where another has none, then with none of D, then the cheapest, an exact minimum over the holds of the cube
 * that are allowed and all grips of the hands. Unless more is allowed, a solution is turns of faces, with a y before the
 * first where that spares turns of B, so that the cross stays at the bottom.
 *
 * No published measure of the cost of a turn is known; the figures of HANDS are the project's own, from what coaches
 * say is easy (common practice, no source), and a club can change them. They are in units of one turn of U.
 */
import type { Face } from '../faces.ts';
import { fromTheSide } from '../sides.ts';
import { type FaceTurn, faceTurn } from '../spots.ts';
import { type Quarters, TURNS, type Turn, turnOf, writeTurns } from '../turns.ts';
import { centreAt, effect, STRAIGHT, type View } from '../view.ts';
import type { Allowed } from './allowed.ts';

/** What turns cost hands, in units of a quarter turn of U: our own figures, see docs/hands.md. */
export interface HandModel {
  /** One quarter turn of each face, slice or axis of the cube, as the viewer names it. */
  readonly quarter: Readonly<Record<Turn['letter'], number>>;
  /** More for a half turn than for a quarter. */
  readonly half: number;
  /** More for a wide turn than for its face. */
  readonly wide: number;
  /** Letting go and taking hold anew, when a wrist can turn no further. */
  readonly regrip: number;
  /** Less for a turn that the same hand goes on with: a trigger flows. */
  readonly flow: number;
  /** What may be used besides turns of faces. */
  readonly allow: readonly Allowed[];
  /** The cube is not turned at all, not even by a y before the first turn that spares turns of B. */
  readonly still: boolean;
}

/** For those who lead with the right hand. */
export const HANDS: HandModel = {
  quarter: { U: 1, R: 1, L: 1.3, F: 1.6, D: 1.9, B: 2.9, M: 1.9, E: 3, S: 3, x: 1.8, y: 2, z: 2.6 },
  half: 0.4,
  wide: 0.3,
  regrip: 1.2,
  flow: 0.15,
  allow: [],
  still: false,
};

/** A wrist turns one quarter either way from where it is at ease; R and L turn it, all else is done by fingers. */
type Wrist = -1 | 0 | 1;

/** How the cube is held, how far each wrist has turned, and which hand turned last. */
interface Grip {
  readonly view: View;
  readonly right: Wrist;
  readonly left: Wrist;
  readonly last: 'right' | 'left' | 'none';
}

const WRISTS: readonly Wrist[] = [0, 1, -1];
const LASTS: readonly Grip['last'][] = ['none', 'right', 'left'];
const VIEWS: readonly View[] = Array.from({ length: 24 }, (_, view) => view);

/** Every grip once: a grip is known by its number, which is cheaper to ask for than what it says. */
const GRIPS: readonly Grip[] = VIEWS.flatMap((view) =>
  WRISTS.flatMap((right) => WRISTS.flatMap((left) => LASTS.map((last) => ({ view, right, left, last })))),
);
type GripNumber = number;

const numberOf = ({ view, right, left, last }: Grip): GripNumber =>
  ((view * 3 + WRISTS.indexOf(right)) * 3 + WRISTS.indexOf(left)) * 3 + LASTS.indexOf(last);

/** Which hand a turn is of: fingers of U and D are the right hand's, and flow with it. */
const HAND_OF: Readonly<Partial<Record<Turn['letter'], 'right' | 'left'>>> = { R: 'right', L: 'left', M: 'right' };

const signed = (quarters: Quarters): number => (quarters === 3 ? -1 : quarters);

/** What a wrist has to do for a turn of its face: where it ends, and whether it must take hold anew. */
function wristAfter(wrist: Wrist, by: number): { wrist: Wrist; regrips: number } {
  // A half turn may go either way round.
  const ends = (Math.abs(by) === 2 ? [wrist + 2, wrist - 2] : [wrist + by]).filter((w) => w >= -1 && w <= 1);
  const end = ends.sort((a, b) => Math.abs(a) - Math.abs(b))[0];
  if (end !== undefined) return { wrist: end as Wrist, regrips: 0 };
  // From the other end of its reach: one quarter of a half turn is done by the other hand's fingers.
  return { wrist: Math.sign(by) as Wrist, regrips: 1 };
}

function costOf(turn: Turn, grip: Grip, model: HandModel): { cost: number; grip: Grip } {
  const { letter, kind, quarters } = turn;
  const { view } = effect(turn, grip.view);
  let cost = model.quarter[letter] + (quarters === 2 ? model.half : 0) + (kind === 'wide' ? model.wide : 0);
  if (kind === 'rotation') {
    return { cost, grip: { view, right: 0, left: 0, last: 'none' } };
  }
  let { right, left } = grip;
  const hand = HAND_OF[letter];
  if (letter === 'R') {
    const after = wristAfter(right, signed(quarters));
    right = after.wrist;
    cost += after.regrips * model.regrip;
  } else if (letter === 'L') {
    // Seen from the left a turn of L goes the other way for the wrist.
    const after = wristAfter(left, -signed(quarters));
    left = after.wrist;
    cost += after.regrips * model.regrip;
  }
  const flows = hand === undefined || grip.last === 'none' || grip.last === hand;
  // No turn is worth less than nothing, whatever a club writes.
  if (flows && grip.last !== 'none') cost = Math.max(0, cost - model.flow);
  return { cost, grip: { view, right, left, last: hand ?? grip.last } };
}

/** The rotations that may stand within a solution. */
const rotationsAllowed = ({ allow, still }: HandModel): readonly Turn[] =>
  TURNS.filter(
    ({ kind, letter }) => kind === 'rotation' && !still && allow.includes(letter === 'y' ? 'rotations' : 'tipping'),
  );

/**
 * By 18 * view + a face turn: the written turns whose first or only face turn it is, seen from that view. The face
 * itself, a wide turn of the opposite one, and slices, whose two face turns may come in either order.
 */
interface Way {
  readonly turn: Turn;
  /** The other face turn of a slice. */
  readonly second: FaceTurn | undefined;
}

const WAYS: readonly (readonly Way[])[] = (() => {
  const ways: Way[][] = Array.from({ length: 24 * 18 }, () => []);
  for (const turn of TURNS.filter(({ kind }) => kind !== 'rotation')) {
    for (const view of VIEWS) {
      const [one, two] = effect(turn, view).faceTurns;
      ways[18 * view + one!]!.push({ turn, second: two });
      if (two !== undefined) ways[18 * view + two]!.push({ turn, second: one });
    }
  }
  return ways;
})();

export interface Execution {
  /** As the hands do it: with rotations, wide turns and slices where they make it easier. */
  readonly turns: readonly Turn[];
  readonly cost: number;
}

/** What a turn costs from a grip, and the grip that it ends in. */
interface Move {
  readonly cost: number;
  readonly grip: GripNumber;
}

/** Models are few and used for thousands of solutions. */
const knownMoves = new WeakMap<HandModel, Move[]>();

function movesOf(model: HandModel): Move[] {
  const known = knownMoves.get(model) ?? new Array<Move>(TURNS.length * GRIPS.length);
  knownMoves.set(model, known);
  return known;
}

/** By turn and grip, each worked out when it is first asked for. */
function move(moves: Move[], turn: Turn, from: GripNumber, model: HandModel): Move {
  const at = GRIPS.length * turn.index + from;
  const known = moves[at];
  if (known) return known;
  const { cost, grip } = costOf(turn, GRIPS[from]!, model);
  const made = { cost, grip: numberOf(grip) };
  moves[at] = made;
  return made;
}

/** The turns to a grip, the last first. */
interface Done {
  readonly before: Done | undefined;
  readonly turns: readonly Turn[];
}

interface Reached {
  readonly cost: number;
  readonly grip: GripNumber;
  readonly done: Done | undefined;
}

function turnsOf(done: Done | undefined): readonly Turn[] {
  const parts: (readonly Turn[])[] = [];
  for (let one = done; one; one = one.before) parts.unshift(one.turns);
  return parts.flat();
}

/** Keeps the cheapest way to each grip; among equals the one found first, so that the answer stays the same. */
function keep(
  reached: Map<GripNumber, Reached>,
  cost: number,
  grip: GripNumber,
  before: Done | undefined,
  turns?: readonly Turn[],
): void {
  const known = reached.get(grip);
  if (known && known.cost <= cost + 1e-9) return;
  reached.set(grip, { cost, grip, done: turns ? { before, turns } : before });
}

/** Whoever takes hold of a cube does so with the wrists turned as the next turns want them. */
const ANEW: readonly (readonly GripNumber[])[] = VIEWS.map((view) =>
  GRIPS.flatMap((grip, number) => (grip.view === view && grip.last === 'none' ? [number] : [])),
);
const anew = (view: View): readonly GripNumber[] => ANEW[view]!;

/** Each turn as a list of one, made once. */
const ALONE: readonly (readonly Turn[])[] = TURNS.map((turn) => [turn]);

interface Rotation {
  readonly to: View;
  readonly cost: number;
  readonly turns: readonly Turn[];
}

const rotationCost = ({ letter, quarters }: Turn, model: HandModel): number =>
  model.quarter[letter] + (quarters === 2 ? model.half : 0);

/**
 * From each view the cheapest way to every other. Two rotations reach any; where a club's figures make more of them
 * cheaper, shortest paths find those (Floyd, Algorithm 97, Communications of the ACM 5(6), 1962).
 */
function rotationsOf(model: HandModel): readonly (readonly Rotation[])[] {
  const rotations = rotationsAllowed(model);
  const ways = VIEWS.map((from) => {
    const best = new Map<View, Rotation>();
    const offer = (to: View, turns: readonly Turn[]): void => {
      const cost = turns.reduce((sum, turn) => sum + rotationCost(turn, model), 0);
      if (to !== from && cost < (best.get(to)?.cost ?? Number.POSITIVE_INFINITY)) best.set(to, { to, cost, turns });
    };
    for (const first of rotations) {
      const middle = effect(first, from).view;
      offer(middle, [first]);
      for (const second of rotations) offer(effect(second, middle).view, [first, second]);
    }
    return best;
  });
  for (const middle of VIEWS) {
    for (const from of VIEWS) {
      for (const to of VIEWS) {
        const [one, two, known] = [ways[from]!.get(middle), ways[middle]!.get(to), ways[from]!.get(to)];
        if (!one || !two || !known || one.cost + two.cost > known.cost - 1e-9) continue;
        ways[from]!.set(to, { to, cost: one.cost + two.cost, turns: [...one.turns, ...two.turns] });
      }
    }
  }
  return ways.map((best) => [...best.values()]);
}

const knownRotations = new WeakMap<HandModel, ReturnType<typeof rotationsOf>>();

function rotationsFor(model: HandModel): ReturnType<typeof rotationsOf> {
  const known = knownRotations.get(model) ?? rotationsOf(model);
  knownRotations.set(model, known);
  return known;
}

/** From each grip also those that rotations of the cube lead to: only the cheapest grip of a view is worth turning from. */
function withRotations(reached: Map<GripNumber, Reached>, model: HandModel): void {
  const cheapest: (Reached | undefined)[] = VIEWS.map(() => undefined);
  for (const one of reached.values()) {
    const { view } = GRIPS[one.grip]!;
    if (one.cost < (cheapest[view]?.cost ?? Number.POSITIVE_INFINITY)) cheapest[view] = one;
  }
  const rotations = rotationsFor(model);
  const best: ({ cost: number; from: Reached; turns: readonly Turn[] } | undefined)[] = VIEWS.map(() => undefined);
  for (const [view, from] of cheapest.entries()) {
    if (!from) continue;
    for (const { to, cost, turns } of rotations[view]!) {
      if (from.cost + cost >= (best[to]?.cost ?? Number.POSITIVE_INFINITY)) continue;
      best[to] = { cost: from.cost + cost, from, turns };
    }
  }
  for (const view of VIEWS) {
    const one = best[view];
    if (one) for (const grip of anew(view)) keep(reached, one.cost, grip, one.from.done, one.turns);
  }
}

/**
 * No turn of B is better than any saving, then none of D: hands do them blindly, or break the cross. A club that finds
 * them no harder than we find F is not kept from them.
 */
function strangeness(turns: readonly Turn[], { quarter }: HandModel): number {
  const has = (letter: 'B' | 'D'): boolean =>
    quarter[letter] > HANDS.quarter.F && turns.some((turn) => turn.letter === letter);
  return (has('B') ? 2 : 0) + (has('D') ? 1 : 0);
}

/** The better way first: with fewer strange faces, then the cheaper, then by what is written. */
export const byEase =
  (model: HandModel) =>
  (a: Execution, b: Execution): number =>
    strangeness(a.turns, model) - strangeness(b.turns, model) ||
    a.cost - b.cost ||
    (writeTurns(a.turns) < writeTurns(b.turns) ? -1 : 1);

const asWritten = (turns: readonly Turn[], model: HandModel): Execution => ({
  turns,
  cost: costAsWritten(turns, model),
});

const TURNED_FIRST = ([1, 2, 3] as const).map((quarters) => ({
  quarters,
  first: turnOf('rotation', 'y', quarters),
}));

/** Whether the face at the back is turned, or layers with it. */
export const turnsBehind = (turns: readonly Turn[]): boolean => turns.some(({ letter }) => letter === 'B');

/** Turns as they are written, or from another side after a y first, where that spares turns of B. */
export function heldForHands(turns: readonly Turn[], model: HandModel = HANDS): Execution {
  const ways = [asWritten(turns, model)];
  if (!model.still && turnsBehind(turns)) {
    for (const { quarters, first } of TURNED_FIRST) {
      const from = [first, ...fromTheSide(turns, quarters)];
      if (!turnsBehind(from)) ways.push(asWritten(from, model));
    }
  }
  return ways.reduce((a, b) => (byEase(model)(b, a) < 0 ? b : a));
}

/** The easiest way to execute face turns that are named as the viewer sees the cube now. */
export function easiest(turns: readonly Turn[], model: HandModel = HANDS): Execution {
  const held = heldForHands(turns, model);
  if (model.allow.length === 0) return held;
  const faceTurns = turns.map((t) => faceTurn(t.letter as Face, t.quarters));
  const best = cheapest(faceTurns, model);
  return [held, ...(best ? [{ turns: turnsOf(best.done), cost: rounded(best.cost) }] : [])].sort(byEase(model))[0]!;
}

const isUpright = ({ grip }: Reached): boolean => centreAt(GRIPS[grip]!.view, 'U') === 'U';

/** The cheapest with all that is allowed. */
function cheapest(faceTurns: readonly FaceTurn[], model: HandModel): Reached | undefined {
  const steps = [...faceTurns, 0].map(() => new Map<GripNumber, Reached>());
  const moves = movesOf(model);
  const kinds: Readonly<Record<Turn['kind'], boolean>> = {
    face: true,
    wide: model.allow.includes('wide'),
    slice: model.allow.includes('slices'),
    rotation: false,
  };
  const turnsTheCube = rotationsAllowed(model).length > 0;
  for (const grip of anew(STRAIGHT)) keep(steps[0]!, 0, grip, undefined);
  for (let at = 0; at < faceTurns.length; at++) {
    const reached = steps[at]!;
    if (turnsTheCube) withRotations(reached, model);
    for (const one of reached.values()) {
      for (const { turn, second } of WAYS[18 * GRIPS[one.grip]!.view + faceTurns[at]!]!) {
        if (!kinds[turn.kind] || (second !== undefined && second !== faceTurns[at + 1])) continue;
        const { cost, grip } = move(moves, turn, one.grip, model);
        const next = steps[second === undefined ? at + 1 : at + 2]!;
        keep(next, one.cost + cost, grip, one.done, ALONE[turn.index]);
      }
    }
  }
  const ends = [...steps.at(-1)!.values()].filter((one) => model.allow.includes('tipping') || isUpright(one));
  return ends.sort((a, b) => a.cost - b.cost)[0];
}

const rounded = (cost: number): number => Math.round(cost * 100) / 100;

/** What a solution costs as it is written, with all its rotations, from the best grips for it. */
export function costAsWritten(turns: readonly Turn[], model: HandModel = HANDS): number {
  let reached = new Map<GripNumber, Reached>();
  const moves = movesOf(model);
  for (const grip of anew(STRAIGHT)) keep(reached, 0, grip, undefined);
  for (const turn of turns) {
    const next = new Map<GripNumber, Reached>();
    for (const one of reached.values()) {
      const { cost, grip } = move(moves, turn, one.grip, model);
      for (const held of turn.kind === 'rotation' ? anew(GRIPS[grip]!.view) : [grip]) {
        keep(next, one.cost + cost, held, undefined);
      }
    }
    reached = next;
  }
  return rounded(Math.min(...[...reached.values()].map((one) => one.cost)));
}
