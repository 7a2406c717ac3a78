/**
 * Pairs on practice papers.
 *
 * Seeing, ten points each unless said otherwise (a measure of our own): a piece stuck in a slot (20 in a slot at the back);
 * an own slot that is not at the front right (20 at the back); the cross colour of a corner on top up, where nothing can
 * be compared; a piece turned wrongly in its own slot; a corner on top at the back (5); a further slot open. Who leads with
 * the left hand sees all in a mirror.
 */
import type { Place } from '../../cube/spots.ts';
import { cornerOf, edgeOf, faceOfCornerSpot } from '../../cube/spots.ts';
import type { OwnFilter, OwnQuestion, PracticePart } from '../practice-part.ts';
import type { Subject } from '../subject.ts';
import { type Address, seenFrom, stuckSlots } from './address.ts';
import { pairPieces } from './emphasis.ts';
import { isGoodEdgeAt, topsLike } from './features.ts';
import { IN_SIDE_MIRROR, mirroredAddress } from './mirrored.ts';
import { SLOTS, type Slot, slotOfPlace } from './slots.ts';
import { asPair, type PairSubject, pairSubject } from './subject.ts';
import { pairWords } from './words.ts';

/** Where the viewer sees the two pieces. */
function placesOf({ at, side }: PairSubject): { corner: Place; edge: Place } {
  const seen = seenFrom(at, side);
  return { corner: cornerOf(seen.corner), edge: edgeOf(seen.edge) };
}

const EASIEST_SLOT = { right: 'FR', left: 'FL' } as const;
type Hand = keyof typeof EASIEST_SLOT;
const isBehind = (place: string): boolean => place.includes('B');

function stuckPoints(place: Place, own: Slot): number {
  const slot = slotOfPlace(place);
  return slot === undefined || slot === own ? 0 : isBehind(slot) ? 20 : 10;
}

const ownSlotPoints = (own: Slot, hand: Hand): number => (own === EASIEST_SLOT[hand] ? 0 : isBehind(own) ? 20 : 10);

function seeing(pair: PairSubject, hand: Hand): number {
  const { side, where } = pair;
  const { corner, edge } = placesOf(pair);
  const cross = faceOfCornerSpot(seenFrom(pair.at, side).corner);
  const onTop = corner.startsWith('U');
  return (
    stuckPoints(corner, side) +
    stuckPoints(edge, side) +
    ownSlotPoints(side, hand) +
    (onTop && cross === 'U' ? 10 : 0) +
    (onTop && isBehind(corner) ? 5 : 0) +
    (corner === `D${side}` && cross !== 'D' ? 10 : 0) +
    10 * where.open.length
  );
}

/** The corner's top colour against the edge's, where rules of lessons begin. */
const likeness: OwnQuestion = {
  name: 'likeness',
  about: "Are the corner's top colour and the edge's colour like or unlike?",
  answers: ['like', 'unlike'],
  right: (subject) => topsLike(asPair(subject)),
};

const goodOrBad: OwnQuestion = {
  name: 'edge',
  about: 'Is the edge good or bad?',
  answers: ['good', 'bad'],
  right: (subject) => {
    const pair = asPair(subject);
    // An edge that is home cannot be asked for: the picture shows it solved or flipped.
    if (placesOf(pair).edge === pair.side) return undefined;
    return isGoodEdgeAt(pair) ? 'good' : 'bad';
  },
  seeing: (subject, hand) => {
    const pair = asPair(subject);
    return stuckPoints(placesOf(pair).edge, pair.side) + ownSlotPoints(pair.side, hand);
  },
};

/** The corner turned on its place. */
const twisted = ({ corner, edge }: Address, by: 1 | 2): Address => ({
  corner: corner - (corner % 3) + ((corner + by) % 3),
  edge,
});
const flipped = ({ corner, edge }: Address): Address => ({ corner, edge: edge ^ 1 });

function lookAlikes(subject: Subject): ReturnType<PracticePart['lookAlikes']> {
  const { at, where } = asPair(subject);
  const mirrored = mirroredAddress(at);
  const seen = (address: Address): Subject => pairSubject(address, where);
  return {
    near: [mirrored, twisted(at, 1), twisted(at, 2), flipped(at)].map(seen),
    far: [flipped(mirrored), twisted(flipped(at), 1)].map(seen),
  };
}

/** Of one key: the slots named there, one or some. */
const slotsIn = (filter: OwnFilter, key: 'slot' | 'stuck'): readonly Slot[] => [filter[key] ?? []].flat() as Slot[];

/** Other slots that could be open, by turns. */
function opened(subject: Subject, pick: number): ReturnType<NonNullable<PracticePart['opened']>> {
  const { at, where } = asPair(subject);
  const closed = SLOTS.filter((s) => s !== where.slot && !stuckSlots(at, where.slot).includes(s));
  const slot = closed[pick % closed.length];
  return slot && { subject: pairSubject(at, { slot: where.slot, open: [slot] }), open: slot };
}

export const pairPractice: PracticePart = {
  questions: [likeness, goodOrBad],
  words: (words) => pairWords(words).practice,
  seeing: (subject, hand) => seeing(asPair(subject), hand),
  spread: (subject) => {
    const { corner, edge } = placesOf(asPair(subject));
    return [`corner ${slotOfPlace(corner) ?? 'top'}`, `edge ${slotOfPlace(edge) ?? 'top'}`];
  },
  lookAlikes,
  pieces: (subject) => Object.entries(pairPieces(asPair(subject).goal)).map(([name, piece]) => ({ name, piece })),
  pieceSaid: ({ name, at, colour, faces }, words) =>
    pairWords(words).drawing.piece(name as 'corner' | 'edge', { at: 'elsewhere', place: at }, colour, faces),
  sidesWanted: (filter) => slotsIn(filter, 'slot'),
  isWanted: (subject, filter) => {
    const stuck = slotsIn(filter, 'stuck');
    const { at, side } = asPair(subject);
    return stuck.length === 0 || stuckSlots(at, side).some((slot) => stuck.includes(slot));
  },
  mirroredFilter: (filter) =>
    Object.fromEntries(
      Object.entries(filter).map(([key, slots]) => [key, ([slots].flat() as Slot[]).map((s) => IN_SIDE_MIRROR[s])]),
    ),
  opened,
};
