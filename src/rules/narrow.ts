/** Narrowing a rule: the smallest further conditions under which it has no exceptions. */

import { type Features, groupsOf, valuesOf } from './conditions.ts';
import { type Condition, meets } from './rules.ts';
import type { Sighting } from './world.ts';

/** A set of sightings by their index, 32 to a word. */
export type Bits = Uint32Array;

export function bitsOf(count: number, isIn: (index: number) => boolean): Bits {
  const bits = new Uint32Array(Math.ceil(count / 32));
  for (let i = 0; i < count; i++) if (isIn(i)) bits[i >> 5]! |= 1 << (i & 31);
  return bits;
}

export const both = (a: Bits, b: Bits): Bits => a.map((word, i) => word & b[i]!);
export const without = (a: Bits, b: Bits): Bits => a.map((word, i) => word & ~b[i]!);
export const isWithin = (a: Bits, b: Bits): boolean => a.every((word, i) => (word & ~b[i]!) === 0);
const isWithinBoth = (a: Bits, b: Bits, c: Bits): boolean => a.every((word, i) => (word & b[i]! & ~c[i]!) === 0);
export const isSame = (a: Bits, b: Bits): boolean => a.every((word, i) => word === b[i]!);

export function sizeOf(bits: Bits): number {
  let size = 0;
  for (let word of bits) for (; word !== 0; word &= word - 1) size++;
  return size;
}

/** Every condition that one word says of a feature: a value, a group of values, or all values but one. */
export const simpleConditions = (world: Features): readonly Condition[] =>
  Object.keys(world.features).flatMap((feature) => {
    const values = valuesOf(world, feature);
    const groups = Object.values(groupsOf(world, feature));
    const others = values.length > 2 ? values.map((value) => values.filter((v) => v !== value)) : [];
    return [...values.map((value) => [value]), ...groups, ...others].map((some) => ({ feature, values: some }));
  });

/**
 * Those conditions on `features` with the sightings that meet them, each set of sightings once, none that leaves all or
 * none over. Where several conditions mean the same sightings, one on a feature in `known` is taken.
 */
export function telling(
  world: Features,
  sightings: readonly Sighting[],
  known: readonly string[] = [],
  features: readonly string[] = Object.keys(world.features),
): { condition: Condition; bits: Bits }[] {
  const seen = new Set<string>();
  const isKnown = ({ feature }: Condition): number => (known.includes(feature) ? 0 : 1);
  const inOrder = simpleConditions(world)
    .filter(({ feature }) => features.includes(feature))
    .sort((a, b) => isKnown(a) - isKnown(b));
  return inOrder.flatMap((condition) => {
    const bits = bitsOf(sightings.length, (i) => meets(sightings[i]!, condition));
    const size = sizeOf(bits);
    const key = bits.join();
    if (size === 0 || size === sightings.length || seen.has(key)) return [];
    seen.add(key);
    return [{ condition, bits }];
  });
}

export interface Narrowed {
  readonly conditions: readonly Condition[];
  /** For how many of the sightings the rule is left, all of which it holds for. */
  readonly left: number;
}

/**
 * One condition more, or if none does it two, with which a rule that fits `sightings` and holds for those marked has no
 * exceptions: of those with as many conditions the one that leaves most, on a feature in `known` if that is one.
 * Undefined if even two are not enough.
 */
export function narrowed(
  world: Features,
  sightings: readonly Sighting[],
  holds: (index: number) => boolean,
  known: readonly string[] = [],
): Narrowed | undefined {
  const right = bitsOf(sightings.length, holds);
  const choices = telling(world, sightings, known);
  let best: Narrowed | undefined;
  const offer = (bits: Bits, conditions: readonly Condition[]): void => {
    const left = sizeOf(bits);
    if (left > (best?.left ?? 0) && isWithin(bits, right)) best = { conditions, left };
  };
  for (const { condition, bits } of choices) offer(bits, [condition]);
  if (best) return best;
  choices.forEach((one, i) => {
    for (const two of choices.slice(i + 1)) {
      // Most pairs let a wrong one through, which is seen without making their common set.
      if (one.condition.feature === two.condition.feature || !isWithinBoth(one.bits, two.bits, right)) continue;
      offer(both(one.bits, two.bits), [one.condition, two.condition]);
    }
  });
  return best;
}

/**
 * The conditions, one or two, that pick just `own` out of `sightings`: what a rule that stands alone must say besides.
 * Empty if they are the same; undefined if no two do it.
 */
export function pickedBy(
  world: Features,
  sightings: readonly Sighting[],
  own: ReadonlySet<Sighting>,
  known: readonly string[] = [],
): readonly Condition[] | undefined {
  if (own.size === sightings.length) return [];
  const wanted = bitsOf(sightings.length, (i) => own.has(sightings[i]!));
  const choices = telling(world, sightings, known).filter(({ bits }) => isWithin(wanted, bits));
  const one = choices.find(({ bits }) => isSame(bits, wanted));
  if (one) return [one.condition];
  for (const [i, first] of choices.entries()) {
    const second = choices.slice(i + 1).find(({ bits }) => isWithinBoth(first.bits, bits, wanted));
    if (second) return [first.condition, second.condition];
  }
  return undefined;
}
