/** Which rule of a lesson applies to a case: worked out anew from what the file says that its rules see. */

import { readCondition } from '../rules/conditions.ts';
import { type Condition, fits } from '../rules/rules.ts';
import type { RulePart } from '../steps/rule-part.ts';
import type { Step } from '../steps/step.ts';
import { stepNamed, stepOf } from '../steps/steps.ts';
import type { Subject } from '../steps/subject.ts';
import type { ChoiceClaimText, Entry, RuleClaimText } from './claims-file.ts';
import type { NamedRule } from './items.ts';

interface RuleRead {
  readonly id: string;
  readonly named: NamedRule;
  readonly families: readonly string[];
  readonly when: readonly Condition[];
}

/** `cross colour: sideways`; undefined where it says nothing that can be seen. */
function conditionIn(rules: RulePart, text: string): Condition | undefined {
  const [name, values] = text.split(/:\s*(.*)/s);
  const isFeature = name !== undefined && Object.hasOwn(rules.features, name);
  const read = isFeature && values !== undefined ? readCondition(rules, name, values) : undefined;
  return read && 'feature' in read ? read : undefined;
}

/** None can be read of a step that has no rules. */
function conditionsIn({ rules }: Step, texts: readonly string[]): readonly Condition[] | undefined {
  const read = texts.map((text) => rules && conditionIn(rules, text));
  return read.includes(undefined) ? undefined : read.map((one) => one!);
}

function ruleRead({ id, step: name, number, families, see }: RuleClaimText): RuleRead[] {
  const step = stepNamed(name);
  const when = step && conditionsIn(step, see);
  return when ? [{ id, named: { number, see }, families, when }] : [];
}

/** The table of a file, in its order; undefined unless all of it can be read. */
export type RuleTable = readonly RuleRead[] | undefined;

export function ruleTable(entries: readonly Entry[]): RuleTable {
  const claims = entries.flatMap((entry) => (entry.kind === 'rule' ? [entry.claim] : []));
  const read = claims.flatMap(ruleRead);
  return read.length > 0 && read.length === claims.length
    ? read.sort((a, b) => a.named.number - b.named.number)
    : undefined;
}

/** The first that fits, and the first that fits in a mirror at the left or right. */
function applying(table: readonly RuleRead[], subject: Subject): readonly [RuleRead | undefined, RuleRead | undefined] {
  const step = stepOf(subject);
  const find = (seen: Subject): RuleRead | undefined => {
    const sighting = step.rules?.sightingOf(seen);
    return sighting && table.find(({ families, when }) => families.includes(seen.family) && fits(sighting, when));
  };
  return [find(subject), find(step.mirrored(subject))];
}

/**
 * The rule that a claim names, or why it is another one. Papers for the left hand are the mirror of what the rules of
 * their file speak of, so that either will do. Undefined where the claim names none, or the file has none to look it up.
 */
export function ruleOf(
  id: string | undefined,
  subject: Subject,
  table: RuleTable,
): NamedRule | { readonly why: string } | undefined {
  if (id === undefined || !table) return undefined;
  const found = applying(table, subject);
  const named = found.find((rule) => rule?.id === id)?.named;
  const [is] = found;
  return named ?? { why: `the file says that ${id} applies, the cube says ${is?.id ?? 'none'}` };
}

/** Of the rules to choose from just the answer fits what is seen. */
export function ruleChoiceFault({ sees, options }: ChoiceClaimText, at: number, subject: Subject): string | undefined {
  if (sees?.length !== options.length) return 'it does not say what each of its rules sees';
  const step = stepOf(subject);
  const read = sees.map((see) => conditionsIn(step, see));
  if (read.includes(undefined)) return 'one of its rules sees what is no condition';
  const sighting = step.rules!.sightingOf(subject);
  const fitting = read.flatMap((when, i) => (fits(sighting, when!) ? [i] : []));
  if (fitting.join() === `${at}`) return undefined;
  const numbers = fitting.map((i) => i + 1).join(' and ');
  return `its answer is option ${at + 1}, and what is seen fits ${numbers ? `option ${numbers}` : 'none'}`;
}
