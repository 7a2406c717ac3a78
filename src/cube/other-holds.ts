/** The same turns as one would write them who holds the cube another way. */
import { type Face, OPPOSITE } from './faces.ts';
import { type Axis, type Quarters, type Slice, type Turn, turnOf } from './turns.ts';
import { centreAt, STRAIGHT, type View } from './view.ts';

/** The face as which a slice or a rotation turns, clockwise (turns.ts). */
const TURNS_AS: Readonly<Record<Slice | Axis, Face>> = { M: 'L', E: 'D', S: 'F', x: 'R', y: 'U', z: 'F' };
const SLICES: readonly Slice[] = ['M', 'E', 'S'];
const AXES: readonly Axis[] = ['x', 'y', 'z'];

function turnFrom(turn: Turn, view: View): Turn {
  const { kind, letter, quarters } = turn;
  if (kind === 'face' || kind === 'wide') return turnOf(kind, centreAt(view, letter as Face), quarters);
  const about = centreAt(view, TURNS_AS[letter as Slice | Axis]);
  const names: readonly (Slice | Axis)[] = kind === 'slice' ? SLICES : AXES;
  const same = names.find((name) => TURNS_AS[name] === about);
  if (same) return turnOf(kind, same, quarters);
  const against = names.find((name) => TURNS_AS[name] === OPPOSITE[about])!;
  return turnOf(kind, against, (4 - quarters) as Quarters);
}

/** What the turns of a viewer in `view` are called by one who looks straight: both do the same to the cube. */
export const turnsFrom = (turns: readonly Turn[], view: View): Turn[] => turns.map((turn) => turnFrom(turn, view));

/** The three other sides from which a cube with its top up can be looked at: a quarter to the left, half, to the right. */
export const OTHER_SIDES: readonly View[] = Array.from({ length: 24 }, (_, view) => view)
  .filter((view) => view !== STRAIGHT && centreAt(view, 'U') === 'U')
  .sort((a, b) => 'RBL'.indexOf(centreAt(a, 'F')) - 'RBL'.indexOf(centreAt(b, 'F')));

/** The twenty ways to hold it with another face up. */
export const OTHER_WAYS_UP: readonly View[] = Array.from({ length: 24 }, (_, view) => view).filter(
  (view) => centreAt(view, 'U') !== 'U',
);
