/** What texts are told: each word table gives its sentences from these, in the order of its language. */

/** The six common sticker colours, in the order in which people list them. */
export const COLOURS = ['white', 'yellow', 'green', 'blue', 'red', 'orange'] as const;
export type Colour = (typeof COLOURS)[number];

/** A direction as the viewer sees the cube: the face that looks that way. */
export type Side = 'U' | 'D' | 'R' | 'L' | 'F' | 'B';
/** A place as the viewer sees it, by its sides: one of the twelve edge places, or of the eight corner places. */
export type PlaceName = string;

export interface ColourWords {
  readonly name: string;
  /** One capital, different for each colour; set on stickers in mono ink. */
  readonly letter: string;
}

/** A trigger by the club's name, done backwards, once or twice, other turns around it. */
export interface TriggerSaid {
  readonly name: string;
  readonly undone: boolean;
  readonly times: 1 | 2;
  readonly inside: boolean;
}

/**
 * How rules ask of a feature. In a text `{cross}` (`{Cross}` at the start of a sentence) stands for the cross colour's name,
 * `{turns}` for turns: what prints them sets both in their own way.
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

/** The heading of exercises of one kind, and their question. */
export interface KindWords {
  readonly title: string;
  readonly ask: string;
}

/** How an answer went wrong, as the report counts it; a step may have more (src/steps/marking-part.ts). */
export type SlipName =
  | 'amount'
  | 'letter'
  | 'dropped'
  | 'added'
  | 'swapped'
  | 'u-first'
  | 'small-letters'
  | 'spelling'
  | 'inverted'
  | 'mirrored'
  | 'other-side'
  | 'neighbour'
  | 'unreadable'
  | 'choice'
  | 'unknown';

/** How an answer that is not right comes to be right. `turn` counts from 1. */
export type NearMissWords =
  | { readonly kind: 'small-letters' | 'spelling' | 'inverted' | 'mirrored' | 'other-side'; readonly answer: string }
  | { readonly kind: 'u-first'; readonly first: string }
  | { readonly kind: 'neighbour'; readonly item: string }
  | { readonly kind: 'changed'; readonly turn: number; readonly was: string; readonly now: string }
  | { readonly kind: 'dropped'; readonly turn: number; readonly was: string }
  | { readonly kind: 'added'; readonly turn: number; readonly now: string; readonly last: boolean }
  | { readonly kind: 'swapped'; readonly turn: number; readonly was: string; readonly now: string };
