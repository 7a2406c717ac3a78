/** English of rules of thumb, whatever they see and advise. */

import { capital, listed } from './english-phrases.ts';

export const rules = {
  /** One of several answers. */
  or: (answers: readonly string[]) => listed(answers, 'or'),
  yes: 'yes',
  no: 'no',
  otherwise: 'otherwise',
  /** A question whether several statements hold together. */
  together: (statements: readonly string[]) =>
    statements.length === 2
      ? `Are both true? ${capital(listed(statements))}.`
      : `Are all true? ${capital(listed(statements))}.`,
  /** Several statements as one sentence, without its stop. */
  all: (statements: readonly string[]) => capital(listed(statements)),
  /** Where no rule speaks. */
  noRule: 'There is no rule for this one. Look for another way.',
  turnTheCube: 'Turn the whole cube a quarter',
  lookAgain: 'Then begin again at the first question.',
  /** What stands once the cube is turned. */
  turned: 'look again',
  /**
   * For how many of the positions that it speaks of it holds, and whether every way works there that its words allow, or
   * only some; `most`, of the whole solution, goes on from it.
   */
  holds: (holds: number, positions: number, isEveryWay: boolean) =>
    holds === positions
      ? isEveryWay
        ? 'Always'
        : 'Some way always works'
      : `In ${holds} of ${positions} positions${isEveryWay ? '' : ' some way works'}`,
  most: (turns: number) => `, ${turns} turns at most.`,
  exceptions: {
    heading: 'But not here. Do this instead:',
    /** For how many positions it stands, of how many that differ by turns of the top; more than one. */
    alike: (count: number, of: number) =>
      count === of
        ? 'also after any turn of the top'
        : `also after ${count === 2 ? 'one other turn' : `${count - 1} other turns`} of the top`,
    more: (count: number) => `And ${count} more.`,
    exactIf: (statements: readonly string[], isEveryWay: boolean) =>
      `${isEveryWay ? 'Always' : 'Some way always works'}, if also ${listed(statements)}.`,
  },
  chart: {
    /** Of the file. */
    title: (lesson: string) => `${lesson}: see, then turn`,
    lead: 'See, then turn.',
    /** Said where a rule has exceptions, or none speaks of some. */
    inexact: 'Where a rule has exceptions, they stand below it.',
    proved: (edition: string) => `every rule proved on every case · edition ${edition}`,
    foot: (title: string, edition: string) => `${title} · every rule proved on every case · edition ${edition}`,
  },
};
