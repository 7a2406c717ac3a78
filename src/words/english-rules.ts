/** English of rules of thumb, whatever they see and advise. */
import { capital, listed } from './english-phrases.ts';
import type { RuleWords } from './rule-words.ts';

export const rules: RuleWords = {
  or: (answers) => listed(answers, 'or'),
  yes: 'yes',
  no: 'no',
  otherwise: 'otherwise',
  together: (statements) =>
    statements.length === 2
      ? `Are both true? ${capital(listed(statements))}.`
      : `Are all true? ${capital(listed(statements))}.`,
  all: (statements) => capital(listed(statements)),
  noRule: 'No rule for this one. Look for another way.',
  turnTheCube: 'Turn the whole cube a quarter',
  lookAgain: 'Then begin again at the first question.',
  turned: 'look again',
  holds: (holds, positions) => (holds === positions ? 'Always' : `In ${holds} of ${positions} positions`),
  most: (turns) => `, ${turns} turns at most.`,
  exceptions: {
    heading: 'But not here. Do this instead:',
    alike: (count, of) =>
      count === of
        ? 'also after any turn of the top'
        : `also after ${count === 2 ? 'one other turn' : `${count - 1} other turns`} of the top`,
    more: (count) => `And ${count} more.`,
    exactIf: (statements) => `Always, if also ${listed(statements)}.`,
  },
  chart: {
    title: (lesson) => `${lesson}: see, then turn`,
    lead: 'See, then turn.',
    inexact: 'Where a rule has exceptions, they stand below it.',
    proved: (edition) => `every rule proved on every case · edition ${edition}`,
    foot: (title, edition) => `${title} · every rule proved on every case · edition ${edition}`,
  },
};
