/** Claims: what is printed and can be false, in the form that files carry. */

import type { Colour, Hold } from '../cube/colours.ts';
import type { Place } from '../cube/spots.ts';
import type { FactShare } from './lesson.ts';

/** What a solution has to bring about, besides leaving the base as it was. Pieces are named by their home places. */
export interface GoalClaim {
  /** Home after the solution, against the centres. */
  readonly home: readonly Place[];
  /** Places whose stickers on the top face have its centre's colour after the solution. */
  readonly top: readonly Place[];
  /** "U": those of `home` that are in the top layer need be home only up to one turn of it. */
  readonly free: 'U' | null;
}

/**
 * Of a case. Hold a solved cube as `hold` says and do `setup`. Faces and places are named by that cube's centres before the
 * first turn and travel with them. A step adds fields of its own: see `Subject.claim`.
 */
export interface ClaimOfCase {
  readonly id: string;
  readonly file: string;
  /** In the lesson file, from 1. */
  readonly line: number;
  readonly hold: Hold;
  /** The colours of the cube, up front right down back left. Left out: the usual ones. */
  readonly scheme?: string;
  /** Turns in normal form as printed, wide ones spelt as the club does. */
  readonly setup: string;
  /** The colour of the cross. */
  readonly cross: Colour;
  /** The rule of the lesson that applies after the set-up, the cube held as it is: the id of its claim. Left out if none does. */
  readonly rule?: string;
  /** The name of the step of the solve. */
  readonly step: string;
  /** Home after the set-up and after a solution: pieces by their home places. */
  readonly base: readonly Place[];
  readonly goal: GoalClaim;
  /** The code of the paper that it stands on; left out where it stands on none. */
  readonly paper?: string;
  /** What the item is called on its sheet: `3` on a handout, `7` on a paper, `rules:2` on the sheet of rules. */
  readonly item: string;
  /** Which of the claims of its item, from 1. */
  readonly nth: number;
}

/** `solution` after `setup`, nothing between. */
export interface SolutionClaim extends ClaimOfCase {
  readonly kind: 'solution';
  /** As `setup`. */
  readonly solution: string;
  readonly address: string;
  readonly case: string;
  readonly family: string;
  readonly verdict: 'solves' | 'fails';
  /** Home places of the required pieces that are not home. */
  readonly broken: readonly Place[];
  /** Outer block turns. */
  readonly length: number;
  /** The fewest face turns from the state after the set-up, rotations free. Left out where the search found none. */
  readonly shortest?: number;
  /** Whether an exhaustive search found it. */
  readonly proved: boolean;
  /** Of a solution that solves: stretches between moments at which the base is whole; their turns rejoin to the solution. */
  readonly phases?: readonly PhaseClaim[];
  /** Of a solution that solves: where a phase's end and the start of the next were merged into one printed turn. */
  readonly merges?: readonly MergeClaim[];
}

export interface PhaseClaim {
  readonly turns: string;
  /** What it does, in words of the step; several with `+` where merges hide the moments between them. */
  readonly does: string;
  /** After it. */
  readonly address: string;
  /** How things stand after it, if that has a name: `joined`. */
  readonly stands?: string;
  /** Out of the way meanwhile, and back on top: `edge`. */
  readonly hides?: string;
  /** `sledge`, `right four undone`, `right four twice`; `right four inside` where other turns stand around it. */
  readonly trigger?: string;
}

export interface MergeClaim {
  /** Which turn of the solution, from 1. */
  readonly turn: number;
  readonly of: string;
  /** Done as these two, the base is whole between them. */
  readonly as: readonly [string, string];
  /** What the two phases that share the turn do: the one that ends and the one that begins. */
  readonly does: readonly [string, string];
  /** Between the two. */
  readonly address: string;
}

/**
 * For every sighting of the families that fits `see`, and no earlier rule, the advice can be followed within `most`
 * turns. A sighting is an address and the side from which it is seen. The step says what to do in fields of its own: see
 * `RulePart.claim`.
 */
export interface RuleClaim {
  /** `rule.2`: the second rule. */
  readonly id: string;
  readonly kind: 'rule';
  readonly file: string;
  /** Line of the rule in the lesson file, from 1. */
  readonly line: number;
  readonly families: readonly string[];
  /** Conditions, as `cross colour: sideways`. */
  readonly see: readonly string[];
  /** Outer block turns, first to last. */
  readonly most: number;
  readonly sightings: number;
  readonly holds: number;
  /** Sightings of the families that the conditions exclude; for how many of them the advice works too. */
  readonly excluded: number;
  readonly contrast: number;
  /** For each condition: the sightings that fail this one and meet the others; in how many the advice works too. */
  readonly contrasts: readonly { readonly without: string; readonly sightings: number; readonly holds: number }[];
  /**
   * Of all ways to do what the rule says, in all its sightings together, how many there are and how many work: what is aimed
   * at stands after them, and all is done within `most` turns, those of one face that meet made one. `least`: how many work
   * in the sighting where fewest do.
   */
  readonly ways: { readonly allowed: number; readonly work: number; readonly least: number };
  /**
   * Outer block turns over the shortest solution where the rule holds, those of one face that meet made one; left out
   * where it holds nowhere.
   */
  readonly cost?: { readonly mean: number; readonly worst: number };
  readonly exact: boolean;
  readonly exceptions: readonly {
    readonly address: string;
    /** From which side. */
    readonly seen: string;
    readonly setup: string;
    /** Face turns of a shortest solution. */
    readonly shortest: number;
  }[];
  /** The name of the step of the solve. */
  readonly step: string;
  /** Which rule of the lesson's table, from 1. */
  readonly number: number;
}

/**
 * A sentence of the lesson's texts. In a share of the sightings of the families that fit `see` the advice can be followed
 * within `most` turns, as in a rule's claim, whose fields of the step it has; or `is` is seen, once the cube is turned a
 * quarter either way where `aim` is "turn the cube".
 */
export interface FactClaim {
  /** `fact.NAME`, by the coach's name for it. */
  readonly id: string;
  readonly kind: 'fact';
  readonly file: string;
  /** Of the fact in the lesson file, from 1. */
  readonly line: number;
  /** The name of the step of the solve. */
  readonly step: string;
  readonly families: readonly string[];
  /** The sentences as they are printed. */
  readonly says: readonly string[];
  readonly see: readonly string[];
  readonly most?: number;
  readonly is?: readonly string[];
  readonly in: FactShare;
  readonly sightings: number;
  readonly holds: number;
}

/** Which evenings of a course show a case, and how often its papers practise it. */
export interface CoverageClaim {
  /** `case UFR:R UB:U` */
  readonly id: string;
  readonly kind: 'coverage';
  readonly file: string;
  readonly line: number;
  /** The name of the step of the solve. */
  readonly step: string;
  readonly case: string;
  readonly family: string;
  /** Numbers of evenings, from 1. */
  readonly evenings: readonly number[];
  readonly practised: number;
}

/** A question with answers to choose from, or a place to mark; set up as a solution is. */
export interface ChoiceClaim extends ClaimOfCase {
  readonly kind: 'choice';
  /** As a lesson asks for it: `slip`, `order`, or a question of the step's own. */
  readonly asks: string;
  /** What the choices say, in the order in which they are printed; none for a place. */
  readonly options: readonly string[];
  /** The letters printed before them. */
  readonly letters: readonly string[];
  /** The right letter; for `order` all letters in their order; for `place` where the piece is, as in an address. */
  readonly answer: string;
  /** Of rules: what each must see to stand alone, in the order of the options; conditions as in a rule's claim. */
  readonly sees?: readonly (readonly string[])[];
  /** Of rules: by ours, the club's own words that the options have in their place; left out where there are none. */
  readonly words?: Readonly<Record<string, string>>;
  /** Of a slip: the number of the wrong turn, from 1, and what it is and should be. */
  readonly turn?: number;
  readonly was?: string;
  readonly now?: string;
  /** Of a place: the piece, and the turns done after the set-up. */
  readonly piece?: string;
  readonly turns?: string;
}

/** Anything that is printed and could be false. */
export type Claim = SolutionClaim | RuleClaim | FactClaim | CoverageClaim | ChoiceClaim;

/** A claim as it came to stand on paper. */
export type PrintedClaim = Claim & {
  /** Name of the PDF file. */
  readonly sheet: string;
  /** Physical page, from 1. */
  readonly page: number;
  /** Where the question stands, for answers of a key. */
  readonly asked?: { readonly sheet: string; readonly page: number };
};
