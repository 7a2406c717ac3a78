/** Examples of the sample lessons' rules, held against counting done here. */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { afterTurns } from '../../src/cube/cube.ts';
import { areHome } from '../../src/cube/goal.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import {
  contrastPairs,
  type Example,
  easiestOfRule,
  examplesOf,
  fewestExamples,
  lookAlike,
} from '../../src/rules/examples.ts';
import { type ProvedTable, turnsTheCube } from '../../src/rules/rules.ts';
import { addressOf, goalAt } from '../../src/steps/pair/address.ts';
import { familyOf } from '../../src/steps/pair/cases.ts';
import { phasesOf } from '../../src/steps/pair/phases.ts';
import { cubeWithPair } from '../../src/steps/pair/place-pair.ts';
import { asPairAdvice, asSeenPair } from '../../src/steps/pair/rule-world.ts';
import { proveTable } from './of-pairs.ts';

const LESSONS = join(dirname(fileURLToPath(import.meta.url)), '../../lessons');
const NAMES = ['edge-away', 'corner-away', 'one-at-home', 'both-away'] as const;

const tableOf = (name: string): ProvedTable =>
  loadLesson('a.yaml', readFileSync(join(LESSONS, `${name}.yaml`))).proved!.rules!.table;

/** What an example has to show, written anew. */
function shows({ sighting, rule, done }: Example): string[] {
  const { features, side, caseAddress } = sighting;
  const isException = done === undefined;
  const lift = done?.takeOut.map(({ letter }) => letter).find((letter) => letter !== 'U');
  return [
    isException ? `exception of ${rule}: ${caseAddress} from ${side}` : `rule ${rule}`,
    `pair at ${side}`,
    ...(features['corner at'] === 'away' ? [`slot ${features['corner column']}`] : []),
    ...(features['edge at'] === 'away' ? [`slot ${features['edge column']}`] : []),
    ...(lift && 'RL'.includes(lift) ? [`hand ${lift}`] : []),
  ];
}

const union = (sets: readonly (readonly string[])[]): Set<string> => new Set(sets.flat());

/** Whether so many of these cover everything. */
function canCover(sets: readonly (readonly string[])[], everything: ReadonlySet<string>, count: number): boolean {
  const missing = [...everything][0];
  if (missing === undefined) return true;
  if (count === 0) return false;
  return sets
    .filter((set) => set.includes(missing))
    .some((set) => canCover(sets, new Set([...everything].filter((one) => !set.includes(one))), count - 1));
}

describe.each(NAMES)('the fewest examples for the rules of %s', (name) => {
  const table = tableOf(name);
  const all = examplesOf(table).map(shows);
  const chosen = fewestExamples(table);

  it('show all there is to show', () => {
    expect(union(chosen.map(shows))).toEqual(union(all));
  });

  it('are as few as can be', () => {
    const different = [...new Set(all.map((set) => [...set].sort().join('|')))].map((set) => set.split('|'));
    expect(canCover(different, union(all), chosen.length)).toBe(true);
    expect(canCover(different, union(all), chosen.length - 1)).toBe(false);
  });
});

describe('examples', () => {
  it('have the exceptions too, one for each case and side', () => {
    const { rules } = tableOf('edge-away');
    // Hiding the corner works where the sides match only: half of the sightings are exceptions.
    const rule = {
      ...rules[1]!.rule,
      when: [{ feature: 'cross colour', values: ['front', 'back', 'left', 'right'] }] as const,
    };
    const table = proveTable(['top-away'], [rule]);
    const exceptions = new Set(
      table.rules[0]!.exceptions.map(({ sighting: { caseAddress, side } }) => `${caseAddress} ${side}`),
    );
    expect(exceptions.size).toBeGreaterThan(10);
    const chosen = fewestExamples(table);
    expect(chosen.filter(({ done }) => !done)).toHaveLength(exceptions.size);
    expect(chosen.filter(({ done }) => done).length).toBeGreaterThan(0);
    const alike = lookAlike(table, easiestOfRule(table, 0)!);
    expect(alike?.example.done).toBeUndefined();
  });

  it('come in pairs that differ by a quarter turn of the cube alone', () => {
    const table = tableOf('corner-away');
    const pairs = contrastPairs(table);
    // Cross colour down: a quarter turn swaps the two last rules.
    expect(pairs.map(({ example, turned }) => [example.rule, turned.rule])).toEqual([[2, 3]]);
    for (const { example, turned } of pairs) {
      expect(turned.sighting.address).toEqual(example.sighting.address);
      // Regulations 12a4: y turns the cube as U is turned, so what was at the front right comes to the front left.
      const after = { FR: 'FL', FL: 'BL', BL: 'BR', BR: 'FR' } as const;
      expect(turned.sighting.side).toBe(after[asSeenPair(example.sighting).side]);
    }
  });

  it('look alike where one answer makes the difference', () => {
    const table = tableOf('edge-away');
    const first = (rule: number) => easiestOfRule(table, rule)!;
    expect(lookAlike(table, first(0))).toMatchObject({
      example: { rule: 2, sighting: { side: 'FR' } },
      differ: ['edge front and corner top'],
    });
    expect(lookAlike(table, first(3))).toMatchObject({ differ: ['corner over edge'] });
    expect(lookAlike(proveTable(['top-away'], [table.rules[0]!.rule]), first(0))).toBeUndefined();
  });

  it.each(['one-at-home', 'both-away'])('of %s go on in steps that are taught where a rule only leads on', (name) => {
    const table = tableOf(name);
    const families = { 'one-at-home': ['top-home', 'home-top'], 'both-away': ['top-top', 'away-top'] }[name]!;
    let inSteps = 0;
    for (const { sighting, done, rule } of examplesOf(table)) {
      const { counsel } = table.rules[rule]!.rule;
      if (!done || turnsTheCube(counsel) || asPairAdvice(counsel).aim.kind !== 'family') continue;
      const { at, side } = asSeenPair(sighting);
      const goal = goalAt(at, side);
      const start = cubeWithPair(at, side);
      const turns = [...done.takeOut, ...done.rest];
      expect(areHome(afterTurns(start, turns), goal.pieces)).toBe(true);
      expect(turns.length).toBeLessThanOrEqual(counsel.most);
      const out = addressOf(afterTurns(start, done.takeOut), side);
      expect(families).toContain(familyOf(out!));
      const { phases } = phasesOf(start, turns, goal);
      if (phases.every((phase) => phase.turns.length <= 4)) inSteps++;
    }
    expect(inSteps).toBeGreaterThan(100);
    // What is shown first never asks for more than students know.
    for (const index of table.rules.keys()) {
      const { sighting, turns } = easiestOfRule(table, index)!;
      const { at, side } = asSeenPair(sighting);
      const { phases } = phasesOf(cubeWithPair(at, side), turns, goalAt(at, side));
      expect(phases.map((phase) => phase.turns.length).filter((length) => length > 4)).toEqual([]);
    }
  });
});
