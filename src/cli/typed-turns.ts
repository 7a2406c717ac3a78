/** Turns as they are typed on the command line. */
import { readTurns } from '../cube/notation.ts';
import type { Turn } from '../cube/turns.ts';
import type { UsageError } from './options.ts';

/** `named`: what stands before them: `--setup`. */
export function turnsOf(named: string, text: string): Turn[] | UsageError {
  const reading = readTurns(text);
  if (reading.ok) return reading.turns;
  const where = reading.at > 0 ? ` at character ${reading.at + 1}` : '';
  return { usage: `${named} "${text}"${where}: ${reading.message}; ${reading.hint}` };
}
