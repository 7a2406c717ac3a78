/** Which hand leads; the right one unless it is said. */
export const LEADING_HANDS = ['right', 'left'] as const;
export type LeadingHand = (typeof LEADING_HANDS)[number];
