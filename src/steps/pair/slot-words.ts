/** How slots are said. */
import type { Slot } from './slots.ts';

export const SLOT_WORDS: Readonly<Record<Slot, string>> = {
  FR: 'front right',
  FL: 'front left',
  BL: 'back left',
  BR: 'back right',
};

/** The slot that these words name, whatever their capitals. */
export const slotSaid = (words: string): Slot | undefined =>
  (Object.keys(SLOT_WORDS) as Slot[]).find((slot) => SLOT_WORDS[slot] === words.toLowerCase());
