/** English of the booklet of all cases. */

import { counted } from './english-phrases.ts';

export const booklet = {
  about: (cases: number) => `${counted(cases, 'case')}, each from four sides`,
  covered: (taught: number, of: number) => `${taught} of ${of} shown in the lessons`,
  /** `said`: the family in words. */
  family: (said: string, family: string, cases: number) => `${said} (${family}): ${counted(cases, 'case')}`,
  shortest: (count: number) => `Shortest · ${count}`,
  hands: (count: number) => `For hands · ${count}`,
  solutions: (count: number, length: number) =>
    `${counted(count, 'solution')} of ${counted(length, 'turn')}, none shorter`,
  taught: (where: readonly string[]) => `shown in ${where.join(', ')}`,
  notTaught: 'not shown in any lesson',
};
