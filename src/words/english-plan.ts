import type { PlanWords } from './words.ts';

const minutes = (count: number): string => `${count} ${count === 1 ? 'minute' : 'minutes'}`;
const figure = (n: number): string => String(Math.round(n * 10) / 10);

export const plan: PlanWords = {
  title: 'Running order',
  about: (all, examples) =>
    `For the coach · ${minutes(all)} · ${examples} set-ups, which show every rule, every side and both hands`,
  short: (count) => `${count} min`,
  open: 'Open',
  openDo:
    'Say what the evening is about and what everybody brings. Let one of the class say what a split and a joined pair are.',
  rule: (number) => `Rule ${number}`,
  show: (exception) => (exception ? 'Show the exception' : 'Show'),
  ask: 'Ask',
  answer: 'Then',
  slip: (rule) => `The slip to expect: this looks alike and is rule ${rule}`,
  slipException: (count) =>
    `The slip to expect: the rule has ${count === 1 ? 'an exception' : `${count} exceptions`}, see the chart`,
  turned: (turn, rule) => `Set it up again, do ${turn}, and ask anew: now it is rule ${rule}.`,
  pause: 'Break',
  pauseDo: 'Cubes down, hands open and shake. Whoever has pain stops for today.',
  practise: 'Practise',
  practiseDo:
    'The handout, in pairs: one sets up, the other says the rule first and turns then. Change after every five.',
  close: 'Close',
  closeDo: 'One set-up for all, from the list above. Everybody says the rule before anybody turns.',
  notes: 'Notes',
  report: 'What is proved',
  reportAbout:
    'A view is one case after one turn of the top, seen from one side. “Elsewhere” counts the views that the conditions ' +
    'exclude and in which the advice would work all the same: the fewer, the more the conditions tell.',
  reportRule: (number, { sightings, holds, contrast, excluded }) =>
    `Rule ${number}: holds in ${holds === sightings ? `all ${sightings}` : `${holds} of ${sightings}`} views; elsewhere in ${contrast} of ${excluded}.`,
  cost: (mean, worst) =>
    `Who follows the rules takes ${figure(mean)} turns more than the shortest on average, ${worst} at worst.`,
  uncovered: (count, of) => `No rule speaks of ${count} of ${of} views.`,
};
