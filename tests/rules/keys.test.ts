/**
 * Every two keys of a rule, with values by chance, seeded: refused, or done as the claim says, which a brute force on the
 * second checker's stickers reads and nothing else.
 */
import { describe, expect, it } from 'vitest';
import type { Stickers } from '../../src/audit/stickers.ts';
import { type Condition, fits } from '../../src/rules/rules.ts';
import { BETWEENS, LIFTED_PIECES, RAISINGS, STANDINGS, WAYS } from '../../src/steps/pair/advice.ts';
import { asSeenPair, pairRuleWorld, type SeenPair } from '../../src/steps/pair/rule-world.ts';
import { pairRules } from '../../src/steps/pair/rules.ts';
import { turnsIn } from '../cube/read.ts';
import { type Random, randomFrom } from '../random.ts';
import { coloursOf, type NaiveAdvice, naiveWays } from '../steps/pair/naive-advice.ts';
import { seenOf, stateOf } from './of-pairs.ts';

const SEED = 1_311;
const EACH = process.env['DEEP'] ? 20 : 1;
/** Of each family so many sightings by chance. */
const SAMPLE = 40;
const FAMILIES = ['top-away', 'away-top', 'top-home', 'home-top', 'away-away'] as const;

const TURNS = ["R' F R F'", "R U R' U'", "U R U' R'", "U R U' R' U R U' R'", "R U R'", "F' U2 F"] as const;
const VALUES = {
  see: ['cross colour: up', 'cross colour: sideways', 'edge front and corner top: like'],
  lift: LIFTED_PIECES,
  with: ['R or L', 'F or B', 'any', 'none', 'L', 'R or F'],
  up: RAISINGS,
  how: WAYS,
  stands: STANDINGS,
  between: BETWEENS,
  by: TURNS,
  aim: ['joined', 'split', "insert R U R'", 'top-top', 'away-top', 'top-away'],
  most: ['7', '8', '9', '11'],
} as const;
type Key = keyof typeof VALUES;
const KEYS = Object.keys(VALUES) as Key[];
type Written = Partial<Record<Key, string>>;

/** Under which name the claim says it. */
const SAID: Partial<Record<Key, string>> = { lift: 'piece', with: 'lift' };

/** The same conditions, read off the stickers. */
const LOOKS: Readonly<Record<string, (state: Stickers, seen: SeenPair['side']) => boolean>> = {
  'cross colour: up': (state, seen) => coloursOf(state, `D${seen}`).get('U') === 'D',
  'cross colour: sideways': (state, seen) => [...'FBLR'].some((face) => coloursOf(state, `D${seen}`).get(face) === 'D'),
  'edge front and corner top: like': (state, seen) => {
    const edge = coloursOf(state, seen);
    const front = edge.get('F') ?? edge.get('B');
    return front !== undefined && front === coloursOf(state, `D${seen}`).get('U');
  },
};
const CONDITIONS: Readonly<Record<string, Condition>> = {
  'cross colour: up': { feature: 'cross colour', values: ['up'] },
  'cross colour: sideways': { feature: 'cross colour', values: ['front', 'back', 'left', 'right'] },
  'edge front and corner top: like': { feature: 'edge front and corner top', values: ['like'] },
};

/** Both keys, and whatever else by chance; an aim is always there. */
function ruleOf(random: Random, pair: readonly Key[]): Written {
  const others = KEYS.filter((key) => !pair.includes(key) && random.chance(0.12));
  const keys = [...new Set<Key>([...pair, ...others, 'aim'])];
  const written = Object.fromEntries(
    keys.map((key) => [key, random.pick(VALUES[key] as readonly string[])]),
  ) as Written;
  // Of what only leads on the way on is the student's: any length will do.
  return /^(joined|split|insert)/.test(written.aim!) ? written : { ...written, most: '30' };
}

function sample(random: Random, family: string): SeenPair[] {
  const all = seenOf([family]);
  return Array.from({ length: SAMPLE }, () => random.pick(all));
}

const mostOf = (written: Written): number => Number(written.most ?? 10);

describe('keys of a rule', () => {
  const pairs = KEYS.flatMap((one, i) => KEYS.slice(i + 1).map((two) => [one, two] as const));

  it(`all ${pairs.length} pairs of them, ${EACH} rules each, from seed ${SEED}`, () => {
    const counted = { refused: 0, proved: 0, holding: 0 };
    for (const [i, pair] of pairs.entries()) {
      for (let k = 0; k < EACH; k++) {
        const random = randomFrom(SEED + 1000 * k + i);
        const written = ruleOf(random, pair);
        const where = `${SEED + 1000 * k + i}: ${JSON.stringify(written)}`;
        const told: string[] = [];
        const { see, most: _, aim = '', ...own } = written;
        const insert = /^insert (.*)$/.exec(aim)?.[1];
        const advice = pairRules.read({ ...own, aim: insert ? { insert } : aim }, mostOf(written), {
          turns: (text) => turnsIn(text),
          tell: ({ code }) => told.push(code),
        });
        if (!advice) {
          expect(told, where).toEqual(['rule-unclear']);
          counted.refused++;
          continue;
        }
        const claim = JSON.parse(
          JSON.stringify({ ...pairRules.claim(advice), see: see ? [see] : [], most: advice.most }),
        );
        // Whatever was written is said.
        for (const key of Object.keys(own)) expect(claim, where).toHaveProperty(SAID[key as Key] ?? key);
        counted.proved++;
        for (const seen of sample(random, random.pick(FAMILIES))) {
          const state = stateOf(seen);
          const fitting = (claim.see as string[]).every((text) => LOOKS[text]!(state, seen.side));
          expect(fits(seen, see ? [CONDITIONS[see]!] : []), where).toBe(fitting);
          if (!fitting) continue;
          const ways = naiveWays(claim as NaiveAdvice, state, seen.side);
          const within = (length: number | undefined) => length !== undefined && length <= claim.most;
          const came = pairRuleWorld.tries(asSeenPair(seen), advice);
          const at = `${where} ${seen.address} ${seen.side}`;
          expect(came.ways, at).toEqual({
            allowed: ways.length,
            work: ways.filter(({ printed }) => within(printed)).length,
          });
          const holds = ways.some(({ length }) => within(length));
          expect(came.followed !== undefined, at).toBe(holds);
          if (holds) counted.holding++;
        }
      }
    }
    expect(Math.min(counted.refused, counted.proved)).toBeGreaterThan(EACH * 5);
    expect(counted.holding).toBeGreaterThan(EACH * 50);
  });
});
