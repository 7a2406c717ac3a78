/** Making a set-up for a case: short, easy to turn, and not the answer taken back. */

import { afterTurns } from '../../cube/cube.ts';
import { faceTurnsOf } from '../../cube/face-turns.ts';
import { givesAway } from '../../cube/gives-away.ts';
import { areHome } from '../../cube/goal.ts';
import { isNormal } from '../../cube/search/normal-form.ts';
import { SIDES } from '../../cube/sides.ts';
import { cornerOf, edgeOf } from '../../cube/spots.ts';
import { inverse, isTurnOfTop, type Quarters, type Turn, turnOf, writeTurns } from '../../cube/turns.ts';
import { type Address, addressOf, goalAt, isSolvedAddress } from './address.ts';
import { cubeWithPair } from './place-pair.ts';
import type { Slot } from './slots.ts';
import { solutionsOf } from './solutions.ts';
import { pairSubject } from './subject.ts';

/**
 * What a turn asks of someone who sets up many cases in a row. Faces at the back and below are left alone where others do:
 * students seldom turn them. Our own figures.
 */
const EFFORT: Readonly<Record<string, number>> = { U: 1, R: 1, L: 1.2, F: 1.4, B: 50, D: 20 };
/** Of a set-up with a turn of one of those. */
const STRANGE = 20;
const HALF_TURN = 0.3;

/** Of a set-up, for the one who has to do it. */
const effortOf = (turns: readonly Turn[]): number =>
  turns.reduce((sum, t) => sum + (EFFORT[t.letter] ?? 3) + (t.quarters === 2 ? HALF_TURN : 0), 0);

/** Turns of faces that solve an address of a slot, all slots kept that can be, up to `longer` turns over the shortest; the shorter first. */
const searched = (address: Address, slot: Slot, longer: number): readonly (readonly Turn[])[] =>
  solutionsOf(pairSubject(address, { slot, open: [] }), longer).solutions.map(({ turns }) => turns);

/** A pair that three turns insert has only its answer, with turns of U, among those of a turn or two more. */
const LONGER = [1, 2, 3, 4];

/** Whether a turn of U stands where it does nothing, in a set-up that takes these turns back. */
const isIdle = (turns: readonly Turn[], address: Address): boolean =>
  isTurnOfTop(turns.at(-1)) || (!isOnTop(address) && isTurnOfTop(turns[0]));

/** Solutions taken back, the easiest to do first, without idle turns. */
const setUpsOf = (solutions: readonly (readonly Turn[])[], address: Address) =>
  solutions
    .filter((turns) => !isIdle(turns, address))
    .map((turns) => ({ turns: inverse(turns), effort: effortOf(inverse(turns)) }))
    .sort((a, b) => a.effort - b.effort || (writeTurns(a.turns) < writeTurns(b.turns) ? -1 : 1));

const QUARTERS = [1, 2, 3] as const;

const isOnTop = ({ corner, edge }: Address): boolean =>
  cornerOf(corner).startsWith('U') || edgeOf(edge).startsWith('U');

export interface SetUpWanted {
  /** It has so many turns, where a set-up as long can be made. */
  readonly least?: number;
  /** Of the case itself, where they are known already. */
  readonly solutions?: (longer: number) => readonly (readonly Turn[])[];
}

/**
 * Turns that bring the pair of `slot` to an address, from any cube whose first two layers are solved. They give none of
 * the answers in `avoid` away; where none is known, not a shortest one. Where the short ones turn faces that students seldom
 * turn, one that goes by another case is taken. No turn of U stands where it does nothing: at the beginning, or at the end
 * with both pieces in slots. Empty for the solved pair.
 */
export function setUpFor(
  address: Address,
  slot: Slot,
  avoid: readonly (readonly Turn[])[],
  { least = 0, solutions = (longer) => searched(address, slot, longer) }: SetUpWanted = {},
): readonly Turn[] {
  if (isSolvedAddress(address)) return [];
  const short = shortSetUp(address, avoid, solutions);
  if (short.effort < STRANGE && short.turns.length >= least) return short.turns;
  const long = longSetUp(address, slot, avoid, Math.max(least, short.turns.length));
  return long && (short.turns.length < least || long.effort < STRANGE) ? long.turns : short.turns;
}

interface Ranked {
  readonly turns: readonly Turn[];
  readonly effort: number;
}

function shortSetUp(
  address: Address,
  avoid: readonly (readonly Turn[])[],
  solutions: (longer: number) => readonly (readonly Turn[])[],
): Ranked {
  for (const longer of LONGER) {
    const all = solutions(longer);
    const shortest = all[0]!;
    const answers = avoid.length > 0 ? avoid : all.filter(({ length }) => length === shortest.length);
    const hiding = setUpsOf(all, address).find(({ turns }) => !answers.some((answer) => givesAway(turns, answer)));
    if (hiding) return hiding;
  }
  throw new Error('every set-up within four turns over the shortest gives an answer away');
}

/** A turn of U or none, then a side face out, a turn of U, and the face back. */
const DETOURS: readonly (readonly Turn[])[] = [[], ...QUARTERS.map((q) => [turnOf('face', 'U', q)])].flatMap((first) =>
  SIDES.flatMap((face) =>
    ([1, 3] as const).flatMap((out) =>
      QUARTERS.map((q) => [
        ...first,
        turnOf('face', face, out),
        turnOf('face', 'U', q),
        turnOf('face', face, (4 - out) as Quarters),
      ]),
    ),
  ),
);

/** Of `least` turns or a few more: solutions, taken back, that go by another case on their way. Undefined if there is none. */
function longSetUp(
  address: Address,
  slot: Slot,
  avoid: readonly (readonly Turn[])[],
  least: number,
): Ranked | undefined {
  const start = cubeWithPair(address, slot);
  const { base, pieces } = goalAt(address, slot);
  const ways = DETOURS.flatMap((detour): Turn[][] => {
    const cube = afterTurns(start, detour);
    const by = areHome(cube, base) && !areHome(cube, pieces) ? addressOf(cube, slot) : undefined;
    if (!by) return [];
    return searched(by, slot, 1)
      .filter(({ length }) => length + detour.length >= least)
      .map((turns) => [...detour, ...turns])
      .filter((turns) => isNormal(faceTurnsOf(turns)));
  });
  const lengths = [...new Set(ways.map(({ length }) => length))].sort((a, b) => a - b).slice(0, 2);
  for (const length of lengths) {
    const ranked = setUpsOf(
      ways.filter((turns) => turns.length === length),
      address,
    );
    const best = ranked.find(({ turns }) => !avoid.some((answer) => givesAway(turns, answer)));
    if (best && (best.effort < STRANGE || length === lengths.at(-1))) return best;
  }
  return undefined;
}
