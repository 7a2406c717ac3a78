/** How far states are, as the search says. */
import { type Cube, copyOf, PIECES, pieceOf, solvedCube, turnFace } from '../../../../src/cube/cube.ts';
import { findSolutions } from '../../../../src/steps/pair/search/find.ts';

type AnyGoal = Parameters<typeof findSolutions>[1];

export const CROSS_GOAL: AnyGoal = { base: [], pieces: (['DF', 'DL', 'DB', 'DR'] as const).map(pieceOf) };
export const WHOLE_GOAL: AnyGoal = { base: [], pieces: Array.from({ length: PIECES }, (_, piece) => piece) };

export const CROSS_DEPTHS: readonly number[] = [1, 15, 158, 1394, 9809, 46381, 97254, 34966, 102];

/** Every state of these pieces that up to `most` turns can bring about, each once. */
function* statesWithin({ pieces }: AnyGoal, most: number): Generator<Cube> {
  const seen = new Set<string>();
  let layer = [solvedCube()];
  for (let depth = 0; depth <= most && layer.length > 0; depth++) {
    const next: Cube[] = [];
    for (const cube of layer) {
      const key = pieces.map((piece) => String.fromCharCode(97 + cube.spots[piece]!)).join('');
      if (seen.has(key)) continue;
      seen.add(key);
      yield cube;
      for (let turn = 0; turn < 18; turn++) {
        const after = copyOf(cube);
        turnFace(after, turn);
        next.push(after);
      }
    }
    layer = next;
  }
}

/** By distance as found: how many states, and how many shortest solutions they have together. */
export function depthsFound(goal: AnyGoal, most: number): { states: number[]; solutions: number[] } {
  const states: number[] = [];
  const solutions: number[] = [];
  for (const cube of statesWithin(goal, most)) {
    const { shortest, proved, solutions: found } = findSolutions(cube, goal);
    if (shortest === undefined || !proved) throw new Error('a search without an end');
    states[shortest] = (states[shortest] ?? 0) + 1;
    solutions[shortest] = (solutions[shortest] ?? 0) + found.length;
  }
  return { states, solutions };
}
