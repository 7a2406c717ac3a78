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

function featuresIn(rules: RulePart, { features: text, allFeatures }: RulesOptions): string[] | UsageError {
  const names = Object.keys(rules.features);
  if (text === undefined) return names.filter((name) => allFeatures || rules.features[name]!.atAGlance);
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
      ? Object.entries(rules.features).map(([name, { about, atAGlance }]) => ({
          name,
          values: wordsFor(rules, name),
          about,
          atAGlance,
        }))
      : [],
  );

/** More rules than these nobody learns. */
const isForReference = (rules: number): boolean => rules > 12;

const asTurns = (cost: number): string => `${Math.round(cost * 100) / 100}`;

function tell(part: RulePart, found: FoundTable, { rules, cost, sightings }: ProvedTable, io: Io): void {
  io.out('rules:\n');
  for (const { rule, holds, isEveryWay } of rules) {
    const ways = isEveryWay ? 'every way works' : 'some way works';
    io.out(`  # holds for all ${holds} sightings that it speaks of: ${ways}\n${writeRule(part, rule)}`);
  }
  const size =
    found.atLeast === found.rules.length
      ? 'no table of this kind has fewer rules'
      : `no table of this kind has fewer than ${found.atLeast}`;
  const reference = isForReference(rules.length) ? 'So many rules are for reference only: nobody learns them.\n' : '';
  io.err(
    `${counted(found.rules.length, 'rule')} for ${counted(sightings.length, 'sighting')}, each proved; ${size}.\n` +
      `Over the shortest solution: ${asTurns(cost!.mean)} turns on average, ${cost!.worst} at worst ` +
      `(${found.over} allowed).\n${reference}`,
  );
}

function whyNone(none: NoTable, { over, features, allFeatures, someWay }: RulesOptions, { tried }: RulePart): string {
  const wider = [
    ...(features === undefined && !allFeatures ? ['--all-features'] : []),
    ...(someWay ? [] : ['--some-way']),
  ];
  const hint = wider.length > 0 ? `; ${joined(wider)} may find one` : '';
  switch (none.lacks) {
    case 'turns':
      return `with ${over} turns over the shortest there is no table; it takes --over ${none.leastOver}`;
    case 'advice':
      return someWay
        ? `there is no table: for some case ${tried}`
        : 'there is no table of rules of which every way works; --some-way may find one of which some way does';
    case 'features':
      return features === undefined
        ? `there is no table: conditions on one or two features do not tell apart what needs different advice${hint}`
        : `there is no table with these features: one or two of them do not tell apart what needs different advice${hint}`;
  }
}

export async function rules(options: RulesOptions, io: Io): Promise<ExitCode> {
  if (options.family === undefined) {
    const features = featureList();
    const lines = features.map(({ name, values, about, atAGlance }) => {
      const seen = atAGlance ? '' : ' (not seen at a glance)';
      return `  ${name}: ${values.join(', ')}${seen}\n      ${about}\n`;
    });
    io.out(options.json ? documentOf({ features }) : `What rules can speak of:\n\n${lines.join('')}`);
    return 0;
  }
  const part = rulesFor(options.family);
  const features = isUsageError(part) ? undefined : featuresIn(part, options);
  if (isUsageError(part) || isUsageError(features)) {
    io.err(`turnsheet: ${isUsageError(part) ? part.usage : (features as UsageError).usage}\n`);
    return 2;
  }
  const families = [options.family];
  const found = findTable(part, families, { over: options.over, features, everyWay: !options.someWay });
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
    const reference = isForReference(all.length);
    io.out(documentOf({ families, over, cost, smallest, atLeast, reference, rules: all }));
  } else tell(part, found, proved, io);
  return 0;
}
