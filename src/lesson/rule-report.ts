/** What was found of a lesson's rules, as figures for the coach. */

import type { RuleFigures } from '../words/said.ts';
import type { ProvedRules } from './prove-rules.ts';

/** Of each rule, and of all that the rules solve. */
export const rulesReport = ({ table, rules }: ProvedRules) => ({
  rules: rules.map(({ said, proved: { sightings, done, holds, excluded, contrast } }): RuleFigures => {
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
