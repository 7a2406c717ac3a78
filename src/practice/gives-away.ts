/** Whether a set-up gives its answer away. */
import { inverse, type Turn, writeTurns } from '../cube/turns.ts';

const isTopTurn = (turn: Turn | undefined): boolean => turn?.kind === 'face' && turn.letter === 'U';

/** Turns of U at the ends hide nothing of an answer. */
function withoutU(turns: readonly Turn[]): string {
  const first = turns.findIndex((t) => !isTopTurn(t));
  const last = turns.findLastIndex((t) => !isTopTurn(t));
  return writeTurns(turns.slice(Math.max(first, 0), last + 1));
}

/** Whether the answer is the set-up taken back. */
export const givesAway = (setup: readonly Turn[], answer: readonly Turn[]): boolean =>
  withoutU(inverse(setup)) === withoutU(answer);
