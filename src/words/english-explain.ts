/** English of why turns work: parts that are begun, done and taken back. Turns come in as they are to be printed. */

/** Of a sentence's middle: `start with F, do right four, take F back`. */
export const explain = {
  /** The label of the line under a solution. */
  why: 'Why',
  /** One after the other. */
  sequence: (parts: readonly string[]) => parts.join(', then '),
  trigger: (name: string, undone: boolean) => `${name}${undone ? ' undone' : ''}`,
  setUp: (first: string, second: string) => `start with ${first}, do ${second}, take ${first} back`,
  commutator: (first: string, second: string) => `do ${first}, do ${second}, take ${first} back, take ${second} back`,
  /** A part that is made of parts itself. */
  inside: (said: string) => `(${said})`,
  /** A turn that ends one part and begins the next. */
  shared: (turn: number, of: string, [one, two]: readonly [string, string]) =>
    `Turn ${turn}, ${of}, is two in one: ${one} ends a part and ${two} begins the next`,
  /** The same parts, a line each, with their turns beside them. */
  line: {
    turns: 'do',
    setUp: 'start with',
    first: 'do',
    back: 'take back',
  },
  /** How much there is to keep in mind: names of triggers, and turns that stand for themselves. */
  toRemember: (words: number, turns: number) =>
    words < turns
      ? `${words} ${words === 1 ? 'thing' : 'things'} to remember in place of ${turns} turns`
      : 'nothing here is taken back and nothing has a name: each turn is remembered for itself',
};
