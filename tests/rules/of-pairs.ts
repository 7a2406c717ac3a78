/** Rules, tables and sightings of pairs, on which tests of rules are done. */

import { turnsOrFaults } from '../../src/audit/reprove.ts';
import { afterTurns, againstCentres, type Stickers } from '../../src/audit/stickers.ts';
import { inverse, writeTurns } from '../../src/cube/turns.ts';
import * as rules from '../../src/rules/rules.ts';
import type { TableOptions } from '../../src/rules/table.ts';
import * as table from '../../src/rules/table.ts';
import type { PairAdvice } from '../../src/steps/pair/advice.ts';
import { asSeenPair, pairRuleWorld, type SeenPair } from '../../src/steps/pair/rule-world.ts';

const states = new Map<SeenPair, Stickers>();

/** What is seen, brought about on stickers by taking a solution back; one object for each. */
export function stateOf(seen: SeenPair): Stickers {
  const setup = writeTurns(inverse(pairRuleWorld.best(seen)));
  const state = states.get(seen) ?? againstCentres(afterTurns(turnsOrFaults('set-up', setup).turns));
  states.set(seen, state);
  return state;
}

export type Rule = rules.Rule<PairAdvice>;

export const seenOf = (families: readonly string[]): SeenPair[] => pairRuleWorld.sightings(families).map(asSeenPair);
export const shortestOf = (sighting: SeenPair): number => pairRuleWorld.best(sighting).length;
export const proveTable = (families: readonly string[], all: readonly rules.Rule[]): rules.ProvedTable =>
  rules.proveTable(pairRuleWorld, families, all);
export const findTable = (families: readonly string[], options: TableOptions) =>
  table.findTable(pairRuleWorld, families, options);
