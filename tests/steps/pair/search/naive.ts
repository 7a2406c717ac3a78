/**
 * What the definition of a solution says, and nothing more: every word of up to so many turns, followed on the 54
 * stickers of the second checker. Shares no code with the search, not even the turns.
 */
import { addressText, CROSS, cornerOf, isHome, pairSight } from '../../../../src/audit/places.ts';
import { afterTurns, followedBy, type Layer, SOLVED, type Stickers, undone } from '../../../../src/audit/stickers.ts';

const KEPT = ['FL', 'BL', 'BR'] as const;
/** In the order of sorting; two of opposite faces side by side. */
const LAYERS = ['U', 'D', 'R', 'L', 'F', 'B'] as const satisfies readonly Layer[];
const SUFFIXES = ['', '2', "'"] as const;

const BACK: readonly Stickers[] = LAYERS.flatMap((layer) =>
  ([1, 2, 3] as const).map((quarters) => undone(afterTurns([{ layer, quarters }]))),
);
export const TEXT: readonly string[] = LAYERS.flatMap((layer) => SUFFIXES.map((suffix) => layer + suffix));

/** No two turns of one face in a row, and of two opposite faces in a row only the order U D, R L, F B. */
function mayStandBefore(turn: number, next: number): boolean {
  const [face, nextFace] = [Math.floor(turn / 3), Math.floor(next / 3)];
  if (face === nextFace) return false;
  return Math.floor(face / 2) !== Math.floor(nextFace / 2) || face < nextFace;
}

const areHome = (stickers: Stickers, slots: readonly (typeof KEPT)[number][]): boolean =>
  slots.every((slot) => isHome(stickers, cornerOf(slot)) && isHome(stickers, slot));

const SETS = Array.from({ length: 8 }, (_, set) => KEPT.filter((_, i) => set & (1 << i)));
export const rowName = (address: string, kept: readonly string[]): string => `${address} | ${kept.join(' ')}`;

/** The solutions of up to `most` turns, sorted as texts in lists of turns, by row: own slot FR, any set of kept slots. */
export function naiveSolutions(most: number): Map<string, number[][]> {
  const found = new Map<string, number[][]>();
  /**
   * `before` is the cube that the word solves. Words grow at their beginning: `onTheWay` are the cubes with cross and
   * pair home that it comes through after its first turn and before its end.
   */
  const visit = (before: Stickers, word: readonly number[], onTheWay: readonly Stickers[]): void => {
    const crossHome = CROSS.every((place) => isHome(before, place));
    const isGoal = crossHome && isHome(before, 'DFR') && isHome(before, 'FR');
    // The end itself is not on the way.
    const passed = isGoal && word.length > 0 ? [...onTheWay, before] : onTheWay;
    if (crossHome) {
      const address = addressText(pairSight(before, 'FR'));
      for (const kept of SETS) {
        if (!areHome(before, kept) || passed.some((state) => areHome(state, kept))) continue;
        const row = rowName(address, kept);
        const words = found.get(row) ?? [];
        words.push([...word]);
        found.set(row, words);
      }
    }
    if (word.length === most) return;
    for (let turn = 0; turn < 18; turn++) {
      if (word.length > 0 && !mayStandBefore(turn, word[0]!)) continue;
      visit(followedBy(before, BACK[turn]!), [turn, ...word], passed);
    }
  };
  visit(SOLVED, [], []);
  for (const words of found.values()) words.sort((a, b) => a.length - b.length || compare(a, b));
  return found;
}

function compare(a: readonly number[], b: readonly number[]): number {
  const i = a.findIndex((turn, k) => turn !== b[k]);
  return i < 0 ? 0 : a[i]! - b[i]!;
}
