/** How much is read of what strangers send. Each is far above what a class needs, and keeps a run within seconds. */

/** Rows of all files together. */
export const MOST_ROWS = 20_000;
/** UTF-16 units of one answer: 400 turns with spaces and primes. */
export const LONGEST_ANSWER = 2_000;
/** UTF-16 units of a student's code, an item, a paper or a mark. */
export const LONGEST_CODE = 60;
/** Turns of an answer for which near misses are looked for: the search grows with their square. */
export const MOST_TURNS_MENDED = 50;
/** Bytes of one file of submissions: MOST_ROWS of 200 bytes. */
export const LARGEST_SUBMISSIONS = 4_000_000;
/** Claims of one file: a lesson with papers for a thousand students has no more. "build" writes no file with more. */
export const MOST_CLAIMS = 50_000;
/** Bytes of one claims file: 2,000 a claim, of which "build" writes some 800, and of the longest 1,500. */
export const LARGEST_CLAIMS = 100_000_000;
