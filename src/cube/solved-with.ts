/**
 * Whether turns would solve with a few of them replaced, for hundreds of replacements in the same turns. The turns before
 * the place are done once, those after it are taken back from the solved state once for each view in which they can
 * begin; a replacement is then a look-up or two for each piece of the goal instead of all turns again.
 */
import type { Cube } from './cube.ts';
import type { Goal } from './goal.ts';
import { HOME_SPOT, numberedSpot, SPOT_AFTER, SPOTS } from './solves.ts';
import type { FaceTurn } from './spots.ts';
import type { Turn } from './turns.ts';
import { effect, type View } from './view.ts';

const VIEWS = 24;
const undone = (turn: FaceTurn): FaceTurn => turn - (turn % 3) + (2 - (turn % 3));

/** Asks whether `turns` solve with `cut` of them from index `at` on replaced by `put`. */
export type SolvedWith = (at: number, cut: number, put: readonly Turn[]) => boolean;

export function solvedWith(cube: Cube, turns: readonly Turn[], goal: Goal): SolvedWith {
  const { pieces } = goal;
  const moved = (spots: readonly number[], faceTurns: readonly FaceTurn[]): number[] =>
    spots.map((spot) => faceTurns.reduce((s, turn) => SPOT_AFTER[SPOTS * turn + s]!, spot));

  let spots = pieces.map((piece) => numberedSpot(piece, cube.spots[piece]!));
  let { view } = cube;
  const before: { spots: readonly number[]; view: View }[] = [{ spots, view }];
  for (const turn of turns) {
    const e = effect(turn, view);
    spots = moved(spots, e.faceTurns);
    view = e.view;
    before.push({ spots, view });
  }

  const home = pieces.map((piece) => HOME_SPOT[piece]!);
  const needed: (readonly number[] | undefined)[] = [];
  /** Where the pieces must be, for the turns from `at` on, begun in this view, to solve. */
  const neededAt = (at: number, from: View): readonly number[] => {
    if (at === turns.length) return home;
    const known = needed[VIEWS * at + from];
    if (known) return known;
    const e = effect(turns[at]!, from);
    const found = moved(neededAt(at + 1, e.view), e.faceTurns.map(undone).reverse());
    needed[VIEWS * at + from] = found;
    return found;
  };

  return (at, cut, put) => {
    const start = before[at]!;
    let seen = start.view;
    let rows: readonly FaceTurn[] = [];
    for (const turn of put) {
      const e = effect(turn, seen);
      rows = rows.length === 0 ? e.faceTurns : [...rows, ...e.faceTurns];
      seen = e.view;
    }
    const wanted = neededAt(at + cut, seen);
    for (let i = 0; i < pieces.length; i++) {
      let spot = start.spots[i]!;
      for (const turn of rows) spot = SPOT_AFTER[SPOTS * turn + spot]!;
      if (spot !== wanted[i]) return false;
    }
    return true;
  };
}
