/** Lessons by chance, over the whole format: they hold what they claim, and some are odd. */
import { stringify } from 'yaml';
import { COLOURS, coloursHeld, oppositeColour, USUAL_SCHEME } from '../../src/cube/colours.ts';
import { readTurns } from '../../src/cube/notation.ts';
import { inverse, writeTurns } from '../../src/cube/turns.ts';
import { writeAddress } from '../../src/steps/pair/address.ts';
import { ADDRESSES, FAMILIES } from '../../src/steps/pair/cases.ts';
import { SLOTS } from '../../src/steps/pair/slots.ts';
import type { Random } from '../random.ts';

const WORDS =
  'the edge waits in a foreign slot lift it so that corner can use straight away one look decides unlike split joined turn top first then insert watch how pieces meet'.split(
    ' ',
  );

const sentence = (r: Random, most: number): string => {
  const words = Array.from({ length: 1 + r.below(most) }, () => {
    const word = r.pick(WORDS);
    if (r.chance(0.04)) return `*${word} ${r.pick(WORDS)}*`;
    if (r.chance(0.04)) return `{${r.pick(COLOURS)}}`;
    return r.chance(0.03) ? "`R U' R'`" : word;
  });
  return `${words.join(' ')}.`;
};

const prose = (r: Random): string =>
  Array.from({ length: 1 + r.below(7) }, () => {
    if (r.chance(0.2)) return `# ${sentence(r, 4)}`;
    return `${r.chance(0.2) ? '- ' : ''}${sentence(r, r.chance(0.1) ? 160 : 40)}`;
  }).join('\n\n');

/** Short words that leave the cross whole, one after the other, for the pair of FR; then carried to another slot. */
const LIFTS = ["R U R'", "R U' R'", "R U2 R'", "F' U F", "F' U' F", "L' U L", "L U L'", "R' U R", "F U F'", "B U B'"];
const ROUND: Readonly<Record<string, string>> = { R: 'F', F: 'L', L: 'B', B: 'R' };
const QUARTERS: Readonly<Record<string, number>> = { FR: 0, FL: 1, BL: 2, BR: 3 };

const carried = (turns: string, times: number): string =>
  times === 0
    ? turns
    : carried(
        turns.replace(/[RFLB]/g, (face) => ROUND[face]!),
        times - 1,
      );

const back = (turns: string): string => {
  const reading = readTurns(turns);
  return reading.ok ? writeTurns(inverse(reading.turns)) : '';
};

function randomCase(r: Random): Record<string, unknown> {
  const slot = r.pick(SLOTS);
  const words = Array.from({ length: 1 + r.below(3) }, () => r.pick(LIFTS));
  const setup = carried(words.join(' U '), QUARTERS[slot]!);
  const item: Record<string, unknown> = {};
  if (r.chance(0.5)) item['name'] = sentence(r, r.chance(0.1) ? 14 : 4).replace(/[*`]/g, '');
  if (r.chance(0.2)) item['hold'] = { front: r.pick(COLOURS) };
  item['slot'] = slot;
  // All other slots are open: the words may leave any of them unsolved.
  item['open'] = SLOTS.filter((s) => s !== slot);
  item['setup'] = setup;
  const answer = `${r.chance(0.2) ? "y U' U " : ''}${r.chance(0.2) ? 'U U2 U ' : ''}`;
  if (r.chance(0.8)) {
    const solution = answer.startsWith('y') ? `${answer.replace('y', "y y'")}${back(setup)}` : answer + back(setup);
    item['solutions'] = r.chance(0.3) ? [{ turns: solution, remark: sentence(r, 20) }] : [solution];
  }
  if (r.chance(0.4)) item['watch'] = sentence(r, r.chance(0.1) ? 90 : 18);
  return item;
}

/** YAML. */
export function randomLesson(r: Random): string {
  const cross = r.pick(COLOURS);
  const up = oppositeColour(USUAL_SCHEME, cross);
  const front = r.pick(COLOURS.filter((c) => coloursHeld(USUAL_SCHEME, { up, front: c })));
  const cases: Record<string, unknown>[] = [];
  const count = r.pick([1, 2, 3, 5, 8, 13, 30]);
  for (let i = 0; i < count; i++) {
    if (r.chance(0.15)) cases.push({ part: sentence(r, 9).replace(/[*`]/g, ''), text: prose(r), again: true });
    if (r.chance(0.1)) {
      const address = r.pick(ADDRESSES);
      cases.push({ address: writeAddress(address), slot: r.pick(SLOTS) });
    } else cases.push(randomCase(r));
  }
  if (r.chance(0.1)) cases.push({ every: r.pick(FAMILIES.slice(0, 4)) });
  const held = cases.filter(
    (c) => !c['hold'] || coloursHeld(USUAL_SCHEME, { up, front: (c['hold'] as { front: 'red' }).front }),
  );
  const lesson = {
    title: sentence(r, r.chance(0.2) ? 16 : 5).replace(/[*`]/g, ''),
    ...(r.chance(0.7) && { club: 'A club' }),
    ...(r.chance(0.7) && { course: sentence(r, 5).replace(/[*`]/g, '') }),
    ...(r.chance(0.5) && { for: 'For all' }),
    hold: { cross, front },
    ...(r.chance(0.3) && { hand: r.pick(['left', 'right']) }),
    ...(r.chance(0.3) && { wide: r.pick(['r', 'Rw']) }),
    ...(r.chance(0.2) && { words: { slot: 'pocket', pair: 'couple' } }),
    ...(r.chance(0.3) && { show: r.pick([['undo'], ['states'], ['states', 'undo']]) }),
    ...(r.chance(0.3) && { claims: { turns: 60 } }),
    ...(r.chance(0.8) && { text: prose(r) }),
    ...(r.chance(0.5) && { watch: prose(r) }),
    cases: [{ part: 'All', again: true }, ...held, { setup: "R U R'" }],
  };
  return stringify(lesson, { lineWidth: 0 });
}
