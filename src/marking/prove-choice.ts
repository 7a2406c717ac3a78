/**
 * What a question of choice says, done again: where a piece is, which picture is the case, which solution has the slip,
 * in which order parts solve, what is seen of the pair, which rule it fits.
 */
import { afterTurns, type Cube, pieceOf, solvedCube } from '../cube/cube.ts';
import { readTurns } from '../cube/notation.ts';
import { prove } from '../cube/solves.ts';
import { cornerOf, edgeOf, faceOfCornerSpot, faceOfEdgeSpot } from '../cube/spots.ts';
import type { Turn } from '../cube/turns.ts';
import { seenAt, seenPlace } from '../cube/view.ts';
import { featuresOf, topsLike } from '../steps/pair/features.ts';
import type { SetUp } from '../steps/pair/set-up.ts';
import { cornerOfSlot, edgeOfSlot, type Slot } from '../steps/pair/slots.ts';
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

/** The place and the face of a piece's telling sticker, as the viewer names them: the one that speaks for it (spots.ts). */
export function whereIs(cube: Cube, slot: ChoiceClaimText['pair'], piece: 'corner' | 'edge'): string {
  const spot = cube.spots[pieceOf(piece === 'corner' ? cornerOfSlot(slot) : edgeOfSlot(slot))]!;
  const [place, face] =
    piece === 'corner' ? [cornerOf(spot), faceOfCornerSpot(spot)] : [edgeOf(spot), faceOfEdgeSpot(spot)];
  return `${seenPlace(cube.view, place)}:${seenAt(cube.view, face)}`;
}

function placeFault({ answer, pair, piece, turns = '' }: ChoiceClaimText, { cube }: SetUp): string | undefined {
  const done = turnsIn(turns);
  if (!piece || !done) return 'it names no piece, or turns that cannot be read';
  const is = whereIs(afterTurns(cube, done), pair, piece);
  return is === answer ? undefined : `the file says that the ${piece} is at ${answer}, the cube says ${is}`;
}

/** The picture is that of the right option and of no other: the pieces that matter are where they are after the set-up. */
function pictureFault({ options }: ChoiceClaimText, at: number, { cube, goal }: SetUp): string | undefined {
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

/** The right one fails, all others solve; with the turn that it names put right it solves. */
function slipFault(
  { options, turn, now = '' }: ChoiceClaimText,
  at: number,
  { cube, goal }: SetUp,
): string | undefined {
  const sequences = options.map(turnsIn);
  const solves = (turns: readonly Turn[] | undefined): boolean =>
    turns !== undefined && prove(cube, turns, goal).verdict === 'solves';
  const wrong = sequences.findIndex((turns, i) => solves(turns) === (i === at));
  if (wrong >= 0) return `its option ${wrong + 1} ${wrong === at ? 'solves' : 'does not solve'}`;
  const mend = turnsIn(now);
  if (turn === undefined || mend?.length !== 1) return 'it does not say which turn is wrong, and what it should be';
  return solves(sequences[at]!.toSpliced(turn - 1, 1, ...mend))
    ? undefined
    : `with ${now} as turn ${turn} it does not solve`;
}

/** Done in the order of the answer, the parts solve. */
function orderFault(
  { options, answer }: ChoiceClaimText,
  letters: readonly string[],
  { cube, goal }: SetUp,
): string | undefined {
  if ([...answer].sort().join('') !== [...letters].sort().join('')) {
    return `its answer "${answer}" is no order of ${letters.join(' ')}`;
  }
  const parts = [...answer].map((letter) => turnsIn(options[letters.indexOf(letter)]!));
  if (parts.includes(undefined)) return 'a part of it has turns that cannot be read';
  const turns = parts.flatMap((part) => part!);
  return prove(cube, turns, goal).verdict === 'solves' ? undefined : `in the order ${answer} its parts do not solve`;
}

/** What a viewer sees of the pair, in the words in which sheets ask for it. */
function seenFault(asks: string, right: string, pair: Slot, { address }: SetUp): string | undefined {
  const sighting = { address, seen: pair };
  const seen = asks === 'edge' ? featuresOf(sighting).edge : topsLike(sighting);
  return right === seen ? undefined : `the file says ${right}, the cube says ${seen ?? 'neither'}`;
}

/** Why the answer of the file is not the right one; undefined if it is. */
export function choiceFault(claim: ChoiceClaimText, letters: readonly string[], setUp: SetUp): string | undefined {
  const { asks, options, answer } = claim;
  if (asks === 'place') return placeFault(claim, setUp);
  const different = new Set(letters).size === letters.length && letters.every((letter) => /^\p{L}$/u.test(letter));
  if (options.length < 2 || letters.length !== options.length || !different) {
    return 'it has not a letter of its own for each of two options or more';
  }
  if (asks === 'order') return orderFault(claim, letters, setUp);
  if (new Set(options.map(optionKey)).size < options.length) return 'two of its options are the same';
  const at = letters.indexOf(answer);
  if (at < 0) return `its answer "${answer}" is none of ${letters.join(' ')}`;
  if (asks === 'picture') return pictureFault(claim, at, setUp);
  if (asks === 'edge' || asks === 'likeness') return seenFault(asks, options[at]!, claim.pair, setUp);
  if (asks === 'slip') return slipFault(claim, at, setUp);
  return asks === 'rule' ? ruleChoiceFault(claim, at, setUp) : `nothing is known of questions that ask for "${asks}"`;
}
