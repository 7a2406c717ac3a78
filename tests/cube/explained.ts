/** Whether a parse stands for its turns, on the turns and on the second checker's stickers. */
import { expect } from 'vitest';
import { readTurns } from '../../src/audit/read-turns.ts';
import { afterTurns, sameStickers } from '../../src/audit/stickers.ts';
import { explain, merged, turnsOfParts } from '../../src/cube/explain/explain.ts';
import { type Turn, writeTurns } from '../../src/cube/turns.ts';

const stickersAfter = (turns: readonly Turn[]) => {
  const read = readTurns(writeTurns(turns));
  if (!read.ok) throw new Error(read.fault);
  return afterTurns(read.turns);
};

export function expectTheSame(turns: readonly Turn[]): void {
  const expanded = turnsOfParts(explain(turns).parts);
  expect(writeTurns(merged(expanded)), writeTurns(turns)).toBe(writeTurns(merged(turns)));
  expect(sameStickers(stickersAfter(expanded), stickersAfter(turns)), writeTurns(turns)).toBe(true);
}
