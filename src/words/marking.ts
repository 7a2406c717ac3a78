/** What is said to students and coaches about submitted answers. Turns stand between backticks, as in lessons. */

/** A place as the viewer sees it, by its sides: see words.ts. */
type PlaceName = string;

/** How an answer that is not right comes to be right. `turn` counts from 1. */
export type NearMissWords =
  | { readonly kind: 'small-letters' | 'spelling' | 'inverted' | 'mirrored' | 'other-side'; readonly answer: string }
  | { readonly kind: 'u-first'; readonly first: string }
  | { readonly kind: 'neighbour'; readonly item: string }
  | { readonly kind: 'changed'; readonly turn: number; readonly was: string; readonly now: string }
  | { readonly kind: 'dropped'; readonly turn: number; readonly was: string }
  | { readonly kind: 'added'; readonly turn: number; readonly now: string; readonly last: boolean }
  | { readonly kind: 'swapped'; readonly turn: number; readonly was: string; readonly now: string };

export interface MarkingWords {
  readonly solves: (length: number, over: number | undefined) => string;
  readonly solvesTurned: (length: number, over: number | undefined) => string;
  /** Shorter than what the sheet recommends. */
  readonly beatsKey: (key: number) => string;
  /** After how many of the answer's turns what should stay was last whole, of how many; 0 is never. */
  readonly wholeUntil: (turns: number, of: number) => string;
  readonly unreadable: (character: number, message: string, hint: string) => string;
  readonly tooLong: (most: number) => string;
  readonly meant: (answer: string, solves: boolean) => string;
  readonly noLetter: (letters: readonly string[], order: boolean) => string;
  readonly wrongPlace: (right: PlaceName, side: PlaceName) => string;
  readonly empty: string;
  /** A time where turns are marked. */
  readonly time: string;
  readonly rightChoice: string;
  /** The right letter and what it stands for; letters in order stand for nothing more. */
  readonly wrongChoice: (right: string, option: string) => string;
  /** The letter of a slip is right, the turn or its mend is not. */
  readonly wrongMend: (letter: string, turn: number, now: string) => string;
  /** The turn that is given in place of a slip cannot be read. */
  readonly noMend: (given: string) => string;
  /** The letter is right, and not all of the rest is given. */
  readonly noMendGiven: (turn: number, now: string) => string;
  /** Small letters counted as turns of the outer layer only. */
  readonly countedAsOuter: string;
  readonly smallLettersSay: (wouldSolve: boolean) => string;
  readonly nearMiss: (miss: NearMissWords) => string;
  readonly tooManyTurns: (most: number) => string;
  /** The coach's own mark. */
  readonly marked: (mark: string) => string;
  readonly unmatched: {
    readonly noItem: string;
    readonly unknownItem: (item: string, likely: string | undefined) => string;
    /** What is named as the item looks like the code of a paper. */
    readonly paperForItem: (item: string, paper: string) => string;
    /** In several files: their names, of which one belongs in the column of the paper. */
    readonly several: (item: string, sheets: readonly string[]) => string;
    /** No paper is named: which papers have the item, on which of them the answer is right, and the handout that has it too. */
    readonly whichPaper: (
      item: string,
      papers: readonly string[],
      right: readonly string[],
      handout: string | undefined,
    ) => string;
    readonly unknownPaper: (paper: string, likely: string | undefined) => string;
    readonly notOnPaper: (paper: string, item: string, items: string) => string;
    readonly unproved: (claim: string, why: string) => string;
    readonly nothingToAnswer: (item: string) => string;
  };
}
