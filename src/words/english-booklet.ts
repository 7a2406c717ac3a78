/** English of the booklet of all cases. */
import type { BookletWords } from './words.ts';

const WHEREABOUTS: Readonly<Record<string, string>> = { home: 'at home', top: 'on top', away: 'in a foreign slot' };

const whereabouts = (family: string): string => {
  const [corner, edge] = family.split('-').map((word) => WHEREABOUTS[word]!);
  return `Corner ${corner}, edge ${edge}`;
};

const turns = (count: number): string => `${count} ${count === 1 ? 'turn' : 'turns'}`;

export const booklet: BookletWords = {
  title: (families) => (families.length === 1 ? whereabouts(families[0]!) : 'All cases of one pair'),
  about: (cases) => `${cases} ${cases === 1 ? 'case' : 'cases'}, each from four sides`,
  covered: (taught, of) => `${taught} of ${of} shown in the lessons`,
  howToRead:
    'White is down and green in front before each set-up. A panel shows one case with the slot of its pair at the front ' +
    'right, front left, back left and back right. All other slots are kept, but those that a piece is stuck in. The ' +
    'shortest solution is proved to be the shortest; below it, where they differ, the one that is easiest for hands by ' +
    "turnsheet's own measure, at most one turn longer.",
  family: (family, cases) => `${whereabouts(family)} (${family}): ${cases} ${cases === 1 ? 'case' : 'cases'}`,
  shortest: (count) => `Shortest · ${count}`,
  hands: (count) => `For hands · ${count}`,
  solutions: (count, length) => `${count} ${count === 1 ? 'solution' : 'solutions'} of ${turns(length)}, none shorter`,
  taught: (where) => `shown in ${where.join(', ')}`,
  notTaught: 'shown in none of the lessons',
};
