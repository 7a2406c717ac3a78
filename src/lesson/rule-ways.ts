/** Rules that leave ways open which do not work: for the coach, which words more leave only ways that do. */
import { withEveryWay, withMoreTurns } from '../rules/every-way.ts';
import { type ProvedTable, turnsTheCube } from '../rules/rules.ts';
import type { RulePart } from '../steps/rule-part.ts';
import { joined } from '../text/likely.ts';
import type { Problem } from './problem.ts';
import type { ProvedLesson } from './prove.ts';
import type { ProvedLessonRule } from './prove-rules.ts';

/** No coach is told to allow more turns than so many over what a rule allows, if only every way is to work. */
const MORE_TURNS = 3;

function someWays(part: RulePart, table: ProvedTable, { said, proved }: ProvedLessonRule): Problem | undefined {
  const { sightings, exceptions, isEveryWay, ways } = proved;
  const { counsel } = said.rule;
  // A rule that turns the cube leaves no ways open but those of the other rules.
  if (exceptions.length > 0 || isEveryWay || turnsTheCube(counsel)) return undefined;
  const longer = withMoreTurns(table.world, sightings, counsel, MORE_TURNS);
  const whole = withEveryWay(table.world, sightings, counsel);
  const more = whole && part.written(whole).filter((line) => !part.written(counsel).includes(line));
  const mends = [...(longer ? [`most: ${longer.most}`] : []), ...(more ? [joined(more)] : [])];
  return {
    code: 'rule-some-ways',
    span: said.span,
    message: `of the ${ways.allowed} ways that the rule's words allow ${ways.work} work`,
    hint:
      mends.length > 0
        ? `${mends.map((mend) => `write ${mend}`).join('; or ')}, and every way works`
        : 'no words of rules leave only ways that work: say in your own which is meant',
  };
}

/** One hint at most for each rule that holds everywhere. */
export const rulesOfSomeWays = ({ lesson, rules }: ProvedLesson): Problem[] =>
  rules ? rules.rules.flatMap((rule) => someWays(lesson.step.rules!, rules.table, rule) ?? []) : [];
