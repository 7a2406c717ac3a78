/** Where does it go: some turns done in the head, and the piece marked on an empty picture. */
import { afterTurns, seenPiece } from '../../cube/cube.ts';
import type { Turn } from '../../cube/turns.ts';
import { stepOf } from '../../steps/steps.ts';
import { seeing } from '../difficulty.ts';
import type { Exercise, PlaceExercise } from '../exercise.ts';
import type { Taught } from '../material.ts';
import { baseOf, candidateOf, type Kind } from './kind.ts';

/** So many turns can be followed without a cube. */
const FOLLOWED = 3;
const A_TURN = 15;

const LEAST_FOLLOWED = 2;

/** The first turns of what is recommended, as long as they are of faces: the empty picture is held as the full one is. */
function begun({ recommended }: Taught): readonly Turn[] {
  const other = recommended.findIndex((turn) => turn.kind !== 'face');
  return recommended.slice(0, Math.min(FOLLOWED, other < 0 ? FOLLOWED : other));
}

function unsound(exercise: Exercise): string | undefined {
  if (exercise.form !== 'place') return 'it asks for no place';
  const { subject, asked, turns } = exercise;
  const [before, after] = [subject.cube, afterTurns(subject.cube, turns)].map((cube) => seenPiece(cube, asked.piece));
  if (after!.at !== exercise.at || after!.faces !== exercise.faces) return `the ${asked.name} comes to ${after!.at}`;
  if (turns.some((turn) => turn.kind !== 'face')) return 'the cube is turned on the way';
  return before!.at === after!.at ? `the ${asked.name} stays at ${after!.at}` : undefined;
}

export const place: Kind = {
  candidates: ({ taught, leading }) =>
    taught
      .filter((one) => begun(one).length >= LEAST_FOLLOWED)
      .map((one) => candidateOf(one, A_TURN * begun(one).length + seeing(one, leading))),
  make(one, _, random): PlaceExercise | undefined {
    const base = baseOf('place', one);
    const { subject } = base;
    const turns = begun(one.taught);
    const after = afterTurns(subject.cube, turns);
    const moved = stepOf(subject)
      .practice.pieces(subject)
      .filter(({ piece }) => seenPiece(subject.cube, piece).at !== seenPiece(after, piece).at);
    if (moved.length === 0) return undefined;
    const asked = random.pick(moved);
    return { ...base, form: 'place', asked, turns, after, ...seenPiece(after, asked.piece) };
  },
  unsound,
};
