/**
 * Following advice by brute force on the second checker's stickers: every take-out written out, every insert of three
 * turns tried. Shares no code with src/cube but the set-up that brings a sighting about.
 */

import { basePlaces } from '../../../src/audit/pair-claims.ts';
import {
  addressText,
  cornerOf,
  faceletsOf,
  faceOf,
  isHome,
  type Place,
  pairSight,
  placeOf,
  type Slot,
} from '../../../src/audit/places.ts';
import { afterTurns, againstCentres, type Layer, type Stickers, type Turn } from '../../../src/audit/stickers.ts';

const FACES: readonly Layer[] = ['U', 'D', 'R', 'L', 'F', 'B'];
const QUARTERS = [1, 2, 3] as const;
const turnsOf = (layers: readonly Layer[]): Turn[] =>
  layers.flatMap((layer) => QUARTERS.map((quarters) => ({ layer, quarters })));
const ON_TOP: readonly (readonly Turn[])[] = [[], ...turnsOf(['U']).map((turn) => [turn])];

const ALL_SLOTS: readonly Slot[] = ['FR', 'FL', 'BL', 'BR'];
const inverse = (turns: readonly Turn[]): Turn[] =>
  turns.map(({ layer, quarters }) => ({ layer, quarters: (4 - quarters) as 1 | 2 | 3 })).reverse();

/** The colour, named by the face it belongs on, of the sticker of a piece's home that lies on each face now. */
export function coloursOf(state: Stickers, home: Place): Map<string, string> {
  return new Map(faceletsOf(home).map((facelet) => [faceOf(state[facelet]!), faceOf(facelet)]));
}

const areSideBySide = (state: Stickers, slot: Slot): boolean =>
  [...placeOf(state, slot)].every((face) => placeOf(state, cornerOf(slot)).includes(face));
/** Every face that both pieces have a sticker on shows one colour twice. */
function areMatching(state: Stickers, slot: Slot): boolean {
  const [corner, edge] = [coloursOf(state, cornerOf(slot)), coloursOf(state, slot)];
  return [...edge].every(([face, colour]) => corner.get(face) === colour);
}

interface Insert {
  readonly turns: readonly Turn[];
  readonly kind: 'joined' | 'split';
}

/** By address text: all words of three turns, and of a turn of U and three, that solve it with everything else kept. */
function allInserts(): Map<string, Insert[]> {
  const found = new Map<string, Insert[]>();
  const whole = [...basePlaces(['FL', 'BL', 'BR'])];
  const any = turnsOf(FACES);
  for (const a of any) {
    for (const b of any) {
      for (const c of any) {
        if (a.layer === b.layer || b.layer === c.layer) continue;
        for (const onTop of a.layer === 'U' ? [] : ON_TOP) {
          const turns = [...onTop, a, b, c];
          const state = afterTurns(inverse(turns));
          if (!whole.every((place) => isHome(state, place))) continue;
          const sight = pairSight(state, 'FR');
          if (!sight.corner.place.startsWith('U') || !sight.edge.place.startsWith('U')) continue;
          const kind = areSideBySide(state, 'FR') && areMatching(state, 'FR') ? 'joined' : 'split';
          const text = addressText(sight);
          found.set(text, [...(found.get(text) ?? []), { turns, kind }]);
        }
      }
    }
  }
  return found;
}

export const INSERTS = allInserts();

/** The face as the one calls it who sees the own slot of an address at `seen`. */
const ROUND = 'FLBR';
const QUARTERS_TO: Readonly<Record<Slot, number>> = { FR: 0, FL: 1, BL: 2, BR: 3 };
const seenAt = (layer: Layer, seen: Slot): Layer =>
  ROUND.includes(layer) ? (ROUND[(ROUND.indexOf(layer) + QUARTERS_TO[seen]) % 4] as Layer) : layer;

export interface NaiveAdvice {
  readonly aim: 'joined' | 'split';
  readonly lift: readonly ('R' | 'L' | 'F' | 'B')[];
  readonly way?: 'hidden' | 'direct' | 'together';
  readonly most: number;
}

function wayOf(before: Place, after: Place): NaiveAdvice['way'] {
  if (before === after) return 'direct';
  return after.startsWith('U') ? 'together' : 'hidden';
}

/** The length of a shortest way to follow the advice from a state; undefined if there is none. One piece is stuck. */
export function naiveLength(state: Stickers, seen: Slot, { aim, lift, way, most }: NaiveAdvice): number | undefined {
  const pieces = [cornerOf(seen), seen] as const;
  const slotOf = (place: Place): Slot | undefined => ALL_SLOTS.find((s) => place === s || place === cornerOf(s));
  const stuck = pieces.filter((p) => ![undefined, seen].includes(slotOf(placeOf(state, p))));
  const kept = ALL_SLOTS.filter((s) => s !== seen && !pieces.some((p) => slotOf(placeOf(state, p)) === s));
  let best: number | undefined;
  for (const onTop of ON_TOP) {
    const before = afterTurns(onTop, state);
    for (const layer of lift) {
      for (const quarters of [1, 3] as const) {
        const lifted = afterTurns([{ layer, quarters }], before);
        if (!stuck.some((p) => placeOf(lifted, p).startsWith('U') && !placeOf(before, p).startsWith('U'))) continue;
        const others = pieces.filter((p) => !stuck.includes(p));
        if (way && !others.some((p) => wayOf(placeOf(before, p), placeOf(lifted, p)) === way)) continue;
        for (const between of turnsOf(['U'])) {
          const back: Turn = { layer, quarters: quarters === 1 ? 3 : 1 };
          const after = againstCentres(afterTurns([between, back], lifted));
          if (!basePlaces(kept).every((place) => isHome(after, place))) continue;
          for (const { turns, kind } of INSERTS.get(addressText(pairSight(after, seen))) ?? []) {
            // Two turns of one face in a row are never printed.
            if (kind !== aim || seenAt(turns[0]!.layer, seen) === layer) continue;
            const length = onTop.length + 3 + turns.length;
            if (length <= most && length < (best ?? Number.POSITIVE_INFINITY)) best = length;
          }
        }
      }
    }
  }
  return best;
}
