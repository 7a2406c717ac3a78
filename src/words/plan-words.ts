/** Words for the coach's running order and for what is told of rules. `{cross}` and `{turns}` as in rule-words.ts. */

/** What was found of one rule of a lesson. */
export interface RuleFigures {
  readonly number: number;
  readonly sightings: number;
  readonly holds: number;
  /** Sightings that its conditions exclude, and for how many of them the advice works too. */
  readonly excluded: number;
  readonly contrast: number;
  /** Turns over the shortest; undefined where it holds nowhere. */
  readonly mean: number | undefined;
  readonly worst: number | undefined;
}

export interface PlanWords {
  readonly title: (lesson: string) => string;
  readonly lead: (minutes: number) => string;
  readonly minutes: (count: number) => string;
  /** From the start: `0:05`. */
  readonly clock: (minutes: number) => string;
  readonly notes: string;
  readonly ask: string;
  readonly slip: string;
  /** The answer wanted, and what stands after the rule's turns. */
  readonly answer: (answer: string, then: string) => string;
  readonly steps: {
    readonly open: string;
    readonly rule: (number: number) => string;
    readonly alone: (statement: string) => string;
    readonly earlier: string;
    readonly part: string;
    readonly turned: { readonly title: string; readonly text: string; readonly ask: string };
    /** The same set-up before and after a turn of the cube. */
    readonly turnedPair: (before: number, after: number) => string;
    readonly drill: {
      readonly title: string;
      /** `points`: what the step has its examples show: `every foreign slot`. */
      readonly text: (shown: number, all: number, points: string) => string;
      readonly again: string;
    };
    readonly plainDrill: string;
    readonly break: { readonly title: string; readonly text: string };
    readonly close: { readonly title: string; readonly text: string; readonly ask: string };
  };
  /** What looks alike: an exception, or what another rule takes, and in what it differs. */
  readonly slips: {
    readonly exception: (statements: readonly string[]) => string;
    readonly neighbour: (rule: number, statements: readonly string[]) => string;
  };
  readonly drillItem: (rule: number, isException: boolean) => string;
  readonly report: {
    readonly heading: string;
    /** A table's: five columns. */
    readonly columns: readonly string[];
    readonly cells: (figures: RuleFigures) => readonly string[];
    readonly table: (sightings: number, mean: number | undefined, worst: number | undefined) => string;
    readonly uncovered: (count: number, named: readonly string[]) => string;
    /** `sighting`: what that is, before from where it is seen. */
    readonly means: (sighting: string) => string;
  };
  readonly foot: (title: string, edition: string) => string;
  readonly proved: (edition: string) => string;
}
