/** English of practice papers and keys. */
import type { KindWords } from './said.ts';

const SIDES = { F: 'front', R: 'right', B: 'back', L: 'left' } as const;

export const practice = {
  title: (lesson: string) => `Practice: ${lesson}`,
  keyTitle: (lesson: string) => `Key: ${lesson}`,
  /** All papers of a class on one page, for the coach. */
  classKey: {
    title: (lesson: string) => `Key for the class: ${lesson}`,
    heads: ['Student', 'Paper', 'Check words', 'Answers'],
    short: 'Key for the class',
  },
  /** Over the title: which paper this is. */
  paper: (code: string) => `Paper ${code}`,
  /** Whose it is, as the roster has it. */
  student: (code: string) => `For ${code}`,
  /** Heading and question of each kind of exercise that all steps word alike. */
  kinds: {
    rule: {
      title: 'Name the rule',
      ask: 'Which of these is true? Do not turn the cube. Write the letter in the box.',
    },
    picture: { title: 'Read the picture', ask: 'Which set-up makes this picture? Write the letter in the box.' },
    place: {
      title: 'Where does it go?',
      ask:
        'Begin with the picture on the left and do the turns in your head. Draw the stickers of the piece where they end up, ' +
        'each in its colour.',
    },
    slip: {
      title: 'Find the slip',
      ask:
        'One of the four does not solve the case: one turn in it is wrong. Write its letter, the number of the wrong turn, ' +
        'and the right turn.',
    },
    order: {
      title: 'Put it in order',
      ask: 'These are the parts of a solution, mixed up. Write the letters in the order in which you turn the parts.',
    },
    drill: { title: 'Drill', ask: 'Set up, solve, write the time. Then set up again.' },
  } satisfies Readonly<Record<string, KindWords>>,
  /** Over the boxes of a slip: the letter, the number of the turn, the right turn. */
  slipHeads: ['letter', 'turn', 'right'] as const,
  checkWord: (words: number) => (words === 1 ? 'Check word' : 'Check words'),
  /** The numbers of the items whose letters spell it. */
  checkWordSays: (items: string, words: number) =>
    `The letters of your answers to ${items} spell ${words === 1 ? 'a word' : 'words'} if all are right.`,
  /** Said before a drill. */
  strain:
    'Fingers and wrists tire before you notice. Shake your hands out after every row, rest at each break, and stop at ' +
    'once if anything hurts.',
  /** Between rows of a drill. */
  rest: 'Break: put the cube down for a minute.',
  times: 'Times',
  recommended: 'Recommended',
  /** Over a shorter solution than the recommended one. */
  shortest: 'Shortest',
  /** Where the recommended one is one of the shortest. */
  noneShorter: 'none is shorter',
  /** Under the picture of the cube after the recommended answer. */
  after: 'after it',
  /** What stands before the right turn and before the wrong one. */
  slipAnswer: (turn: number): readonly [string, string] => [`turn ${turn} should be`, 'and not'],
  setUp: 'set-up',
  foot: (title: string, code: string) => `${title} · paper ${code}`,
  shortFoot: (code: string) => `paper ${code}`,
  drawing: {
    /** Names of colours: nine of the top, row by row, and the three below each of its sides, as one looks at that side. */
    top: (top: readonly string[], sides: { readonly [side in 'F' | 'R' | 'B' | 'L']: readonly string[] }) => {
      const rows = [0, 3, 6].map((from) => top.slice(from, from + 3).join(' '));
      const around = (['F', 'R', 'B', 'L'] as const).map((side) => `${SIDES[side]} ${sides[side].join(' ')}`);
      return `The top, row by row: ${rows.join(', ')}. The row below it: ${around.join(', ')}.`;
    },
  },
};
