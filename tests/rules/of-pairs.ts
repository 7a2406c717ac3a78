/** Rules, tables and sightings of pairs, on which tests of rules are done. */

import * as rules from '../../src/rules/rules.ts';
import type { TableOptions } from '../../src/rules/table.ts';
import * as table from '../../src/rules/table.ts';
import type { PairAdvice } from '../../src/steps/pair/advice.ts';
import { asSeenPair, pairRuleWorld, type SeenPair } from '../../src/steps/pair/rule-world.ts';

export type Rule = rules.Rule<PairAdvice>;

export const seenOf = (families: readonly string[]): SeenPair[] => pairRuleWorld.sightings(families).map(asSeenPair);
export const shortestOf = (sighting: SeenPair): number => pairRuleWorld.best(sighting).length;
export const proveTable = (families: readonly string[], all: readonly rules.Rule[]): rules.ProvedTable =>
  rules.proveTable(pairRuleWorld, families, all);
export const findTable = (families: readonly string[], options: TableOptions) =>
  table.findTable(pairRuleWorld, families, options);
