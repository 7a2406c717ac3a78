import { readTurns } from '../../src/cube/notation.ts';
import type { Turn } from '../../src/cube/turns.ts';

/** The turns of a text that the test takes to be readable. */
export function turnsIn(text: string): Turn[] {
  const reading = readTurns(text);
  if (!reading.ok) throw new Error(`"${text}", at ${reading.at}: ${reading.message}`);
  return reading.turns;
}
