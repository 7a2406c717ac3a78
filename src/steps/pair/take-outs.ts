/**
 * Take-outs: all the ways to begin that an advice allows.
 *
 * A lift is: turns of U, one quarter turn of the lifting face that brings the stuck piece up, turns of U, the same
 * face back, the base whole after it. With `by` it is: turns of U, then those turns, as seen from any side or in a
 * mirror, in the course of which the piece comes up. A turn of U that they begin or end with is one printed turn with
 * the one before or after it, of whatever amount; where the two would come to nothing it could not be seen, and the turns
 * were not done.
 *
 * All is tried with the own slot at FR, and seen from there or from another side only when it is told: the same
 * address from four sides is one piece of work.
 */

import { afterTurns, type Cube, isOnTop, type Piece, pieceOf, placeOf } from '../../cube/cube.ts';
import { type Face, OPPOSITE } from '../../cube/faces.ts';
import { areHome } from '../../cube/goal.ts';
import { everySide, faceFromTheSide, SIDES } from '../../cube/sides.ts';
import { faceOfCornerSpot } from '../../cube/spots.ts';
import { isTurnOfTop, type Quarters, type Turn, turnOf } from '../../cube/turns.ts';
import { type Address, addressKey, addressOf, goalAt } from './address.ts';
import type { Between, LiftedPiece, PairAdvice, Raising, Standing, Way } from './advice.ts';
import { type ColourNamed, colourNamed } from './features.ts';
import { cubeWithPair } from './place-pair.ts';
import { lookOf, type PairSighting } from './sighting.ts';
import { QUARTERS_FROM_FRONT_RIGHT, type Slot, slotOfPlace } from './slots.ts';

/** All is tried with the own slot here, and told as it is seen from other sides. */
export const OWN: Slot = 'FR';
const [CORNER, EDGE]: readonly [Piece, Piece] = [pieceOf('DFR'), pieceOf('FR')];
const AMOUNTS = [1, 2, 3] as const;

const turn = (face: Face, quarters: Quarters): Turn => turnOf('face', face, quarters);
const back = (quarters: Quarters): Quarters => (4 - quarters) as Quarters;
/** None, or a turn of U. */
const TOP_TURNED: readonly (readonly Turn[])[] = AMOUNTS.map((quarters) => [turn('U', quarters)]);
const TURNS_ON_TOP: readonly (readonly Turn[])[] = [[], ...TOP_TURNED];

const slotOf = (cube: Cube, piece: Piece): Slot | undefined => slotOfPlace(placeOf(cube, piece));

/** A beginning that the advice allows, own slot FR, and what it leaves. */
export interface Begun {
  readonly turns: readonly Turn[];
  readonly address: Address;
}

/** A lift. */
interface TakeOut extends Begun {
  readonly face: Face;
  /** The other face of the slot that comes up: its colour is brought on top. */
  readonly side: Face;
  readonly stands: readonly Standing[];
  readonly between: readonly Between[];
  /** Which pieces came up. */
  readonly raised: readonly Piece[];
  /** Of those that did not come up, what the lifting turn did with each. */
  readonly ways: readonly Way[];
}

/** How a turn treats a piece that it does not lift. */
function wayOf(before: Cube, after: Cube, piece: Piece): Way {
  if (before.spots[piece] === after.spots[piece]) return 'direct';
  return isOnTop(after, piece) ? 'together' : 'hidden';
}

/** How the piece on top stands towards the slot of the other one, of which this face is to turn; nothing unless one is on top. */
function standingsOf(cube: Cube, face: Face): readonly Standing[] {
  const [piece, ...more] = [CORNER, EDGE].filter((p) => isOnTop(cube, p));
  if (piece === undefined || more.length > 0) return [];
  const slot = slotOf(cube, piece === CORNER ? EDGE : CORNER)!;
  const side = slot.replace(face, '') as Face;
  const place = placeOf(cube, piece);
  const [inFace, atSide] = [place.includes(face), place.includes(side)];
  const isAcross = piece === CORNER || place.includes(OPPOSITE[face]);
  const where = inFace ? (atSide ? 'over the slot' : 'in the face') : atSide ? 'at the side' : undefined;
  const looks = faceOfCornerSpot(cube.spots[CORNER]!);
  const isAlong = piece === CORNER && [side, OPPOSITE[side]].includes(looks);
  return [where ?? (isAcross ? 'across' : 'across the side'), ...(isAlong ? ['cross along' as const] : [])];
}

/** After a quarter turn of the face up and so many of the top: what went where. */
function betweensOf(cube: Cube, face: Face, up: Quarters, amount: Quarters): readonly Between[] {
  const isClear = [CORNER, EDGE].every((p) => !isOnTop(cube, p) || !placeOf(cube, p).includes(face));
  // A face turned clockwise brings up the slot that it shares with the next face clockwise, and so likewise the other way.
  const goes = amount === 2 ? 'half' : amount === up ? 'to the side' : 'from the side';
  return isClear ? [goes, 'clear'] : [goes];
}

function takeOutsByLifting(address: Address): TakeOut[] {
  const { base } = goalAt(address, OWN);
  const found: TakeOut[] = [];
  const start = cubeWithPair(address, OWN);
  const isStuck = [CORNER, EDGE].some((p) => !isOnTop(start, p));
  for (const onTop of TURNS_ON_TOP) {
    const before = afterTurns(start, onTop);
    for (const face of SIDES) {
      const stands = standingsOf(before, face);
      for (const quarters of [1, 3] as const) {
        const up = turn(face, quarters);
        const lifted = afterTurns(before, [up]);
        const raised = [CORNER, EDGE].filter((p) => !isOnTop(before, p) && isOnTop(lifted, p));
        // No advice lifts what is not stuck while something is.
        if (isStuck && raised.length === 0) continue;
        const others = [CORNER, EDGE].filter((p) => !raised.includes(p));
        const ways = others.map((p) => wayOf(before, lifted, p));
        const side = faceFromTheSide(face, quarters);
        for (const amount of AMOUNTS) {
          const rest = [turn('U', amount), turn(face, back(quarters))];
          const turned = afterTurns(lifted, rest.slice(0, 1));
          const cube = afterTurns(turned, rest.slice(1));
          const after = addressOf(cube, OWN);
          if (!after || !areHome(cube, base)) continue;
          const between = betweensOf(turned, face, quarters, amount);
          found.push({ turns: [...onTop, up, ...rest], address: after, face, side, stands, between, raised, ways });
        }
      }
    }
  }
  return found;
}

/** Rules ask for the same addresses again and again. */
const knownTakeOuts = new Map<number, readonly TakeOut[]>();

export function liftsFrom(address: Address): readonly TakeOut[] {
  const key = addressKey(address);
  const known = knownTakeOuts.get(key) ?? takeOutsByLifting(address);
  knownTakeOuts.set(key, known);
  return known;
}

/** The lists of pieces of which one has to come up in full; none if nothing is stuck. */
function stuckPieces(cube: Cube, piece: LiftedPiece | undefined): readonly (readonly Piece[])[] {
  if (piece) return [{ corner: [CORNER], edge: [EDGE], both: [CORNER, EDGE] }[piece]];
  const inSlots = [CORNER, EDGE].filter((p) => slotOf(cube, p) !== undefined);
  const away = inSlots.filter((p) => slotOf(cube, p) !== OWN);
  return (away.length > 0 ? away : inSlots).map((p) => [p]);
}

/** Whether the lift brings up what the advice says, as its viewer sees colours. */
function raises({ raised, side }: TakeOut, up: Raising, { at, side: seen }: PairSighting): boolean {
  const [piece, ...more] = raised;
  if (piece === undefined || more.length > 0) return false;
  const look = lookOf({ at, side: seen });
  const face = faceFromTheSide(side, QUARTERS_FROM_FRONT_RIGHT[seen]);
  const brought = (piece === CORNER ? look.corner : look.edge).colours.get(face)!;
  if (up === 'cross' || up === 'not cross') return (brought === 'D') === (up === 'cross');
  const [, likeness, name] = /^(like|unlike) (.*)$/.exec(up)!;
  const other = colourNamed(look, name as ColourNamed);
  return other !== undefined && (brought === other) === (likeness === 'like');
}

function byLifting(sighting: PairSighting, advice: PairAdvice, faces: readonly Face[]): Begun[] {
  const { piece, way, stands, between, up } = advice;
  const stuck = stuckPieces(cubeWithPair(sighting.at, OWN), piece);
  return liftsFrom(sighting.at).filter(
    (lift) =>
      faces.includes(lift.face) &&
      (stuck.length === 0 || stuck.some((pieces) => pieces.every((p) => lift.raised.includes(p)))) &&
      (way === undefined || lift.ways.includes(way) || (way === 'together' && lift.ways.length === 0)) &&
      (stands === undefined || lift.stands.includes(stands)) &&
      (between === undefined || lift.between.includes(between)) &&
      (up === undefined || raises(lift, up, sighting)),
  );
}

interface Side extends Begun {
  /** The first side face that turns: the one that lifts. */
  readonly face: Face;
  readonly stands: readonly Standing[];
}

/** Whether one of the lists of pieces is below at first, and each of it on top at some time. */
function comeUp(start: Cube, turns: readonly Turn[], lists: readonly (readonly Piece[])[]): boolean {
  const onTop = new Set<Piece>();
  let cube = start;
  for (const one of turns) {
    cube = afterTurns(cube, [one]);
    for (const p of [CORNER, EDGE]) if (isOnTop(cube, p)) onTop.add(p);
  }
  return lists.some((pieces) => pieces.every((p) => !isOnTop(start, p) && onTop.has(p)));
}

/** With a turn of U before them, or where they begin with one with whatever turn of U it becomes: one that is seen. */
export const afterAnyTop = (turns: readonly Turn[]): readonly (readonly Turn[])[] =>
  isTurnOfTop(turns[0])
    ? TOP_TURNED.map((first) => [...first, ...turns.slice(1)])
    : TURNS_ON_TOP.map((first) => [...first, ...turns]);

/** Where they end with a turn of U, with whatever turn of U it becomes together with what follows: one that is seen. */
const beforeAnyTop = (turns: readonly Turn[]): readonly (readonly Turn[])[] =>
  isTurnOfTop(turns.at(-1)) ? TOP_TURNED.map((last) => [...turns.slice(0, -1), ...last]) : [turns];

/** From those sides from which the turns touch only faces of the stuck piece's slot. */
function sidesOf(address: Address, by: readonly Turn[], piece: LiftedPiece | undefined): Side[] {
  const start = cubeWithPair(address, OWN);
  const { base } = goalAt(address, OWN);
  const lists = stuckPieces(start, piece);
  const slots = lists.flatMap((pieces) => pieces.map((p) => slotOf(start, p)));
  return everySide(by).flatMap((some) => {
    const touched = some.map((t) => t.letter as Face).filter((face) => face !== 'U');
    const isAtStuck = slots.length === 0 || slots.some((slot) => touched.every((face) => slot?.includes(face)));
    if (!isAtStuck || touched[0] === undefined) return [];
    return afterAnyTop(some)
      .flatMap(beforeAnyTop)
      .flatMap((turns): Side[] => {
        if (lists.length > 0 && !comeUp(start, turns, lists)) return [];
        const cube = afterTurns(start, turns);
        const after = addressOf(cube, OWN);
        if (!after || !areHome(cube, base)) return [];
        const face = touched[0]!;
        const untilFace = turns.slice(0, isTurnOfTop(turns[0]) ? 1 : 0);
        return [{ turns, address: after, face, stands: standingsOf(afterTurns(start, untilFace), face) }];
      });
  });
}

/** By the turns of an advice, then by piece and address: each is asked for from four sides and by every table. */
const knownSides = new WeakMap<readonly Turn[], Map<string, readonly Side[]>>();

function byTurns(
  address: Address,
  by: readonly Turn[],
  { piece, stands }: PairAdvice,
  faces: readonly Face[],
): readonly Side[] {
  const known = knownSides.get(by) ?? new Map<string, readonly Side[]>();
  knownSides.set(by, known);
  const key = `${piece} ${addressKey(address)}`;
  const sides = known.get(key) ?? sidesOf(address, by, piece);
  known.set(key, sides);
  return sides.filter((one) => faces.includes(one.face) && (stands === undefined || one.stands.includes(stands)));
}

/** The ways to begin as the advice says, own slot FR, whatever they lead to. */
export function beginnings(sighting: PairSighting, advice: PairAdvice): readonly Begun[] {
  const { at: address, side } = sighting;
  const faces = advice.lift.map((face) => faceFromTheSide(face, -QUARTERS_FROM_FRONT_RIGHT[side]));
  if (advice.by) return byTurns(address, advice.by, advice, faces);
  return advice.lift.length > 0 ? byLifting(sighting, advice, faces) : [{ turns: [], address }];
}
