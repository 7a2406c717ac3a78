/** A rule that stands alone, out of its table: what it must say besides, since earlier rules are no longer before it. */
import { pickedBy } from './narrow.ts';
import { type Condition, fits, meets, type ProvedTable } from './rules.ts';
import { conditionsOnTheWay, guardOf, treeOf } from './tree.ts';

/**
 * What has to be said besides, so that each condition has a meaning: words such as "the colour beside white" name something
 * to whoever is not told where white is. Undefined if no one condition says it.
 */
function meaningOf({ world, sightings }: ProvedTable, whole: readonly Condition[]): readonly Condition[] | undefined {
  const found: Condition[] = [];
  for (const { feature } of whole) {
    const seen = sightings.filter((s) => fits(s, [...found, ...whole.filter((c) => c.feature !== feature)]));
    if (seen.every(({ features }) => features[feature] !== undefined)) continue;
    const guard = guardOf(world, feature, seen);
    if (!guard) return undefined;
    found.push(guard);
  }
  return found;
}

/**
 * The fewest conditions more with which just its own sightings fit it, of as many those that the table itself asks; and what
 * gives each of them a meaning. Undefined if no one or two conditions, nor the answers of the tree, tell its sightings from
 * all others.
 */
export function impliedBy(table: ProvedTable, index: number): readonly Condition[] | undefined {
  const { rule, sightings: own } = table.rules[index]!;
  const fitting = table.sightings.filter((s) => fits(s, rule.when));
  // What the table speaks of already is not said in other words.
  const known = table.rules.flatMap((one) => one.rule.when.map(({ feature }) => feature));
  const picked = pickedBy(table.world, fitting, new Set(own), known);
  const asked = conditionsOnTheWay(treeOf(table), index)?.filter((c) => !fitting.every((s) => meets(s, c)));
  const least = picked && asked ? (picked.length < asked.length ? picked : asked) : (picked ?? asked);
  const meaning = least && meaningOf(table, [...rule.when, ...least]);
  return meaning && [...least, ...meaning];
}
