/** What rules for pairs are proved with: each pair at each address, seen from four sides, and what comes of advice there. */
import { MIRRORED_FACE } from '../../cube/faces.ts';
import { fromTheSide } from '../../cube/sides.ts';
import { isTurnOfTop, mirror, type Turn, writeTurns } from '../../cube/turns.ts';
import type { Advice, Followed, RuleWorld, Sighting } from '../../rules/world.ts';
import { type Address, addressKey, writeAddress } from './address.ts';
import { leadsOn, type PairAdvice } from './advice.ts';
import { advices, wordedAdvices } from './advices.ts';
import { caseOf, type Family } from './cases.ts';
import { completions } from './completions.ts';
import { FEATURES, featuresOf, isComparison, mirroredValue } from './features.ts';
import { followInSteps, tried } from './follow.ts';
import { mirroredAddress } from './mirrored.ts';
import { setUpFor } from './set-up-for.ts';
import { type PairSighting, sightingsOf } from './sighting.ts';
import { QUARTERS_FROM_FRONT_RIGHT, turnedSlot } from './slots.ts';
import { solutionsOf } from './solutions.ts';
import { pairSubject } from './subject.ts';

export interface SeenPair extends Sighting, PairSighting {
  readonly side: PairSighting['side'];
}

/** Every sighting and all advice that come to this step's functions are its own. */
export const asSeenPair = (sighting: Sighting): SeenPair => sighting as SeenPair;
export const asPairAdvice = (advice: Advice): PairAdvice => advice as PairAdvice;

const seen: SeenPair[] = [];

export function seenPair({ at, side }: PairSighting): SeenPair {
  const key = 4 * addressKey(at) + QUARTERS_FROM_FRONT_RIGHT[side];
  seen[key] ??= {
    at,
    side,
    address: writeAddress(at),
    caseAddress: writeAddress(caseOf(at)),
    features: featuresOf({ at, side }),
  };
  return seen[key];
}

/** Seen at the front right; every other view of it has the same, otherwise called. */
const bestAt = (at: Address): readonly Turn[] =>
  solutionsOf(pairSubject(at, { slot: 'FR', open: [] }), 0).solutions[0]!.turns;

const best: (readonly Turn[])[] = [];

function bestOf(sighting: Sighting): readonly Turn[] {
  const { at, side } = asSeenPair(sighting);
  const quarters = QUARTERS_FROM_FRONT_RIGHT[side];
  const key = 4 * addressKey(at) + quarters;
  best[key] ??= fromTheSide(bestAt(at), quarters);
  return best[key];
}

function mirroredAdvice(advice: Advice): PairAdvice {
  const pairAdvice = asPairAdvice(advice);
  const { aim, lift, by } = pairAdvice;
  return {
    ...pairAdvice,
    aim: aim.kind === 'case' ? { kind: 'case', case: mirroredAddress(aim.case) } : aim,
    lift: lift.map((face) => MIRRORED_FACE[face]),
    by: by && mirror(by),
  };
}

/** Of an example whose turns students do not know again at once. */
const UNKNOWN = 1500;
/** Of turns that a rule gives, when their first turn of U is another. */
const OTHER_TOP = 300;

const withoutTopFirst = (turns: readonly Turn[]): string =>
  writeTurns(turns.slice(turns.findIndex((turn) => !isTurnOfTop(turn))));

/** How far what is done is from the turns that the rule gives: done from another side or mirrored it is not known again. */
function strangeness({ takeOut }: Followed, { by }: PairAdvice): number {
  if (!by || writeTurns(takeOut) === writeTurns(by)) return 0;
  return withoutTopFirst(takeOut) === withoutTopFirst(by) ? OTHER_TOP : UNKNOWN;
}

/** Where a rule leaves the way on to the student, steps that are taught rather than the fewest turns. */
function shown(sighting: SeenPair, followed: Followed, advice: PairAdvice): ReturnType<RuleWorld['shown']> {
  if (!leadsOn(advice.aim)) return { followed, strange: strangeness(followed, advice) };
  const taught = followInSteps(sighting, advice);
  return taught ? { followed: taught, strange: strangeness(taught, advice) } : { followed, strange: UNKNOWN };
}

const PIECES = ['corner', 'edge'] as const;

export const pairRuleWorld: RuleWorld = {
  features: FEATURES,
  plain: ['cross colour', 'corner at', 'edge at'],
  isComparison,
  mirroredValue,
  mirroredAdvice,
  sightings: (families) => sightingsOf(families as readonly Family[]).map(seenPair),
  turned: (sighting, quarters) => {
    const { at, side } = asSeenPair(sighting);
    return seenPair({ at, side: turnedSlot(side, quarters) });
  },
  front: (hand) => (hand === 'left' ? 'FL' : 'FR'),
  tries: (sighting, advice) => tried(asSeenPair(sighting), asPairAdvice(advice)),
  completions: (advice) => completions(asPairAdvice(advice)),
  best: bestOf,
  setUp: (sighting, avoid) => {
    const { at, side } = asSeenPair(sighting);
    return setUpFor(at, side, avoid);
  },
  advices: (families, everyWay) => (everyWay ? wordedAdvices : advices)(families as readonly Family[]),
  shown: (sighting, followed, advice) => shown(asSeenPair(sighting), followed, asPairAdvice(advice)),
  hidden: ({ features }) => PIECES.filter((piece) => features[`${piece} depth`] === 'behind').length,
  points: ({ features }) =>
    PIECES.flatMap((piece) => (features[`${piece} at`] === 'away' ? [`stuck ${features[`${piece} column`]}`] : [])),
};
