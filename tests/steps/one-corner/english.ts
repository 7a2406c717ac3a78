/** English of the one corner. */
import type { Colour } from '../../../src/cube/colours.ts';
import type { Face } from '../../../src/cube/faces.ts';

const SIDE: Readonly<Record<string, string>> = { U: 'top', D: 'bottom', F: 'front', B: 'back', R: 'right', L: 'left' };
const place = (at: string): string => [...at].map((side) => SIDE[side]).join(' ');

export const english = {
  corner: (at: string, colour: Colour, face: Face) =>
    `The corner is at the ${place(at)}, ${colour} to the ${SIDE[face]}.`,
  sheets: {
    signs: ['Heavy line: the corner.', 'Dashed: where it belongs.'],
    family: (family: string) => (family === 'below' ? 'The corner below' : 'The corner on top'),
    allCases: 'All cases of one corner',
    booklet: 'A panel shows one case, its corner seen from each of four sides.',
    chart: 'Every case of a corner',
    plan: { open: 'Show the corner.', ask: 'Is the corner on top?' },
  },
  fails: (broken: readonly string[]) => `Not home: ${broken.map(place).join(', ')}.`,
  practice: {
    kinds: {
      height: { title: 'Where is it', ask: 'Is the corner on top or below?' },
      solve: { title: 'Solve', ask: 'Bring the corner home, the cross whole.' },
    },
    answers: { top: 'on top', below: 'below' },
    pieces: { corner: { mark: 'Mark the corner.', blank: 'An empty cube, to mark the corner on.' } },
    start: 'Every set-up begins with a solved cube.',
    common: 'After every right answer the corner is home and the cross is whole.',
  },
  marking: { slips: {}, noPlace: 'Write a place such as UFR:R.' },
};
