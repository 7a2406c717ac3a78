/**
 * What turns do to the six faces, called as the viewer sees them before the first: rotations of the cube, wide turns and
 * slices leave no trace but the faces that they turn.
 */
import type { FaceTurn } from './spots.ts';
import type { Turn } from './turns.ts';
import { effect, STRAIGHT } from './view.ts';

const axisOf = (turn: FaceTurn): number => Math.floor(turn / 6);

/** Turns of opposite faces that stand beside each other are in one order, whichever they were written in. */
export function faceTurnsOf(turns: readonly Turn[]): FaceTurn[] {
  const inOrder: FaceTurn[] = [];
  let view = STRAIGHT;
  for (const turn of turns) {
    const done = effect(turn, view);
    view = done.view;
    for (const one of done.faceTurns) {
      let at = inOrder.length;
      while (at > 0 && axisOf(inOrder[at - 1]!) === axisOf(one) && inOrder[at - 1]! > one) at--;
      inOrder.splice(at, 0, one);
    }
  }
  return inOrder;
}
