/** What was found of a lesson's rules, as figures for the coach. */

import type { Sighting } from '../rules/world.ts';
import type { RuleFigures } from '../words/said.ts';
import type { ProvedRules } from './prove-rules.ts';

export interface RulesReport {
  readonly rules: readonly RuleFigures[];
  /** Of all that the rules solve. */
  readonly mean: number | undefined;
  readonly worst: number | undefined;
  readonly sightings: number;
  readonly uncovered: readonly Sighting[];
}

export const rulesReport = ({ table, rules }: ProvedRules): RulesReport => ({
  rules: rules.map(({ said, proved: { sightings, done, holds, excluded, contrast } }) => {
    const over = sightings.flatMap((s, i) => (done[i] ? [done[i].length - table.world.best(s).length] : []));
    const cost =
      over.length > 0
        ? { mean: over.reduce((sum, n) => sum + n, 0) / over.length, worst: Math.max(...over) }
        : { mean: undefined, worst: undefined };
    return { number: said.number, sightings: sightings.length, holds, excluded, contrast, ...cost };
  }),
  mean: table.cost?.mean,
  worst: table.cost?.worst,
  sightings: table.sightings.length,
  uncovered: table.uncovered,
});
