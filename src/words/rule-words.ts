/**
 * Words for rules of thumb, for students and their coach. In a text `{cross}` (`{Cross}` at the start of a sentence)
 * stands for the cross colour's name, `{turns}` for turns: what prints them sets both in their own way.
 */

export interface FeatureWords {
  /** A question that a ten-year-old can answer by looking. */
  readonly ask: string;
  /** What a word in it means, where it is none of every day. */
  readonly means?: string;
  /** By value, or by several values joined with `or`; as an answer, and in a statement. */
  readonly answers: Readonly<Record<string, string>>;
  readonly says: (answer: string) => string;
}

export interface RuleWords {
  /** One of several answers. */
  readonly or: (answers: readonly string[]) => string;
  readonly yes: string;
  readonly no: string;
  readonly otherwise: string;
  /** A question whether several statements hold together. */
  readonly together: (statements: readonly string[]) => string;
  /** Several statements as one sentence, without its stop. */
  readonly all: (statements: readonly string[]) => string;
  /** Where no rule speaks. */
  readonly noRule: string;
  readonly turnTheCube: string;
  readonly lookAgain: string;
  /** What stands once the cube is turned. */
  readonly turned: string;
  /** For how many of the positions that it speaks of it holds; `most`, of the whole solution, goes on from it. */
  readonly holds: (holds: number, positions: number) => string;
  readonly most: (turns: number) => string;
  readonly exceptions: {
    readonly heading: string;
    /** For how many positions it stands, of how many that differ by turns of the top; more than one. */
    readonly alike: (count: number, of: number) => string;
    readonly more: (count: number) => string;
    readonly exactIf: (statements: readonly string[]) => string;
  };
  readonly chart: {
    /** Of the file. */
    readonly title: (lesson: string) => string;
    readonly lead: string;
    /** Said where a rule has exceptions, or none speaks of some. */
    readonly inexact: string;
    readonly proved: (edition: string) => string;
    readonly foot: (title: string, edition: string) => string;
  };
}
