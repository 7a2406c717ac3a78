/** A rule in the words of the lesson format, and what was proved of it, as claims and answers carry them. */

import { writeTurns } from '../cube/turns.ts';
import { writeCondition } from '../rules/conditions.ts';
import { type ProvedRule, type Rule, shortestOf, turnsTheCube } from '../rules/rules.ts';
import { writeAddress } from '../steps/pair/address.ts';
import type { Aim } from '../steps/pair/advice.ts';
import type { RuleClaim } from './claim.ts';

function aimSaid(aim: Aim): string {
  switch (aim.kind) {
    case 'joined':
    case 'split':
      return aim.kind;
    case 'family':
      return aim.family;
    case 'case':
      return writeAddress(aim.case);
    case 'insert':
      return `insert ${writeTurns(aim.turns)}`;
  }
}

export type RuleSaid = Pick<RuleClaim, 'see' | 'aim' | 'lift' | 'piece' | 'how' | 'by' | 'most'>;

export function ruleSaid({ when, counsel }: Rule): RuleSaid {
  const see = when.map(writeCondition);
  if (turnsTheCube(counsel)) return { see, aim: 'turn the cube', lift: [], most: counsel.most };
  const { aim, lift, piece, way, by, most } = counsel;
  return {
    see,
    aim: aimSaid(aim),
    lift,
    ...(piece && { piece }),
    ...(way && { how: way }),
    ...(by && { by: writeTurns(by) }),
    most,
  };
}

export type RuleFacts = Pick<RuleClaim, 'sightings' | 'holds' | 'excluded' | 'contrast' | 'exact' | 'exceptions'>;

export const ruleFacts = (proved: ProvedRule): RuleFacts => ({
  sightings: proved.sightings.length,
  holds: proved.holds,
  excluded: proved.excluded,
  contrast: proved.contrast,
  exact: proved.exceptions.length === 0,
  exceptions: proved.exceptions.map(({ sighting, setup }) => ({
    address: writeAddress(sighting.address),
    seen: sighting.seen,
    setup: writeTurns(setup),
    shortest: shortestOf(sighting.address),
  })),
});

/** The rule as a lesson has it, ready to be copied into one. */
export function writeRule(rule: Rule): string {
  const { see, aim, lift, piece, how, by, most } = ruleSaid(rule);
  const insert = /^insert (.*)/.exec(aim)?.[1];
  const faces = lift.length === 4 ? 'any' : lift.length === 0 ? 'none' : lift.join(' or ');
  const lines = [
    ...(see.length > 0 ? [`see: { ${see.join(', ')} }`] : []),
    ...(aim === 'turn the cube'
      ? ['turn: cube']
      : [
          ...(piece ? [`lift: ${piece}`] : []),
          `with: ${faces}`,
          ...(how ? [`how: ${how}`] : []),
          ...(by ? [`by: ${by}`] : []),
          insert ? `aim: { insert: ${insert} }` : `aim: ${aim}`,
        ]),
    `most: ${most}`,
  ];
  return lines.map((line, i) => `${i === 0 ? '  - ' : '    '}${line}\n`).join('');
}
