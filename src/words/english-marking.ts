/** English of verdicts and near misses. */
import { listed, placeWords } from './english-phrases.ts';
import type { MarkingWords, NearMissWords } from './marking.ts';

/** The first few of what may be a whole class. */
const few = (items: readonly string[], last = 'and'): string =>
  items.length <= 4 ? listed(items, last) : `${items.slice(0, 3).join(', ')} ${last} ${items.length - 3} more`;

const counted = (count: number): string => `${count} ${count === 1 ? 'turn' : 'turns'}`;

const lengthWords = (length: number, over: number | undefined): string => {
  if (over === undefined) return counted(length);
  return over === 0
    ? `${counted(length)}, the shortest there is`
    : `${counted(length)}, ${over} more than the shortest`;
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
      return `Your turns solve item ${miss.item}. Are you in the right line?`;
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

export const marking: MarkingWords = {
  solves: (length, over) => `Solves: ${lengthWords(length, over)}.`,
  solvesTurned: (length, over) => `Solves, with the whole cube turned: ${lengthWords(length, over)}.`,
  beatsKey: (key) => `The sheet needs ${key}.`,
  wholeUntil: (turns, of) =>
    turns === of
      ? 'All that should stay is whole at the end.'
      : turns === 0
        ? 'After the first turn, what should stay was never whole again.'
        : `What should stay was last whole after turn ${turns} of ${of}.`,
  unreadable: (character, message, hint) => `Cannot be read at character ${character}: ${message}; ${hint}.`,
  tooLong: (most) => `Longer than ${most} characters: that is no answer.`,
  meant: (answer, solves) => `Likely meant: \`${answer}\`, which ${solves ? 'solves' : 'does not solve'}.`,
  noLetter: (letters, order) =>
    order ? `Write the letters ${listed(letters)} in order.` : `Write one letter: ${listed(letters, 'or')}.`,
  wrongPlace: (right, side) => `It is at the ${placeWords(right)}, its sticker on the ${placeWords(side)}.`,
  empty: 'No answer.',
  time: 'A time; times are not marked.',
  rightChoice: 'Right.',
  wrongChoice: (right, option) => (option === '' ? `Right is ${right}.` : `Right is ${right}: ${option}.`),
  wrongMend: (letter, turn, now) => `${letter} is right; its turn ${turn} should be \`${now}\`.`,
  noMend: (given) => `The letter and the number are right; "${given}" cannot be read as a turn.`,
  noMendGiven: (turn, now) => `Right. Its turn ${turn} should be \`${now}\`, which was not said.`,
  countedAsOuter: 'Small letters were counted as turns of one layer; write capitals.',
  smallLettersSay: (wouldSolve) =>
    wouldSolve
      ? 'Small letters were read as wide turns, two layers.'
      : 'Small letters were read as wide turns, two layers; as turns of one layer it would not solve.',
  nearMiss,
  tooManyTurns: (most) => `More than ${most} turns: no slip was looked for.`,
  marked: (mark) => `Marked by the coach: ${mark}.`,
  unmatched: {
    noItem: 'No item is named.',
    unknownItem: (item, likely) => `There is no item ${item}${likely ? `; ${likely} was likely meant` : ''}.`,
    paperForItem: (item, paper) =>
      item.toUpperCase() === paper.toUpperCase()
        ? `${paper} is a paper: name an item of it too.`
        : `There is no item ${item}; if it is a paper, ${paper} was likely meant: name paper, item and answer.`,
    several: (item, sheets) => `Item ${item} is in ${listed(sheets)}: name one of them as the paper.`,
    whichPaper: (item, papers, right, handout) => {
      const on =
        right.length > 0
          ? `It would be right on paper ${few(right, 'or')}`
          : `It is an item of ${papers.length === 1 ? 'paper' : 'papers'} ${few(papers)}`;
      return `Item ${item}: which paper? ${on}${handout === undefined ? '' : `; for the handout write ${handout} as the paper`}.`;
    },
    unknownPaper: (paper, likely) => `There is no paper ${paper}${likely ? `; ${likely} was likely meant` : ''}.`,
    notOnPaper: (paper, item, items) => `Paper ${paper} has no item ${item}; it has ${items}.`,
    unproved: (claim, why) => `Item ${claim} cannot be marked, its claim does not hold: ${why}.`,
    nothingToAnswer: (item) => `${item} is nothing that is answered.`,
  },
};
