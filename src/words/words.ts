/**
 * Every fixed word that is printed or described, as one table a language. Sentences are functions, so that each
 * language can put its words in its own order.
 */
import type { MarkingWords } from './marking.ts';
import type { MarkingSheetWords } from './marking-sheets.ts';
import type { PlanWords } from './plan-words.ts';
import type { PracticeWords } from './practice-words.ts';
import type { RuleWords } from './rule-words.ts';

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

/** Where one piece of a pair is, as far as a description says it. */
export type PieceWhere =
  | { readonly at: 'own-slot'; readonly solved: boolean }
  | { readonly at: 'top' | 'slot' | 'elsewhere'; readonly place: PlaceName };

/** A piece with one sticker of it: `colour` looks towards `side`. */
export interface PieceSaid {
  readonly where: PieceWhere;
  /** A corner on top, over the column of its own slot. */
  readonly isAboveOwnSlot: boolean;
  readonly colour: Colour;
  readonly side: Side;
}

export interface DrawingWords {
  /** The words on the open view's legend. */
  readonly legend: { readonly [side in Exclude<Side, 'D'>]: string };
  /** How the cube is held. */
  readonly hold: (down: Colour, front: Colour) => string;
  /** The slot's edge place as seen, and the pair's colours in the order of that place's two sides. */
  readonly pair: (first: Colour, second: Colour, ownSlot: PlaceName) => string;
  readonly pairSolved: string;
  /** The sticker `colour` looks towards `side`. */
  readonly piece: (piece: 'corner' | 'edge', where: PieceWhere, colour: Colour, side: Side) => string;
  /** Slots that are kept, by their edge places as seen; never empty. */
  readonly kept: (slots: readonly PlaceName[]) => string;
  readonly legendDescription: string;
}

/** What a handout says beside what the coach wrote. */
export interface HandoutWords {
  readonly name: string;
  readonly date: string;
  readonly hold: string;
  readonly holdWords: (down: Colour, front: Colour) => string;
  /** The heading over the picture that explains the open view. */
  readonly reading: string;
  readonly setUp: string;
  readonly solve: string;
  /** Over the second and further solutions. */
  readonly or: string;
  /** A case that the coach gave no name; no two cases of a family have the same. */
  readonly caseName: (corner: PieceSaid, edge: PieceSaid) => string;
  readonly turns: (count: number) => string;
  /** Under the turns of a phase: what it does, a few letters wide. `was` is how the pair stood before it. */
  readonly phase: (does: readonly DeedName[], was: 'joined' | 'split' | undefined) => string;
  /** Under the turns of a phase that is a trigger, or has one inside. */
  readonly trigger: (does: string, trigger: TriggerSaid) => string;
  /** A line to write a solution on. */
  readonly yours: string;
  /** Over the turns that take a set-up back. */
  readonly undo: string;
  /** What the lines of the pictures mean, and their shades in either ink, one a line. */
  readonly signs: {
    readonly lines: readonly string[];
    readonly colour: readonly string[];
    readonly mono: readonly string[];
  };
  /** Of the slot that a stuck piece came from. */
  readonly stuckStaysOpen: string;
  /** Further slots that need not be solved. */
  readonly open: (slots: readonly PlaceName[]) => string;
  readonly promises: {
    readonly all: (cases: number) => string;
    readonly selection: (cases: number, of: number) => string;
    readonly most: (turns: number) => string;
    readonly noRotation: string;
    readonly everySlot: string;
    readonly slots: (slots: readonly PlaceName[]) => string;
    readonly kept: string;
  };
  /** The heading over the club's words, and a line of it. */
  readonly clubWords: string;
  readonly clubWord: (ours: string, theirs: string) => string;
  /** At the foot of cards: over which edge the paper is turned. */
  readonly cards: (title: string, turnedOver: 'long' | 'short') => string;
  readonly foot: (title: string, edition: string) => string;
  /** The same without the title, where there is no room for it. */
  readonly proved: (edition: string) => string;
  readonly page: (page: number, pages: number) => string;
}

/** A trigger by the club's name, done backwards, once or twice, other turns around it. */
export interface TriggerSaid {
  readonly name: string;
  readonly undone: boolean;
  readonly times: 1 | 2;
  readonly inside: boolean;
}

/** What a phase of a solution does. */
export type DeedName =
  | 'turn-cube'
  | 'turn-top'
  | 'edge-out'
  | 'corner-out'
  | 'both-out'
  | 'edge-in'
  | 'corner-in'
  | 'both-in'
  | 'join'
  | 'split'
  | 'regroup'
  | 'insert'
  | 'solve'
  | 'shift';

/** What the chart of a course says. */
export interface CourseWords {
  readonly about: (shown: number, of: number) => string;
  readonly evenings: string;
  readonly evening: (number: number) => string;
  readonly cases: (cases: number) => string;
  readonly pages: (pages: number) => string;
  readonly coverage: string;
  readonly howToRead: (practice: boolean) => string;
  readonly family: (family: string, shown: number, of: number) => string;
  readonly never: string;
  readonly practised: (times: number) => string;
}

/** What the booklet of all cases says. */
export interface BookletWords {
  /** `families` as in `top-away`. */
  readonly title: (families: readonly string[]) => string;
  readonly about: (cases: number) => string;
  readonly covered: (taught: number, of: number) => string;
  readonly howToRead: string;
  /** `family` as in `top-away`. */
  readonly family: (family: string, cases: number) => string;
  readonly shortest: (turns: number) => string;
  readonly hands: (turns: number) => string;
  readonly solutions: (count: number, turns: number) => string;
  readonly taught: (where: readonly string[]) => string;
  readonly notTaught: string;
}

export interface CommonWords {
  /** BCP 47. */
  readonly language: string;
  readonly colours: { readonly [colour in Colour]: ColourWords };
  readonly drawing: DrawingWords;
  readonly handout: HandoutWords;
  readonly booklet: BookletWords;
  readonly rules: RuleWords;
  readonly plan: PlanWords;
  readonly course: CourseWords;
  readonly marking: MarkingWords;
  readonly markingSheets: MarkingSheetWords;
  readonly practice: PracticeWords;
}

export interface Words extends CommonWords {
  /** By its name, the table of each step, which the step alone reads. */
  readonly steps: Readonly<Record<string, unknown>>;
}
