/**
 * Whether a set-up gives its answer away: the answer is the set-up taken back, as the hands do it. Compared as turns of the
 * faces, so that a rotation of the cube, a wide turn, or two opposite faces in the other order hide nothing.
 */
import type { FaceTurn } from './spots.ts';
import { inverse, type Turn } from './turns.ts';
import { effect, STRAIGHT } from './view.ts';

function faceTurnsOf(turns: readonly Turn[]): FaceTurn[] {
  let view = STRAIGHT;
  return turns.flatMap((turn) => {
    const done = effect(turn, view);
    view = done.view;
    return done.faceTurns;
  });
}

const axisOf = (turn: FaceTurn): number => Math.floor(turn / 6);
const isTop = (turn: FaceTurn | undefined): boolean => turn !== undefined && turn < 3;

/** Opposite faces in one order, and no turns of U at the ends, which hide nothing of an answer either. */
function core(turns: readonly Turn[]): string {
  const all = faceTurnsOf(turns);
  for (let i = 1; i < all.length; i++) {
    const [before, now] = [all[i - 1]!, all[i]!];
    if (axisOf(before) === axisOf(now) && before > now) [all[i - 1], all[i]] = [now, before];
  }
  const first = all.findIndex((t) => !isTop(t));
  const last = all.findLastIndex((t) => !isTop(t));
  return all.slice(Math.max(first, 0), last + 1).join(' ');
}

export const givesAway = (setup: readonly Turn[], answer: readonly Turn[]): boolean =>
  core(inverse(setup)) === core(answer);
