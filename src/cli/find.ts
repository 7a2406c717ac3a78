/** `turnsheet find`: every shortest solution of a case, proved. */

import { afterTurns, type Cube, pieceOf, solvedCube } from '../cube/cube.ts';
import { FACES, type Face } from '../cube/faces.ts';
import { areHome } from '../cube/goal.ts';
import { readTurns } from '../cube/notation.ts';
import type { Answer } from '../cube/search/answer.ts';
import { type ForHands, forHands, type Handled } from '../cube/search/for-hands.ts';
import { HANDS } from '../cube/search/hands.ts';
import type { Limits } from '../cube/search/limits.ts';
import { cornerOf, edgeOf } from '../cube/spots.ts';
import { type Turn, writeTurns } from '../cube/turns.ts';
import { centreAt } from '../cube/view.ts';
import { type Address, addressOf, readAddress, stuckSlots, writeAddress } from '../steps/pair/address.ts';
import { cubeWithPair } from '../steps/pair/place-pair.ts';
import { findSolutions } from '../steps/pair/search/find.ts';
import type { PairGoal } from '../steps/pair/slots.ts';
import { cornerOfSlot, goalOf, SLOTS, type Slot, slotOfPlace } from '../steps/pair/slots.ts';
import { joined, listed } from '../text/likely.ts';
import type { ExitCode, Io } from './io.ts';
import { type FindOptions, isUsageError, type UsageError } from './options.ts';
import { counted } from './report.ts';

/**
 * A thousand million front halves, some 15 seconds: all lengths up to 12, where no case of the catalogue needs more than
 * 9. Only a cube whose cross or kept slots are not whole can need so much.
 */
const MOST_NODES = 1e9;

interface Case {
  readonly cube: Cube;
  readonly slot: Slot;
  /** None while the pair's edge is in the bottom layer. */
  readonly address: Address | undefined;
  readonly stuck: readonly Slot[];
}

function turnsOf(option: string, text: string): Turn[] | UsageError {
  const reading = readTurns(text);
  if (reading.ok) return reading.turns;
  const where = reading.at > 0 ? ` at character ${reading.at + 1}` : '';
  return { usage: `--${option} "${text}"${where}: ${reading.message}; ${reading.hint}` };
}

function caseAtAddress(text: string): Case | UsageError {
  const address = readAddress(text);
  if (!address) {
    return {
      usage:
        `"${text}" is not a pair address: the corner's place and the face of its cross-colour sticker, then the edge's ` +
        'place and the face of its F-coloured sticker, as in --pair "UFR:R UB:U"',
    };
  }
  return { cube: cubeWithPair(address, 'FR'), slot: 'FR', address, stuck: stuckSlots(address, 'FR') };
}

function caseAfterSetup(text: string, word: string): Case | UsageError {
  const slot = SLOTS.find((s) => s === word);
  if (!slot) return { usage: `--slot is ${listed(SLOTS)}, not "${word}"` };
  const setup = turnsOf('setup', text);
  if (isUsageError(setup)) return setup;
  const cube = afterTurns(solvedCube(), setup);
  if (centreAt(cube.view, 'U') !== 'U') {
    return { usage: '--setup leaves the cube turned: another face is up than before; end it with the rotation back' };
  }
  const corner = cornerOf(cube.spots[pieceOf(cornerOfSlot(slot))]!);
  const places = [corner, edgeOf(cube.spots[pieceOf(slot)]!)].map(slotOfPlace);
  const stuck = SLOTS.filter((s) => s !== slot && places.includes(s));
  return { cube, slot, address: addressOf(cube, slot), stuck };
}

/** `FL,BL` or `none`; left out, every slot that can be kept. */
function goalFor({ slot, stuck }: Case, keep: string | undefined): PairGoal | UsageError {
  const possible = SLOTS.filter((s) => s !== slot && !stuck.includes(s));
  if (keep === undefined) return goalOf(slot, possible);
  if (keep === 'none') return goalOf(slot, []);
  const kept: Slot[] = [];
  for (const word of keep.split(',').map((w) => w.trim())) {
    const found = SLOTS.find((s) => s === word);
    if (!found) return { usage: `--keep is slots with commas between them, or none: ${joined(SLOTS)}; not "${word}"` };
    if (found === slot) return { usage: `--keep: ${slot} is the pair's own slot and cannot be kept` };
    if (stuck.includes(found)) {
      const rest = possible.length === 0 ? 'none' : possible.join(',');
      return { usage: `--keep: a piece of the pair sits in ${found}, so it cannot be kept; at most --keep ${rest}` };
    }
    kept.push(found);
  }
  return goalOf(slot, kept);
}

function limitsOf({ faces, begins, ends }: FindOptions): Limits | UsageError {
  const limits: { faces?: Face[]; begins?: Turn[]; ends?: Turn[] } = {};
  if (faces !== undefined) {
    const known = [...faces].filter((letter) => letter !== ',' && letter !== ' ');
    const stranger = known.find((letter) => !(FACES as readonly string[]).includes(letter));
    if (stranger || known.length === 0) return { usage: `--faces is some of ${FACES.join('')}, as in --faces URF` };
    limits.faces = known as Face[];
  }
  for (const [option, text] of [
    ['begins', begins],
    ['ends', ends],
  ] as const) {
    if (text === undefined) continue;
    const turns = turnsOf(option, text);
    if (isUsageError(turns)) return turns;
    const other = turns.find((turn) => turn.kind !== 'face');
    if (other) return { usage: `--${option}: solutions are searched as turns of the six faces, without ${other.text}` };
    limits[option] = turns;
  }
  return limits;
}

/** What of the base is not whole before the solution, in words. */
function brokenBefore({ cube }: Case, goal: PairGoal): string[] {
  const cross = goalOf(goal.slot, []).base;
  const slots = goal.kept.filter((slot) => !areHome(cube, goalOf(goal.slot, [slot]).base.slice(cross.length)));
  return [...(areHome(cube, cross) ? [] : ['the cross']), ...slots];
}

/** How many turns longer than the shortest a solution may be that is easier for hands. */
const LONGER_FOR_HANDS = 1;

/** None under limits, which say already what is wanted, nor for a cube that takes long to search. */
function handsFor({ cube }: Case, goal: PairGoal, answer: Answer, limits: Limits): ForHands | undefined {
  if (Object.keys(limits).length > 0 || !answer.proved || !areHome(cube, goal.base)) return undefined;
  const { solutions } = findSolutions(cube, goal, { longer: LONGER_FOR_HANDS });
  return forHands(
    solutions.map(({ turns }) => turns),
    HANDS,
  );
}

const HOW: readonly (readonly [keyof ForHands, string])[] = [
  ['best', 'easiest of all'],
  ['still', 'the cube held still'],
  ['behind', 'from behind, after y2'],
  ['left', 'leading with the left hand'],
];

function handsText(hands: ForHands): string {
  const rows = HOW.map(([key, how]) => [how, writeTurns(hands[key].turns), hands[key].cost.toFixed(1)] as const);
  const widths = [0, 1].map((i) => Math.max(...rows.map((row) => row[i]!.length)));
  const lines = rows.map(([how, turns, cost]) => `  ${how.padEnd(widths[0]!)}  ${turns.padEnd(widths[1]!)}  ${cost}`);
  const head = `for hands (up to ${counted(LONGER_FOR_HANDS, 'turn')} longer; cost in turns of U, see docs/hands.md):`;
  return `${[head, ...lines].join('\n')}\n`;
}

const handledJson = ({ solution, turns, cost }: Handled) => ({
  solution: writeTurns(solution),
  turns: writeTurns(turns),
  cost,
});

function asJson(
  found: Case,
  goal: PairGoal,
  { shortest, proved, solutions }: Answer,
  hands: ForHands | undefined,
): string {
  const document = {
    address: found.address ? writeAddress(found.address) : null,
    keep: goal.kept,
    shortest: shortest ?? null,
    proved,
    solutions: solutions.map(({ turns, length }) => ({ turns: writeTurns(turns), length })),
    ...(hands && { hands: Object.fromEntries(HOW.map(([key]) => [key, handledJson(hands[key])])) }),
  };
  return `${JSON.stringify(document, undefined, 2)}\n`;
}

function asText(found: Case, goal: PairGoal, { shortest, solutions }: Answer, limits: Limits): string {
  const fewest = Object.keys(limits).length === 0 ? ', the fewest there are' : ', the fewest within the limits';
  const kept = goal.kept.length === 0 ? 'no other slot kept' : `${joined(goal.kept)} kept`;
  const lines = [`${found.address ? `${writeAddress(found.address)}, ` : ''}own slot ${found.slot}, ${kept}`];
  let before = -1;
  for (const { turns, length } of solutions) {
    if (length !== before) {
      const all = solutions.filter((s) => s.length === length).length;
      lines.push(`${counted(length, 'turn')}${length === shortest ? fewest : ''} (${all}):`);
    }
    lines.push(`  ${turns.length === 0 ? 'solved already' : writeTurns(turns)}`);
    before = length;
  }
  return `${lines.join('\n')}\n`;
}

/** Why not all is proved, where it is not. */
function shortfall({ shortest, searched }: Answer): string {
  const none =
    searched < 0 ? 'nothing was searched in full' : `all of up to ${counted(searched, 'turn')} were searched`;
  return shortest === undefined
    ? `stopped without a solution: ${none}, and longer ones were not`
    : `stopped before the end: ${none}; of the longer ones some may be missing`;
}

export function find(options: FindOptions, io: Io): ExitCode {
  const refuse = ({ usage }: UsageError): ExitCode => {
    io.err(`turnsheet: ${usage}\nTry: npx turnsheet help find\n`);
    return 2;
  };
  const { start, keep, longer } = options;
  const found = 'pair' in start ? caseAtAddress(start.pair) : caseAfterSetup(start.setup, start.slot);
  if (isUsageError(found)) return refuse(found);
  const goal = goalFor(found, keep);
  if (isUsageError(goal)) return refuse(goal);
  const limits = limitsOf(options);
  if (isUsageError(limits)) return refuse(limits);
  const broken = brokenBefore(found, goal);
  if (broken.length > 0) io.err(`turnsheet: note: after this set-up not whole: ${joined(broken)}\n`);
  const answer = findSolutions(found.cube, goal, { ...limits, longer, nodes: MOST_NODES });
  const hands = options.hands ? handsFor(found, goal, answer, limits) : undefined;
  io.out(options.json ? asJson(found, goal, answer, hands) : asText(found, goal, answer, limits));
  if (hands && !options.json) io.out(handsText(hands));
  if (!answer.proved) io.err(`turnsheet: ${shortfall(answer)}\n`);
  return 0;
}
