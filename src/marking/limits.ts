/** How much is read of what strangers send. Each is far above what a class needs, and keeps a run within a second or so. */

/** Rows of all files together. */
export const MOST_ROWS = 20_000;
/** UTF-16 units of one answer: 400 turns with spaces and primes. */
export const LONGEST_ANSWER = 2_000;
/** UTF-16 units of a student's code, an item, a paper or a mark. */
export const LONGEST_CODE = 60;
/** Turns of an answer for which near misses are looked for: the search grows with their square. */
export const MOST_TURNS_MENDED = 50;
/** Claims of one file. */
export const MOST_CLAIMS = 5_000;
