/** A rule that stands alone, out of its table: what it must say besides, since earlier rules are no longer before it. */
import { pickedBy } from './narrow.ts';
import { type Condition, fits, meets, type ProvedTable } from './rules.ts';
import { conditionsOnTheWay, treeOf } from './tree.ts';

/**
 * The fewest conditions more with which just its own sightings fit it; of as many those that the table itself asks.
 * Undefined if no one or two conditions, nor the answers of the tree, tell its sightings from all others.
 */
export function impliedBy(table: ProvedTable, index: number): readonly Condition[] | undefined {
  const { rule, sightings: own } = table.rules[index]!;
  const fitting = table.sightings.filter((s) => fits(s, rule.when));
  // What the table speaks of already is not said in other words.
  const known = table.rules.flatMap((one) => one.rule.when.map(({ feature }) => feature));
  const picked = pickedBy(table.world, fitting, new Set(own), known);
  const asked = conditionsOnTheWay(treeOf(table), index)?.filter((c) => !fitting.every((s) => meets(s, c)));
  return picked && asked ? (picked.length < asked.length ? picked : asked) : (picked ?? asked);
}
