/** Triggers: short runs of turns that hands know as one. Common practice of the trade, no source; a club has its own. */
import { readTurns } from '../notation.ts';
import type { Turn } from '../turns.ts';

const written = (text: string): readonly Turn[] => {
  const reading = readTurns(text);
  if (!reading.ok) throw new RangeError(`${text}: ${reading.message}`);
  return reading.turns;
};

export type TriggerList = Readonly<Record<string, readonly Turn[]>>;

/** By name, as the right hand does them at the front right. */
export const TRIGGERS: TriggerList = {
  righty: written("R U R' U'"),
  sledge: written("R' F R F'"),
};
