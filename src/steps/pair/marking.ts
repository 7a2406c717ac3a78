/** Marking of pairs: claims with their slots, other pairs solved, kept slots lost. */
import { afterTurns, type Cube } from '../../cube/cube.ts';
import { areHome } from '../../cube/goal.ts';
import type { Place } from '../../cube/spots.ts';
import type { Turn } from '../../cube/turns.ts';
import { joined } from '../../text/likely.ts';
import type { Failed, MarkingPart } from '../marking-part.ts';
import type { Unsolved } from './said.ts';
import { doSetUp } from './set-up.ts';
import { cornerOfSlot, edgeOfSlot, goalOf, SLOTS, type Slot, slotOfPlace } from './slots.ts';
import { asPair, type PairSubject, pairSubject } from './subject.ts';
import { pairWords } from './words.ts';

const isSlot = (value: unknown): value is Slot => SLOTS.includes(value as Slot);
const inOrder = (slots: readonly Slot[]): string => [...slots].sort().join(' ');

function subjectOfClaim(
  { pair, kept }: Readonly<Record<string, unknown>>,
  setup: readonly Turn[],
): PairSubject | { readonly why: string } {
  if (!isSlot(pair)) return { why: 'it has not the form of a claim (pair: no slot)' };
  if (!Array.isArray(kept) || !kept.every(isSlot)) return { why: 'it has not the form of a claim (kept: no slots)' };
  const open = SLOTS.filter((slot) => !kept.includes(slot));
  const done = doSetUp(setup, pair, open);
  if ('fault' in done) {
    if (done.fault === 'rotates') return { why: 'its set-up ends with the cube turned over' };
    if (done.fault === 'hides-pair') return { why: "its set-up leaves the pair's edge in the bottom layer" };
    return { why: `its set-up leaves what should be kept unsolved at ${joined(done.broken)}` };
  }
  const [said, is] = [inOrder(kept), inOrder(done.goal.kept)];
  if (said !== is) return { why: `the file says kept ${said || 'none'}, the cube says ${is || 'none'}` };
  return pairSubject(done.address, { slot: pair, open }, done.cube);
}

/** `broken`: home places of what is not home; `own`: the slot that was to be filled. */
function unsolvedIn(broken: readonly Place[], own: Slot): Unsolved {
  const slots = [...new Set(broken.map(slotOfPlace))].filter((slot) => slot !== undefined && slot !== own);
  return {
    corner: broken.includes(cornerOfSlot(own)),
    edge: broken.includes(edgeOfSlot(own)),
    slots: slots as Slot[],
    cross: broken.filter((place) => slotOfPlace(place) === undefined).map((place) => place.slice(1)),
  };
}

const isSolvedPair = (cube: Cube, slot: Slot): boolean => areHome(cube, goalOf(slot, []).pieces.slice(-2));

/** Slots that were not solved before, need not be, and are after the turns. */
function otherPairs({ cube, goal }: PairSubject, turns: readonly Turn[]): Slot[] {
  const free = SLOTS.filter((s) => s !== goal.slot && !goal.kept.includes(s) && !isSolvedPair(cube, s));
  if (free.length === 0) return [];
  const end = afterTurns(cube, turns);
  return free.filter((slot) => isSolvedPair(end, slot));
}

function failed(pair: PairSubject, broken: readonly Place[], turns: readonly Turn[]): Failed {
  const unsolved = unsolvedIn(broken, pair.side);
  const { corner, edge, slots, cross } = unsolved;
  if (!corner && !edge && slots.length > 0)
    return { verdict: 'disturbs', says: (words) => pairWords(words).marking.disturbs(unsolved) };
  const others = slots.length + cross.length === 0 ? otherPairs(pair, turns) : [];
  return others.length > 0
    ? { verdict: 'other-pair', says: (words) => pairWords(words).marking.otherPair(others) }
    : { verdict: 'fails', says: (words) => pairWords(words).marking.fails(unsolved) };
}

export const pairMarking: MarkingPart = {
  subjectOfClaim,
  failed: (subject, broken, turns) => failed(asPair(subject), broken, turns),
  words: (words) => pairWords(words).marking,
};
