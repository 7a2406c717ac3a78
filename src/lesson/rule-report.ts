/** What was found of a lesson's rules, as figures for the coach. */

import type { RuleFigures } from '../words/said.ts';
import type { ProvedRules } from './prove-rules.ts';

/** Of each rule, and of all that the rules solve. */
export const rulesReport = ({ table, rules }: ProvedRules) => ({
  rules: rules.map(
    ({ said, proved: { sightings, holds, excluded, contrast, cost } }): RuleFigures => ({
      number: said.number,
      sightings: sightings.length,
      holds,
      excluded,
      contrast,
      mean: cost?.mean,
      worst: cost?.worst,
    }),
  ),
  mean: table.cost?.mean,
  worst: table.cost?.worst,
  sightings: table.sightings.length,
  uncovered: table.uncovered,
});
