/**
 * How an answer that does not solve comes to solve. Everything of each kind is tried and all that solves is listed, the
 * likeliest first. The order (common practice, no source): small letters and a turn's amount are what hands and pens get
 * wrong most; then slips of the whole answer, of which there are few, so that one hardly solves by chance; then changes
 * of single turns, by the number of them that there are, since the more are tried the more solve by chance.
 */

import { type Change, mendsThatSolve } from '../cube/mend.ts';
import { OTHER_SIDES, OTHER_WAYS_UP, turnsFrom } from '../cube/other-holds.ts';
import { prove } from '../cube/solves.ts';
import { inverse, mirror, type Turn, turnOf, writeTurns } from '../cube/turns.ts';
import type { MarkingWords } from '../words/words.ts';
import type { SolutionItem } from './items.ts';
import { MOST_TURNS_MENDED } from './limits.ts';
import type { NearMiss, NearMissKind } from './submission.ts';

interface Found {
  readonly rank: number;
  readonly kind: NearMissKind;
  readonly turns: readonly Turn[];
  /** Index of the turn that went wrong. */
  readonly at: number;
  readonly says: string;
}

const RANKS = [
  'small-letters',
  'quarters',
  'u-first',
  'inverted',
  'mirrored',
  'other-side',
  'neighbour',
  'swapped',
  'dropped',
  'letter',
  'added',
  'other-way-up',
  'other',
] as const;
const rankOf = (rank: (typeof RANKS)[number]): number => RANKS.indexOf(rank);

/** The kind of a near miss, and where it ranks, of a change of one turn. */
const OF_CHANGE: Readonly<Record<Change['kind'], readonly [NearMissKind, (typeof RANKS)[number]]>> = {
  quarters: ['changed', 'quarters'],
  letter: ['changed', 'letter'],
  other: ['changed', 'other'],
  swapped: ['swapped', 'swapped'],
  dropped: ['dropped', 'dropped'],
  added: ['added', 'added'],
  top: ['u-first', 'u-first'],
};

function ofChange({ kind, at, was, now, turns }: Change, given: readonly Turn[], words: MarkingWords): Found {
  // At the end a turn of the top changes nothing, unless the cube has been turned: then it is a turn like others.
  const [as, rank] = OF_CHANGE[kind === 'top' && at > 0 ? 'added' : kind];
  const turn = at + 1;
  const said = {
    'u-first': () => words.nearMiss({ kind: 'u-first', first: now!.text }),
    changed: () => words.nearMiss({ kind: 'changed', turn, was: was!.text, now: now!.text }),
    swapped: () => words.nearMiss({ kind: 'swapped', turn, was: was!.text, now: now!.text }),
    dropped: () => words.nearMiss({ kind: 'dropped', turn, was: was!.text }),
    added: () => words.nearMiss({ kind: 'added', turn, now: now!.text, last: at === given.length }),
  }[as as 'changed']();
  return { rank: rankOf(rank), kind: as, turns, at, says: said };
}

/** The same turns done another way as a whole. */
function ofWhole(given: readonly Turn[], capitals: readonly Turn[] | undefined, words: MarkingWords): Found[] {
  const whole = (
    kind: 'small-letters' | 'inverted' | 'mirrored' | 'other-side',
    turns: readonly Turn[],
    rank: (typeof RANKS)[number] = kind,
  ): Found => {
    const says = words.nearMiss({ kind, answer: writeTurns(turns) });
    const first = given.findIndex((turn, i) => turn !== turns[i]);
    return { rank: rankOf(rank), kind, turns, at: Math.max(0, first), says };
  };
  const mirrored = mirror(given);
  return [
    ...(capitals ? [whole('small-letters', capitals)] : []),
    whole('inverted', inverse(given)),
    whole('mirrored', mirrored),
    ...OTHER_SIDES.map((view) => whole('mirrored', turnsFrom(mirrored, view))),
    ...OTHER_SIDES.map((view) => whole('other-side', turnsFrom(given, view))),
    ...OTHER_WAYS_UP.map((view) => whole('other-side', turnsFrom(given, view), 'other-way-up')),
  ];
}

/** `capitals`: the same text with small letters as turns of one layer, where it has small letters. */
export function nearMisses(
  item: SolutionItem,
  given: readonly Turn[],
  capitals: readonly Turn[] | undefined,
  neighbours: readonly SolutionItem[],
  words: MarkingWords,
): NearMiss[] {
  if (given.length > MOST_TURNS_MENDED) return [];
  const solves = (of: SolutionItem, turns: readonly Turn[]): boolean =>
    prove(of.subject.cube, turns, of.subject.goal).verdict === 'solves';
  const firsts = ([1, 2, 3] as const).map((quarters) => turnOf('face', 'U', quarters));
  const found: Found[] = [
    ...ofWhole(given, capitals, words).filter(({ turns }) => solves(item, turns)),
    // Also before a turn of U, where it is no change of one turn but what the student did not do.
    ...firsts
      .map((first) => [first, ...given])
      .filter((turns) => solves(item, turns))
      .map((turns): Found => {
        const says = words.nearMiss({ kind: 'u-first', first: turns[0]!.text });
        return { rank: rankOf('u-first'), kind: 'u-first', turns, at: 0, says };
      }),
    ...neighbours
      .filter((other) => solves(other, given))
      .map((other): Found => {
        const says = words.nearMiss({ kind: 'neighbour', item: other.number });
        return { rank: rankOf('neighbour'), kind: 'neighbour', turns: given, at: 0, says };
      }),
    ...mendsThatSolve(item.subject.cube, given, item.subject.goal).map((change) => ofChange(change, given, words)),
  ];
  const seen = new Set<string>();
  return found
    .sort((a, b) => a.rank - b.rank || a.at - b.at)
    .map(({ kind, turns, at, says }) => ({ kind, answer: writeTurns(turns), turn: at + 1, says }))
    .filter(({ kind, answer, says }) => {
      // Of a neighbouring item the answer is the same; there may be two such items.
      const key = kind === 'neighbour' ? says : answer;
      return !seen.has(key) && seen.add(key);
    });
}
