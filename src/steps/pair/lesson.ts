/** Pairs in the lesson format: own slot, open slots, what a lesson promises of slots, and how a coach is told of them. */
import { z } from 'zod';
import type { Place } from '../../cube/spots.ts';
import { about } from '../../text/about.ts';
import { joined, listed } from '../../text/likely.ts';
import type { LessonPart, Numbered, OwnFields, OwnPromise, Said, Told } from '../lesson-part.ts';
import { stuckSlots } from './address.ts';
import { FAMILIES_SAID, likelyFamily } from './family-words.ts';
import { IN_SIDE_MIRROR } from './mirrored.ts';
import { SLOT_WORDS, slotSaid } from './slot-words.ts';
import { SLOTS, type Slot, slotOfPlace } from './slots.ts';
import { asPair, asPairWhere, type PairWhere } from './subject.ts';
import { pairWords } from './words.ts';

const slot = z.enum(SLOTS);
const own = about(slot, "The pair's own slot: FR front right (without it), FL, BL, BR.", 'BL').optional();
const oneOrMore = (description: string, example: Slot) =>
  about(z.union([slot, z.array(slot).min(1)]), description, example).optional();

const fields = {
  case: {
    slot: own,
    open: about(
      z.union([slot, z.array(slot)]),
      'A further slot that need not be solved before or after, or a list of some.',
      'BL',
      ['BL', 'BR'],
    ).optional(),
  },
  every: { slot: own },
  claims: {
    slots: about(
      z.union([z.literal('all'), z.array(slot).min(1)]),
      'The own slots of the pairs shown: all four, or exactly those listed.',
      'all',
    ).optional(),
    kept: about(
      z.enum(['all']),
      'all: no slot is open but those that the pair and its pieces are in.',
      'all',
    ).optional(),
  },
  only: {
    slot: oneOrMore('Only these own slots of the pair.', 'FR'),
    stuck: oneOrMore('Only cases with a piece stuck in one of these slots.', 'BL'),
  },
};

/** What the schema let pass. */
interface Written {
  readonly slot?: Slot;
  readonly open?: Slot | readonly Slot[];
}

function whereOf(written: OwnFields, tell: (told: Told, ...path: (string | number)[]) => void): PairWhere {
  const { slot = 'FR', open: one = [] } = written as Written;
  const open = [one].flat() as Slot[];
  const at = open.indexOf(slot);
  if (at >= 0) {
    const message = `${slot} is the pair's own slot, which is always open`;
    tell({ code: 'slot-open', message, hint: `leave ${slot} out` }, 'open', ...(typeof one === 'string' ? [] : [at]));
  }
  return { slot, open };
}

const mirroredSlots = (slots: readonly Slot[]): Slot[] => SLOTS.filter((s) => slots.includes(IN_SIDE_MIRROR[s]));

function unsolvedSaid(broken: readonly Place[], own: Slot): string {
  const of = (slot: Slot): Place[] => broken.filter((place) => slotOfPlace(place) === slot);
  const pair = of(own);
  const cross = broken.filter((place) => slotOfPlace(place) === undefined);
  return joined([
    ...(pair.length === 2 ? ['the pair'] : pair.map((place) => `the pair's ${place.length === 3 ? 'corner' : 'edge'}`)),
    ...SLOTS.filter((slot) => slot !== own && of(slot).length > 0).map((slot) => `slot ${slot}`),
    ...(cross.length > 0 ? [`the cross at ${joined(cross)}`] : []),
  ]);
}

function excusing(broken: readonly Place[]): string | undefined {
  if (broken.some((place) => slotOfPlace(place) === undefined)) return undefined;
  const slots = SLOTS.filter((s) => broken.some((place) => slotOfPlace(place) === s));
  return slots.length > 1
    ? `say that these slots are open: open: [${slots.join(', ')}]`
    : `say that this slot is open: open: ${slots[0]}`;
}

/**
 * A name such as "Front left, corner above" must name the pair's own slot or one that a piece of it is stuck in, as the
 * cube is held before a solution. Pieces on top are in no slot, so a case with both there is not judged.
 */
function misnamed(name: string, at: Slot, stuck: readonly Slot[]): Said | undefined {
  const named = [...name.matchAll(/\b(front|back)[ -](left|right)\b/gi)].map(
    ([, depth, side]) => slotSaid(`${depth} ${side}`)!,
  );
  const stray = named.find((one) => one !== at && !stuck.includes(one));
  if (!stray || stuck.length === 0) return undefined;
  const message = `the name speaks of the ${SLOT_WORDS[stray]} slot, where no piece of this pair is or belongs`;
  return { message, hint: `it is about ${listed([...stuck, at].map((one) => SLOT_WORDS[one]))}` };
}

interface SlotsPromise extends OwnPromise {
  readonly claim: 'slots';
  readonly slots: readonly Slot[];
}
const isOfSlots = (promise: OwnPromise): promise is SlotsPromise => promise.claim === 'slots';

function promises({ slots, kept }: OwnFields): OwnPromise[] {
  const listed = slots === 'all' ? SLOTS : SLOTS.filter((s) => (slots as readonly Slot[] | undefined)?.includes(s));
  const ofSlots: SlotsPromise = { claim: 'slots', slots: listed };
  return [...(slots ? [ofSlots] : []), ...(kept ? [{ claim: 'kept' }] : [])];
}

function broken(promise: OwnPromise, cases: readonly Numbered[]): Told | undefined {
  if (isOfSlots(promise)) {
    const shown = SLOTS.filter((s) => cases.some(({ subject }) => subject.side === s));
    const lacking = promise.slots.filter((s) => !shown.includes(s));
    const extra = shown.filter((s) => !promise.slots.includes(s));
    if (lacking.length === 0 && extra.length === 0) return undefined;
    const message = joined([
      ...(lacking.length > 0 ? [`no pair of slot ${joined(lacking)} is shown`] : []),
      ...(extra.length > 0 ? [`pairs of slot ${joined(extra)} are shown too`] : []),
    ]);
    return { code: 'claim-slots', message, hint: `add cases, or claim slots: [${shown.join(', ')}]` };
  }
  const opening = cases.filter(({ subject }) => asPair(subject).where.open.length > 0);
  if (opening.length === 0) return undefined;
  const message = `a further slot is open in ${joined(opening.map(({ number }) => `case ${number}`))}`;
  return { code: 'claim-kept', message, hint: 'take "open" out there, or take the claim out' };
}

export const pairLesson: LessonPart = {
  fields,
  about: {
    family: [
      'Where corner and edge are, <corner>-<edge>; one family or a list. Every set-up is held to it.',
      'top-away',
    ],
    address: [
      "In place of a set-up: where the pair's pieces are, its own slot seen as FR. A set-up is made for it.",
      'UFR:R UB:U',
    ],
  },
  terms: ['slot', 'pair', 'corner', 'edge'],
  problems: {
    'slot-open': {
      severity: 'error',
      cause: "The pair's own slot is listed as open; it always is.",
      remedy: 'List only other slots, or leave the key out.',
    },
    'claim-slots': {
      severity: 'error',
      cause: 'The own slots of the pairs shown are not those that the lesson claims.',
      remedy: 'Add cases in the missing slots, or claim the slots that are there.',
    },
    'claim-kept': {
      severity: 'error',
      cause: 'The lesson claims to keep every slot it can, and a case opens one.',
      remedy: 'Take "open" out of the case, or take the claim out.',
    },
  },

  whereOf,
  mirroredWhere: (where) => {
    const { slot, open } = asPairWhere(where);
    const seen: PairWhere = { slot: IN_SIDE_MIRROR[slot], open: mirroredSlots(open) };
    return seen;
  },
  likelyWhere: (where) => {
    const { slot, open } = asPairWhere(where);
    return SLOTS.filter((other) => other !== slot).map((other) => {
      const meant: PairWhere = { slot: other, open };
      return { where: meant, said: `the pair of slot ${other}`, write: `slot: ${other}` };
    });
  },

  wrongAddress: (text) => ({
    message: `"${text}" is not the address of a pair`,
    hint: 'write the corner, where its cross colour looks, the edge, where its front colour looks: UFR:R UB:U',
  }),
  likelyFamily,
  familiesSaid: FAMILIES_SAID,
  likelyWord: (written, words) => (words.includes('FR') ? slotSaid(written) : undefined),

  baseSaid: 'cross and kept slots',
  unsolvedSaid: (places, where) => unsolvedSaid(places, asPairWhere(where).slot),
  excusing,
  hidden: (where) => ({
    message: `after the set-up the edge of slot ${asPairWhere(where).slot} is in the bottom layer`,
    hint: 'mend it so that the cross is whole',
  }),
  misnamed: (name, subject) => {
    const { at, side } = asPair(subject);
    return misnamed(name, side, stuckSlots(at, side));
  },

  promises,
  mirroredPromise: (promise) => (isOfSlots(promise) ? { ...promise, slots: mirroredSlots(promise.slots) } : promise),
  broken,
  promiseSaid: (promise, words) => {
    const said = pairWords(words).promises;
    if (!isOfSlots(promise)) return said.kept;
    return promise.slots.length === SLOTS.length ? said.everySlot : said.slots(promise.slots);
  },
};
