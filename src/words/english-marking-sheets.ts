/** English of slips and of the class's report. */
import type { SlipName } from './said.ts';

const ASKS: Readonly<Record<string, string>> = {
  rule: 'Which rule holds',
  likeness: 'Like or unlike',
  edge: 'Good or bad edge',
  picture: 'Which picture it is',
  slip: 'Where the slip is',
  place: 'Where a piece goes',
  order: 'The order of steps',
};

export const markingSheets = {
  slips: {
    title: (lesson: string) => `Slips · ${lesson}`,
    noCode: 'No code',
    /** In place of a code that cannot be printed. */
    rowOf: (row: number) => `Row ${row} of the answers`,
    score: (right: string, of: number) => `${right} of ${of} right`,
    item: (item: string) => `Item ${item}`,
    paper: (paper: string) => `paper ${paper}`,
    setUp: 'Set up',
    yours: 'Your turns',
    theCase: 'The case',
    beforeTurn: (turn: number) => `Before your turn ${turn}`,
    /** Under the turn that went wrong. */
    here: 'here',
    right: 'Right:',
    /** After an item that needs so many turns more than the shortest. */
    over: (turns: number) => `${turns} more than the shortest`,
    notAnswered: 'Not answered:',
    times: 'Times, not marked:',
    unmatched: 'Not marked, since it is not clear which item they belong to:',
  },
  report: {
    title: (lesson: string) => `Class report · ${lesson}`,
    whole: (answers: number, students: number, share: string) =>
      `${answers} ${answers === 1 ? 'answer' : 'answers'} of ${students} ${students === 1 ? 'student' : 'students'}, ${share} right`,
    cases: 'Cases, the hardest first',
    /** Codes of students. */
    missedBy: (students: string) => `missed by ${students}`,
    students: 'Students and items',
    grid: {
      papers: 'Papers, item',
      handout: 'Handout, case',
      heads: (numbers: readonly string[]) => `The items ${numbers.join(', ')}.`,
      row: (right: readonly string[], wrong: readonly string[], others: readonly string[]) =>
        [
          `Right: ${right.join(', ') || 'none'}`,
          `wrong: ${wrong.join(', ') || 'none'}`,
          ...(others.length > 0 ? [`in part or not readable: ${others.join(', ')}`] : []),
        ].join('; '),
      legend: 'Empty: right. Half black: right in part. Black: wrong. ?: cannot be read. A line: no answer.',
    },
    rightOf: (right: string, of: number) => `${right} of ${of} right`,
    slips: 'Commonest slips',
    slip: {
      amount: 'A turn the wrong way or too far: a prime or a 2 is wrong',
      letter: 'Another turn than the one that solves',
      dropped: 'A turn too many',
      added: 'A turn left out',
      swapped: 'Two turns the wrong way round',
      'u-first': 'The top was not turned first',
      'small-letters': 'Small letters for turns of one layer',
      spelling: 'Right, but spelt so that it cannot be read',
      inverted: 'Backwards: the turns lead into the case',
      mirrored: 'In the mirror: left for right, or front for back',
      'other-side': 'From another side: the cube was held another way',
      neighbour: 'In the wrong line: solves the item beside it',
      unreadable: 'Cannot be read, and as it was likely meant it is wrong',
      choice: 'Another letter than the right one',
      unknown: 'No single slip',
    } satisfies Readonly<Record<SlipName, string>>,
    times: (count: number) => (count === 1 ? 'once' : `${count} times`),
    example: (student: string, item: string) => `${student}, item ${item}`,
    choices: 'Questions of choice',
    asks: (asks: string) => (Object.hasOwn(ASKS, asks) ? ASKS[asks]! : asks),
    chose: (letter: string, option: string, count: number) => `${count} chose ${letter}, ${option}`,
    rules: 'Rules, the one missed most first',
    rule: (number: number) => `Rule ${number}`,
    /** In place of what it sees. */
    ruleForTheRest: 'all other cases',
    ruleItems: (items: string) => `Items ${items}`,
    again: 'Who needs the lesson again',
    againNote: 'Less than half of their answers are right. Right turns that are only misspelt are not counted.',
    nobody: 'Nobody.',
    shorter: 'Shorter than the sheet',
    shorterThan: (student: string, item: string, length: number, key: number) =>
      `${student}, item ${item}: ${length} ${length === 1 ? 'turn' : 'turns'}, the sheet has ${key}`,
    notMarked: 'Not marked',
    more: (count: number) => `and ${count} more`,
  },
  page: (page: number, pages: number) => `page ${page} of ${pages}`,
  /** At the foot: answers were done on the cube. */
  foot: (title: string) => `${title} · every answer done on the cube`,
};
