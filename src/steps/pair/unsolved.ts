/** What turns left unsolved, in terms of pairs. */
import type { Place } from '../../cube/spots.ts';
import { cornerOfSlot, edgeOfSlot, type Slot, slotOfPlace } from './slots.ts';

/** What is not home, as the viewer of the set-up sees it. */
export interface Unsolved {
  readonly corner: boolean;
  readonly edge: boolean;
  /** Kept slots. */
  readonly slots: readonly Slot[];
  /** Cross edges, by the side they belong to: `F`. */
  readonly cross: readonly string[];
}

/** `broken`: home places of what is not home; `own`: the slot that was to be filled. */
export function unsolvedIn(broken: readonly Place[], own: Slot): Unsolved {
  const slots = [...new Set(broken.map(slotOfPlace))].filter((slot) => slot !== undefined && slot !== own);
  return {
    corner: broken.includes(cornerOfSlot(own)),
    edge: broken.includes(edgeOfSlot(own)),
    slots: slots as Slot[],
    cross: broken.filter((place) => slotOfPlace(place) === undefined).map((place) => place.slice(1)),
  };
}
