/**
 * How the viewer holds the cube: which centre is seen at each of the viewer's faces. The puzzle's state is kept by its
 * centres, so a rotation changes only this; a wide turn is the opposite face and a rotation (Rw = L x), a slice two
 * faces and a rotation (M = R L' x').
 */
import { FACES, type Face, faceTowards, NORMAL, OPPOSITE, rotated } from './faces.ts';
import { cornerAt, edgeAt, type FaceTurn, faceTurn, type Place } from './spots.ts';
import type { Axis, Quarters, Slice, Turn } from './turns.ts';

/** 0..23; 0 is the hold before the first turn. */
export type View = number;
/** Held as before the first turn. */
export const STRAIGHT: View = 0;

/** The face about which a rotation turns, clockwise: regulations 12a4a. */
const AXIS: Readonly<Record<Axis, Face>> = { x: 'R', y: 'U', z: 'F' };
/** The face as which a slice turns. */
const SLICE_AS: Readonly<Record<Slice, Face>> = { M: 'L', E: 'D', S: 'F' };

/** By viewer's face, in the order of FACES: the centre seen there. */
type Seen = readonly Face[];

function turnedBy(seen: Seen, about: Face, quarters: Quarters): Seen {
  const next = [...seen];
  FACES.forEach((face, i) => {
    next[FACES.indexOf(faceTowards(rotated(NORMAL[face], about, quarters)))] = seen[i]!;
  });
  return next;
}

const SEEN: Seen[] = [FACES];
for (let i = 0; i < SEEN.length; i++) {
  for (const about of Object.values(AXIS)) {
    const next = turnedBy(SEEN[i]!, about, 1);
    if (!SEEN.some((s) => s.join('') === next.join(''))) SEEN.push(next);
  }
}

const viewOf = (seen: Seen): View => SEEN.findIndex((s) => s.join('') === seen.join(''));

/** The centre that the viewer sees at this face. */
export const centreAt = (view: View, face: Face): Face => SEEN[view]![FACES.indexOf(face)]!;

/** Where the viewer sees this centre. */
export const seenAt = (view: View, centre: Face): Face => FACES[SEEN[view]!.indexOf(centre)]!;

/** The rotation about one of the viewer's faces that is left when a turn is written as face turns. */
function rotationOf(turn: Turn): { about: Face; quarters: Quarters } | undefined {
  switch (turn.kind) {
    case 'face':
      return undefined;
    case 'wide':
      return { about: turn.letter as Face, quarters: turn.quarters };
    case 'slice':
      return { about: SLICE_AS[turn.letter as Slice], quarters: turn.quarters };
    case 'rotation':
      return { about: AXIS[turn.letter as Axis], quarters: turn.quarters };
  }
}

/** The viewer's faces that turn, against the centres. */
function facesTurned(turn: Turn): { face: Face; quarters: Quarters }[] {
  const back = (4 - turn.quarters) as Quarters;
  switch (turn.kind) {
    case 'face':
      return [{ face: turn.letter as Face, quarters: turn.quarters }];
    case 'wide':
      return [{ face: OPPOSITE[turn.letter as Face], quarters: turn.quarters }];
    case 'slice': {
      const as = SLICE_AS[turn.letter as Slice];
      return [
        { face: OPPOSITE[as], quarters: turn.quarters },
        { face: as, quarters: back },
      ];
    }
    case 'rotation':
      return [];
  }
}

/** What a written turn does, for a viewer in a given view. */
export interface Effect {
  /** Turns of the faces by their centres, in order. */
  readonly faceTurns: readonly FaceTurn[];
  readonly view: View;
}

function effectOf(turn: Turn, view: View): Effect {
  const rotation = rotationOf(turn);
  return {
    faceTurns: facesTurned(turn).map(({ face, quarters }) => faceTurn(centreAt(view, face), quarters)),
    view: rotation ? viewOf(turnedBy(SEEN[view]!, rotation.about, rotation.quarters)) : view,
  };
}

/** By 24 * turn's index + view, each worked out when it is first asked for. */
const effects: Effect[] = [];

/** What a written turn does for a viewer in this view; one look-up. */
export const effect = (turn: Turn, view: View): Effect => (effects[24 * turn.index + view] ??= effectOf(turn, view));

/** The place as the viewer names it, of a place named by the centres. */
export function seenPlace(view: View, place: Place): Place {
  const faces = ([...place] as Face[]).map((face) => seenAt(view, face));
  return faces.length === 3 ? cornerAt(faces) : edgeAt(faces);
}
