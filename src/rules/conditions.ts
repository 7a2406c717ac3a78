/** Conditions as they are written in a lesson: `cross colour: sideways`, `edge side: not left`, `corner side: left or right`. */
import { type Condition, type Rule, turnsTheCube } from './rules.ts';
import type { RuleWorld } from './world.ts';

/** What can be said of features. */
export type Features = Pick<RuleWorld, 'features'>;

export const valuesOf = ({ features }: Features, feature: string): readonly string[] => features[feature]!.values;
export const groupsOf = ({ features }: Features, feature: string): Readonly<Record<string, readonly string[]>> =>
  features[feature]!.groups ?? {};
/** All that a lesson may write after the feature. */
export const wordsFor = (world: Features, feature: string): string[] => [
  ...Object.keys(groupsOf(world, feature)),
  ...valuesOf(world, feature),
];

/** The condition, or the word that is none of the feature's. */
export function readCondition(
  world: Features,
  feature: string,
  text: string,
): Condition | { readonly unknown: string } {
  const isNegated = /^\s*not\s/.test(text);
  const words = text.replace(/^\s*not\s+/, '').split(/,|\sor\s/);
  const groups = groupsOf(world, feature);
  const known = valuesOf(world, feature);
  const found: string[] = [];
  for (const word of words) {
    const value = word.trim();
    const values = Object.hasOwn(groups, value) ? groups[value] : known.includes(value) ? [value] : undefined;
    if (!values) return { unknown: value };
    found.push(...values);
  }
  const values = known.filter((value) => found.includes(value) !== isNegated);
  return { feature, values };
}

const isSame = (one: readonly string[], two: readonly string[]): boolean =>
  one.length === two.length && one.every((value) => two.includes(value));

/** The shortest way to write its values. */
function writeValues(world: Features, { feature, values }: Condition): string {
  const group = Object.entries(groupsOf(world, feature)).find(([, members]) => isSame(members, values));
  if (group) return group[0];
  const others = valuesOf(world, feature).filter((value) => !values.includes(value));
  if (others.length === 1 && values.length > 1) return `not ${others[0]}`;
  return values.join(' or ');
}

export const writeCondition = (world: Features, condition: Condition): string =>
  `${condition.feature}: ${writeValues(world, condition)}`;

/** All of them, those on one feature as one, as a lesson has them after `see`: `{ cross colour: sideways, edge: bad }`. */
export function writeSee(world: Features, conditions: readonly Condition[]): string {
  const values = new Map<string, readonly string[]>();
  for (const { feature, values: some } of conditions) {
    values.set(feature, values.get(feature)?.filter((value) => some.includes(value)) ?? some);
  }
  return `{ ${[...values].map(([feature, some]) => writeCondition(world, { feature, values: some })).join(', ')} }`;
}

/** The condition that holds in a mirror where this one holds. */
export const mirroredCondition = (world: RuleWorld, { feature, values }: Condition): Condition => ({
  feature,
  values: valuesOf(world, feature).filter((value) => values.includes(world.mirroredValue(feature, value))),
});

/** Likewise. */
export const mirroredRule = (world: RuleWorld, { when, counsel }: Rule): Rule => ({
  when: when.map((condition) => mirroredCondition(world, condition)),
  counsel: turnsTheCube(counsel) ? counsel : world.mirroredAdvice(counsel),
});
