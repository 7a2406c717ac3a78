/** Papers and keys of one lesson read from finished PDFs, each item answered and held against the key. */

import type { Colour } from '../../src/cube/colours.ts';
import { coloursHeld, USUAL_SCHEME } from '../../src/cube/colours.ts';
import { afterTurns, solvedCube } from '../../src/cube/cube.ts';
import { readTurns } from '../../src/cube/notation.ts';
import { shortestLength } from '../../src/steps/pair/search/find.ts';
import { goalOf } from '../../src/steps/pair/slots.ts';
import * as answers from './answers.ts';
import type { KindName, ReadAnswer, ReadItem, ReadKey, ReadPaper } from './read-papers.ts';

/** With the engine's search: the second checker has none. */
function shortestOf(setup: string, { slot, kept }: answers.Described): number | undefined {
  const read = readTurns(setup);
  if (!read.ok) throw new Error(setup);
  return shortestLength(afterTurns(solvedCube(), read.turns), goalOf(slot, kept)).shortest;
}

/** The letters of all options for which a test holds. */
const fitting = ({ options }: ReadItem, test: (text: string) => boolean): string =>
  options
    .filter(({ text }) => test(text))
    .map(({ letter }) => letter)
    .join('');

const differ = (what: string, found: unknown, said: unknown): string[] =>
  found === said ? [] : [`${what}: found ${found}, the key says ${said}`];

/** Of the cube as it is held on the paper, in the order U L F R B D. */
function coloursOn(picture: string): string[] {
  const [, down, front] = /(\w+) down, (\w+) in front/.exec(picture)!;
  const up = Object.values(USUAL_SCHEME).find(
    (c) => coloursHeld(USUAL_SCHEME, { up: c, front: front as Colour })?.D === down!.toLowerCase(),
  )!;
  const held = coloursHeld(USUAL_SCHEME, { up, front: front as Colour })!;
  return [held.U, held.L, held.F, held.R, held.B, held.D];
}

function solveFaults(item: ReadItem, answer: ReadAnswer, d: answers.Described): string[] {
  const [recommended, shorter] = answer.solutions;
  if (!recommended) return ['the key has no solution'];
  const shortest = shortestOf(item.turns, d);
  const said = shorter ? shorter.length : answer.noneShorter ? recommended.length : undefined;
  const whole = answers.topWords(`${item.turns} ${recommended.turns}`, coloursOn(item.picture));
  return [
    ...(answers.gives(item.turns, d) ? [] : ['the set-up does not give the picture']),
    ...differ('set-up on the key', item.turns, answer.setup),
    ...answer.solutions.flatMap(({ turns, length }) => [
      ...(answers.solves(item.turns, turns, d) ? [] : [`${turns} does not solve it`]),
      ...(answers.isTakenBack(item.turns, turns) ? [`${turns} is the set-up taken back`] : []),
      ...differ(`length of ${turns}`, answers.lengthOf(turns), length),
    ]),
    ...differ('shortest', shortest, said),
    ...(shorter && shorter.length >= recommended.length ? ['the shorter one is not shorter'] : []),
    ...(item.open && answers.slotsIn(item.open).some((slot) => d.kept.includes(slot)) ? ['an open slot is kept'] : []),
    ...(answer.picture === undefined || answer.picture.endsWith(whole) ? [] : [`after it: ${whole}`]),
  ];
}

function slipFaults(item: ReadItem, answer: ReadAnswer, d: answers.Described): string[] {
  const { slip } = answer;
  const wrong = fitting(item, (text) => !answers.solves(item.turns, text, d));
  if (wrong !== answer.letter || !slip) return differ('wrong solutions', wrong, answer.letter);
  const { text } = item.options.find(({ letter }) => letter === wrong)!;
  const mends = answers.turnMends(item.turns, text, d).map(({ turn, now }) => `${turn} ${now}`);
  return [
    ...(answers.gives(item.turns, d) ? [] : ['the set-up does not give the picture']),
    ...differ('mends', mends.join(), `${slip.turn} ${slip.now}`),
    ...differ('wrong turn', text.split(' ')[slip.turn - 1], slip.was),
  ];
}

const CHECKS: Readonly<Record<KindName, (item: ReadItem, answer: ReadAnswer, d: answers.Described) => string[]>> = {
  likeness: (item, answer, d) =>
    differ(
      'letter',
      fitting(item, (text) => text === answers.likeness(d)),
      answer.letter,
    ),
  edge: (item, answer, d) =>
    differ(
      'letter',
      fitting(item, (text) => text === answers.edgeWord(d)),
      answer.letter,
    ),
  picture: (item, answer, d) =>
    differ(
      'letter',
      fitting(item, (text) => answers.gives(text, d)),
      answer.letter,
    ),
  rule: (item, answer, d) => [
    ...(answers.gives(item.turns, d) ? [] : ['the set-up does not give the picture']),
    ...differ(
      'letter',
      fitting(item, (text) => answers.ruleFits(text, d)),
      answer.letter,
    ),
  ],
  slip: slipFaults,
  order: (item, answer, d) => [
    ...(answers.gives(item.turns, d) ? [] : ['the set-up does not give the picture']),
    ...differ(
      'orders that solve',
      answers
        .orders(item.options)
        .filter((parts) => answers.solves(item.turns, parts.map(({ text }) => text).join(' '), d))
        .map((parts) => parts.map(({ letter }) => letter).join(''))
        .join(),
      answer.letter,
    ),
  ],
  place: (item, answer, d) =>
    answers.comesTo(d, item.asked as 'corner', item.turns, answer.picture!) ? [] : [`not so: ${answer.picture}`],
  solve: solveFaults,
  drill: solveFaults,
};

export interface Counted {
  readonly items: Record<KindName, number>;
}

/** One sentence for each item that the key answers otherwise, and for each check word that does not come out. */
export function faultsOf(papers: readonly ReadPaper[], keys: readonly ReadKey[], counted: Counted): string[] {
  if (papers.map((p) => p.code).join() !== keys.map((k) => k.code).join()) return ['papers and keys do not match'];
  return papers.flatMap((paper, n) => {
    const key = keys[n]!;
    const faults = paper.items.flatMap((item, i) => {
      const answer = key.answers[i];
      if (!answer || answer.number !== item.number || answer.kind !== item.kind)
        return [`${item.number}: not on the key`];
      counted.items[item.kind]++;
      const found = CHECKS[item.kind](item, answer, answers.readPicture(item.picture));
      return found.map((fault) => `${item.number} (${item.kind}): ${fault}`);
    });
    const letters = paper.boxes.map((number) => key.answers[number - 1]!.letter).join('');
    return [
      ...faults,
      ...differ('items', paper.items.length, key.answers.length),
      ...differ('check word', letters, key.checkWords.join('')),
    ].map((fault) => `paper ${paper.code}: ${fault}`);
  });
}
