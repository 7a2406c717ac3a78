/** Which of the words that are right was likely meant. */

/** Letters changed, dropped, added, or two neighbours swapped (restricted Damerau distance, by dynamic programming). */
export function wordDistance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      row[j] = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        row[j] = Math.min(row[j]!, before[j - 2]! + 1);
      }
    }
    before = last;
    last = row;
  }
  return last[b.length]!;
}

/** The nearest word, if it is near: at most a third of its letters (rounded up) differ, or one begins the other. */
export function likelyWord(written: string, words: readonly string[]): string | undefined {
  const key = written.toLowerCase();
  const ranked = words
    .map((word) => ({ word, distance: wordDistance(key, word.toLowerCase()) }))
    .sort((a, b) => a.distance - b.distance);
  const best = ranked[0];
  if (best && best.distance <= Math.ceil(best.word.length / 3)) return best.word;
  return words.find((word) => key.length >= 3 && (word.startsWith(key) || key.startsWith(word)));
}

const series = (words: readonly string[], last: string): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;

/** "a, b or c" */
export const listed = (words: readonly string[]): string => series(words, 'or');
/** "a, b and c" */
export const joined = (words: readonly string[]): string => series(words, 'and');
