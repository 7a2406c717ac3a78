/** What practice papers and their keys say beside what the lesson says. */
export type ExerciseName = 'rule' | 'picture' | 'place' | 'slip' | 'order' | 'drill';

export interface KindWords {
  readonly title: string;
  readonly ask: string;
}

export interface PracticeWords {
  readonly title: (lesson: string) => string;
  readonly keyTitle: (lesson: string) => string;
  /** Over the title: which paper this is. */
  readonly paper: (code: string) => string;
  /** Whose it is, as the roster has it. */
  readonly student: (code: string) => string;
  /** Heading and question of each kind of exercise that all steps word alike. */
  readonly kinds: { readonly [kind in ExerciseName]: KindWords };
  /** Over the boxes of a slip: the letter, the number of the turn, the right turn. */
  readonly slipHeads: readonly [string, string, string];
  readonly checkWord: (words: number) => string;
  /** The numbers of the items whose letters spell it. */
  readonly checkWordSays: (items: string, words: number) => string;
  /** Said before a drill. */
  readonly strain: string;
  /** Between rows of a drill. */
  readonly rest: string;
  readonly times: string;
  readonly recommended: string;
  /** Over a shorter solution than the recommended one. */
  readonly shortest: string;
  /** Where the recommended one is one of the shortest. */
  readonly noneShorter: string;
  /** Under the picture of the cube after the recommended answer. */
  readonly after: string;
  /** What stands before the right turn and before the wrong one. */
  readonly slipAnswer: (turn: number) => readonly [string, string];
  readonly setUp: string;
  readonly foot: (title: string, code: string) => string;
  readonly shortFoot: (code: string) => string;
  readonly drawing: {
    /** Names of colours: nine of the top, row by row, and the three below each of its sides, as one looks at that side. */
    readonly top: (
      top: readonly string[],
      sides: { readonly [side in 'F' | 'R' | 'B' | 'L']: readonly string[] },
    ) => string;
  };
}
