/** `turnsheet rules`: the fewest rules of thumb for a family, found and proved. */

import { ruleFacts, ruleSaid, writeRule } from '../lesson/rule-said.ts';
import { wordsFor } from '../rules/conditions.ts';
import { type ProvedTable, proveTable } from '../rules/rules.ts';
import { type FoundTable, findTable, type NoTable } from '../rules/table.ts';
import { FAMILIES, type Family } from '../steps/pair/cases.ts';
import { FAMILIES_SAID, likelyFamily } from '../steps/pair/family-words.ts';
import { FEATURE_NAMES, FEATURES, type FeatureName } from '../steps/pair/features.ts';
import { likelyWord } from '../text/likely.ts';
import type { ExitCode, Io } from './io.ts';
import { isUsageError, type RulesOptions, type UsageError } from './options.ts';
import { counted } from './report.ts';

function familyOf(word: string): Family | UsageError {
  const family = FAMILIES.find((f) => f === word);
  if (family) return family;
  return { usage: `there is no family "${word}"; ${likelyFamily(word) ?? `there are ${FAMILIES_SAID}`}` };
}

function featuresOf(text: string | undefined): FeatureName[] | undefined | UsageError {
  if (text === undefined) return undefined;
  const found: FeatureName[] = [];
  for (const word of text.split(',').map((one) => one.trim())) {
    const feature = FEATURE_NAMES.find((name) => name === word);
    const likely = likelyWord(word, FEATURE_NAMES);
    if (!feature) {
      const hint = likely ? `"${likely}" was likely meant` : '"npx turnsheet rules" alone lists them';
      return { usage: `there is no feature "${word}"; ${hint}` };
    }
    found.push(feature);
  }
  return found;
}

/** What rules can speak of. */
const featureList = (): string =>
  FEATURE_NAMES.map((name) => `  ${name}: ${wordsFor(name).join(', ')}\n      ${FEATURES[name].about}\n`).join('');

const asTurns = (cost: number): string => `${Math.round(cost * 100) / 100}`;

function tell(found: FoundTable, { rules, cost, sightings }: ProvedTable, io: Io): void {
  io.out('rules:\n');
  for (const { rule, holds } of rules) {
    io.out(`  # holds for all ${holds} sightings that it speaks of\n${writeRule(rule)}`);
  }
  const size =
    found.atLeast === found.rules.length
      ? 'no table of this kind has fewer rules'
      : `no table of this kind has fewer than ${found.atLeast}`;
  io.err(
    `${counted(found.rules.length, 'rule')} for ${counted(sightings.length, 'sighting')}, each proved; ${size}.\n` +
      `Over the shortest solution: ${asTurns(cost!.mean)} turns on average, ${cost!.worst} at worst ` +
      `(${found.over} allowed).\n`,
  );
}

function whyNone(none: NoTable, { over, features }: RulesOptions): string {
  switch (none.lacks) {
    case 'turns':
      return `with ${over} turns over the shortest there is no table; it takes --over ${none.leastOver}`;
    case 'advice':
      return 'there is no table: for some case neither a lift nor a trigger makes the pair joined, split or easier';
    case 'features':
      return features === undefined
        ? 'there is no table: conditions on one or two features do not tell apart what needs different advice'
        : 'there is no table with these features: one or two of them do not tell apart what needs different advice';
  }
}

export async function rules(options: RulesOptions, io: Io): Promise<ExitCode> {
  if (options.family === undefined) {
    if (options.json) {
      const features = FEATURE_NAMES.map((name) => ({ name, values: wordsFor(name), about: FEATURES[name].about }));
      io.out(`${JSON.stringify({ features }, undefined, 2)}\n`);
    } else io.out(`What rules can speak of:\n\n${featureList()}`);
    return 0;
  }
  const family = familyOf(options.family);
  const features = featuresOf(options.features);
  for (const one of [family, features]) {
    if (!isUsageError(one)) continue;
    io.err(`turnsheet: ${one.usage}\n`);
    return 2;
  }
  const families = [family as Family];
  const found = findTable(families, { over: options.over, features: features as FeatureName[] | undefined });
  if ('lacks' in found) {
    if (options.json) io.out(`${JSON.stringify({ families, ...found, rules: [] }, undefined, 2)}\n`);
    io.err(`${whyNone(found, options)}\n`);
    return 1;
  }
  const proved = proveTable(families, found.rules);
  if (options.json) {
    const { over, cost, atLeast } = found;
    const all = proved.rules.map((one) => ({ ...ruleSaid(one.rule), ...ruleFacts(one) }));
    const smallest = atLeast === all.length;
    io.out(`${JSON.stringify({ families, over, cost, smallest, atLeast, rules: all }, undefined, 2)}\n`);
  } else tell(found, proved, io);
  return 0;
}
