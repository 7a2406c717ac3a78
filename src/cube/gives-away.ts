/**
 * Whether a set-up gives its answer away: the answer is the set-up taken back, as the hands do it. Compared as turns of the
 * faces, so that a rotation of the cube, a wide turn, or two opposite faces in the other order hide nothing.
 */
import { faceTurnsOf } from './face-turns.ts';
import type { FaceTurn } from './spots.ts';
import { inverse, type Turn } from './turns.ts';

const isTop = (turn: FaceTurn | undefined): boolean => turn !== undefined && turn < 3;

/** Without turns of U at the ends, which hide nothing of an answer. */
function core(turns: readonly Turn[]): string {
  const all = faceTurnsOf(turns);
  const first = all.findIndex((t) => !isTop(t));
  const last = all.findLastIndex((t) => !isTop(t));
  return all.slice(Math.max(first, 0), last + 1).join(' ');
}

/** Whether the answer is the set-up taken back, turns of U at its ends aside. */
export const givesAway = (setup: readonly Turn[], answer: readonly Turn[]): boolean =>
  core(inverse(setup)) === core(answer);
