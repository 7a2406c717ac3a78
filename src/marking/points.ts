/** A coach's own marks. */

const RIGHT = /^(?:right|correct|ok|yes|y|r|✓|✔)$/i;
const WRONG = /^(?:wrong|no|n|w|✗|✘)$/i;

/** 0 to 1; undefined for no mark, or one that is neither a word for right or wrong nor such a number. */
export function pointsOf(mark: string): number | undefined {
  const word = mark.trim();
  if (RIGHT.test(word)) return 1;
  if (WRONG.test(word)) return 0;
  // A comma, as half of the world writes it.
  if (!/^\d*[.,]?\d+$/.test(word)) return undefined;
  const points = Number(word.replace(',', '.'));
  return points <= 1 ? points : undefined;
}
