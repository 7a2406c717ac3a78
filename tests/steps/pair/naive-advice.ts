/**
 * Following advice by brute force on the second checker's stickers: every take-out written out, every insert of three
 * turns tried. Reads what a claim says and shares no code with src/cube but the set-up that brings a sighting about.
 */

import { basePlaces } from '../../../src/audit/pair-claims.ts';
import {
  addressText,
  caseSight,
  cornerOf,
  faceletsOf,
  faceOf,
  familyOf,
  isHome,
  type Place,
  pairSight,
  placeOf,
  type Slot,
} from '../../../src/audit/places.ts';
import { turnsOrFaults } from '../../../src/audit/reprove.ts';
import { afterTurns, type Layer, type Stickers, type Turn } from '../../../src/audit/stickers.ts';

const FACES: readonly Layer[] = ['U', 'D', 'R', 'L', 'F', 'B'];
const QUARTERS = [1, 2, 3] as const;
const turnsOf = (layers: readonly Layer[]): Turn[] =>
  layers.flatMap((layer) => QUARTERS.map((quarters) => ({ layer, quarters })));
const ON_TOP: readonly (readonly Turn[])[] = [[], ...turnsOf(['U']).map((turn) => [turn])];

const ALL_SLOTS: readonly Slot[] = ['FR', 'FL', 'BL', 'BR'];
const inverse = (turns: readonly Turn[]): Turn[] =>
  turns.map(({ layer, quarters }) => ({ layer, quarters: (4 - quarters) as 1 | 2 | 3 })).reverse();

/** The colour, named by the face it belongs on, of the sticker of a piece's home that lies on each face now. */
export function coloursOf(state: Stickers, home: Place): Map<string, string> {
  return new Map(faceletsOf(home).map((facelet) => [faceOf(state[facelet]!), faceOf(facelet)]));
}

const areSideBySide = (state: Stickers, slot: Slot): boolean =>
  [...placeOf(state, slot)].every((face) => placeOf(state, cornerOf(slot)).includes(face));
/** Every face that both pieces have a sticker on shows one colour twice. */
function areMatching(state: Stickers, slot: Slot): boolean {
  const [corner, edge] = [coloursOf(state, cornerOf(slot)), coloursOf(state, slot)];
  return [...edge].every(([face, colour]) => corner.get(face) === colour);
}

interface Insert {
  readonly turns: readonly Turn[];
  readonly kind: 'joined' | 'split';
}

/** By address text: all words of three turns, and of a turn of U and three, that solve it with everything else kept. */
function allInserts(): Map<string, Insert[]> {
  const found = new Map<string, Insert[]>();
  const whole = [...basePlaces(['FL', 'BL', 'BR'])];
  const any = turnsOf(FACES);
  for (const a of any) {
    for (const b of any) {
      for (const c of any) {
        if (a.layer === b.layer || b.layer === c.layer) continue;
        for (const onTop of a.layer === 'U' ? [] : ON_TOP) {
          const turns = [...onTop, a, b, c];
          const state = afterTurns(inverse(turns));
          if (!whole.every((place) => isHome(state, place))) continue;
          const sight = pairSight(state, 'FR');
          if (!sight.corner.place.startsWith('U') || !sight.edge.place.startsWith('U')) continue;
          const kind = areSideBySide(state, 'FR') && areMatching(state, 'FR') ? 'joined' : 'split';
          const text = addressText(sight);
          found.set(text, [...(found.get(text) ?? []), { turns, kind }]);
        }
      }
    }
  }
  return found;
}

export const INSERTS = allInserts();

/** The face as the one calls it who sees the own slot of an address at `seen`. */
const ROUND = 'FLBR';
const QUARTERS_TO: Readonly<Record<Slot, number>> = { FR: 0, FL: 1, BL: 2, BR: 3 };
const seenAt = (layer: Layer, seen: Slot): Layer =>
  ROUND.includes(layer) ? (ROUND[(ROUND.indexOf(layer) + QUARTERS_TO[seen]) % 4] as Layer) : layer;

type SideFace = 'R' | 'L' | 'F' | 'B';
type Piece = 'corner' | 'edge';

/** What a rule's claim says to do. */
export interface NaiveAdvice {
  readonly aim: string;
  readonly lift: readonly SideFace[];
  readonly piece?: Piece | 'both';
  readonly how?: 'hidden' | 'direct' | 'together';
  readonly up?: string;
  readonly stands?: string;
  readonly between?: string;
  readonly by?: string;
  readonly most: number;
}

/** One way to do what the advice says, whatever comes of it. */
export interface NaiveWay {
  readonly turns: readonly Turn[];
  /** All turns of the shortest way on to the solved pair over what is aimed at; undefined if it is not aimed at. */
  readonly length: number | undefined;
  /** The same where turns of one face that meet are one. */
  readonly printed: number | undefined;
  /** The address that it leaves. */
  readonly after: string;
}

function wayOf(before: Place, after: Place): NaiveAdvice['how'] {
  if (before === after) return 'direct';
  return after.startsWith('U') ? 'together' : 'hidden';
}

const MIRRORED: Readonly<Record<string, Layer>> = { R: 'L', L: 'R' };
/** From all four sides, and the same in a mirror. */
const fromEverySide = (turns: readonly Turn[]): Turn[][] =>
  [
    turns,
    turns.map(({ layer, quarters }) => ({ layer: MIRRORED[layer] ?? layer, quarters: (4 - quarters) as 1 })),
  ].flatMap((some) =>
    ALL_SLOTS.map((side) => some.map(({ layer, quarters }) => ({ layer: seenAt(layer, side), quarters }))),
  );

const isU = (turn: Turn | undefined): boolean => turn?.layer === 'U';
/** Turns of U that meet at either end are one, of whatever amount: one that is there. */
const inPrint = (turns: readonly Turn[]): Turn[][] => {
  const begun = isU(turns[0])
    ? turnsOf(['U']).map((first) => [first, ...turns.slice(1)])
    : ON_TOP.map((first) => [...first, ...turns]);
  return begun.flatMap((some) =>
    isU(some.at(-1)) ? turnsOf(['U']).map((last) => [...some.slice(0, -1), last]) : [some],
  );
};

/** What is asked of the pair where it lies. */
interface Scene {
  readonly state: Stickers;
  readonly seen: Slot;
  readonly homes: Readonly<Record<Piece, Place>>;
  /** Slots that stay whole: without a piece of the pair in them at first. */
  readonly kept: readonly Slot[];
  /** The pieces of which all those of one list have to come up; none: nothing is stuck. */
  readonly stuck: readonly (readonly Place[])[];
}

const slotAt = (place: Place): Slot | undefined => ALL_SLOTS.find((s) => place === s || place === cornerOf(s));
const isUp = (state: Stickers, home: Place): boolean => placeOf(state, home).startsWith('U');

function sceneOf(state: Stickers, seen: Slot, piece: NaiveAdvice['piece']): Scene {
  const homes = { corner: cornerOf(seen), edge: seen } as const;
  const all = Object.values(homes);
  const below = all.filter((p) => !isUp(state, p));
  const away = below.filter((p) => slotAt(placeOf(state, p)) !== seen);
  const stuck = piece ? [piece === 'both' ? all : [homes[piece]]] : (away.length > 0 ? away : below).map((p) => [p]);
  return { state, seen, homes, kept: keptBeside(state, seen), stuck };
}

const next = (layer: string, quarters: number): string => ROUND[(ROUND.indexOf(layer) + quarters) % 4]!;
const otherOf = (slot: string, face: string): string => slot.replace(face, '');

/** How the piece on top stands to the slot of the one below, before this face turns; nothing unless one is on top. */
function standings(state: Stickers, { corner, edge }: Scene['homes'], face: string): string[] {
  if (isUp(state, corner) === isUp(state, edge)) return [];
  const [top, below] = isUp(state, corner) ? [corner, edge] : [edge, corner];
  const slot = slotAt(placeOf(state, below))!;
  const side = otherOf(slot, face);
  const place = placeOf(state, top).slice(1);
  if (top === edge) {
    const named = {
      [face]: 'in the face',
      [side]: 'at the side',
      [next(face, 2)]: 'across',
      [next(side, 2)]: 'across the side',
    };
    return [named[place]!];
  }
  const looks = [...coloursOf(state, corner)].find(([, colour]) => colour === 'D')![0];
  const touches = `${place.includes(face) ? 'F' : ''}${place.includes(side) ? 'S' : ''}`;
  const where = { FS: 'over the slot', F: 'in the face', S: 'at the side', '': 'across' }[touches]!;
  return looks === side || looks === next(side, 2) ? [where, 'cross along'] : [where];
}

/** A lift with all that can be said of it. */
interface Lift {
  readonly turns: readonly Turn[];
  readonly face: SideFace;
  readonly raised: readonly Place[];
  readonly ways: readonly NaiveAdvice['how'][];
  readonly stands: readonly string[];
  readonly between: readonly string[];
  /** The colour that the face brings up, of the one piece that it raises. */
  readonly brings: string | undefined;
}

/** The slot of this face that its quarter turn brings up. */
const slotRaised = (up: Turn): Slot =>
  ALL_SLOTS.find((slot) => slot.includes(up.layer) && isUp(afterTurns([up]), cornerOf(slot)))!;

function betweens(turned: Stickers, { corner, edge }: Scene['homes'], up: Turn, { quarters }: Turn): string[] {
  const came = next(up.layer, quarters);
  const goes = came === otherOf(slotRaised(up), up.layer) ? 'to the side' : quarters === 2 ? 'half' : 'from the side';
  const isClear = [corner, edge].every((p) => !isUp(turned, p) || !placeOf(turned, p).includes(up.layer));
  return isClear ? [goes, 'clear'] : [goes];
}

const knownLifts = new WeakMap<Stickers, readonly Lift[]>();

function allLifts({ state, homes }: Scene): readonly Lift[] {
  const pieces = Object.values(homes);
  const known =
    knownLifts.get(state) ??
    ON_TOP.flatMap((onTop) =>
      turnsOf(['R', 'L', 'F', 'B']).flatMap((up): Lift[] => {
        if (up.quarters === 2) return [];
        const before = afterTurns(onTop, state);
        const lifted = afterTurns([up], before);
        const raised = pieces.filter((p) => isUp(lifted, p) && !isUp(before, p));
        const ways = pieces
          .filter((p) => !raised.includes(p))
          .map((p) => wayOf(placeOf(before, p), placeOf(lifted, p)));
        const stands = standings(before, homes, up.layer);
        const side = otherOf(slotRaised(up), up.layer);
        const brings = raised.length === 1 ? coloursOf(before, raised[0]!).get(side) : undefined;
        return turnsOf(['U']).map((between) => ({
          turns: [...onTop, up, between, ...inverse([up])],
          face: up.layer as SideFace,
          raised,
          ways,
          stands,
          between: betweens(afterTurns([between], lifted), homes, up, between),
          brings,
        }));
      }),
    );
  knownLifts.set(state, known);
  return known;
}

/** A colour of a piece as it lies at first: `corner top`, `edge front`. */
function colourOf(state: Stickers, homes: Scene['homes'], name: string): string | undefined {
  const [piece, which] = name.split(' ') as [Piece, string];
  const colours = [...coloursOf(state, homes[piece])];
  const towards = (faces: string) => colours.find(([face]) => faces.includes(face))?.[1];
  if (which === 'top') return towards('U');
  if (which !== 'sideways') return towards(which === 'front' ? 'FB' : 'LR');
  const sideways = colours.filter(([face]) => ROUND.includes(face)).map(([, colour]) => colour);
  return sideways.includes('D') ? sideways.find((colour) => colour !== 'D') : undefined;
}

function isBrought({ brings }: Lift, up: string, { state, homes }: Scene): boolean {
  if (brings === undefined) return false;
  if (up === 'cross' || up === 'not cross') return (brings === 'D') === (up === 'cross');
  const [likeness, ...name] = up.split(' ');
  const other = colourOf(state, homes, name.join(' '));
  return other !== undefined && (brings === other) === (likeness === 'like');
}

function lifts(scene: Scene, { lift, how, up, stands, between }: NaiveAdvice): (readonly Turn[])[] {
  const { stuck } = scene;
  return allLifts(scene)
    .filter(
      (one) =>
        lift.includes(one.face) &&
        (stuck.length === 0 || stuck.some((list) => list.every((p) => one.raised.includes(p)))) &&
        (!how || one.ways.includes(how) || (how === 'together' && one.ways.length === 0)) &&
        (!stands || one.stands.includes(stands)) &&
        (!between || one.between.includes(between)) &&
        (!up || isBrought(one, up, scene)),
    )
    .map(({ turns }) => turns);
}

function runs({ state, homes, stuck }: Scene, { lift, stands, by = '' }: NaiveAdvice): Turn[][] {
  const slots = stuck.flat().map((p) => slotAt(placeOf(state, p)));
  return fromEverySide(read(by)).flatMap((some) => {
    const layers = some.filter((turn) => !isU(turn)).map(({ layer }) => layer);
    if (!lift.includes(layers[0] as SideFace)) return [];
    if (slots.length > 0 && !slots.some((slot) => layers.every((layer) => slot?.includes(layer)))) return [];
    return inPrint(some).filter((turns) => {
      const before = afterTurns(
        turns.slice(
          0,
          turns.findIndex((turn) => !isU(turn)),
        ),
        state,
      );
      if (stands && !standings(before, homes, layers[0]!).includes(stands)) return false;
      const onTheWay = turns.map((_, i) => afterTurns(turns.slice(0, i + 1), state));
      const hasComeUp = (p: Place): boolean => !isUp(state, p) && onTheWay.some((one) => isUp(one, p));
      return stuck.length === 0 || stuck.some((list) => list.every(hasComeUp));
    });
  });
}

const read = (text: string): readonly Turn[] => turnsOrFaults('turns', text).turns;

/** The ways on that the aim knows, seen as they are done; undefined where it is not reached. */
function waysOn(state: Stickers, { seen, homes, kept }: Scene, aim: string): readonly (readonly Turn[])[] | undefined {
  const sight = pairSight(state, seen);
  if (aim === 'joined' || aim === 'split') {
    const inserts = (INSERTS.get(addressText(sight)) ?? []).filter(({ kind }) => kind === aim);
    const turned = inserts.map(({ turns }) =>
      turns.map(({ layer, quarters }) => ({ layer: seenAt(layer, seen), quarters })),
    );
    return turned.length > 0 ? turned : undefined;
  }
  const [, insert] = /^insert (.*)$/.exec(aim) ?? [];
  if (insert === undefined) return [familyOf(sight), addressText(caseSight(sight))].includes(aim) ? [[]] : undefined;
  const done = fromEverySide(read(insert))
    .flatMap((some) =>
      isU(some[0]) ? turnsOf(['U']).map((top) => [top, ...some.slice(1)]) : ON_TOP.map((top) => [...top, ...some]),
    )
    .filter((turns) => {
      const end = afterTurns(turns, state);
      return [...basePlaces(kept), ...Object.values(homes)].every((place) => isHome(end, place));
    });
  return done.length > 0 ? done : undefined;
}

const keptBeside = (state: Stickers, seen: Slot): Slot[] =>
  ALL_SLOTS.filter((s) => s !== seen && ![cornerOf(seen), seen].some((p) => slotAt(placeOf(state, p)) === s));

function merged(turns: readonly Turn[]): Turn[] {
  const done: Turn[] = [];
  for (const turn of turns) {
    const before = done.at(-1)?.layer === turn.layer ? done.pop()!.quarters : 0;
    const quarters = (before + turn.quarters) % 4;
    if (quarters !== 0) done.push({ layer: turn.layer, quarters: quarters as 1 | 2 | 3 });
  }
  return done;
}

/**
 * Every way to do what the advice says, and how long it is to the end: of aims that leave the way on to the student so far
 * as they go. Two turns of one face in a row are never printed.
 */
export function naiveWays(advice: NaiveAdvice, state: Stickers, seen: Slot): NaiveWay[] {
  const scene = sceneOf(state, seen, advice.piece);
  const { kept } = scene;
  const takeOuts = advice.by ? runs(scene, advice) : advice.lift.length > 0 ? lifts(scene, advice) : [[]];
  return takeOuts.flatMap((turns) => {
    const after = afterTurns(turns, state);
    if (!basePlaces(kept).every((place) => isHome(after, place))) return [];
    const rests = waysOn(after, scene, advice.aim) ?? [];
    const apart = rests.filter((rest) => turns.length === 0 || rest[0]?.layer !== turns.at(-1)!.layer);
    const least = (lengths: readonly number[]) => (lengths.length > 0 ? Math.min(...lengths) : undefined);
    const length = least(apart.map((rest) => turns.length + rest.length));
    return [
      {
        turns,
        length,
        after: addressText(pairSight(after, seen)),
        printed: least(rests.map((rest) => merged([...turns, ...rest]).length)),
      },
    ];
  });
}

/** Of a shortest way to follow the advice from a state; undefined if there is none within what it allows. */
export function naiveLengths(
  state: Stickers,
  seen: Slot,
  advice: NaiveAdvice,
): { readonly length: number; readonly printed: number } | undefined {
  const ways = naiveWays(advice, state, seen);
  const length = Math.min(...ways.flatMap((way) => way.length ?? []));
  return length <= advice.most ? { length, printed: Math.min(...ways.flatMap((way) => way.printed ?? [])) } : undefined;
}
