/** English of verdicts and near misses. */
import { counted, listed, placeWords } from './english-phrases.ts';
import type { NearMissWords, PlaceName } from './said.ts';

/** The first few of what may be a whole class. */
const few = (items: readonly string[], last = 'and'): string =>
  items.length <= 4 ? listed(items, last) : `${items.slice(0, 3).join(', ')} ${last} ${items.length - 3} more`;

const lengthWords = (length: number, over: number | undefined): string => {
  if (over === undefined) return counted(length, 'turn');
  return over === 0
    ? `${counted(length, 'turn')}, the shortest there is`
    : `${counted(length, 'turn')}, ${over} more than the shortest`;
};

function nearMiss(miss: NearMissWords): string {
  switch (miss.kind) {
    case 'small-letters':
      return `With capital letters it solves: \`${miss.answer}\`. A small letter turns two layers.`;
    case 'spelling':
      return `Spelt \`${miss.answer}\` it solves.`;
    case 'u-first':
      return `Turn the top first, \`${miss.first}\`, and your turns solve it.`;
    case 'inverted':
      return `Backwards it solves: \`${miss.answer}\`. Your turns lead into the case, not out of it.`;
    case 'mirrored':
      return `In the mirror it solves: \`${miss.answer}\`. Left and right, or front and back, changed places.`;
    case 'other-side':
      return `From another side it solves: \`${miss.answer}\`. Check how you hold the cube.`;
    case 'neighbour':
      return `Your turns solve item ${miss.item}. Did you write in the right line?`;
    case 'changed':
      return `With \`${miss.now}\` instead of \`${miss.was}\` as turn ${miss.turn} it solves.`;
    case 'dropped':
      return `Without turn ${miss.turn}, \`${miss.was}\`, it solves.`;
    case 'added':
      return miss.last
        ? `Only the last turn is missing: \`${miss.now}\`.`
        : `One turn is missing: with \`${miss.now}\` before turn ${miss.turn} it solves.`;
    case 'swapped':
      return `Turns ${miss.turn} and ${miss.turn + 1} change places: with \`${miss.now} ${miss.was}\` it solves.`;
  }
}

export const marking = {
  solves: (length: number, over: number | undefined) => `Solves: ${lengthWords(length, over)}.`,
  solvesTurned: (length: number, over: number | undefined) =>
    `Solves, with the whole cube turned: ${lengthWords(length, over)}.`,
  /** Shorter than what the sheet recommends. */
  beatsKey: (key: number) => `The sheet needs ${key}.`,
  /** After how many of the answer's turns what should stay was last whole, of how many; 0 is never. */
  wholeUntil: (turns: number, of: number) =>
    turns === of
      ? 'All that should stay solved is whole at the end.'
      : turns === 0
        ? 'From your first turn on, what should stay solved was not whole any more.'
        : `What should stay solved was last whole after turn ${turns} of ${of}.`,
  /** `after`: how many turns could be read before it. */
  unreadable: (after: number, message: string, hint: string) =>
    `Cannot be read${after === 0 ? '' : ` after turn ${after}`}: ${message}; ${hint}.`,
  /** What students write who have no answer; without capitals and signs. */
  nothing: [
    'dont know',
    'i dont know',
    'no idea',
    'not sure',
    'idk',
    'dunno',
    'none',
    'nothing',
    'skip',
    'skipped',
    'pass',
    'na',
  ],
  /** Words for places and sides, as a key has them: `bottom front, green to the front`. */
  faces: { top: 'U', up: 'U', bottom: 'D', down: 'D', front: 'F', back: 'B', left: 'L', right: 'R' } as Readonly<
    Record<string, 'U' | 'D' | 'F' | 'B' | 'L' | 'R'>
  >,
  tooLong: (most: number) => `Longer than ${most} characters: that cannot be an answer.`,
  meant: (answer: string, solves: boolean) =>
    `Likely meant: \`${answer}\`, which ${solves ? 'solves' : 'does not solve'}.`,
  noLetter: (letters: readonly string[], order: boolean) =>
    order ? `Write the letters ${listed(letters)} in order.` : `Write one letter: ${listed(letters, 'or')}.`,
  wrongPlace: (right: PlaceName, side: PlaceName) =>
    `It is at the ${placeWords(right)}, its sticker on the ${placeWords(side)}.`,
  empty: 'No answer.',
  /** A time where turns are marked. */
  time: 'A time; times are not marked.',
  rightChoice: 'Right.',
  /** The right letter and what it stands for; letters in order stand for nothing more. */
  wrongChoice: (right: string, option: string) =>
    option === '' ? `Right is ${right}.` : `Right is ${right}: ${option}.`,
  /** The letter of a slip is right, the turn or its mend is not. */
  wrongMend: (letter: string, turn: number, now: string) =>
    `${letter} is right; turn ${turn} in it should be \`${now}\`.`,
  /** The turn that is given in place of a slip cannot be read. */
  noMend: (given: string) => `The letter and the number are right, but "${given}" cannot be read as a turn.`,
  /** The letter is right, and not all of the rest is given. */
  noMendGiven: (turn: number, now: string) => `Right. You did not write the turn: turn ${turn} should be \`${now}\`.`,
  /** Small letters counted as turns of the outer layer only. */
  countedAsOuter: 'Your small letters were counted as turns of one layer. Write capitals next time.',
  smallLettersSay: (wouldSolve: boolean) =>
    wouldSolve
      ? 'Small letters were read as wide turns, two layers.'
      : 'Small letters were read as wide turns, two layers; as turns of one layer it would not solve.',
  nearMiss,
  tooManyTurns: (most: number) => `More than ${most} turns: too many to look for a slip.`,
  /** The coach's own mark. */
  marked: (mark: string) => `Marked by the coach: ${mark}.`,
  unmatched: {
    noItem: 'No item is named.',
    unknownItem: (item: string, likely: string | undefined) =>
      `There is no item ${item}${likely ? `; ${likely} was likely meant` : ''}.`,
    /** What is named as the item looks like the code of a paper. */
    paperForItem: (item: string, paper: string) =>
      item.toUpperCase() === paper.toUpperCase()
        ? `${paper} is a paper: name an item of it too.`
        : `There is no item ${item}; if it is a paper, ${paper} was likely meant: name paper, item and answer.`,
    /** The handout of a student is not among those marked; `edition` ends the names of its files, if anything does. */
    otherEdition: (edition: string) =>
      `Your handout is another edition${edition === '' ? '' : `, “${edition.slice(1)}”`}: it is not marked here.`,
    /** In several files: their names, of which one belongs in the column of the paper. */
    several: (item: string, sheets: readonly string[]) =>
      `Item ${item} is in ${listed(sheets)}: name one of them as the paper.`,
    /** No paper is named: which papers have the item, on which of them the answer is right, and the handout that has it too. */
    whichPaper: (item: string, papers: readonly string[], right: readonly string[], handout: string | undefined) => {
      const on =
        right.length > 0
          ? `It would be right on paper ${few(right, 'or')}`
          : `It is an item of ${papers.length === 1 ? 'paper' : 'papers'} ${few(papers)}`;
      return `Item ${item}: which paper? ${on}${handout === undefined ? '' : `; for the handout write ${handout} as the paper`}.`;
    },
    unknownPaper: (paper: string, likely: string | undefined) =>
      `There is no paper ${paper}${likely ? `; ${likely} was likely meant` : ''}.`,
    notOnPaper: (paper: string, item: string, items: string) => `Paper ${paper} has no item ${item}; it has ${items}.`,
    unproved: (claim: string, why: string) => `Item ${claim} cannot be marked, its claim does not hold: ${why}.`,
    nothingToAnswer: (item: string) => `${item} is not a question.`,
  },
};
