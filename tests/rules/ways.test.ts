/** The ways that the words of rules allow, counted by the engine and again on the second checker's stickers. */
import { describe, expect, it } from 'vitest';
import type { RuleClaim } from '../../src/lesson/claim.ts';
import type { Variation } from '../../src/lesson/vary.ts';
import type { PairAdvice } from '../../src/steps/pair/advice.ts';
import { FEATURES, type FeatureName } from '../../src/steps/pair/features.ts';
import { asSeenPair } from '../../src/steps/pair/rule-world.ts';
import { pairRules } from '../../src/steps/pair/rules.ts';
import { provedSample } from '../samples.ts';
import { type NaiveAdvice, naiveWays } from '../steps/pair/naive-advice.ts';
import { findTable, proveTable, seenOf, shortestOf, stateOf } from './of-pairs.ts';

/** By address: the shortest length, as the search that is proved elsewhere has it. */
const shortestIn = (family: string): Map<string, number> =>
  new Map(seenOf([family]).flatMap((seen) => (seen.side === 'FR' ? [[seen.address, shortestOf(seen)]] : [])));

describe.each(['edge-away', 'corner-away', 'one-at-home', 'both-away'])('the rules of %s', (name) => {
  const { table, rules } = provedSample(name).rules!;

  it('say every way that works, and no other', () => {
    for (const [i, { claim, proved }] of rules.entries()) {
      const { ways } = claim as RuleClaim;
      expect(ways.work, claim.id).toBe(ways.allowed);
      expect(ways.least, claim.id).toBeGreaterThan(0);
      // Where the cube is turned first, the ways are those of the other rules.
      const { aim } = claim as unknown as NaiveAdvice;
      if (aim === 'turn the cube') continue;
      const advice = claim as unknown as NaiveAdvice;
      // Where a family is aimed at, the way on is a shortest solution from there.
      const shortest = aim.includes('-') ? shortestIn(aim) : undefined;
      const counted = table.rules[i]!.sightings.map(asSeenPair).map((seen) => {
        const all = naiveWays(advice, stateOf(seen), seen.side);
        const working = all.filter(({ printed, turns, after }) => {
          const length = shortest && printed !== undefined ? turns.length + shortest.get(after)! : printed;
          return length !== undefined && length <= claim.most;
        });
        return { allowed: all.length, work: working.length };
      });
      expect({
        allowed: counted.reduce((sum, one) => sum + one.allowed, 0),
        work: counted.reduce((sum, one) => sum + one.work, 0),
        least: Math.min(...counted.map(({ work }) => work)),
      }).toEqual(ways);
      expect(proved.isEveryWay).toBe(true);
    }
  });
});

describe('the rules of corner-away', () => {
  it('leave as many ways to the left hand, and cost as much', () => {
    const countsOf = (variation: Variation) =>
      provedSample('corner-away', variation).rules!.rules.map(({ claim: { ways, holds, contrasts, cost } }) => ({
        ways,
        holds,
        contrasts: contrasts.map((one) => [one.sightings, one.holds]),
        worst: cost!.worst,
        mean: cost!.mean.toFixed(6),
      }));
    expect(countsOf({ hand: 'left' })).toEqual(countsOf({}));
  });
});

describe('rules that are found for those who cannot choose among ways', () => {
  const features = Object.keys(FEATURES).filter((name) => FEATURES[name as FeatureName].atAGlance);

  it('work in every way, as brute force has it', () => {
    const family = 'home-top';
    const found = findTable([family], { features, everyWay: true });
    if ('lacks' in found) throw new Error(`none for want of ${found.lacks}`);
    const { rules, uncovered, cost } = proveTable([family], found.rules);
    expect([uncovered, found.atLeast]).toEqual([[], found.rules.length]);
    expect(cost!.worst).toBeLessThanOrEqual(found.over);
    for (const { rule, sightings } of rules) {
      const claim = {
        ...pairRules.claim(rule.counsel as PairAdvice),
        most: rule.counsel.most,
      } as unknown as NaiveAdvice;
      for (const seen of sightings.map(asSeenPair)) {
        const ways = naiveWays(claim, stateOf(seen), seen.side);
        expect(ways.length).toBeGreaterThan(0);
        for (const { printed } of ways) expect(printed).toBeLessThanOrEqual(claim.most);
      }
    }
  });
});
