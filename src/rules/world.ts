/** What rules are made of, as far as any step has it: what a viewer sees of a case, what can be advised, what comes of it. */
import type { Turn } from '../cube/turns.ts';

/** Something to be seen, with one of its values, or none where it has no meaning. */
export interface Feature {
  readonly values: readonly string[];
  /** Several values under one word, as coaches say them. */
  readonly groups?: Readonly<Record<string, readonly string[]>>;
  /** What it asks, for a coach. */
  readonly about: string;
  /** Seen by looking: nothing need be turned in the mind, or counted. */
  readonly atAGlance: boolean;
}

/** A case as a viewer sees it. There is one object for each: tables look it up by itself. */
export interface Sighting {
  /** As `Subject` has them (src/steps/subject.ts). */
  readonly address: string;
  readonly caseAddress: string;
  readonly side: string;
  /** By feature: its value, where it has one. */
  readonly features: Readonly<Record<string, string | undefined>>;
}

/** What to do where a rule applies; the step alone reads what it says besides. */
export interface Advice {
  /** Outer block turns, from the first to the last that solves the case. */
  readonly most: number;
}

/** What came of following advice, as the viewer turns it. */
export interface Followed {
  /** What is advised. */
  readonly takeOut: readonly Turn[];
  /** From there to the solved case. */
  readonly rest: readonly Turn[];
  /** Outer block turns of both. */
  readonly length: number;
  /** Fewest of all ways to do it, where turns of one face that meet are one: `R R` is `R2`, `R R'` is nothing. */
  readonly printed: number;
}

/** Of the ways to do what advice says: how many there are, and how many of them work. */
export interface Ways {
  readonly allowed: number;
  readonly work: number;
}

export interface Tried {
  /** A shortest way within as many turns as the advice allows; undefined if there is none. */
  readonly followed: Followed | undefined;
  readonly ways: Ways;
}

export interface RuleWorld {
  /** By the names that lessons write, in the order in which they are listed. The list is closed. */
  readonly features: Readonly<Record<string, Feature>>;
  /** Asked first where another feature has no meaning without it, since anyone can answer them. */
  readonly plain: readonly string[];
  /** Whether it takes comparing two pieces' colours to see it. */
  readonly isComparison: (feature: string) => boolean;
  /** The value that is seen in a mirror at the left or right where this one is seen. */
  readonly mirroredValue: (feature: string, value: string) => string;
  /** The same advice in that mirror. */
  readonly mirroredAdvice: (advice: Advice) => Advice;
  /** All but solved ones, in order. */
  readonly sightings: (families: readonly string[]) => readonly Sighting[];
  /** How it is seen once the whole cube was turned by y so many quarters. */
  readonly turned: (sighting: Sighting, quarters: 1 | 3) => Sighting;
  /** Where cases are shown from before others, to those who lead with that hand. */
  readonly front: (hand: 'right' | 'left') => string;
  /** All ways to do what the advice says. */
  readonly tries: (sighting: Sighting, advice: Advice) => Tried;
  /** The advice, and then the same with words more that leave fewer ways, the shortest first. */
  readonly completions: (advice: Advice) => readonly Advice[];
  /** A shortest solution. */
  readonly best: (sighting: Sighting) => readonly Turn[];
  /** Turns that bring it about on a solved cube, and give none of `avoid` away. */
  readonly setUp: (sighting: Sighting, avoid: readonly (readonly Turn[])[]) => readonly Turn[];
  /**
   * What may be advised, the plainest first; a further list is there for families where the one before is not enough. With
   * `everyWay` all words are tried that leave fewer ways.
   */
  readonly advices: (families: readonly string[], everyWay: boolean) => readonly (readonly Advice[])[];
  /** The advice followed as it is best shown, and how strange that is to students: 0, or more the less they know of it. */
  readonly shown: (
    sighting: Sighting,
    followed: Followed,
    advice: Advice,
  ) => { readonly followed: Followed; readonly strange: number };
  /** How many pieces are out of sight. */
  readonly hidden: (sighting: Sighting) => number;
  /** What examples of rules should have between them: `stuck back left`. */
  readonly points: (sighting: Sighting) => readonly string[];
}
