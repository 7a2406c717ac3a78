/**
 * Words for rules of thumb, for students and their coach. In a text `{cross}` (`{Cross}` at the start of a sentence)
 * stands for the cross colour's name, `{turns}` for turns: what prints them sets both in their own way.
 */

/** What a rule can ask for: the features of src/cube/teach/features.ts, whose names these are. */
export type RuleFeature =
  | `${'corner' | 'edge'} ${'at' | 'column' | 'depth' | 'side' | 'from own slot'}`
  | 'edge from corner'
  | 'U between'
  | 'edge round the top'
  | 'cross colour'
  | 'edge'
  | 'corner over edge'
  | `down when hidden by ${'R or L' | 'F or B'}`
  | `edge ${'top' | 'front' | 'side'} and corner ${'top' | 'front' | 'side' | 'sideways'}`;

export interface FeatureWords {
  /** A question that a ten-year-old can answer by looking. */
  readonly ask: string;
  /** What a word in it means, where it is none of every day. */
  readonly means?: string;
  /** By value, or by several values joined with `or`; as an answer, and in a statement. */
  readonly answers: Readonly<Record<string, string>>;
  readonly says: (answer: string) => string;
}

export type PairWhere = 'home' | 'top' | 'away';
export type Lifted = 'corner' | 'edge' | 'both' | 'piece';
export type LiftedHow = 'hidden' | 'direct' | 'together';

export interface RuleWords {
  readonly features: Readonly<Record<RuleFeature, FeatureWords>>;
  /** The same where the pieces that it names are in slots. */
  readonly inSlots: Readonly<Partial<Record<RuleFeature, FeatureWords>>>;
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
  /** `faces`: which of the viewer's lift; none for a rule that names any. */
  readonly lift: (piece: Lifted, faces: readonly string[]) => string;
  readonly how: (how: LiftedHow, lifted: Lifted) => string;
  /** In place of a lift; the trigger's name, if the turns have one. */
  readonly by: (trigger: string | undefined) => string;
  readonly byMeans: string;
  readonly noLift: string;
  readonly turnTheCube: string;
  readonly lookAgain: string;
  /** What stands then, under its picture. */
  readonly leaves: {
    readonly joined: string;
    readonly split: string;
    readonly family: (corner: PairWhere, edge: PairWhere) => string;
    readonly case: string;
    readonly insert: string;
    readonly turned: string;
  };
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
