/**
 * What a question of choice says, done again: where a piece is, which picture is the case, which solution has the slip,
 * in which order parts solve, what is seen of the pair, which rule it fits.
 */
import { afterTurns, seenPiece, solvedCube } from '../cube/cube.ts';
import { readTurns } from '../cube/notation.ts';
import { prove } from '../cube/solves.ts';
import type { Turn } from '../cube/turns.ts';
import { stepOf } from '../steps/steps.ts';
import type { Subject } from '../steps/subject.ts';
import type { ChoiceClaimText } from './claims-file.ts';
import { optionKey } from './mark-choice.ts';
import { ruleChoiceFault } from './prove-rule.ts';

const ALPHABET = [...'ABCDEFGHIJKL'];

/** As printed; A, B, C where the file names none. */
export const lettersOf = ({ options, letters }: ChoiceClaimText): readonly string[] =>
  letters ?? ALPHABET.slice(0, options.length);

const turnsIn = (text: string): Turn[] | undefined => {
  const reading = readTurns(text);
  return reading.ok ? reading.turns : undefined;
};

function placeFault({ answer, piece: name, turns = '' }: ChoiceClaimText, subject: Subject): string | undefined {
  const done = turnsIn(turns);
  const asked = stepOf(subject)
    .practice.pieces(subject)
    .find((piece) => piece.name === name);
  if (!asked || !done) return 'it names no piece, or turns that cannot be read';
  const { at, faces } = seenPiece(afterTurns(subject.cube, done), asked.piece);
  const is = `${at}:${faces}`;
  return is === answer ? undefined : `the file says that the ${name} is at ${answer}, the cube says ${is}`;
}

/** The picture is that of the right option and of no other: the pieces that matter are where they are after the set-up. */
function pictureFault({ options }: ChoiceClaimText, at: number, { cube, goal }: Subject): string | undefined {
  const solved = solvedCube();
  for (const [i, option] of options.entries()) {
    const turns = turnsIn(option);
    if (!turns) return `its option ${i + 1} cannot be read`;
    const shown = afterTurns(solved, turns);
    const isSame = goal.pieces.every((piece) => shown.spots[piece] === cube.spots[piece]);
    if (isSame !== (i === at))
      return `its option ${i + 1} ${isSame ? 'gives' : 'does not give'} the case of the set-up`;
  }
  return undefined;
}

const solves = ({ cube, goal }: Subject, turns: readonly Turn[]): boolean =>
  prove(cube, turns, goal).verdict === 'solves';

/** The right one fails, all others solve; with the turn that it names put right it solves. */
function slipFault({ options, turn, now = '' }: ChoiceClaimText, at: number, subject: Subject): string | undefined {
  const sequences = options.map(turnsIn);
  const wrong = sequences.findIndex((turns, i) => (turns !== undefined && solves(subject, turns)) === (i === at));
  if (wrong >= 0) return `its option ${wrong + 1} ${wrong === at ? 'solves' : 'does not solve'}`;
  const mend = turnsIn(now);
  if (turn === undefined || mend?.length !== 1) return 'it does not say which turn is wrong, and what it should be';
  return solves(subject, sequences[at]!.toSpliced(turn - 1, 1, ...mend))
    ? undefined
    : `with ${now} as turn ${turn} it does not solve`;
}

/** Done in the order of the answer, the parts solve. */
function orderFault(
  { options, answer }: ChoiceClaimText,
  letters: readonly string[],
  subject: Subject,
): string | undefined {
  if ([...answer].sort().join('') !== [...letters].sort().join('')) {
    return `its answer "${answer}" is no order of ${letters.join(' ')}`;
  }
  const parts = [...answer].map((letter) => turnsIn(options[letters.indexOf(letter)]!));
  if (parts.includes(undefined)) return 'a part of it has turns that cannot be read';
  const turns = parts.flatMap((part) => part!);
  return solves(subject, turns) ? undefined : `in the order ${answer} its parts do not solve`;
}

/** Why the answer of the file is not the right one; undefined if it is. */
export function choiceFault(claim: ChoiceClaimText, letters: readonly string[], subject: Subject): string | undefined {
  const { asks, options, answer } = claim;
  if (asks === 'place') return placeFault(claim, subject);
  const different = new Set(letters).size === letters.length && letters.every((letter) => /^\p{L}$/u.test(letter));
  if (options.length < 2 || letters.length !== options.length || !different) {
    return 'it has not a letter of its own for each of two options or more';
  }
  if (asks === 'order') return orderFault(claim, letters, subject);
  if (new Set(options.map(optionKey)).size < options.length) return 'two of its options are the same';
  const at = letters.indexOf(answer);
  if (at < 0) return `its answer "${answer}" is none of ${letters.join(' ')}`;
  if (asks === 'picture') return pictureFault(claim, at, subject);
  if (asks === 'slip') return slipFault(claim, at, subject);
  if (asks === 'rule') return ruleChoiceFault(claim, at, subject);
  const own = stepOf(subject).practice.questions.find(({ name }) => name === asks);
  if (!own) return `nothing is known of questions that ask for "${asks}"`;
  const seen = own.right(subject);
  return options[at] === seen ? undefined : `the file says ${options[at]}, the cube says ${seen ?? 'neither'}`;
}
