/** `turnsheet rules`: the fewest rules of thumb for a family, found and proved. */

import { ruleFacts, ruleSaid, writeRule } from '../lesson/rule-said.ts';
import { wordsFor } from '../rules/conditions.ts';
import { type ProvedTable, proveTable } from '../rules/rules.ts';
import { type FoundTable, findTable, type NoTable } from '../rules/table.ts';
import type { RulePart } from '../steps/rule-part.ts';
import { steps } from '../steps/steps.ts';
import { joined, likelyWord } from '../text/likely.ts';
import { documentOf, type ExitCode, type Io } from './io.ts';
import { isUsageError, type RulesOptions, type UsageError } from './options.ts';
import { counted } from './report.ts';

/** What can be said of the step that has the family. */
function rulesFor(word: string): RulePart | UsageError {
  const known = steps().filter(({ rules }) => rules);
  const step = known.find(({ families }) => families.includes(word));
  if (step) return step.rules!;
  const likely = known.map(({ lesson }) => lesson.likelyFamily(word)).find((said) => said !== undefined);
  return {
    usage: `there is no family "${word}"; ${likely ?? `there are ${joined(known.map(({ lesson }) => lesson.familiesSaid))}`}`,
  };
}

function featuresIn(rules: RulePart, text: string | undefined): string[] | undefined | UsageError {
  if (text === undefined) return undefined;
  const names = Object.keys(rules.features);
  const words = text.split(',').map((one) => one.trim());
  const stray = words.find((word) => !names.includes(word));
  if (stray === undefined) return words;
  const likely = likelyWord(stray, names);
  const hint = likely ? `"${likely}" was likely meant` : '"npx turnsheet rules" alone lists them';
  return { usage: `there is no feature "${stray}"; ${hint}` };
}

/** What rules can speak of. */
const featureList = () =>
  steps().flatMap(({ rules }) =>
    rules
      ? Object.entries(rules.features).map(([name, { about }]) => ({ name, values: wordsFor(rules, name), about }))
      : [],
  );

const asTurns = (cost: number): string => `${Math.round(cost * 100) / 100}`;

function tell(part: RulePart, found: FoundTable, { rules, cost, sightings }: ProvedTable, io: Io): void {
  io.out('rules:\n');
  for (const { rule, holds } of rules) {
    io.out(`  # holds for all ${holds} sightings that it speaks of\n${writeRule(part, rule)}`);
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

function whyNone(none: NoTable, { over, features }: RulesOptions, { tried }: RulePart): string {
  switch (none.lacks) {
    case 'turns':
      return `with ${over} turns over the shortest there is no table; it takes --over ${none.leastOver}`;
    case 'advice':
      return `there is no table: for some case ${tried}`;
    case 'features':
      return features === undefined
        ? 'there is no table: conditions on one or two features do not tell apart what needs different advice'
        : 'there is no table with these features: one or two of them do not tell apart what needs different advice';
  }
}

export async function rules(options: RulesOptions, io: Io): Promise<ExitCode> {
  if (options.family === undefined) {
    const features = featureList();
    const lines = features.map(({ name, values, about }) => `  ${name}: ${values.join(', ')}\n      ${about}\n`);
    io.out(options.json ? documentOf({ features }) : `What rules can speak of:\n\n${lines.join('')}`);
    return 0;
  }
  const part = rulesFor(options.family);
  const features = isUsageError(part) ? undefined : featuresIn(part, options.features);
  if (isUsageError(part) || isUsageError(features)) {
    io.err(`turnsheet: ${isUsageError(part) ? part.usage : (features as UsageError).usage}\n`);
    return 2;
  }
  const families = [options.family];
  const found = findTable(part, families, { over: options.over, features });
  if ('lacks' in found) {
    if (options.json) io.out(documentOf({ families, ...found, rules: [] }));
    io.err(`${whyNone(found, options, part)}\n`);
    return 1;
  }
  const proved = proveTable(part, families, found.rules);
  if (options.json) {
    const { over, cost, atLeast } = found;
    const all = proved.rules.map((one) => ({ ...ruleSaid(part, one.rule), ...ruleFacts(part, one) }));
    const smallest = atLeast === all.length;
    io.out(documentOf({ families, over, cost, smallest, atLeast, rules: all }));
  } else tell(part, found, proved, io);
  return 0;
}
