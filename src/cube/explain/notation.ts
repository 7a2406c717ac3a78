/**
 * A parse as mathematics writes it: `[A: B]` for A B A', `[A, B]` for A B A' B', round brackets around a trigger. For
 * programs: sheets and commands say it in words.
 */
import { writeTurns } from '../turns.ts';
import type { Parts } from './explain.ts';

export const notationOf = (parts: Parts): string =>
  parts
    .map((part) => {
      if (part.kind === 'turns') return writeTurns(part.turns);
      if (part.kind === 'trigger') return `(${writeTurns(part.turns)})`;
      return `[${notationOf(part.first.parts)}${part.kind === 'set-up' ? ':' : ','} ${notationOf(part.second.parts)}]`;
    })
    .join(' ');
