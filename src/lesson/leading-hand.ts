/** Which hand leads; the right one unless it is said. */
/** Hands that may lead: those that lead with the left one see all in a mirror. */
export const LEADING_HANDS = ['right', 'left'] as const;
export type LeadingHand = (typeof LEADING_HANDS)[number];
