/** `turnsheet find`: every shortest solution of a case, proved. */

import { FACES, type Face } from '../cube/faces.ts';
import { areHome } from '../cube/goal.ts';
import type { Answer } from '../cube/search/answer.ts';
import { type ForHands, forHands, type Handled } from '../cube/search/for-hands.ts';
import { HANDS } from '../cube/search/hands.ts';
import type { Limits } from '../cube/search/limits.ts';
import { type Turn, writeTurns } from '../cube/turns.ts';
import type { FindPart, Sought } from '../steps/find-part.ts';
import { USUAL_STEP } from '../steps/steps.ts';
import { joined } from '../text/likely.ts';
import { documentOf, type ExitCode, type Io } from './io.ts';
import { type FindOptions, isUsageError, type UsageError } from './options.ts';
import { counted } from './report.ts';
import { turnsOf } from './typed-turns.ts';

/**
 * A thousand million front halves, some 15 seconds: all lengths up to 12, where no case of the catalogue needs more than
 * 9. Only a cube whose cross or other parts of the base are not whole can need so much.
 */
const MOST_NODES = 1e9;

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
    const turns = turnsOf(`--${option}`, text);
    if (isUsageError(turns)) return turns;
    const other = turns.find((turn) => turn.kind !== 'face');
    if (other) return { usage: `--${option}: solutions are searched as turns of the six faces, without ${other.text}` };
    limits[option] = turns;
  }
  return limits;
}

/** How many turns longer than the shortest a solution may be that is easier for hands. */
const LONGER_FOR_HANDS = 1;

/** None under limits, which say already what is wanted, nor for a cube that takes long to search. */
function handsFor(
  find: FindPart,
  sought: Sought,
  answer: Answer,
  { hands: allow, limits }: { hands: FindOptions['hands']; limits: Limits },
): ForHands | undefined {
  if (!allow) return undefined;
  if (Object.keys(limits).length > 0 || !answer.proved || !areHome(sought.cube, sought.goal.base)) return undefined;
  const { solutions } = find.search(sought, { longer: LONGER_FOR_HANDS });
  return forHands(
    solutions.map(({ turns }) => turns),
    { ...HANDS, allow },
  );
}

const HOW: readonly (readonly [keyof ForHands, string])[] = [
  ['best', 'easiest'],
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

function asJson({ fields }: Sought, { shortest, proved, solutions }: Answer, hands: ForHands | undefined): string {
  const document = {
    ...fields,
    shortest: shortest ?? null,
    proved,
    solutions: solutions.map(({ turns, length }) => ({ turns: writeTurns(turns), length })),
    ...(hands && { hands: Object.fromEntries(HOW.map(([key]) => [key, handledJson(hands[key])])) }),
  };
  return documentOf(document);
}

function asText({ said }: Sought, { shortest, solutions }: Answer, limits: Limits): string {
  const fewest = Object.keys(limits).length === 0 ? ', the fewest there are' : ', the fewest within the limits';
  const lines = [said];
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
  const { start, longer, own } = options;
  const { find: part } = USUAL_STEP;
  const from = 'setup' in start ? turnsOf('--setup', start.setup) : start.address;
  if (isUsageError(from)) return refuse(from);
  const sought = part.sought(from, own);
  if (isUsageError(sought)) return refuse(sought);
  const limits = limitsOf(options);
  if (isUsageError(limits)) return refuse(limits);
  if (sought.broken.length > 0) io.err(`turnsheet: note: after this set-up not whole: ${joined(sought.broken)}\n`);
  const answer = part.search(sought, { ...limits, longer, nodes: MOST_NODES });
  const hands = handsFor(part, sought, answer, { hands: options.hands, limits });
  io.out(options.json ? asJson(sought, answer, hands) : asText(sought, answer, limits));
  if (hands && !options.json) io.out(handsText(hands));
  if (!answer.proved) io.err(`turnsheet: ${shortfall(answer)}\n`);
  return 0;
}
