/** English of a pair: what is printed only where a lesson is about pairs. */
import type { PracticeWordsOfStep } from '../practice-part.ts';
import type { SheetWordsOfStep } from '../sheet-part.ts';
import { cases, drawing, promises } from './english-cases.ts';
import { marking } from './english-marking.ts';
import { rules } from './english-rules.ts';

const practice: PracticeWordsOfStep = {
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
    solve: {
      title: 'Solve it',
      ask:
        'Set up, look, and write down turns that solve the pair. Cross and pale slots must be whole at the end; a slot that ' +
        'a stuck piece leaves, and one that is called open, need not be.',
    },
  },
  answers: { like: 'like', unlike: 'unlike', good: 'good', bad: 'bad' },
  pieces: {
    corner: { mark: 'Mark the corner after', blank: 'An empty cube, to mark the corner on.' },
    edge: { mark: 'Mark the edge after', blank: 'An empty cube, to mark the edge on.' },
  },
  start: 'Start every set-up from a cube whose first two layers are solved. The top may be as it likes.',
  common:
    'Solved on the cube, many answers are right: each leaves the cross and the slots that were to be kept whole, and ' +
    'the pair in its slot. The pictures show the whole cube after the recommended turns if it was solved before the ' +
    'set-up; with other turns the top, and slots that were open, may look otherwise.',
};

const WHEREABOUTS: Readonly<Record<string, string>> = { home: 'at home', top: 'on top', away: 'in a foreign slot' };

const sheets: SheetWordsOfStep = {
  signs: ['Heavy line: the pair.', 'Dashed: its own slot.', 'Thin line: the slot where a piece is stuck.'],
  family: (family) => {
    const [corner, edge] = family.split('-').map((word) => WHEREABOUTS[word]!);
    return `Corner ${corner}, edge ${edge}`;
  },
  allCases: 'All cases of one pair',
  booklet:
    'White is down and green in front before each set-up. A panel shows one case with the slot of its pair at the front ' +
    'right, front left, back left and back right. All other slots are kept, but those that a piece is stuck in. The ' +
    'shortest solution is proved to be the shortest; below it, where they differ, the one that is easiest for hands by ' +
    "turnsheet's own measure, at most one turn longer.",
  chart: 'Every case of a pair, its own slot at the front right',
  plan: {
    open: 'Everyone holds the cube alike. Show the pair, its own slot and where the pieces are stuck. Say what today is for.',
    ask: 'Where are the two pieces, where does {cross} face, and which face would you turn first? Hands off until someone says why.',
  },
};

export const english = { cases, drawing, marking, practice, promises, rules, sheets };
