/** A rule in the words of the lesson format, and what was proved of it, as claims and answers carry them. */

import { writeTurns } from '../cube/turns.ts';
import { writeCondition } from '../rules/conditions.ts';
import { type ProvedRule, type Rule, turnsTheCube } from '../rules/rules.ts';
import type { RulePart } from '../steps/rule-part.ts';
import type { RuleClaim } from './claim.ts';

/** With the fields in which the step says what to do. */
export const ruleSaid = (part: RulePart, { when, counsel }: Rule): Pick<RuleClaim, 'see' | 'most'> => ({
  see: when.map((condition) => writeCondition(part, condition)),
  ...part.claim(turnsTheCube(counsel) ? undefined : counsel),
  most: counsel.most,
});

export type RuleFacts = Pick<
  RuleClaim,
  'sightings' | 'holds' | 'excluded' | 'contrast' | 'contrasts' | 'ways' | 'cost' | 'exact' | 'exceptions'
>;

export const ruleFacts = (part: RulePart, proved: ProvedRule): RuleFacts => ({
  sightings: proved.sightings.length,
  holds: proved.holds,
  excluded: proved.excluded,
  contrast: proved.contrast,
  contrasts: proved.contrasts.map(({ without, ...counts }) => ({ without: writeCondition(part, without), ...counts })),
  ways: proved.ways,
  ...(proved.cost && { cost: proved.cost }),
  exact: proved.exceptions.length === 0,
  exceptions: proved.exceptions.map(({ sighting, setup }) => ({
    address: sighting.address,
    seen: sighting.side,
    setup: writeTurns(setup),
    shortest: part.best(sighting).length,
  })),
});

/** The rule as a lesson has it, ready to be copied into one. */
export function writeRule(part: RulePart, { when, counsel }: Rule): string {
  const lines = [
    ...(when.length > 0 ? [`see: { ${when.map((condition) => writeCondition(part, condition)).join(', ')} }`] : []),
    ...(turnsTheCube(counsel) ? ['turn: cube'] : part.written(counsel)),
    `most: ${counsel.most}`,
  ];
  return lines.map((line, i) => `${i === 0 ? '  - ' : '    '}${line}\n`).join('');
}
