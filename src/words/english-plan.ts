/** English of the running order. */
import type { PlanWords } from './plan-words.ts';

const turns = (count: number): string => `${count} ${count === 1 ? 'turn' : 'turns'}`;
/** With one decimal, `1.0` as `1`. */
const round = (value: number): string => String(Math.round(value * 10) / 10);

const cost = (mean: number | undefined, worst: number | undefined): string =>
  mean === undefined || worst === undefined
    ? ''
    : worst === 0
      ? ' Never longer than the shortest solution.'
      : ` ${round(mean)} turns over the shortest on average, ${turns(worst)} at worst.`;

export const plan: PlanWords = {
  title: (lesson) => `${lesson}: running order`,
  lead: (minutes) => `Running order for the coach, ${minutes} minutes.`,
  minutes: (count) => `${count} min`,
  clock: (minutes) => `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`,
  notes: 'Notes',
  ask: 'Ask',
  slip: 'Slip to expect',
  answer: (answer, then) => `Wanted: ${answer}. Then: ${then}.`,
  steps: {
    open: 'Open',
    rule: (number) => `Rule ${number}`,
    alone: (statement) => `${statement}.`,
    earlier: 'What no earlier rule takes.',
    part: 'Show',
    turned: {
      title: 'Turn the cube, look again',
      text: 'The same set-up. Then turn the whole cube by {turns} and ask anew.',
      ask: 'Nothing was turned but the cube. Which rule now, and why?',
    },
    turnedPair: (before, after) => `Rule ${before}; from there it is rule ${after}.`,
    drill: {
      title: 'Drill',
      text: (shown, all, points) =>
        `In pairs: one sets up, the other says the rule before the first turn. ${
          shown === all ? `These ${all} set-ups have` : `These are ${shown} of ${all} set-ups that between them have`
        } every rule, every exception, ${points}, and both hands; no fewer do.`,
      again: 'On with the drill. Change over: who set up now solves.',
    },
    plainDrill: 'In pairs: one sets up from the handout, the other says what is seen before the first turn.',
    break: { title: 'Break', text: 'Cubes down. Shake the hands.' },
    close: {
      title: 'Close',
      text: 'Handouts out. Say what to practise until next time.',
      ask: 'Which question do you ask first, and which one decides? Who met a case that no rule fitted?',
    },
  },
  slips: {
    exception: (statements) =>
      statements.length > 0
        ? `It looks alike, but ${statements.join('; ')}: the rule does not hold.`
        : 'It looks alike, but the rule does not hold.',
    neighbour: (rule, statements) =>
      statements.length > 0
        ? `It looks alike, but ${statements.join('; ')}: rule ${rule}.`
        : `It looks alike, but rule ${rule} holds.`,
  },
  drillItem: (rule, isException) => (isException ? `Rule ${rule}, exception` : `Rule ${rule}`),
  report: {
    heading: 'What was proved of the rules',
    columns: ['Rule', 'Holds for sightings', 'Works elsewhere too', 'Over the shortest, mean', 'At worst'],
    cells: ({ number, sightings, holds, excluded, contrast, mean, worst }) => [
      String(number),
      sightings === 0 ? 'never applies' : holds === sightings ? `all ${sightings}` : `${holds} of ${sightings}`,
      excluded > 0 ? `${contrast} of ${excluded}` : '\u2013',
      mean === undefined ? '\u2013' : turns(Number(round(mean))),
      worst === undefined ? '\u2013' : turns(worst),
    ],
    table: (sightings, mean, worst) => `All rules together, ${sightings} sightings.${cost(mean, worst)}`,
    uncovered: (count, named) =>
      count === 0
        ? 'A rule speaks of every sighting.'
        : `No rule speaks of ${count} sightings: ${named.join('; ')}${count > named.length ? ' and so on' : ''}.`,
    means: (sighting) =>
      `A sighting is ${sighting} as seen from one of four sides. Where advice works as often elsewhere, its conditions tell students little.`,
  },
  foot: (title, edition) => `${title} · for the coach · every turn proved · edition ${edition}`,
  proved: (edition) => `for the coach · edition ${edition}`,
};
