/** How a small letter counts where it makes the difference: as the regulations' wide turn, or as the outer layer. */
export const SMALL_LETTERS = ['wide', 'outer'] as const;
export type SmallLetters = (typeof SMALL_LETTERS)[number];
