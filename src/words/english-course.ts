/** English of the chart of a course. */
import { counted } from './english-phrases.ts';

export const course = {
  about: (shown: number, of: number) => `${shown} of ${of} cases shown`,
  evenings: 'Evenings',
  evening: (number: number) => `Evening ${number}`,
  cases: (cases: number) => `${counted(cases, 'case')} shown`,
  pages: (pages: number) => counted(pages, 'page'),
  coverage: 'What is shown when',
  /** `what`: which cases there are, as a sentence without its stop. */
  howToRead: (what: string, practice: boolean) =>
    `${what}. Below each, the evenings that show it${practice ? ' and how often it is practised.' : '.'}`,
  family: (said: string, shown: number, of: number) => `${said}: ${shown} of ${of}`,
  never: 'never',
  practised: (times: number) => `${times}\u00d7`,
};
