/** English of practice papers and keys. */
import type { PracticeWords } from './practice-words.ts';

const SIDES = { F: 'front', R: 'right', B: 'back', L: 'left' } as const;

export const practice: PracticeWords = {
  title: (lesson) => `Practice: ${lesson}`,
  keyTitle: (lesson) => `Key: ${lesson}`,
  paper: (code) => `Paper ${code}`,
  student: (code) => `For ${code}`,
  start: 'Start every set-up from a cube whose first two layers are solved. The top may be as it likes.',
  kinds: {
    likeness: {
      title: 'Like or unlike?',
      ask:
        'Compare the corner’s top colour with the edge: with its top colour if it is on top, with its colour in front ' +
        'or behind if it is in a slot. Write the letter in the box.',
    },
    edge: {
      title: 'Good or bad edge?',
      ask:
        'Good, on top: its top colour is that of the centre in front or behind. Good, in a slot: each of its colours is at ' +
        'its own centre or the opposite one. Else bad. Write the letter in the box.',
    },
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
    solve: {
      title: 'Solve it',
      ask:
        'Set up, look, and write down turns that solve the pair. Cross and pale slots must be whole at the end; a slot that ' +
        'a stuck piece leaves, and one that is called open, need not be.',
    },
    drill: { title: 'Drill', ask: 'Set up, solve, write the time. Then set up again.' },
  },
  options: { like: 'like', unlike: 'unlike', good: 'good', bad: 'bad' },
  mark: (piece) => `Mark the ${piece} after`,
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
  common:
    'Solved on the cube, many answers are right: each leaves the cross and the slots that were to be kept whole, and ' +
    'the pair in its slot. The pictures show the whole cube after the recommended turns if it was solved before the ' +
    'set-up; with other turns the top, and slots that were open, may look otherwise.',
  after: 'after it',
  slipAnswer: (turn) => [`turn ${turn} should be`, 'and not'],
  setUp: 'set-up',
  foot: (title, code) => `${title} · paper ${code}`,
  shortFoot: (code) => `paper ${code}`,
  drawing: {
    blank: (piece) => `An empty cube, to mark the ${piece} on.`,
    top: (top, sides) => {
      const rows = [0, 3, 6].map((from) => top.slice(from, from + 3).join(' '));
      const around = (['F', 'R', 'B', 'L'] as const).map((side) => `${SIDES[side]} ${sides[side].join(' ')}`);
      return `The top, row by row: ${rows.join(', ')}. The row below it: ${around.join(', ')}.`;
    },
  },
};
