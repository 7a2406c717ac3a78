/** Solutions that beat those listed: for the coach, who may have reasons for the longer ones. */
import { findSolutions } from '../cube/search/find.ts';
import { costAsWritten, easiest, type HandModel } from '../cube/search/hands.ts';
import { lengthOf, writeTurns } from '../cube/turns.ts';
import type { Problem } from './problem.ts';
import type { ProvedLesson } from './prove.ts';
import type { ProvedCase } from './proved.ts';

/** More than three are a list to search, not a hint. */
const MOST = 3;

/** The shortest solutions of a case as hands do them, the easiest first. */
function bestOf({ cube, goal }: ProvedCase, model: HandModel): string[] {
  const { solutions } = findSolutions(cube, goal);
  return solutions
    .map(({ turns }) => ({ turns, cost: costAsWritten(turns, model) }))
    .sort((a, b) => a.cost - b.cost)
    .slice(0, MOST)
    .map(({ turns }) => {
      const done = easiest(turns, model);
      const plain = writeTurns(turns);
      return done.cost < costAsWritten(turns, model) ? `${plain} (for hands: ${writeTurns(done.turns)})` : plain;
    });
}

/** One hint for each case that lists none of its shortest solutions. */
export function betterSolutions(proved: ProvedLesson): Problem[] {
  return proved.cases.flatMap((one) => {
    const lengths = one.solutions.map((s) => lengthOf(s.solution.turns));
    const listed = Math.min(...lengths);
    const shortest = one.solutions[0]?.claim.shortest;
    // What the engine chose it chose for the hands.
    if (shortest === undefined || listed <= shortest || one.solutions[0]!.solution.chosen) return [];
    const { span } = one.solutions[lengths.indexOf(listed)]!.solution;
    const message = `${listed} turns are listed, ${shortest} would do`;
    return [{ code: 'solution-longer', span, message, hint: bestOf(one, proved.lesson.hands).join('; or ') }];
  });
}
