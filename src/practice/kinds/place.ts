/** Where does it go: some turns done in the head, and the piece marked on an empty picture. */
import { afterTurns, type Cube, pieceOf, placeOf } from '../../cube/cube.ts';
import type { Face } from '../../cube/faces.ts';
import { faceOfCornerSpot, faceOfEdgeSpot, type Place } from '../../cube/spots.ts';
import type { Turn } from '../../cube/turns.ts';
import { seenAt, seenPlace } from '../../cube/view.ts';
import { cornerOfSlot, edgeOfSlot, type Slot } from '../../steps/pair/slots.ts';
import { seeing } from '../difficulty.ts';
import type { Exercise, PlaceExercise } from '../exercise.ts';
import type { Seen } from '../material.ts';
import { baseOf } from './base.ts';
import type { Kind } from './kind.ts';

/** So many turns can be followed without a cube. */
const FOLLOWED = 3;
const A_TURN = 15;

const LEAST_FOLLOWED = 2;

/** The first turns of what is recommended, as long as they are of faces: the empty picture is held as the full one is. */
function begun({ recommended }: Seen): readonly Turn[] {
  const other = recommended.findIndex((turn) => turn.kind !== 'face');
  return recommended.slice(0, Math.min(FOLLOWED, other < 0 ? FOLLOWED : other));
}

interface Spot {
  readonly at: Place;
  readonly faces: Face;
}

function spotOf(cube: Cube, slot: Slot, piece: PlaceExercise['piece']): Spot {
  const number = pieceOf(piece === 'corner' ? cornerOfSlot(slot) : edgeOfSlot(slot));
  const spot = cube.spots[number]!;
  const face = piece === 'corner' ? faceOfCornerSpot(spot) : faceOfEdgeSpot(spot);
  return { at: seenPlace(cube.view, placeOf(cube, number)), faces: seenAt(cube.view, face) };
}

const isSame = (a: Spot, b: Spot): boolean => a.at === b.at && a.faces === b.faces;

function unsound(exercise: Exercise): string | undefined {
  if (exercise.form !== 'place') return 'it asks for no place';
  const { cube, slot, piece, turns } = exercise;
  const [before, after] = [cube, afterTurns(cube, turns)].map((c) => spotOf(c, slot, piece));
  if (!isSame(after!, exercise)) return `the ${piece} comes to ${after!.at}`;
  if (turns.some((turn) => turn.kind !== 'face')) return 'the cube is turned on the way';
  return before!.at === after!.at ? `the ${piece} stays at ${after!.at}` : undefined;
}

export const place: Kind = {
  kind: 'place',
  candidates: ({ seen, leading }) =>
    seen
      .filter((one) => begun(one).length >= LEAST_FOLLOWED)
      .map((one) => ({
        key: one.key,
        difficulty: A_TURN * begun(one).length + seeing(one, leading),
        seen: one,
        open: [],
      })),
  make(one, material, random): PlaceExercise | undefined {
    const base = baseOf('place', one, material);
    const turns = begun(one.seen);
    const after = afterTurns(base.cube, turns);
    const moved = (['corner', 'edge'] as const).filter(
      (piece) => spotOf(base.cube, base.slot, piece).at !== spotOf(after, base.slot, piece).at,
    );
    if (moved.length === 0) return undefined;
    const piece = random.pick(moved);
    return { ...base, form: 'place', piece, turns, after, ...spotOf(after, base.slot, piece) };
  },
  unsound,
};
