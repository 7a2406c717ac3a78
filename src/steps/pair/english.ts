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
        'Compare the corner’s top colour with one colour of the edge: its top colour if the edge is on top, its front or ' +
        'back colour if it is in a slot. Write the letter in the box.',
    },
    edge: {
      title: 'Good or bad edge?',
      ask:
        'An edge on top is good if its top colour is that of the front or back centre. An edge in a slot is good if each of ' +
        'its colours is at its own centre or at the opposite one. All other edges are bad. Write the letter in the box.',
    },
    solve: {
      title: 'Solve it',
      ask:
        'Set up, look, and write down turns that solve the pair. The cross and the slots to keep must be whole at the end. A slot ' +
        'that a stuck piece comes out of need not be, nor one that is called open.',
    },
  },
  answers: { like: 'like', unlike: 'unlike', good: 'good', bad: 'bad' },
  pieces: {
    corner: { mark: 'Mark the corner after', blank: 'An empty cube, to mark the corner on.' },
    edge: { mark: 'Mark the edge after', blank: 'An empty cube, to mark the edge on.' },
  },
  start: 'Start every set-up from a cube whose first two layers are solved. The top may look any way.',
  common:
    'Many answers are right: all that leave the cross and the kept slots whole, and the pair in its slot. The pictures ' +
    'show the whole cube after the recommended turns, if it was solved before the set-up. After other turns the top, and ' +
    'open slots, may look different.',
};

const WHEREABOUTS: Readonly<Record<string, string>> = { home: 'at home', top: 'on top', away: 'in a foreign slot' };

const sheets: SheetWordsOfStep = {
  signs: ['Thick line: the pair.', 'Dashed line: its own slot.', 'Thin line: the slot where a piece is stuck.'],
  family: (family) => {
    const [corner, edge] = family.split('-').map((word) => WHEREABOUTS[word]!);
    return `Corner ${corner}, edge ${edge}`;
  },
  allCases: 'All cases of one pair',
  booklet:
    'White is down and green in front before each set-up. A panel shows one case with the slot of its pair at the front ' +
    'right, front left, back left and back right. All other slots are kept, except where a piece is stuck. The first ' +
    'solution is proved to be the shortest; below it, where they differ, the one that is easiest for hands by ' +
    "turnsheet's own measure, at most one turn longer.",
  chart: 'Every case of a pair, its own slot at the front right',
  plan: {
    open: 'Everyone holds the cube the same way. Show the pair, its own slot and where the two pieces are. Say what today is about.',
    ask: 'Where are the two pieces, where does {cross} face, and which face would you turn first? Hands off until someone says why.',
  },
};

export const english = { cases, drawing, marking, practice, promises, rules, sheets };
