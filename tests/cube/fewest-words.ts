/** The fewest words of a parse, by trying everything: on letters and amounts of its own, slow and short. */

/** One turn; `parted` once it is a part of another. */
interface Letter {
  readonly layer: string;
  readonly quarters: number;
  readonly parted: boolean;
}
type Word = readonly Letter[];

const wordOf = (text: string): Word =>
  text.split(' ').map((turn) => ({
    layer: turn.replace(/['2]$/, ''),
    quarters: turn.endsWith('2') ? 2 : turn.endsWith("'") ? 3 : 1,
    parted: false,
  }));

/** All ways to part a word in two, inside a turn too. */
function* cuts(word: Word): Generator<readonly [Word, Word]> {
  for (const [i, turn] of word.entries()) {
    if (i > 0) yield [word.slice(0, i), word.slice(i)];
    if (turn.parted) continue;
    for (const done of [1, 2, 3]) {
      if (done === turn.quarters) continue;
      const first = { ...turn, quarters: done, parted: true };
      const second = { ...turn, quarters: (turn.quarters - done + 4) % 4, parted: true };
      yield [
        [...word.slice(0, i), first],
        [second, ...word.slice(i + 1)],
      ];
    }
  }
}

const textOf = (word: Word): string => word.map(({ layer, quarters }) => `${layer}${quarters}`).join(' ');
const backOf = (word: Word): Word => word.map((turn) => ({ ...turn, quarters: 4 - turn.quarters })).reverse();

function fewest(word: Word, known: Map<string, number>): number {
  if (word.length === 1) return 1;
  const key = `${textOf(word)} ${word[0]!.parted} ${word.at(-1)!.parted}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  let least = Number.POSITIVE_INFINITY;
  for (const [a, rest] of cuts(word)) {
    least = Math.min(least, fewest(a, known) + fewest(rest, known));
    const back = textOf(backOf(a));
    for (const [b, after] of cuts(rest)) {
      if (textOf(after) === back) least = Math.min(least, fewest(a, known) + fewest(b, known));
      if (after.length !== a.length + b.length && after.length !== a.length + b.length - 1) continue;
      for (const [one, two] of cuts(after)) {
        if (textOf(one) === back && textOf(two) === textOf(backOf(b))) {
          least = Math.min(least, fewest(a, known) + fewest(b, known));
        }
      }
    }
  }
  known.set(key, least);
  return least;
}

/** Without triggers. */
export const fewestWords = (turns: string): number => fewest(wordOf(turns), new Map());
