/** English of the chart of a course. */
import type { CourseWords } from './words.ts';

const WHEREABOUTS: Readonly<Record<string, string>> = { home: 'at home', top: 'on top', away: 'in a foreign slot' };
const counted = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;

export const course: CourseWords = {
  about: (shown, of) => `${shown} of ${of} cases shown`,
  evenings: 'Evenings',
  evening: (number) => `Evening ${number}`,
  cases: (cases) => `${counted(cases, 'case')} shown`,
  pages: (pages) => counted(pages, 'page'),
  coverage: 'What is shown when',
  howToRead: (practice) =>
    'Every case of a pair, its own slot at the front right. Below each, the evenings that show it' +
    (practice ? ' and how often it is practised.' : '.'),
  family: (family, shown, of) => {
    const [corner, edge] = family.split('-').map((word) => WHEREABOUTS[word]!);
    return `Corner ${corner}, edge ${edge}: ${shown} of ${of}`;
  },
  never: 'never',
  practised: (times) => `${times}\u00d7`,
};
