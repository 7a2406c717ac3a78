/**
 * Choosing examples for a class: few set-ups that show every rule, its exceptions, every foreign slot, every position of
 * the pair and both hands. Chosen one after the other, each the one that shows most that is new (greedy cover); no choice
 * can have fewer than `atLeast`.
 */
import { stuckSlots, writeAddress } from '../address.ts';
import { FEATURE_NAMES } from './features.ts';
import type { Done, ProvedTable, Seen } from './rules.ts';

export interface Example {
  /** Index of its rule in the table. */
  readonly rule: number;
  readonly sighting: Seen;
  /** Undefined: an exception of the rule. */
  readonly done: Done | undefined;
  /** The same set-up with the cube turned a quarter falls under another rule: which, and the quarter turn. */
  readonly contrast: { readonly rule: number; readonly turn: 'y' | "y'" } | undefined;
  /** What a class takes for it: of the sightings of other rules the one that differs in fewest features. */
  readonly alike: { readonly rule: number; readonly sighting: Seen } | undefined;
}

export interface Examples {
  readonly examples: readonly Example[];
  readonly atLeast: number;
}

interface Candidate {
  readonly rule: number;
  readonly sighting: Seen;
  readonly done: Done | undefined;
  readonly shows: readonly string[];
}

/** Which of R and L the lifting turn is, if it is one of them. */
const handOf = (done: Done | undefined): string | undefined =>
  done?.takeOut.map(({ letter }) => letter).find((letter) => letter === 'R' || letter === 'L');

function candidatesOf({ rules }: ProvedTable): Candidate[] {
  return rules.flatMap(({ sightings, done }, rule) =>
    sightings.map((sighting, i): Candidate => {
      const hand = handOf(done[i]);
      const shows = [
        `${done[i] ? 'rule' : 'exception'} ${rule}`,
        `own ${sighting.seen}`,
        ...stuckSlots(sighting.address, sighting.seen).map((slot) => `stuck ${slot}`),
        ...(hand ? [`hand ${hand}`] : []),
      ];
      return { rule, sighting, done: done[i], shows };
    }),
  );
}

const TURNS = [
  { turn: 'y', after: { FR: 'FL', FL: 'BL', BL: 'BR', BR: 'FR' } },
  { turn: "y'", after: { FL: 'FR', BL: 'FL', BR: 'BL', FR: 'BR' } },
] as const;

const keyOf = ({ address, seen }: Pick<Seen, 'address' | 'seen'>): string => `${writeAddress(address)} ${seen}`;

/** In how many features they differ, counted no further than `most`. */
function differences(a: Seen, b: Seen, most: number): number {
  let count = 0;
  for (const name of FEATURE_NAMES) {
    if (a.features[name] !== b.features[name] && ++count > most) break;
  }
  return count;
}

/** Of the sightings of other rules, seen from the same side, the one that differs in fewest features. */
function looksAlike({ rule, sighting }: Candidate, candidates: readonly Candidate[]): Candidate | undefined {
  let best: Candidate | undefined;
  let least = FEATURE_NAMES.length;
  for (const one of candidates) {
    if (one.rule === rule || one.sighting.seen !== sighting.seen) continue;
    const apart = differences(one.sighting, sighting, least);
    if (best && apart >= least) continue;
    best = one;
    least = apart;
  }
  return best;
}

export function chooseExamples(table: ProvedTable): Examples {
  const candidates = candidatesOf(table);
  const missing = new Set(candidates.flatMap(({ shows }) => shows));
  const parts = ['rule', 'own', 'stuck', 'hand'].map(
    (kind) => [...missing].filter((one) => one.startsWith(kind)).length,
  );
  const atLeast = Math.max(...parts, [...missing].filter((one) => /^(rule|exception) /.test(one)).length);
  const chosen: Candidate[] = [];
  while (missing.size > 0) {
    const news = ({ shows }: Candidate): number => shows.filter((one) => missing.has(one)).length;
    // Among equals the shortest to do, then the first: the same from run to run.
    const best = candidates.reduce((a, b) => {
      const more = news(b) - news(a);
      return more > 0 || (more === 0 && (b.done?.length ?? 99) < (a.done?.length ?? 99)) ? b : a;
    });
    chosen.push(best);
    for (const one of best.shows) missing.delete(one);
  }
  const ruleOf = new Map(candidates.map(({ sighting, rule }) => [keyOf(sighting), rule]));
  return {
    atLeast,
    examples: chosen
      .sort((a, b) => a.rule - b.rule || Number(a.done === undefined) - Number(b.done === undefined))
      .map((one): Example => {
        const { rule, sighting, done } = one;
        const turned = TURNS.map(({ turn, after }) => ({
          turn,
          rule: ruleOf.get(keyOf({ address: sighting.address, seen: after[sighting.seen] })),
        })).find((one) => one.rule !== undefined && one.rule !== rule);
        const alike = looksAlike(one, candidates);
        return {
          rule,
          sighting,
          done,
          contrast: turned && { rule: turned.rule!, turn: turned.turn },
          alike: alike && { rule: alike.rule, sighting: alike.sighting },
        };
      }),
  };
}
