/** Rules of thumb proved by the engine and again by brute force on the second checker's stickers. */
import { describe, expect, it } from 'vitest';
import { addressText, pairSight } from '../../src/audit/places.ts';
import { turnsOrFaults } from '../../src/audit/reprove.ts';
import { afterTurns, againstCentres, type Stickers } from '../../src/audit/stickers.ts';
import type { Face } from '../../src/cube/faces.ts';
import { prove } from '../../src/cube/solves.ts';
import { TRIGGERS } from '../../src/cube/triggers.ts';
import { inverse, lengthOf, type Turn, turnOf, writeTurns } from '../../src/cube/turns.ts';
import { readCondition, wordsFor } from '../../src/rules/conditions.ts';
import { narrowed, pickedBy } from '../../src/rules/narrow.ts';
import type { Condition } from '../../src/rules/rules.ts';
import { writeAddress } from '../../src/steps/pair/address.ts';
import type { PairAdvice } from '../../src/steps/pair/advice.ts';
import { ADDRESSES, casesOf, type Family, upToU } from '../../src/steps/pair/cases.ts';
import { FEATURE_NAMES, type FeatureName } from '../../src/steps/pair/features.ts';
import { follow } from '../../src/steps/pair/follow.ts';
import { isJoined, isSplit } from '../../src/steps/pair/joined-split.ts';
import { asSeenPair, pairRuleWorld, type SeenPair } from '../../src/steps/pair/rule-world.ts';
import { catalogue } from '../../src/steps/pair/search/catalogue.ts';
import { pairSubject } from '../../src/steps/pair/subject.ts';
import { turnsIn } from '../cube/read.ts';
import { coloursOf, INSERTS, naiveLengths } from '../steps/pair/naive-advice.ts';
import { findTable, proveTable, type Rule, seenOf, shortestOf, stateOf } from './of-pairs.ts';

const when = (conditions: Record<string, readonly string[]>): Condition[] =>
  Object.entries(conditions).map(([feature, values]) => ({ feature, values }) as Condition);
const SIDEWAYS = ['front', 'back', 'left', 'right'];
const RL: readonly Face[] = ['R', 'L'];
const FB: readonly Face[] = ['F', 'B'];
const ANY: readonly Face[] = [...RL, ...FB];
const aim = (kind: 'joined' | 'split'): Pick<PairAdvice, 'aim'> => ({ aim: { kind } });

describe('joined and split', () => {
  it('are eight addresses each, as three turns and a look at the stickers have it', () => {
    const joined = ADDRESSES.filter(isJoined).map(writeAddress);
    const split = ADDRESSES.filter(isSplit).map(writeAddress);
    expect([joined.length, split.length]).toEqual([8, 8]);
    const of = (kind: string) => [...INSERTS].filter(([, all]) => all[0]!.kind === kind).map(([text]) => text);
    expect(joined.sort()).toEqual(of('joined').sort());
    expect(split.sort()).toEqual(of('split').sort());
  });
});

/** A condition worked out from the stickers alone. */
type Look = (state: Stickers, seen: SeenPair['side']) => boolean;
const faceOfColour = (colours: Map<string, string>, colour: string): string =>
  [...colours].find(([, c]) => c === colour)![0];
const towards = (colours: Map<string, string>, faces: string): string | undefined =>
  [...colours].find(([face]) => faces.includes(face))?.[1];
const corner = (state: Stickers, seen: SeenPair['side']) => coloursOf(state, `D${seen}`);
const edge = (state: Stickers, seen: SeenPair['side']) => coloursOf(state, seen);
const isSideways: Look = (state, seen) => 'FBLR'.includes(faceOfColour(corner(state, seen), 'D'));
const isDown: Look = (state, seen) => faceOfColour(corner(state, seen), 'D') === 'D';
const both =
  (...looks: Look[]): Look =>
  (state, seen) =>
    looks.every((look) => look(state, seen));
const frontLikeTop: Look = (state, seen) => towards(edge(state, seen), 'FB') === corner(state, seen).get('U');
const not =
  (look: Look): Look =>
  (state, seen) =>
    !look(state, seen);
const sidewaysColour = (state: Stickers, seen: SeenPair['side']) =>
  [...corner(state, seen)].find(([face, colour]) => 'FBLR'.includes(face) && colour !== 'D')![1];
const topLikeSideways: Look = (state, seen) => edge(state, seen).get('U') === sidewaysColour(state, seen);
const topLikeFront: Look = (state, seen) => edge(state, seen).get('U') === towards(corner(state, seen), 'FB');

/**
 * Rules of thumb that coaches give (common practice, no source), each with the conditions of the format and worked out
 * a second time from stickers.
 */
const THUMB: readonly {
  readonly name: string;
  readonly family: Family;
  readonly rule: Rule;
  /** For each condition. */
  readonly looks: readonly Look[];
  readonly exact: boolean;
  /** In the mean, from a recomputation outside this project. */
  readonly cost?: string;
}[] = [
  {
    name: 'edge away, sideways, unlike: R or L, a split',
    family: 'top-away',
    rule: {
      when: when({ 'cross colour': SIDEWAYS, 'edge front and corner top': ['unlike'] }),
      counsel: { ...aim('split'), lift: RL, most: 8 },
    },
    looks: [isSideways, not(frontLikeTop)],
    exact: true,
    cost: '0.79',
  },
  {
    name: 'the same in seven turns',
    family: 'top-away',
    rule: {
      when: when({ 'cross colour': SIDEWAYS, 'edge front and corner top': ['unlike'] }),
      counsel: { ...aim('split'), lift: RL, most: 7 },
    },
    looks: [isSideways, not(frontLikeTop)],
    exact: false,
  },
  {
    name: 'edge away, sideways, like: the corner aside, joined',
    family: 'top-away',
    rule: {
      when: when({ 'cross colour': SIDEWAYS, 'edge front and corner top': ['like'] }),
      counsel: { ...aim('joined'), lift: RL, way: 'hidden', most: 8 },
    },
    looks: [isSideways, frontLikeTop],
    exact: false,
  },
  {
    name: 'corner away, sideways, the tops like: joined',
    family: 'away-top',
    rule: {
      when: when({ 'edge top and corner sideways': ['like'] }),
      counsel: { ...aim('joined'), lift: RL, most: 8 },
    },
    looks: [both(isSideways, topLikeSideways)],
    exact: true,
  },
  {
    name: 'corner away, sideways, the tops unlike: a split',
    family: 'away-top',
    rule: {
      when: when({ 'edge top and corner sideways': ['unlike'] }),
      counsel: { ...aim('split'), lift: FB, most: 8 },
    },
    looks: [both(isSideways, not(topLikeSideways))],
    exact: true,
  },
  {
    name: 'corner away, down, unlike: a split',
    family: 'away-top',
    rule: {
      when: when({ 'cross colour': ['down'], 'edge top and corner front': ['unlike'] }),
      counsel: { ...aim('split'), lift: RL, way: 'direct', most: 8 },
    },
    looks: [isDown, not(topLikeFront)],
    exact: true,
  },
];

describe.each(THUMB)('$name', ({ family, rule, looks, exact, cost }) => {
  const table = proveTable([family], [rule]);
  const [proved] = table.rules;
  const advice = rule.counsel as PairAdvice;
  const naive = table.sightings.map(asSeenPair).map((seen) => {
    const state = stateOf(seen);
    const { aim: aimed, lift, way, most } = advice;
    const lengths = naiveLengths(state, seen.side, {
      aim: aimed.kind,
      lift: lift as ('R' | 'L')[],
      ...(way && { how: way }),
      most,
    });
    return {
      seen,
      reached: addressText(pairSight(state, seen.side)) === seen.address,
      sees: looks.map((look) => look(state, seen.side)),
      fits: looks.every((look) => look(state, seen.side)),
      length: lengths?.length,
      printed: lengths?.printed,
    };
  });

  it('is held against all 288 sightings, each brought about by its set-up', () => {
    expect(naive).toHaveLength(288);
    expect(naive.filter(({ reached }) => !reached)).toEqual([]);
  });

  it('speaks of the sightings that the stickers show', () => {
    expect(new Set(proved!.sightings)).toEqual(new Set(naive.filter(({ fits }) => fits).map(({ seen }) => seen)));
    expect(proved!.excluded).toBe(naive.filter(({ fits }) => !fits).length);
  });

  it('holds, in as many turns, where brute force finds it to hold, and nowhere else', () => {
    for (const { seen, length } of naive) expect(follow(seen, advice)?.length).toBe(length);
    const holding = naive.filter(({ fits, length }) => fits && length !== undefined);
    expect(proved!.holds).toBe(holding.length);
    expect(proved!.exceptions.length).toBe(proved!.sightings.length - holding.length);
    expect(proved!.exceptions.length === 0).toBe(exact);
    expect(proved!.contrast).toBe(naive.filter(({ fits, length }) => !fits && length !== undefined).length);
  });

  it('is held against those that fail just one of its conditions', () => {
    const counted = looks.map((_, failed) => {
      const turned = naive.filter(({ sees }) => sees.every((is, i) => is === (i !== failed)));
      return { sightings: turned.length, holds: turned.filter(({ length }) => length !== undefined).length };
    });
    expect(proved!.contrasts.map(({ sightings, holds }) => ({ sightings, holds }))).toEqual(counted);
    expect(proved!.contrasts.map(({ without }) => without)).toEqual(rule.when);
  });

  it('costs as many turns over the shortest as are printed', () => {
    const over = naive.flatMap(({ seen, fits, printed }) =>
      fits && printed !== undefined ? [printed - shortestOf(seen)] : [],
    );
    expect(proved!.cost!.worst).toBe(Math.max(...over));
    expect(proved!.cost!.mean).toBeCloseTo(over.reduce((sum, n) => sum + n, 0) / over.length, 10);
    if (cost) expect(proved!.cost!.mean.toFixed(2)).toBe(cost);
  });

  it('is followed by turns that solve the pair, seen as they are done', () => {
    for (const [i, done] of proved!.done.entries()) {
      if (!done) continue;
      const seen = asSeenPair(proved!.sightings[i]!);
      const turns = turnsOrFaults('', writeTurns([...done.first, ...done.takeOut, ...done.rest])).turns;
      const state = againstCentres(afterTurns(turns, stateOf(seen)));
      expect(addressText(pairSight(state, seen.side))).toBe('DFR:D FR:F');
    }
  });
});

describe('advice by a trigger', () => {
  const by = (trigger: readonly Turn[], kind: 'joined' | 'split', most = 8): PairAdvice => ({
    ...aim(kind),
    lift: ANY,
    piece: 'edge',
    by: trigger,
    most,
  });
  const seenAt = (address: string): SeenPair =>
    seenOf(['top-away']).find((one) => one.address === address && one.side === 'FR')!;

  it('makes one turn of the turns of U that meet at its end, and always leaves one to be seen', () => {
    // By hand: L U L' U' leaves the pair joined; from there U F' U2 F would insert it, but with U' and U gone the trigger
    // could not be seen; U2 F' U F does too, and U' and U2 are U.
    const sighting = seenAt('UFR:F BL:L');
    const done = follow(sighting, by(TRIGGERS['right four']!, 'joined'))!;
    expect(writeTurns([...done.takeOut, ...done.rest])).toBe("L U L' U F' U F");
    expect(done.length).toBe(7);
    const { turns } = turnsOrFaults('solution', writeTurns([...done.takeOut, ...done.rest]));
    const solved = againstCentres(afterTurns(turns, stateOf(sighting)));
    expect(addressText(pairSight(solved, 'FR'))).toBe('DFR:D FR:F');
  });

  it.each([
    ["R U R' U'", 'joined', 8],
    ["R U R' U'", 'split', 9],
    ["U R U' R'", 'joined', 9],
    ["(U R U' R')2", 'joined', 11],
    ["R' F R F'", 'split', 8],
    ["R U2 R' U", 'joined', 9],
  ] as const)('by %s, %s within %i: done where brute force finds each of its turns in print', (text, kind, most) => {
    const advice = by(turnsIn(text), kind, most);
    // Any face may lift, so that it is the same from every side.
    for (const one of seenOf(['top-away']).filter(({ side }) => side === 'FR')) {
      const naive = naiveLengths(stateOf(one), one.side, {
        aim: kind,
        lift: ['R', 'L', 'F', 'B'],
        piece: 'edge',
        by: text,
        most,
      });
      expect(follow(one, advice)?.length, `${one.address} ${one.side}`).toBe(naive?.length);
    }
  });

  it('has to bring the piece up', () => {
    // R U2 R' and its likes from the other sides take the edge round through the bottom and back, never up.
    const through = [...TRIGGERS['right four']!.slice(0, 1), turnOf('face', 'U', 2), turnOf('face', 'R', 3)];
    for (const sighting of seenOf(['top-away'])) {
      const done = follow(sighting, { ...by(through, 'joined', 11), aim: { kind: 'family', family: 'top-away' } });
      expect(done).toBeUndefined();
    }
  });
});

describe('a table', () => {
  const split: Rule = { when: when({ edge: ['good'] }), counsel: { ...aim('split'), lift: RL, most: 8 } };
  const rest: Rule = { when: [], counsel: { ...aim('joined'), lift: ANY, most: 8 } };

  it('asks its rules in their order, and each sighting one of them', () => {
    const { rules, sightings, uncovered } = proveTable(['away-top'], [split, rest]);
    expect(rules.map((r) => r.sightings.length)).toEqual([144, 144]);
    expect(rules.every((r) => r.sightings.every((s) => (s.features.edge === 'good') === (r.rule === split)))).toBe(
      true,
    );
    expect([sightings.length, uncovered.length]).toEqual([288, 0]);
    const turned = proveTable(['away-top'], [rest, split]);
    expect(turned.rules.map((r) => r.sightings.length)).toEqual([288, 0]);
    expect(proveTable(['away-top'], [split]).uncovered).toHaveLength(144);
  });

  it('may turn the cube a quarter, after which another rule must say what to do', () => {
    const unlike = when({ 'cross colour': SIDEWAYS, 'edge front and corner top': ['unlike'] });
    const lift: Rule = { when: unlike, counsel: { ...aim('split'), lift: RL, most: 8 } };
    const turn: Rule = { when: when({ 'cross colour': SIDEWAYS }), counsel: { turnsTheCube: true, most: 8 } };
    const [, turning] = proveTable(['top-away'], [lift, turn]).rules;
    expect([turning!.sightings.length, turning!.holds]).toEqual([96, 96]);
    expect(turning!.done.every((done) => done!.first[0]!.letter === 'y')).toBe(true);
    // Alone it turns for ever.
    expect(proveTable(['top-away'], [turn]).rules[0]!.holds).toBe(0);
  });

  it('knows what following it costs', () => {
    const { rules, cost } = proveTable(['away-top'], [split, rest]);
    // Held against the catalogue's shortest lengths; turns of one face that meet are one, so that it may be less than is done.
    const shortest = new Map(
      catalogue(casesOf('away-top').flatMap(upToU)).map((row) => [writeAddress(row.address), row.shortest]),
    );
    const over = rules.flatMap(({ sightings, done }) =>
      sightings.flatMap((sighting, i) => {
        const followed = done[i];
        if (!followed) return [];
        const turns = [...followed.first, ...followed.takeOut, ...followed.rest];
        const { at, side } = asSeenPair(sighting);
        const { cube, goal } = pairSubject(at, { slot: side, open: [] });
        expect(prove(cube, turns, goal).verdict).toBe('solves');
        expect(followed.printed).toBeLessThanOrEqual(lengthOf(turns));
        return [followed.printed - shortest.get(sighting.address)!];
      }),
    );
    expect(over).toHaveLength(rules.reduce((sum, { holds }) => sum + holds, 0));
    expect(over.length).toBeGreaterThan(100);
    expect(Math.min(...over)).toBeGreaterThanOrEqual(0);
    expect(cost!.worst).toBe(Math.max(...over));
    expect(cost!.mean).toBeCloseTo(over.reduce((sum, turns) => sum + turns, 0) / over.length, 10);
  });
});

describe('narrowing', () => {
  const like = when({ 'cross colour': SIDEWAYS, 'edge front and corner top': ['like'] });
  const rule: Rule = { when: like, counsel: { ...aim('joined'), lift: RL, way: 'hidden', most: 8 } };

  it('finds the condition that makes a rule exact, and the rule is exact with it', () => {
    const [proved] = proveTable(['top-away'], [rule]).rules;
    expect([proved!.sightings.length, proved!.holds]).toEqual([96, 48]);
    const more = narrowed(pairRuleWorld, proved!.sightings, (i) => proved!.done[i] !== undefined)!;
    expect([more.conditions.length, more.left]).toEqual([1, 48]);
    const [mended] = proveTable(['top-away'], [{ ...rule, when: [...like, ...more.conditions] }]).rules;
    expect([mended!.sightings.length, mended!.holds]).toEqual([48, 48]);
  });

  it('finds none where nothing a viewer sees tells them apart', () => {
    const [first] = seenOf(['top-away']);
    expect(narrowed(pairRuleWorld, [first!, first!], (i) => i === 0)).toBeUndefined();
  });

  it('finds the two conditions that pick just some sightings, where one picks part of them', () => {
    const sightings = seenOf(['top-away']);
    const own = sightings.filter(({ features: f }) => f['edge column'] === 'front left' && f['cross colour'] === 'up');
    const picked = pickedBy(pairRuleWorld, sightings, new Set(own))!;
    expect(picked).toHaveLength(2);
    expect(sightings.filter((s) => picked.every((c) => c.values.includes(s.features[c.feature] ?? '')))).toEqual(own);
  });

  it('says what a rule that comes later must add to stand alone', () => {
    const later: Rule = { when: when({ 'cross colour': SIDEWAYS }), counsel: { turnsTheCube: true, most: 8 } };
    const first: Rule = { when: when({ 'edge front and corner top': ['unlike'] }), counsel: rule.counsel };
    const { rules, sightings } = proveTable(['top-away'], [first, later]);
    const fitting = sightings.filter((s) => SIDEWAYS.includes(s.features['cross colour']!));
    const picked = pickedBy(pairRuleWorld, fitting, new Set(rules[1]!.sightings))!;
    expect(picked).toHaveLength(1);
    expect(fitting.filter((s) => picked.every((c) => c.values.includes(s.features[c.feature] ?? '')))).toEqual(
      rules[1]!.sightings,
    );
  });
});

describe('a table that is found', () => {
  it.each(['top-away', 'away-top'] as const)('for %s is exact and speaks of every sighting', (family) => {
    const found = findTable([family], {});
    if ('lacks' in found) throw new Error(`none for want of ${found.lacks}`);
    const { rules, uncovered, cost } = proveTable([family], found.rules);
    expect(uncovered).toEqual([]);
    expect(rules.flatMap((r) => r.exceptions)).toEqual([]);
    expect(cost!.worst).toBeLessThanOrEqual(found.over);
    expect(found.atLeast).toBe(found.rules.length);
  });

  it('has no fewer rules than it needs: of all pairs of conditions none gives a table of two', () => {
    const sightings = seenOf(['away-top']);
    const ways = [undefined, 'hidden', 'direct', 'together'] as const;
    const doubled = (turns: readonly Turn[]): Turn[] => [...turns, ...turns];
    const { 'right four': four, sledge } = TRIGGERS as Record<'right four' | 'sledge', readonly Turn[]>;
    const bys = [sledge, inverse(sledge), doubled(four), doubled(inverse(four))];
    const advices = (['joined', 'split'] as const).flatMap((kind): PairAdvice[] => [
      ...[RL, FB].flatMap((lift) => ways.map((way): PairAdvice => ({ ...aim(kind), lift, way, most: 30 }))),
      ...bys.map((by): PairAdvice => ({ ...aim(kind), lift: ANY, by, most: 30 })),
    ]);
    const shortest = sightings.map(shortestOf);
    const good = advices.map((advice) =>
      sightings.map((s, i) => (follow(s, advice)?.length ?? 99) - shortest[i]! <= 2),
    );
    const works = (test: (i: number) => boolean): boolean =>
      good.some((fine) => sightings.every((_, i) => !test(i) || fine[i]));
    const conditions = FEATURE_NAMES.flatMap((feature) =>
      wordsFor(pairRuleWorld, feature).flatMap((word) =>
        [word, `not ${word}`].map((text) => readCondition(pairRuleWorld, feature, text) as Condition),
      ),
    );
    const met = conditions.map(({ feature, values }) =>
      sightings.map(({ features }) => values.includes(features[feature] ?? '')),
    );
    const tables = met.flatMap((one, a) =>
      met.slice(a).filter((two) => {
        const fits = (i: number): boolean => one[i]! && two[i]!;
        return works(fits) && works((i) => !fits(i));
      }),
    );
    expect(tables).toEqual([]);
    expect(findTable(['away-top'], { over: 2 })).toMatchObject({ atLeast: 3, rules: [{}, {}, {}] });
  });

  it('is the same size with features that mean the same', () => {
    const sizeWith = (feature: FeatureName): number | undefined => {
      const found = findTable(['top-home'], { features: [feature, 'cross colour', 'edge'] });
      return 'rules' in found ? found.rules.length : undefined;
    };
    // With the edge at home, how far the corner is from the own slot is how far the edge is from the corner.
    expect(sizeWith('edge from corner')).toBe(sizeWith('corner from own slot'));
    expect(sizeWith('edge from corner')).toBeGreaterThan(3);
  });

  it('is not there with features that tell too little, proved at once', () => {
    expect(findTable(['top-away'], { features: ['edge column'] })).toEqual({ lacks: 'features' });
  });

  it('is not found with fewer turns over the shortest than some sighting needs', () => {
    const least = findTable(['away-top'], { over: 0 });
    expect(least).toEqual({ lacks: 'turns', leastOver: 2 });
    expect(findTable(['away-top'], { over: 2 })).toHaveProperty('rules');
  });
});
