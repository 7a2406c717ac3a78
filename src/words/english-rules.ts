/** English of rules of thumb, whatever they see and advise. */
import type { RuleWords } from './rule-words.ts';

/** `a`, `a or b`, `a, b or c` */
const listed = (items: readonly string[], word: 'and' | 'or'): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} ${word} ${items.at(-1)}`;

const capital = (text: string): string =>
  text.startsWith('{cross}') ? text.replace('{cross}', '{Cross}') : text.charAt(0).toUpperCase() + text.slice(1);

export const rules: RuleWords = {
  or: (answers) => listed(answers, 'or'),
  yes: 'yes',
  no: 'no',
  otherwise: 'otherwise',
  together: (statements) =>
    statements.length === 2
      ? `Are both true? ${capital(listed(statements, 'and'))}.`
      : `Are all true? ${capital(listed(statements, 'and'))}.`,
  all: (statements) => capital(listed(statements, 'and')),
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
    exactIf: (statements) => `Always, if also ${listed(statements, 'and')}.`,
  },
  chart: {
    title: (lesson) => `${lesson}: see, then turn`,
    lead: 'See, then turn.',
    inexact: 'Where a rule has exceptions, they stand below it.',
    proved: (edition) => `every rule proved on every case · edition ${edition}`,
    foot: (title, edition) => `${title} · every rule proved on every case · edition ${edition}`,
  },
};
