/** Solutions that beat those listed: for the coach, who may have reasons for the others. */
import { faceTurnsOf } from '../cube/face-turns.ts';
import { byHands, type Handled } from '../cube/search/for-hands.ts';
import { easiest, type HandModel } from '../cube/search/hands.ts';
import { lengthOf, TURNS, type Turn, writeTurns } from '../cube/turns.ts';
import { stepOf } from '../steps/steps.ts';
import type { Problem } from './problem.ts';
import type { ProvedLesson } from './prove.ts';
import type { ProvedCase } from './proved.ts';

/** More than three are a list to search, not a hint. */
const MOST = 3;

/** In turns of U: a whole cube turned, or two regrips. Less is a matter of taste. */
export const EASIER_BY = 2;

const keyOf = (turns: readonly Turn[]): string => faceTurnsOf(turns).join(' ');

/** The shortest solutions of a case that are not listed, as hands do them, the easiest first. */
function easiestFirst({ subject, solutions: listed }: ProvedCase, model: HandModel): Handled[] {
  const known = new Set(listed.map(({ solution }) => keyOf(solution.turns)));
  const { solutions } = stepOf(subject).solutions(subject, 0);
  const others = solutions.map(({ turns }) => turns).filter((turns) => !known.has(keyOf(turns)));
  return byHands(others, model).slice(0, MOST);
}

/** None of the shortest is listed. */
function longer(one: ProvedCase, model: HandModel): Problem | undefined {
  const lengths = one.solutions.map((s) => lengthOf(s.solution.turns));
  const listed = Math.min(...lengths);
  const { shortest } = one.solutions[0]!.claim;
  if (shortest === undefined || listed <= shortest) return undefined;
  const { span } = one.solutions[lengths.indexOf(listed)]!.solution;
  const message = `${listed} turns are listed, ${shortest} would do`;
  const hint = easiestFirst(one, model)
    .map(({ turns }) => writeTurns(turns))
    .join('; or ');
  return { code: 'solution-longer', span, message, hint };
}

/** A shortest is listed, and others as short are clearly easier than all that are, each done as hands do it best. */
function harder(one: ProvedCase, model: HandModel): Problem | undefined {
  const costs = one.solutions.map(
    (s) =>
      easiest(
        faceTurnsOf(s.solution.turns).map((one) => TURNS[one]!),
        model,
      ).cost,
  );
  const cost = Math.min(...costs);
  const { solution } = one.solutions[costs.indexOf(cost)]!;
  const better = easiestFirst(one, model).filter((ranked) => ranked.cost <= cost - EASIER_BY);
  const [first] = better;
  if (!first) return undefined;
  const message = `others of ${first.solution.length} turns are easier for hands than what is listed (cost ${cost.toFixed(1)} at its easiest)`;
  const hint = better.map((ranked) => `${writeTurns(ranked.turns)} (cost ${ranked.cost.toFixed(1)})`).join('; or ');
  return { code: 'solution-harder', span: solution.span, message, hint };
}

/** One hint at most for each case whose solutions can be beaten. What the engine chose it chose for the hands. */
export function betterSolutions(proved: ProvedLesson): Problem[] {
  const { hands } = proved.lesson;
  return proved.cases.flatMap((one) => {
    const [first] = one.solutions;
    if (!first || first.solution.chosen) return [];
    return longer(one, hands) ?? harder(one, hands) ?? [];
  });
}
