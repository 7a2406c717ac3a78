/**
 * Solutions of a pair, searched once. Where the base is whole only the address and the kept slots count, so a case is
 * searched with its own slot at FR and what is found is turned to the side from which it is seen.
 */
import { areHome } from '../../cube/goal.ts';
import type { Answer, Solution } from '../../cube/search/answer.ts';
import { MAY_FOLLOW } from '../../cube/search/normal-form.ts';
import { fromTheSide } from '../../cube/sides.ts';
import type { Turn } from '../../cube/turns.ts';
import { STRAIGHT } from '../../cube/view.ts';
import { addressKey } from './address.ts';
import { cubeWithPair } from './place-pair.ts';
import { findSolutions, shortestLength } from './search/find.ts';
import { goalOf, QUARTERS_FROM_FRONT_RIGHT, type Slot, turnedSlot } from './slots.ts';
import type { PairSubject } from './subject.ts';

/** A case whose base is whole never comes near it; a search stopped there is told as not proved. */
const MOST_NODES = 50_000_000;

/** The slot that is seen at FR once this one's own slot is. */
const asFromFrontRight = (slot: Slot, own: Slot): Slot => turnedSlot(slot, -QUARTERS_FROM_FRONT_RIGHT[own]);

const inNormalForm = (turns: readonly Turn[]): Turn[] => {
  const word = [...turns];
  for (let i = 1; i < word.length; i++) {
    const [one, two] = [word[i - 1]!, word[i]!];
    if (MAY_FOLLOW[18 * one.index + two.index] === 0) [word[i - 1], word[i]] = [two, one];
  }
  return word;
};

const byLengthThenTurn = ({ turns: a }: Solution, { turns: b }: Solution): number => {
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  return a.length - b.length || (a[i]?.index ?? 0) - (b[i]?.index ?? 0);
};

function turnedTo(side: Slot, answer: Answer): Answer {
  const quarters = QUARTERS_FROM_FRONT_RIGHT[side];
  if (quarters === 0) return answer;
  const solutions = answer.solutions.map(({ turns, length }) => ({
    turns: inNormalForm(fromTheSide(turns, quarters)),
    length,
  }));
  return { ...answer, solutions: solutions.sort(byLengthThenTurn) };
}

const atFrontRight = new Map<string, Answer>();
const fromSides = new Map<string, Answer>();

function remembered(known: Map<string, Answer>, key: string, make: () => Answer): Answer {
  const answer = known.get(key) ?? make();
  known.set(key, answer);
  return answer;
}

/** All shortest solutions as the viewer turns them, and those of up to `longer` turns more. */
export function solutionsOf({ cube, goal, at, side }: PairSubject, longer: number): Answer {
  if (cube.view !== STRAIGHT || !areHome(cube, goal.base))
    return findSolutions(cube, goal, { longer, nodes: MOST_NODES });
  const kept = goal.kept.map((slot) => asFromFrontRight(slot, side)).sort();
  const key = `${addressKey(at)} ${kept} ${longer}`;
  return remembered(fromSides, `${key} ${side}`, () => {
    const search = () => findSolutions(cubeWithPair(at, 'FR'), goalOf('FR', kept), { longer, nodes: MOST_NODES });
    return turnedTo(side, remembered(atFrontRight, key, search));
  });
}

const shortest = new Map<string, ReturnType<typeof shortestLength>>();

/** The fewest face turns; ends with the first solution that it meets. */
export function shortestOfPair({ cube, goal, at, side }: PairSubject): ReturnType<typeof shortestLength> {
  if (!areHome(cube, goal.base)) return shortestLength(cube, goal, { nodes: MOST_NODES });
  const kept = goal.kept.map((slot) => asFromFrontRight(slot, side)).sort();
  const key = `${addressKey(at)} ${kept}`;
  const known = shortest.get(key) ?? shortestLength(cube, goal, { nodes: MOST_NODES });
  shortest.set(key, known);
  return known;
}
