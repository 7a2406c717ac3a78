/** English words seen in a mirror: left and right change places, and the faces R and L named in running text. */

const MIRRORED: Readonly<Record<string, string>> = {
  left: 'right',
  right: 'left',
  Left: 'Right',
  Right: 'Left',
  R: 'L',
  L: 'R',
};

/**
 * First what stays: a word after a backslash, and "right" as in "right away", where no side is meant. Then the words
 * that change places.
 */
const WORDS =
  /\\(left|right)\b|\b(?:all|is|are|comes?|turned) right\b(?! (?:slot|hand|face|side))|\bright (?:away|after|before|at once|now)\b|\b(?:left|right|L|R)\b/gi;

export const mirroredWords = (text: string): string =>
  text.replace(WORDS, (found, kept: string | undefined) => kept ?? MIRRORED[found] ?? found);

/** What a backslash kept from the mirror, as it is printed when there is none. */
export const plainWords = (text: string): string => text.replace(/\\(left|right)\b/gi, '$1');
