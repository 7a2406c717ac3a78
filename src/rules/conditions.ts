/** Conditions as they are written in a lesson: `cross colour: sideways`, `edge side: not left`, `corner side: left or right`. */
import { FEATURES, type FeatureName, VALUE_GROUPS } from '../steps/pair/features.ts';
import type { Condition } from './rules.ts';

export const valuesOf = (feature: FeatureName): readonly string[] => FEATURES[feature].values;
const groupsOf = (feature: FeatureName): Readonly<Record<string, readonly string[]>> => VALUE_GROUPS[feature] ?? {};
/** All that a lesson may write after the feature. */
export const wordsFor = (feature: FeatureName): string[] => [...Object.keys(groupsOf(feature)), ...valuesOf(feature)];

/** The condition, or the word that is none of the feature's. */
export function readCondition(feature: FeatureName, text: string): Condition | { readonly unknown: string } {
  const isNegated = /^\s*not\s/.test(text);
  const words = text.replace(/^\s*not\s+/, '').split(/\s*,\s*|\s+or\s+/);
  const groups = groupsOf(feature);
  const known = valuesOf(feature);
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
function writeValues({ feature, values }: Condition): string {
  const group = Object.entries(groupsOf(feature)).find(([, members]) => isSame(members, values));
  if (group) return group[0];
  const others = valuesOf(feature).filter((value) => !values.includes(value));
  if (others.length === 1 && values.length > 1) return `not ${others[0]}`;
  return values.join(' or ');
}

export const writeCondition = (condition: Condition): string => `${condition.feature}: ${writeValues(condition)}`;

/** All of them, those on one feature as one, as a lesson has them after `see`: `{ cross colour: sideways, edge: bad }`. */
export function writeSee(conditions: readonly Condition[]): string {
  const values = new Map<FeatureName, readonly string[]>();
  for (const { feature, values: some } of conditions) {
    values.set(feature, values.get(feature)?.filter((value) => some.includes(value)) ?? some);
  }
  return `{ ${[...values].map(([feature, some]) => writeCondition({ feature, values: some })).join(', ')} }`;
}

const MIRRORED_VALUE: Readonly<Record<string, string>> = {
  left: 'right',
  right: 'left',
  'far left': 'far right',
  'far right': 'far left',
  'front left': 'front right',
  'front right': 'front left',
  'back left': 'back right',
  'back right': 'back left',
};

/** The condition that holds in a mirror where this one holds. */
export function mirroredCondition({ feature, values }: Condition): Condition {
  const turnsBack: Readonly<Record<string, string>> = { U: "U'", "U'": 'U' };
  const mirrored = feature === 'U between' ? turnsBack : MIRRORED_VALUE;
  return { feature, values: valuesOf(feature).filter((v) => values.includes(mirrored[v] ?? v)) };
}
