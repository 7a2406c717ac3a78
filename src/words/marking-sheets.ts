/** What slips for students and the report for the coach say beside what was submitted. */

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

export interface MarkingSheetWords {
  readonly slips: {
    readonly title: (lesson: string) => string;
    readonly noCode: string;
    /** In place of a code that cannot be printed. */
    readonly rowOf: (row: number) => string;
    readonly score: (right: string, of: number) => string;
    readonly item: (item: string) => string;
    readonly paper: (paper: string) => string;
    readonly setUp: string;
    readonly yours: string;
    readonly theCase: string;
    readonly beforeTurn: (turn: number) => string;
    /** Under the turn that went wrong. */
    readonly here: string;
    readonly right: string;
    /** After an item that needs so many turns more than the shortest. */
    readonly over: (turns: number) => string;
    readonly notAnswered: string;
    readonly times: string;
    readonly unmatched: string;
  };
  readonly report: {
    readonly title: (lesson: string) => string;
    readonly whole: (answers: number, students: number, share: string) => string;
    readonly items: string;
    readonly rightOf: (right: string, of: number) => string;
    readonly slips: string;
    readonly slip: { readonly [slip in SlipName]: string };
    readonly times: (count: number) => string;
    readonly example: (student: string, item: string) => string;
    readonly choices: string;
    readonly asks: (asks: string) => string;
    readonly chose: (letter: string, option: string, count: number) => string;
    readonly rules: string;
    readonly rule: (number: number) => string;
    /** In place of what it sees. */
    readonly ruleForTheRest: string;
    readonly ruleItems: (items: string) => string;
    readonly again: string;
    readonly againNote: string;
    readonly nobody: string;
    readonly shorter: string;
    readonly shorterThan: (student: string, item: string, length: number, key: number) => string;
    readonly notMarked: string;
    readonly more: (count: number) => string;
  };
  readonly page: (page: number, pages: number) => string;
  /** At the foot: answers were done on the cube. */
  readonly foot: (title: string) => string;
}
