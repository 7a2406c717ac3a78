/** English of practice papers and keys. */
import type { PracticeWords } from './practice-words.ts';

const SIDES = { F: 'front', R: 'right', B: 'back', L: 'left' } as const;

export const practice: PracticeWords = {
  title: (lesson) => `Practice: ${lesson}`,
  keyTitle: (lesson) => `Key: ${lesson}`,
  paper: (code) => `Paper ${code}`,
  student: (code) => `For ${code}`,
  kinds: {
    rule: {
      title: 'Name the rule',
      ask: 'Which of these is so? Do not turn the cube. Write the letter in the box.',
    },
    picture: { title: 'Read the picture', ask: 'Which set-up gives it? Write the letter in the box.' },
    place: {
      title: 'Where does it go?',
      ask:
        'Begin with the picture on the left and do the turns in your head. Draw the stickers of the piece where they are then, ' +
        'each with its colour.',
    },
    slip: {
      title: 'Find the slip',
      ask:
        'One of the four does not solve the case: a single turn in it is wrong. Write its letter, which turn it is, ' +
        'and the right one.',
    },
    order: {
      title: 'Put it in order',
      ask: 'These are the parts of a solution. Write the letters in the order in which the parts are turned.',
    },
    drill: { title: 'Drill', ask: 'Set up, solve, write the time. Then set up again.' },
  },
  slipHeads: ['letter', 'turn', 'right'],
  checkWord: (words) => (words === 1 ? 'Check word' : 'Check words'),
  checkWordSays: (items, words) =>
    `The letters of your answers to ${items} spell ${words === 1 ? 'a word' : 'words'} if all are right.`,
  strain:
    'Fingers and wrists tire before you notice. Shake your hands out after every row, rest at each break, and stop at ' +
    'once if anything aches.',
  rest: 'Break: put the cube down for a minute.',
  times: 'Times',
  recommended: 'Recommended',
  shortest: 'Shortest',
  noneShorter: 'none is shorter',
  after: 'after it',
  slipAnswer: (turn) => [`turn ${turn} should be`, 'and not'],
  setUp: 'set-up',
  foot: (title, code) => `${title} · paper ${code}`,
  shortFoot: (code) => `paper ${code}`,
  drawing: {
    top: (top, sides) => {
      const rows = [0, 3, 6].map((from) => top.slice(from, from + 3).join(' '));
      const around = (['F', 'R', 'B', 'L'] as const).map((side) => `${SIDES[side]} ${sides[side].join(' ')}`);
      return `The top, row by row: ${rows.join(', ')}. The row below it: ${around.join(', ')}.`;
    },
  },
};
