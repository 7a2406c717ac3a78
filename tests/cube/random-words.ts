/** Random turns, and turns with a form planted in them. */

import { merged } from '../../src/cube/explain/explain.ts';
import { inverse, TURNS, type Turn } from '../../src/cube/turns.ts';
import type { Random } from '../random.ts';

const FACE_TURNS = TURNS.slice(0, 18);

/** No turn of the layer before it. */
export function randomTurns(random: Random, length: number, from: readonly Turn[] = FACE_TURNS): Turn[] {
  const turns: Turn[] = [];
  while (turns.length < length) {
    const turn = random.pick(from);
    const last = turns.at(-1);
    if (last?.letter !== turn.letter || last.kind !== turn.kind) turns.push(turn);
  }
  return turns;
}

export interface Planted {
  readonly turns: readonly Turn[];
  /** What the planted parse has. */
  readonly words: number;
}

const isOneLayer = (one: Turn, two: Turn): boolean => one.letter === two.letter && one.kind === two.kind;

/** Whether turns of one layer that come to stand side by side leave a turn, and no turn is made of three. */
function canMerge(stretches: readonly (readonly Turn[])[]): boolean {
  return stretches.every((stretch, i) => {
    const [before, after] = [stretches[i - 1]?.at(-1), stretches[i + 1]?.[0]];
    const [first, last] = [stretch[0]!, stretch.at(-1)!];
    const meets = before && isOneLayer(before, first);
    if (meets && (before.quarters + first.quarters) % 4 === 0) return false;
    return !(stretch.length === 1 && meets && after && isOneLayer(last, after));
  });
}

/** A B A' or A B A' B' between other turns that saves words, turns of one layer that come to stand side by side merged. */
export function plantedTurns(random: Random, from: readonly Turn[] = FACE_TURNS, longest = 4): Planted {
  for (;;) {
    const [a, b] = [
      randomTurns(random, 1 + random.below(longest), from),
      randomTurns(random, 1 + random.below(longest), from),
    ];
    const [before, after] = [
      randomTurns(random, random.below(longest), from),
      randomTurns(random, random.below(longest), from),
    ];
    const form = [a, b, inverse(a), ...(random.chance(0.5) ? [inverse(b)] : [])];
    const stretches = [before, ...form, after].filter((some) => some.length > 0);
    if (!canMerge(stretches)) continue;
    const turns = merged(stretches.flat());
    const words = a.length + b.length + before.length + after.length;
    // Where a merged turn costs as much as the form saves, the turns one by one are as short.
    if (words < turns.length) return { turns, words };
  }
}
