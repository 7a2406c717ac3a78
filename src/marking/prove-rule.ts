/** Which rule of a lesson applies to a case: worked out anew from what the file says that its rules see. */

import { readCondition } from '../rules/conditions.ts';
import { type Condition, fits } from '../rules/rules.ts';
import type { Address } from '../steps/pair/address.ts';
import { familyOf } from '../steps/pair/cases.ts';
import { FEATURE_NAMES, featuresOf } from '../steps/pair/features.ts';
import { IN_SIDE_MIRROR, mirroredAddress } from '../steps/pair/mirrored.ts';
import type { SetUp } from '../steps/pair/set-up.ts';
import type { Slot } from '../steps/pair/slots.ts';
import type { ChoiceClaimText, Entry, RuleClaimText } from './claims-file.ts';
import type { NamedRule } from './items.ts';

interface RuleRead {
  readonly named: NamedRule;
  readonly families: readonly string[];
  readonly when: readonly Condition[];
}

/** `cross colour: sideways`; undefined where it says nothing that can be seen. */
function conditionIn(text: string): Condition | undefined {
  const [name, values] = text.split(/:\s*(.*)/s);
  const feature = FEATURE_NAMES.find((one) => one === name);
  const read = feature && values !== undefined ? readCondition(feature, values) : undefined;
  return read && 'feature' in read ? read : undefined;
}

function conditionsIn(texts: readonly string[]): readonly Condition[] | undefined {
  const read = texts.map(conditionIn);
  return read.includes(undefined) ? undefined : read.map((one) => one!);
}

const numberOf = (id: string): number | undefined => {
  const said = /^rule\.(\d+)$/.exec(id);
  return said ? Number(said[1]) : undefined;
};

function ruleRead({ id, families, see }: RuleClaimText): RuleRead[] {
  const number = numberOf(id);
  const when = conditionsIn(see);
  return number !== undefined && when ? [{ named: { number, see }, families, when }] : [];
}

/** The table of a file, in its order; undefined unless all of it can be read. */
export type RuleTable = readonly RuleRead[] | undefined;

export function ruleTable(entries: readonly Entry[]): RuleTable {
  const claims = entries.flatMap((entry) => (entry.kind === 'rule' ? [entry.claim] : []));
  const printed = claims.filter(({ id }) => numberOf(id) !== undefined);
  const read = printed.flatMap(ruleRead);
  return read.length > 0 && read.length === printed.length
    ? read.sort((a, b) => a.named.number - b.named.number)
    : undefined;
}

function applying(table: readonly RuleRead[], address: Address, seen: Slot): RuleRead | undefined {
  const family = familyOf(address);
  const sighting = { address, seen, features: featuresOf({ address, seen }) };
  return table.find(({ families, when }) => families.includes(family) && fits(sighting, when));
}

/**
 * The rule that a claim names, or why it is another one. Papers for the left hand are the mirror of what the rules of
 * their file speak of, so that either will do. Undefined where the claim names none, or the file has none to look it up.
 */
export function ruleOf(
  id: string | undefined,
  { address }: SetUp,
  pair: Slot,
  table: RuleTable,
): NamedRule | { readonly why: string } | undefined {
  if (id === undefined || !table) return undefined;
  const found = [applying(table, address, pair), applying(table, mirroredAddress(address), IN_SIDE_MIRROR[pair])];
  const named = found.find((rule) => rule && `rule.${rule.named.number}` === id)?.named;
  const [is] = found;
  return named ?? { why: `the file says that ${id} applies, the cube says ${is ? `rule.${is.named.number}` : 'none'}` };
}

/** Of the rules to choose from just the answer fits what is seen. */
export function ruleChoiceFault(
  { sees, pair, options }: ChoiceClaimText,
  at: number,
  { address }: SetUp,
): string | undefined {
  if (sees?.length !== options.length) return 'it does not say what each of its rules sees';
  const read = sees.map(conditionsIn);
  if (read.includes(undefined)) return 'one of its rules sees what is no condition';
  const sighting = { address, seen: pair, features: featuresOf({ address, seen: pair }) };
  const fitting = read.flatMap((when, i) => (fits(sighting, when!) ? [i] : []));
  if (fitting.join() === `${at}`) return undefined;
  const numbers = fitting.map((i) => i + 1).join(' and ');
  return `its answer is option ${at + 1}, and what is seen fits ${numbers ? `option ${numbers}` : 'none'}`;
}
