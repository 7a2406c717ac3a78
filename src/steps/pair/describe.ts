/**
 * A case in words, from the same state that is drawn. Every pair address, slot and hold gives words of its own; the
 * tests read the address back from them.
 */
import type { FaceColours } from '../../cube/colours.ts';
import { type Cube, isHome, type Piece, placeOf } from '../../cube/cube.ts';
import type { Face } from '../../cube/faces.ts';
import { faceOfCornerSpot, faceOfEdgeSpot } from '../../cube/spots.ts';
import { centreAt, seenAt, seenPlace } from '../../cube/view.ts';
import { describeHold } from '../../svg/emphasis.ts';
import type { Words } from '../../words/words.ts';
import { pairPieces } from './emphasis.ts';
import type { PieceSaid, PieceWhere } from './said.ts';
import { edgeOfSlot, type PairGoal, type Slot, slotOfPlace } from './slots.ts';
import { pairWords } from './words.ts';

function whereIs(cube: Cube, goal: PairGoal, piece: Piece): PieceWhere {
  const place = placeOf(cube, piece);
  const slot = slotOfPlace(place);
  if (slot === goal.slot) return { at: 'own-slot', solved: isHome(cube, piece) };
  const seen = seenPlace(cube.view, place);
  // "On top" and slots named by two directions go with a cross that is held down; else the whole place is named.
  if (centreAt(cube.view, 'D') !== 'D') return { at: 'elsewhere', place: seen };
  if (slot) return { at: 'slot', place: seen };
  return { at: seen.startsWith('U') ? 'top' : 'elsewhere', place: seen };
}

/** A piece of a pair: where it is, and one sticker that says how it is turned. */
function cornerSaid(cube: Cube, goal: PairGoal, colours: FaceColours): PieceSaid {
  const { corner } = pairPieces(goal);
  const side = seenAt(cube.view, faceOfCornerSpot(cube.spots[corner]!));
  return { where: whereIs(cube, goal, corner), colour: colours.D, side };
}

/** The edge's sticker that is up or down, or else to the front or back. */
function edgeSaid(cube: Cube, goal: PairGoal, colours: FaceColours): PieceSaid {
  const { edge } = pairPieces(goal);
  const home = [...edgeOfSlot(goal.slot)] as Face[];
  const spot = cube.spots[edge]!;
  const sides = [spot, spot ^ 1].map((s) => seenAt(cube.view, faceOfEdgeSpot(s)));
  const telling = [...'UDFB'].map((s) => sides.indexOf(s as Face)).find((i) => i >= 0)!;
  const where = whereIs(cube, goal, edge);
  return { where, colour: colours[home[telling]!], side: sides[telling]! };
}

/** Both pieces of a pair as they are on a cube. Together they name its address, as the viewer sees it. */
export const pairSaid = (cube: Cube, goal: PairGoal, colours: FaceColours): { corner: PieceSaid; edge: PieceSaid } => ({
  corner: cornerSaid(cube, goal, colours),
  edge: edgeSaid(cube, goal, colours),
});

/** Which pair it is and where it belongs. */
export function describeOwnSlot(cube: Cube, slot: Slot, colours: FaceColours, words: Words): string {
  const place = seenPlace(cube.view, edgeOfSlot(slot));
  const [first, second] = ([...place] as Face[]).map((side) => colours[centreAt(cube.view, side)]);
  return pairWords(words).drawing.pair(first!, second!, place);
}

export function describeCase(cube: Cube, goal: PairGoal, colours: FaceColours, words: Words): string {
  const { drawing } = pairWords(words);
  const { corner, edge } = pairPieces(goal);
  const solved = isHome(cube, corner) && isHome(cube, edge);
  const said = pairSaid(cube, goal, colours);
  return [
    describeHold(cube, colours, words),
    describeOwnSlot(cube, goal.slot, colours, words),
    ...(solved
      ? [drawing.solved]
      : (['corner', 'edge'] as const).map((piece) => {
          const { where, colour, side } = said[piece];
          return drawing.piece(piece, where, colour, side);
        })),
    ...(goal.kept.length > 0 ? [drawing.kept(goal.kept.map((slot) => seenPlace(cube.view, edgeOfSlot(slot))))] : []),
  ].join(' ');
}
