/**
 * A table of rules as a tree of questions: what neighbouring rules ask alike is asked once. Every sighting comes to the
 * rule that the table gives it, since each branch is made of sightings and not of conditions.
 */

import { type Features, groupsOf, valuesOf } from './conditions.ts';
import { simpleConditions } from './narrow.ts';
import { type Condition, meets, type ProvedTable } from './rules.ts';
import type { RuleWorld, Sighting } from './world.ts';

export type Answer =
  | { readonly kind: 'is'; readonly condition: Condition }
  /** To a question whether several conditions hold together. */
  | { readonly kind: 'yes' | 'no' }
  /** The feature has none of the values asked for, or no meaning. */
  | { readonly kind: 'otherwise' };

export interface Branch {
  readonly answer: Answer;
  readonly tree: Tree;
}

export interface Leaf {
  readonly kind: 'leaf';
  /** Index in the table; undefined where no rule speaks. */
  readonly rule: number | undefined;
}

export interface Question {
  readonly kind: 'question';
  /** One feature, answered by its values; or conditions that are asked together, answered by yes and no. */
  readonly asks: { readonly feature: string } | { readonly together: readonly Condition[] };
  /** In the order of the rules that they lead to. */
  readonly branches: readonly Branch[];
}

export type Tree = Leaf | Question;

interface Choice {
  readonly feature: string;
  readonly parts: readonly { readonly answer: Answer; readonly sightings: readonly Sighting[] }[];
}

const valuesIn = (world: Features, feature: string, sightings: readonly Sighting[]): string[] =>
  valuesOf(world, feature).filter((value) => sightings.some(({ features }) => features[feature] === value));

/** The word for what is left of some values: a group's, where all of the group that can occur is in it. */
function saidShortest(
  world: Features,
  feature: string,
  values: readonly string[],
  occurring: readonly string[],
): Condition {
  const left = values.filter((value) => occurring.includes(value));
  const group = Object.values(groupsOf(world, feature)).find((members) => {
    const those = members.filter((value) => occurring.includes(value));
    return those.length === left.length && those.every((value) => left.includes(value));
  });
  return { feature, values: left.length > 1 && group ? group : left };
}

/** The sightings by the values that conditions on a feature ask for, and those left over. */
function choiceOf(
  world: Features,
  feature: string,
  asked: readonly Condition[],
  sightings: readonly Sighting[],
): Choice {
  const occurring = valuesIn(world, feature, sightings);
  const sets: (readonly string[])[] = [];
  for (const { values } of asked) {
    const fresh = values.filter((value) => !sets.some((set) => set.includes(value)));
    if (fresh.some((value) => occurring.includes(value))) sets.push(fresh);
  }
  const rest = occurring.filter((value) => !sets.some((set) => set.includes(value)));
  const isDefined = sightings.every(({ features }) => features[feature] !== undefined);
  if (rest.length > 0 && isDefined) sets.push(rest);
  const parts = sets.map((values) => {
    const condition = saidShortest(world, feature, values, occurring);
    return { answer: { kind: 'is', condition } as const, sightings: sightings.filter((s) => meets(s, condition)) };
  });
  const others = sightings.filter((s) => !parts.some((part) => part.sightings.includes(s)));
  if (others.length > 0) return { feature, parts: [...parts, { answer: { kind: 'otherwise' }, sightings: others }] };
  return { feature, parts };
}

/** A plain condition that tells where among some sightings the feature has a meaning; undefined if none does, or if all have. */
export function guardOf(world: RuleWorld, feature: string, sightings: readonly Sighting[]): Condition | undefined {
  const hasMeaning = sightings.map(({ features }) => features[feature] !== undefined);
  if (hasMeaning.every(Boolean)) return undefined;
  return simpleConditions(world)
    .filter((c) => world.plain.includes(c.feature))
    .find((c) => sightings.every((s, i) => meets(s, c) === hasMeaning[i]));
}

const known = new WeakMap<object, Tree>();

export function treeOf(table: Pick<ProvedTable, 'world' | 'rules' | 'sightings'>): Tree {
  const tree = known.get(table) ?? grow(table);
  known.set(table, tree);
  return tree;
}

function grow({ world, rules, sightings: all }: Pick<ProvedTable, 'world' | 'rules' | 'sightings'>): Tree {
  const ruleOf = new Map(rules.flatMap(({ sightings }, i) => sightings.map((s) => [s, i] as const)));
  const rulesIn = (sightings: readonly Sighting[]): number[] =>
    rules.flatMap((_, i) => (sightings.some((s) => ruleOf.get(s) === i) ? [i] : []));
  /** No rule is needed in two branches. */
  const partsRules = ({ parts }: Choice): boolean => {
    const owners = parts.flatMap(({ sightings }) => rulesIn(sightings));
    return parts.length > 1 && new Set(owners).size === owners.length;
  };

  function choose(sightings: readonly Sighting[], own: readonly number[]): Choice | undefined {
    const conditions = own.flatMap((i) => rules[i]!.rule.when);
    const features = [...new Set(conditions.map(({ feature }) => feature))];
    const choices = features.flatMap((feature) => {
      const asked = conditions.filter((c) => c.feature === feature);
      const guard = guardOf(world, feature, sightings);
      const guarded = guard && choiceOf(world, guard.feature, [guard], sightings);
      const choice = guarded && partsRules(guarded) ? guarded : choiceOf(world, feature, asked, sightings);
      return partsRules(choice) ? [{ choice, count: asked.length }] : [];
    });
    // What most rules ask comes first; of several the one that the first rule names first.
    return choices.sort((a, b) => b.count - a.count)[0]?.choice;
  }

  function build(sightings: readonly Sighting[]): Tree {
    const own = rulesIn(sightings);
    const isCovered = sightings.every((s) => ruleOf.has(s));
    if (own.length === 0) return { kind: 'leaf', rule: undefined };
    if (own.length === 1 && isCovered) return { kind: 'leaf', rule: own[0] };
    const choice = choose(sightings, own);
    if (choice) {
      const branches = choice.parts.map(({ answer, sightings: some }) => ({ answer, tree: build(some), some }));
      const order = (some: readonly Sighting[]): number => rulesIn(some)[0] ?? Number.POSITIVE_INFINITY;
      branches.sort((a, b) => order(a.some) - order(b.some));
      return {
        kind: 'question',
        asks: { feature: choice.feature },
        branches: branches.map(({ answer, tree }) => ({ answer, tree })),
      };
    }
    const [first] = own;
    const together = rules[first!]!.rule.when.filter((c) => !sightings.every((s) => meets(s, c)));
    const yes = sightings.filter((s) => together.every((c) => meets(s, c)));
    const no = sightings.filter((s) => !yes.includes(s));
    return {
      kind: 'question',
      asks: { together },
      branches: [
        { answer: { kind: 'yes' }, tree: build(yes) },
        { answer: { kind: 'no' }, tree: build(no) },
      ],
    };
  }
  return build(all);
}

export interface WayMark {
  readonly asks: Question['asks'];
  readonly answer: Answer;
}

/** The questions that lead to a rule, each with its answer; the first way there. */
export function wayTo(tree: Tree, rule: number): readonly WayMark[] | undefined {
  if (tree.kind === 'leaf') return tree.rule === rule ? [] : undefined;
  for (const { answer, tree: below } of tree.branches) {
    const rest = wayTo(below, rule);
    if (rest) return [{ asks: tree.asks, answer }, ...rest];
  }
  return undefined;
}

/** The features that are asked for on the way to a rule. */
export const askedOnTheWay = (tree: Tree, rule: number): string[] =>
  (wayTo(tree, rule) ?? []).flatMap(({ asks }) =>
    'feature' in asks ? [asks.feature] : asks.together.map(({ feature }) => feature),
  );

/** The answers that lead to a rule, if each is a condition. */
export function conditionsOnTheWay(tree: Tree, rule: number): readonly Condition[] | undefined {
  const way = wayTo(tree, rule);
  if (!way) return undefined;
  const found: Condition[] = [];
  for (const { asks, answer } of way) {
    if (answer.kind === 'is') found.push(answer.condition);
    else if (answer.kind === 'yes' && 'together' in asks) found.push(...asks.together);
    else return undefined;
  }
  return found;
}

export const leavesOf = (tree: Tree): readonly Leaf[] =>
  tree.kind === 'leaf' ? [tree] : tree.branches.flatMap((branch) => leavesOf(branch.tree));
