/** English of the running order. */
import type { RuleFigures } from './said.ts';

const turns = (count: number): string => `${count} ${count === 1 ? 'turn' : 'turns'}`;
/** With one decimal, `1.0` as `1`. */
const round = (value: number): string => String(Math.round(value * 10) / 10);

const cost = (mean: number | undefined, worst: number | undefined): string =>
  mean === undefined || worst === undefined
    ? ''
    : worst === 0
      ? ' Never longer than the shortest solution.'
      : ` ${round(mean)} turns over the shortest on average, ${turns(worst)} at worst.`;

export const plan = {
  title: (lesson: string) => `${lesson}: running order`,
  lead: (minutes: number) => `Running order for the coach, ${minutes} minutes.`,
  /** Toy rules of many countries warn of small parts for children under three (common practice; the age from memory). */
  safety:
    'Cubes come apart into small parts, on which a child under three can choke: keep them from the youngest. ' +
    'Follow your local rules, and the maker’s.',
  minutes: (count: number) => `${count} min`,
  /** From the start: `0:05`. */
  clock: (minutes: number) => `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`,
  notes: 'Notes',
  ask: 'Ask',
  slip: 'Slip to expect',
  /** The answer wanted, and what stands after the rule's turns. */
  answer: (answer: string, then: string) => `Right answer: ${answer}. After the turns: ${then}.`,
  steps: {
    open: 'Open',
    rule: (number: number) => `Rule ${number}`,
    alone: (statement: string) => `${statement}.`,
    earlier: 'For all cases that no earlier rule is for.',
    part: 'Show',
    turned: {
      title: 'Turn the cube, look again',
      text: 'Do the same set-up. Then turn the whole cube by {turns} and ask again.',
      ask: 'Only the whole cube was turned. Which rule is it now, and why?',
    },
    /** The same set-up before and after a turn of the cube. */
    turnedPair: (before: number, after: number) => `Rule ${before}; from there it is rule ${after}.`,
    drill: {
      title: 'Drill',
      /** `points`: what the step has its examples show, `every foreign slot`; undefined where some of it is left out. */
      text: (shown: number, exceptions: number, points: string | undefined) =>
        `In pairs: one sets up, the other says the rule before the first turn. These ${shown} set-ups have every rule, and those ` +
        `for many cases more often${points === undefined ? '' : `${exceptions > 0 ? ', every exception' : ''}, ${points}, and both hands`}.`,
      again: 'The drill goes on. Change over: whoever set up now solves.',
    },
    plainDrill:
      'Give out the handouts. In pairs: one sets up from it, the other says what they see before the first turn.',
    break: {
      title: 'Break',
      text: 'Put the cubes down. Shake out hands and arms. If a hand or wrist hurts, stop for today.',
    },
    close: {
      title: 'Close',
      text: 'Everyone takes a handout home. Say what to practise until next time.',
      ask: 'Which question do you ask first, and which one decides? Which case was the hardest to tell?',
    },
  },
  /** What looks alike: an exception, or what another rule takes, and in what it differs. */
  slips: {
    exception: (statements: readonly string[]) =>
      statements.length > 0
        ? `It looks the same, but ${statements.join('; ')}: the rule does not work.`
        : 'It looks the same, but the rule does not work.',
    neighbour: (rule: number, statements: readonly string[]) =>
      statements.length > 0
        ? `It looks the same, but ${statements.join('; ')}: that is rule ${rule}.`
        : `It looks the same, but it is rule ${rule}.`,
  },
  drillItem: (rule: number, isException: boolean) => (isException ? `Rule ${rule}, exception` : `Rule ${rule}`),
  report: {
    heading: 'What was proved of the rules',
    /** A table's: five columns. */
    columns: ['Rule', 'Holds for sightings', 'Works elsewhere too', 'Over the shortest, mean', 'At worst'],
    cells: ({ number, sightings, holds, excluded, contrast, mean, worst }: RuleFigures): readonly string[] => [
      String(number),
      sightings === 0 ? 'never applies' : holds === sightings ? `all ${sightings}` : `${holds} of ${sightings}`,
      excluded > 0 ? `${contrast} of ${excluded}` : '\u2013',
      mean === undefined ? '\u2013' : turns(Number(round(mean))),
      worst === undefined ? '\u2013' : turns(worst),
    ],
    /** A rule with several conditions, each in turn the only one that is not met: what it says, and what was counted there. */
    contrasts: (number: number, each: readonly { says: string; holds: number; sightings: number }[]) =>
      `Rule ${number}, all but one condition met: ${each
        .map(({ says, holds, sightings }) => `without “${says}” it works in ${holds} of ${sightings}`)
        .join('; ')}.`,
    table: (sightings: number, mean: number | undefined, worst: number | undefined) =>
      `All rules together, ${sightings} sightings.${cost(mean, worst)}`,
    uncovered: (count: number, named: readonly string[]) =>
      count === 0
        ? 'There is a rule for every sighting.'
        : `There is no rule for ${count} sightings: ${named.join('; ')}${count > named.length ? ' and so on' : ''}.`,
    /** `sighting`: what that is, before from where it is seen. */
    means: (sighting: string) =>
      `A sighting is ${sighting} as seen from one of four sides. Where advice works as often elsewhere, its conditions tell students little.`,
  },
  foot: (title: string, edition: string) => `${title} · for the coach · every turn proved · edition ${edition}`,
  proved: (edition: string) => `for the coach · edition ${edition}`,
};
