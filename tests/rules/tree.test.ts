/** Tables by chance, seeded: walked with what is seen, the tree comes to the first rule that fits. */
import { describe, expect, it } from 'vitest';
import { impliedBy } from '../../src/rules/alone.ts';
import { readCondition } from '../../src/rules/conditions.ts';
import { simpleConditions } from '../../src/rules/narrow.ts';
import { type Condition, fits, type ProvedRule } from '../../src/rules/rules.ts';
import { leavesOf, type Tree, treeOf } from '../../src/rules/tree.ts';
import type { Sighting } from '../../src/rules/world.ts';
import type { Family } from '../../src/steps/pair/cases.ts';
import { pairRuleWorld } from '../../src/steps/pair/rule-world.ts';
import { randomFrom } from '../random.ts';
import { seenOf } from './of-pairs.ts';

const SEED = 90_210;

/** A table as proving gives it, as far as trees read it: which rule takes which sighting. */
function tableOf(families: readonly Family[], whens: readonly (readonly Condition[])[]) {
  const sightings = seenOf(families);
  const first = sightings.map((s) => whens.findIndex((when) => when.every((c) => sees(s, c))));
  const rules = whens.map((when, i) => ({
    rule: { when, counsel: { turnsTheCube: true, most: 8 } },
    sightings: sightings.filter((_, k) => first[k] === i),
  })) as unknown as ProvedRule[];
  return { world: pairRuleWorld, families, sightings, rules, uncovered: [], cost: undefined, front: 'FR' as const };
}

const sees = ({ features }: Sighting, { feature, values }: Condition): boolean => {
  const value = features[feature];
  return value !== undefined && values.includes(value);
};

/** As a student does it: answer by answer. */
function walk(tree: Tree, seen: Sighting): number | undefined {
  if (tree.kind === 'leaf') return tree.rule;
  const { asks, branches } = tree;
  const isTrue = 'together' in asks && asks.together.every((c) => sees(seen, c));
  const found =
    branches.find(({ answer }) =>
      answer.kind === 'is' ? sees(seen, answer.condition) : answer.kind === (isTrue ? 'yes' : 'no'),
    ) ?? branches.find(({ answer }) => answer.kind === 'otherwise');
  return walk(found!.tree, seen);
}

const condition = (feature: Condition['feature'], text: string): Condition => {
  const read = readCondition(pairRuleWorld, feature, text);
  if ('unknown' in read) throw new Error(read.unknown);
  return read;
};

describe('the tree of a table', () => {
  it(`leads every sighting to its rule, and a rule alone takes just its own: 60 tables from seed ${SEED}`, () => {
    const families: readonly Family[] = ['top-away', 'away-top', 'home-away', 'away-away', 'top-top'];
    const simple = simpleConditions(pairRuleWorld);
    let alone = 0;
    for (let i = 0; i < 60; i++) {
      const random = randomFrom(SEED + i);
      const some = [random.pick(families), ...(random.chance(0.3) ? [random.pick(families)] : [])];
      const whens = Array.from({ length: 1 + random.below(4) }, () =>
        Array.from({ length: 1 + random.below(2) }, () => random.pick(simple)),
      );
      if (random.chance(0.5)) whens.push([]);
      const table = tableOf([...new Set(some)], whens);
      const tree = treeOf(table);
      for (const seen of table.sightings) {
        const rule = table.rules.findIndex(({ sightings }) => sightings.includes(seen));
        expect(walk(tree, seen) ?? -1, `seed ${SEED + i}`).toBe(rule);
      }
      table.rules.forEach(({ sightings }, k) => {
        const found = impliedBy(table, k);
        if (!found) return;
        alone++;
        expect(
          table.sightings.filter((s) => fits(s, [...table.rules[k]!.rule.when, ...found])),
          `seed ${SEED + i}, rule ${k}`,
        ).toEqual(sightings);
      });
    }
    expect(alone).toBeGreaterThan(60);
  });

  it('asks once what neighbouring rules share', () => {
    const sideways = condition('cross colour', 'sideways');
    const match = condition('corner over edge', 'match');
    const table = tableOf(
      ['top-away'],
      [[sideways, condition('edge front and corner top', 'unlike')], [sideways], [match], []],
    );
    const tree = treeOf(table);
    expect(tree).toMatchObject({ asks: { feature: 'cross colour' }, branches: [{}, {}] });
    expect(leavesOf(tree).map(({ rule }) => rule)).toEqual([0, 1, 2, 3]);
  });

  it('asks first what gives another question its meaning', () => {
    const table = tableOf(
      ['away-top'],
      [[condition('edge top and corner sideways', 'unlike')], [condition('edge top and corner sideways', 'like')], []],
    );
    expect(treeOf(table)).toMatchObject({
      asks: { feature: 'cross colour' },
      branches: [{ tree: { asks: { feature: 'edge top and corner sideways' } } }, { tree: { rule: 2 } }],
    });
  });

  it('asks conditions together where a rule would stand in two branches', () => {
    const together = [condition('cross colour', 'down'), condition('corner over edge', 'match')];
    const table = tableOf(['away-away'], [together, []]);
    expect(treeOf(table)).toMatchObject({
      asks: { together },
      branches: [
        { answer: { kind: 'yes' }, tree: { rule: 0 } },
        { answer: { kind: 'no' }, tree: { rule: 1 } },
      ],
    });
    // No one or two conditions say "not both".
    expect(impliedBy(table, 1)).toBeUndefined();
  });

  it('says where no rule speaks', () => {
    const table = tableOf(['top-away'], [[condition('cross colour', 'up')]]);
    expect(leavesOf(treeOf(table))).toEqual([
      { kind: 'leaf', rule: 0 },
      { kind: 'leaf', rule: undefined },
    ]);
  });
});
