/**
 * Choosing set-ups to show: the fewest that cover all there is to see of a table of rules, pairs that differ by a turn of
 * the cube, and what looks alike and is not.
 */

import { isTurnOfTop, lengthOf, type Turn } from '../cube/turns.ts';
import { type Done, type ProvedRule, type ProvedTable, type Rule, turnsTheCube } from './rules.ts';
import { askedOnTheWay, treeOf } from './tree.ts';
import type { Sighting } from './world.ts';

/** A sighting of a rule: followed, or, where it is an exception, solved in the shortest way. */
export interface Example {
  readonly sighting: Sighting;
  /** Index in the table. */
  readonly rule: number;
  /** Undefined for an exception. */
  readonly done: Done | undefined;
  readonly turns: readonly Turn[];
  /** The lower the easier to show. */
  readonly effort: number;
}

const turnsDone = ({ first, takeOut, rest }: Done): Turn[] => [...first, ...takeOut, ...rest];

/** Seen from the side of the leading hand, no turn at the back or below, a lift at once, few turns, pieces in sight. */
function effortOf(
  { world, front }: ProvedTable,
  sighting: Sighting,
  first: Turn | undefined,
  turns: readonly Turn[],
): number {
  const isFar = sighting.side === front ? 0 : 1;
  const hasTopFirst = isTurnOfTop(first) ? 1 : 0;
  const isBehind = turns.some(({ letter }) => 'BD'.includes(letter)) ? 1 : 0;
  return 1000 * isFar + 200 * isBehind + 100 * hasTopFirst + 3 * lengthOf(turns) + world.hidden(sighting);
}

/** A rule followed where it holds. */
export type FollowedExample = Example & { readonly done: Done };

/** The sighting at which a rule is easiest to show; undefined if it holds nowhere. */
export function easiestOfRule(table: ProvedTable, rule: number): FollowedExample | undefined {
  let best: FollowedExample | undefined;
  for (const { done, ...one } of examplesOf(table)) {
    if (done && one.rule === rule && (!best || one.effort < best.effort)) best = { ...one, done };
  }
  return best;
}

const known = new WeakMap<ProvedTable, readonly Example[]>();

/** Of every rule all sightings, exceptions among them. */
export function examplesOf(table: ProvedTable): readonly Example[] {
  const examples = known.get(table) ?? table.rules.flatMap((rule, index) => examplesOfRule(table, rule, index));
  known.set(table, examples);
  return examples;
}

/** How the table solves a case as it is seen, as it is best shown; undefined if no rule speaks of it or the one that does fails. */
export function turnsByTable(table: ProvedTable, sighting: Sighting): readonly Turn[] | undefined {
  for (const { rule, sightings, done: ways } of table.rules) {
    const found = ways[sightings.indexOf(sighting)];
    if (found) return turnsDone(shownDone(table, sighting, rule, found).done);
  }
  return undefined;
}

/** Done as it is best shown, and how strange that is. */
function shownDone({ world }: ProvedTable, sighting: Sighting, { counsel }: Rule, found: Done) {
  if (turnsTheCube(counsel)) return { done: found, strange: 0 };
  const { followed, strange } = world.shown(sighting, found, counsel);
  return { done: { ...followed, first: found.first }, strange };
}

function examplesOfRule(table: ProvedTable, proved: ProvedRule, rule: number): Example[] {
  const { sightings, done: ways, exceptions } = proved;
  return [
    ...sightings.flatMap((sighting, i): Example[] => {
      const found = ways[i];
      if (!found) return [];
      const { done, strange } = shownDone(table, sighting, proved.rule, found);
      const turns = turnsDone(done);
      const effort = effortOf(table, sighting, done.takeOut[0], turns) + strange;
      return [{ sighting, rule, done, turns, effort }];
    }),
    ...exceptions.map(({ sighting, best }): Example => {
      const effort = effortOf(table, sighting, undefined, best);
      return { sighting, rule, done: undefined, turns: best, effort };
    }),
  ];
}

/** Sightings that are one to a student: a case seen from one side, whatever the turn of the top. */
export const caseAndSide = ({ caseAddress, side }: Sighting): string => `${caseAddress} ${side}`;

/** What only examples of one kind cover: a rule, or an exception as a student sees it. */
const kindOf = ({ sighting, rule, done }: Example): string => (done ? `${rule}` : `${rule} ${caseAndSide(sighting)}`);

/** What else is to be seen: what the step names, the side, and which hand lifts. */
function pointsOf({ world }: ProvedTable, { sighting, done }: Example): string[] {
  const lifting = done?.takeOut.find((turn) => !isTurnOfTop(turn))?.letter;
  return [
    ...world.points(sighting),
    `own ${sighting.side}`,
    ...(lifting === 'R' || lifting === 'L' ? [`lift ${lifting}`] : []),
  ];
}

/** An example with the set of points that it covers, as bits. */
interface Choice {
  readonly example: Example;
  readonly mask: number;
  readonly effort: number;
}

/** Examples chosen so far, the last first. */
interface Cover {
  readonly effort: number;
  readonly last?: { readonly example: Example; readonly before: Cover };
}

/** Of those with the same points the easiest. */
function easiestByMask(choices: readonly Choice[]): Choice[] {
  const best = new Map<number, Choice>();
  for (const choice of choices) {
    const before = best.get(choice.mask);
    if (!before || choice.effort < before.effort) best.set(choice.mask, choice);
  }
  return [...best.values()];
}

/** Each cover with each choice more. */
function withOneMore(covers: ReadonlyMap<number, Cover>, choices: readonly Choice[]): Map<number, Cover> {
  const next = new Map<number, Cover>();
  for (const [covered, before] of covers) {
    for (const { example, mask, effort } of choices) {
      const sum = before.effort + effort;
      const known = next.get(covered | mask);
      if (!known || sum < known.effort) next.set(covered | mask, { effort: sum, last: { example, before } });
    }
  }
  return next;
}

/**
 * The fewest examples that between them have every rule, exception, point of the step, side and lifting hand that occurs;
 * of as many the easiest. Exact: an example is of one kind, so there is at least one of each kind; all ways to
 * choose these are kept by what points they cover (at most 2^10 sets), and more are added one at a time until all is covered.
 */
export function fewestExamples(table: ProvedTable): readonly Example[] {
  const points = new Map<string, number>();
  const kinds = new Map<string, Choice[]>();
  for (const example of examplesOf(table)) {
    let mask = 0;
    for (const point of pointsOf(table, example)) {
      if (!points.has(point)) points.set(point, points.size);
      mask |= 1 << points.get(point)!;
    }
    const choice = { example, mask, effort: example.effort };
    const kind = kindOf(example);
    const known = kinds.get(kind);
    if (known) known.push(choice);
    else kinds.set(kind, [choice]);
  }
  let covers: ReadonlyMap<number, Cover> = new Map([[0, { effort: 0 }]]);
  for (const choices of kinds.values()) covers = withOneMore(covers, easiestByMask(choices));
  const any = easiestByMask([...kinds.values()].flat());
  const whole = (1 << points.size) - 1;
  // Every point is some example's, so each round covers more.
  while (!covers.has(whole)) covers = withOneMore(covers, any);
  const chosen: Example[] = [];
  for (let { last } = covers.get(whole)!; last; last = last.before.last) chosen.unshift(last.example);
  return chosen;
}

/** The same set-up, and the cube turned by y after it: another rule. */
export interface ContrastPair {
  readonly example: Example;
  readonly turned: Example;
}

/** For any two rules that y leads between the easiest such pair; exceptions are left out, and rules that turn the cube themselves. */
export function contrastPairs(table: ProvedTable): ContrastPair[] {
  const followed = examplesOf(table).filter(({ done }) => done?.first.length === 0);
  const bySighting = new Map(followed.map((one) => [one.sighting, one]));
  const pairs = new Map<string, ContrastPair>();
  for (const example of followed) {
    const turned = bySighting.get(table.world.turned(example.sighting, 1));
    if (!turned || turned.rule === example.rule) continue;
    const key = [example.rule, turned.rule].sort((a, b) => a - b).join();
    const before = pairs.get(key);
    if (!before || example.effort < before.example.effort) pairs.set(key, { example, turned });
  }
  return [...pairs.values()].sort((a, b) => a.example.rule - b.example.rule || a.turned.rule - b.turned.rule);
}

export interface LookAlike {
  readonly example: Example;
  /** Of those asked on the way to their rules, the features in which the two differ. */
  readonly differ: readonly string[];
}

const differing = (a: Sighting, b: Sighting, features: readonly string[]): string[] =>
  features.filter((name) => a.features[name] !== b.features[name]);

/**
 * What a student takes for `example`: an exception of its rule, else a sighting of another rule, seen from the same side
 * where that can be, that differs in as few of the features asked on the way to the two as can be, if possible in the one
 * asked last, and then in as few of all.
 */
export function lookAlike(table: ProvedTable, { sighting, rule }: Example): LookAlike | undefined {
  const ways = waysOf(table);
  const all = examplesOf(table);
  const exceptions = all.filter((one) => one.rule === rule && !one.done);
  const others = exceptions.length > 0 ? exceptions : all.filter((one) => one.rule !== rule && one.done);
  const every = Object.keys(sighting.features);
  let best: { found: LookAlike; distance: number } | undefined;
  for (const one of others) {
    const asked = [...new Set([...ways[rule]!, ...ways[one.rule]!])];
    const differ = differing(sighting, one.sighting, asked);
    const isElsewhere = one.sighting.side === sighting.side ? 0 : 1;
    // Where one of the two has no such feature at all, nobody takes them for each other.
    const missing = differ.filter((name) => !sighting.features[name] || !one.sighting.features[name]);
    // The last question is answered in haste.
    const isEarly = differ.includes(ways[rule]!.at(-1)!) ? 0 : 1;
    const distance =
      10_000 * isElsewhere +
      100 * (differ.length + missing.length) +
      50 * isEarly +
      differing(sighting, one.sighting, every).length +
      one.effort / 1e4;
    if (!best || distance < best.distance) best = { found: { example: one, differ }, distance };
  }
  return best?.found;
}

/** By rule: the features that are asked for on the way to it. */
function waysOf(table: ProvedTable): string[][] {
  const tree = treeOf(table);
  return table.rules.map((_, i) => askedOnTheWay(tree, i));
}
