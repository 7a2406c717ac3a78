/** Names of people, which should be in no file and on no slip. */

/** Two words or more, each a capital and small letters, whatever stands between them. */
const NAME = /^\p{Lu}\p{Ll}+(?:[\s,.-]+\p{Lu}(?:\p{Ll}+|\.))+$/u;

/** How many different codes look like names; said of one in the singular. */
export const likeNames = (codes: readonly string[]): number => new Set(codes.filter((code) => NAME.test(code))).size;

export const namesSaid = (names: number): string =>
  names === 1 ? 'one student has what looks like a name' : `${names} students have what look like names`;
