/** English of what is said of answers about pairs. */
import { listed, placeWords } from '../../words/english-phrases.ts';
import type { Unsolved } from './said.ts';

const slotWords = (slots: readonly string[]): string =>
  `the ${listed(slots.map(placeWords))} ${slots.length === 1 ? 'slot' : 'slots'}`;

/** "the front left slot and the cross at the right" */
function things({ corner, edge, slots, cross }: Unsolved): string {
  const pair =
    corner && edge ? ['the pair'] : [...(corner ? ["the pair's corner"] : []), ...(edge ? ["the pair's edge"] : [])];
  return listed([
    ...pair,
    ...(slots.length > 0 ? [slotWords(slots)] : []),
    ...(cross.length > 0 ? [`the cross at the ${listed(cross.map(placeWords))}`] : []),
  ]);
}

const isPlural = ({ slots, cross }: Unsolved): boolean => slots.length + (cross.length > 0 ? 1 : 0) > 1;

export const marking = {
  disturbs: (unsolved: Unsolved) =>
    `The pair is home, but ${things(unsolved)} ${isPlural(unsolved) ? 'are' : 'is'} not solved any more.`,
  otherPair: (slots: readonly string[]) => `Solves another pair: that of ${slotWords(slots)}.`,
  fails: (unsolved: Unsolved) => `Not solved: ${things(unsolved)}.`,
  slips: {
    'other-pair': 'Another pair solved',
    disturbs: 'The pair is home, a kept slot is not',
  },
  noPlace:
    'Write where the piece is and where its cross colour looks (of an edge: the colour that belongs in front or behind), such as “top back right, white to the back”, or UBR:B for short.',
};
