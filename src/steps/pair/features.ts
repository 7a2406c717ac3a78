/**
 * Features: what a viewer sees of a case, in the words that rules are written in. The list is closed: a rule can ask
 * for nothing else. Each feature has one of its values, or none where it has no meaning (the top colour of a corner that
 * is not on top).
 *
 * Front, back, left and right are the viewer's; so are the faces R, L, F and B. A piece on top or in a slot stands in a
 * column: front right, front left, back left, back right; an edge on top stands between two of them.
 */
import type { Face } from '../../cube/faces.ts';
import {
  CORNER_AFTER,
  CORNERS,
  cornerOf,
  cornerSpot,
  faceOfCornerSpot,
  faceTurn,
  type Place,
} from '../../cube/spots.ts';
import type { Feature } from '../../rules/world.ts';
import { type Look, lookOf, type PairSighting, type SeenColour } from './sighting.ts';
import { type Slot, slotOfPlace } from './slots.ts';

/** With how it is read from what the viewer sees. */
interface PairFeature extends Feature {
  readonly of: (look: Look) => string | undefined;
}

const isOnTop = (place: Place): boolean => place.startsWith('U');

/** Eighths of a turn, clockwise from above: UFR 0, UF 1, UFL 2 and so on; a slot has the angle of its column. */
const ANGLES: readonly string[] = ['FR', 'F', 'FL', 'L', 'BL', 'B', 'BR', 'R'];
const angleOf = (place: Place): number => ANGLES.indexOf(place.replace(/[UD]/, ''));
const apart = (a: number, b: number): number => Math.min((a - b + 8) % 8, (b - a + 8) % 8);

const COLUMN: Readonly<Record<string, string>> = {
  FR: 'front right',
  FL: 'front left',
  BL: 'back left',
  BR: 'back right',
  F: 'front',
  B: 'back',
  L: 'left',
  R: 'right',
};
const COLUMNS = ['front right', 'front left', 'back left', 'back right'] as const;
const WHEREABOUTS = ['home', 'top', 'away'] as const;
const NEARNESS = ['same', 'next', 'across'] as const;

const columnOf = (place: Place): string => COLUMN[place.replace(/[UD]/, '')]!;
const depthOf = (place: Place): string => (place.includes('F') ? 'front' : place.includes('B') ? 'behind' : 'middle');
const sideOf = (place: Place): string => (place.includes('L') ? 'left' : place.includes('R') ? 'right' : 'middle');
const whereaboutsOf = (place: Place, own: Slot): string => {
  const slot = slotOfPlace(place);
  return slot === undefined ? 'top' : slot === own ? 'home' : 'away';
};
/** An edge on top between two columns is next to both of them, and across from the other two. */
const nearnessOf = (a: number, b: number): string =>
  apart(a, b) === 0 ? 'same' : apart(a, b) <= 2 ? 'next' : 'across';

const CROSS: Face = 'D';
const facesTowards = (colours: ReadonlyMap<Face, Face>, faces: string): Face | undefined =>
  [...colours].find(([face]) => faces.includes(face))?.[1];
const faceOfCross = (corner: Look['corner']): Face => [...corner.colours].find(([, c]) => c === CROSS)![0];

const TOWARDS: Readonly<Record<Face, string>> = {
  U: 'up',
  D: 'down',
  F: 'front',
  B: 'back',
  L: 'left',
  R: 'right',
};

/** The colours of each piece that a coach has a name for; none while the piece has no such sticker. */
const CORNER_COLOURS = {
  top: ({ corner }: Look) => corner.colours.get('U'),
  front: ({ corner }: Look) => facesTowards(corner.colours, 'FB'),
  side: ({ corner }: Look) => facesTowards(corner.colours, 'LR'),
  /** Of the two stickers that look sideways the one without the cross colour, where the other one has it. */
  sideways: ({ corner }: Look) => {
    const sideways = [...corner.colours].filter(([face]) => 'FBLR'.includes(face)).map(([, colour]) => colour);
    return sideways.includes(CROSS) ? sideways.find((colour) => colour !== CROSS) : undefined;
  },
} as const;
const EDGE_COLOURS = {
  top: ({ edge }: Look) => edge.colours.get('U'),
  front: ({ edge }: Look) => facesTowards(edge.colours, 'FB'),
  side: ({ edge }: Look) => facesTowards(edge.colours, 'LR'),
} as const;
type CornerColour = keyof typeof CORNER_COLOURS;
type EdgeColour = keyof typeof EDGE_COLOURS;

/** One of those colours, as rules name it. */
export type ColourNamed = `corner ${CornerColour}` | `edge ${EdgeColour}`;
const COLOURS_OF: Readonly<Record<ColourNamed, (look: Look) => SeenColour | undefined>> = {
  'corner top': CORNER_COLOURS.top,
  'corner front': CORNER_COLOURS.front,
  'corner side': CORNER_COLOURS.side,
  'corner sideways': CORNER_COLOURS.sideways,
  'edge top': EDGE_COLOURS.top,
  'edge front': EDGE_COLOURS.front,
  'edge side': EDGE_COLOURS.side,
};
export const COLOURS_NAMED = Object.keys(COLOURS_OF) as ColourNamed[];
/** Undefined while the piece has no such sticker. */
export const colourNamed = (look: Look, name: ColourNamed): SeenColour | undefined => COLOURS_OF[name](look);

const ABOUT_CORNER: Readonly<Record<CornerColour, string>> = {
  top: "the corner's top colour",
  front: "the corner's colour in front (or behind)",
  side: "the corner's colour at its left or right side",
  sideways: "the corner's sideways colour that is not the cross colour",
};
const ABOUT_EDGE: Readonly<Record<EdgeColour, string>> = {
  top: "the edge's top colour",
  front: "the edge's colour in front (or behind)",
  side: "the edge's colour at its left or right side",
};

type Likeness = `edge ${EdgeColour} and corner ${CornerColour}`;

const likeness = (edgeColour: EdgeColour, cornerColour: CornerColour): PairFeature => ({
  atAGlance: true,
  values: ['like', 'unlike'],
  about: `Is ${ABOUT_EDGE[edgeColour]} the same as ${ABOUT_CORNER[cornerColour]}? The cross colour is unlike any of the edge's.`,
  of: (look) => {
    const [one, two] = [EDGE_COLOURS[edgeColour](look), CORNER_COLOURS[cornerColour](look)];
    return one === undefined || two === undefined ? undefined : one === two ? 'like' : 'unlike';
  },
});

const LIKENESSES = Object.fromEntries(
  (Object.keys(EDGE_COLOURS) as EdgeColour[]).flatMap((e) =>
    (Object.keys(CORNER_COLOURS) as CornerColour[]).map((c) => [`edge ${e} and corner ${c}`, likeness(e, c)]),
  ),
) as Record<Likeness, PairFeature>;

/**
 * The edge is good if turns of U, D, R, L and half turns of F and B can place it: in a slot, when each sticker is on its
 * own or the opposite centre's face; on top, when a colour of the front or back centre is up.
 */
function isGoodEdge({ edge }: Look): boolean {
  return [...edge.colours].every(([face, colour]) => {
    if (face === 'U') return 'FB'.includes(colour);
    // The other sticker of an edge on top has what the first one leaves.
    if (isOnTop(edge.place)) return 'LR'.includes(colour);
    return 'FB'.includes(face) === 'FB'.includes(colour);
  });
}

const TURNS_OF_U = ['none', 'U', 'U2', "U'"] as const;
const turnsBetween = (from: number, to: number): string => TURNS_OF_U[((to - from + 8) % 8) / 2]!;

/** On top over the edge of a slot, or in the slot with it. */
function overTheEdge({ corner, edge }: Look): string | undefined {
  const slot = slotOfPlace(edge.place);
  if (slot === undefined) return undefined;
  const angle = angleOf(edge.place);
  if (!isOnTop(corner.place) && angleOf(corner.place) !== angle) return undefined;
  const quarters = (angle - angleOf(corner.place) + 8) / 2;
  const matches = [...corner.colours]
    .filter(([face, colour]) => 'FLBR'.includes(face) && colour !== CROSS)
    .every(([face, colour]) => edge.colours.get(turnedByU(face, quarters)) === colour);
  return matches ? 'match' : 'no match';
}

const turnedByU = (face: Face, quarters: number): Face => {
  const at = 'FLBR'.indexOf(face);
  return at < 0 ? face : ('FLBR'[(at + quarters) % 4] as Face);
};

/** The quarter turn of a face that brings what is in a slot up; 1 clockwise, 3 counter-clockwise. */
function raising(face: Face, slot: Slot): 1 | 3 {
  const spot = cornerSpot(`D${slot}`, 'D');
  return isOnTop(cornerOf(CORNER_AFTER[24 * faceTurn(face, 1) + spot]!)) ? 1 : 3;
}

/** Which colour is down when the corner is where this face, lifting the edge, takes it out of the way. */
function downWhenHidden({ corner, edge }: Look, faces: 'RL' | 'FB'): string | undefined {
  const slot = slotOfPlace(edge.place);
  if (slot === undefined || !isOnTop(corner.place)) return undefined;
  const face = [...slot].find((f) => faces.includes(f)) as Face;
  const turn = faceTurn(face, raising(face, slot));
  for (const hiding of CORNERS.filter((place) => isOnTop(place) && place.includes(face))) {
    const quarters = (angleOf(hiding) - angleOf(corner.place) + 8) / 2;
    const after = CORNER_AFTER[24 * turn + cornerSpot(hiding, turnedByU(faceOfCross(corner), quarters))]!;
    if (isOnTop(cornerOf(after))) continue;
    return faceOfCornerSpot(after) === 'D' ? 'cross colour' : 'another colour';
  }
  return undefined;
}

const whereIs = (piece: 'corner' | 'edge'): PairFeature => ({
  atAGlance: true,
  values: WHEREABOUTS,
  about: `Where is the ${piece}: home in its own slot, on top, or away in a foreign slot?`,
  of: (look) => whereaboutsOf(look[piece].place, look.own),
});
const column = (piece: 'corner' | 'edge'): PairFeature => ({
  atAGlance: true,
  values: piece === 'corner' ? COLUMNS : [...COLUMNS, 'front', 'back', 'left', 'right'],
  about:
    piece === 'corner' ? 'In or over which slot is the corner?' : 'In which slot is the edge? On top: at which side?',
  of: (look) => columnOf(look[piece].place),
});
const depth = (piece: 'corner' | 'edge'): PairFeature => ({
  atAGlance: true,
  values: piece === 'corner' ? ['front', 'behind'] : ['front', 'behind', 'middle'],
  about: `Is the ${piece} in front or behind?${piece === 'edge' ? ' On top at the left or right: in the middle.' : ''}`,
  of: (look) => depthOf(look[piece].place),
});
const side = (piece: 'corner' | 'edge'): PairFeature => ({
  atAGlance: true,
  values: piece === 'corner' ? ['left', 'right'] : ['left', 'right', 'middle'],
  about: `Is the ${piece} at the left or right?${piece === 'edge' ? ' On top in front or behind: in the middle.' : ''}`,
  of: (look) => sideOf(look[piece].place),
});
const EDGE_ON_TOP = 'An edge on top is next to the two columns that it stands between.';
const fromOwnSlot = (piece: 'corner' | 'edge'): PairFeature => ({
  atAGlance: true,
  values: NEARNESS,
  about:
    `How far is the ${piece} from the pair's own slot: the same column, next to it, or across?` +
    (piece === 'edge' ? ` ${EDGE_ON_TOP}` : ''),
  of: (look) => nearnessOf(angleOf(look[piece].place), angleOf(look.own)),
});
const hidden = (faces: 'RL' | 'FB'): PairFeature => ({
  atAGlance: false,
  values: ['cross colour', 'another colour'],
  about: `Edge in a slot, corner on top: what faces down when ${[...faces].join(' or ')}, lifting the edge, moves the corner aside?`,
  of: (look) => downWhenHidden(look, faces),
});

/** Every feature, its values, and what it asks. Their names are the words of rules in lesson files. */
export const FEATURES = {
  'corner at': whereIs('corner'),
  'edge at': whereIs('edge'),
  'corner column': column('corner'),
  'edge column': column('edge'),
  'corner depth': depth('corner'),
  'edge depth': depth('edge'),
  'corner side': side('corner'),
  'edge side': side('edge'),
  'corner from own slot': fromOwnSlot('corner'),
  'edge from own slot': fromOwnSlot('edge'),
  'edge from corner': {
    atAGlance: true,
    values: NEARNESS,
    about: `How far is the edge from the corner: the same column, next to it, or across? ${EDGE_ON_TOP}`,
    of: ({ corner, edge }) => nearnessOf(angleOf(edge.place), angleOf(corner.place)),
  },
  'U between': {
    atAGlance: false,
    values: TURNS_OF_U,
    about:
      "One piece on top, one in a slot: which turn of U brings the corner over the edge's slot, or the edge over the front " +
      "or back of the corner's slot?",
    of: ({ corner, edge }) => {
      if (isOnTop(corner.place) === isOnTop(edge.place)) return undefined;
      const [c, e] = [angleOf(corner.place), angleOf(edge.place)];
      return isOnTop(corner.place) ? turnsBetween(c, e) : turnsBetween(e, corner.place.includes('F') ? 1 : 5);
    },
  },
  'edge round the top': {
    atAGlance: false,
    values: ['right', 'far right', 'far left', 'left'],
    about:
      'Both on top: going round the top from the corner, where is the edge? Right and left as seen from the middle of the ' +
      'cube: right is clockwise from above.',
    of: ({ corner, edge }) => {
      if (!isOnTop(corner.place) || !isOnTop(edge.place)) return undefined;
      const eighths = (angleOf(edge.place) - angleOf(corner.place) + 8) % 8;
      return ['right', 'far right', 'far left', 'left'][(eighths - 1) / 2];
    },
  },
  'cross colour': {
    atAGlance: true,
    values: ['up', 'down', 'front', 'back', 'left', 'right'],
    groups: { sideways: ['front', 'back', 'left', 'right'] },
    about: "Where does the corner's cross colour face? sideways: anywhere but up and down.",
    of: (look) => TOWARDS[faceOfCross(look.corner)],
  },
  edge: {
    atAGlance: true,
    values: ['good', 'bad'],
    about:
      'Can turns of U, D, R, L and half turns of F and B place the edge? A quarter turn of the cube changes it on top.',
    of: (look) => (isGoodEdge(look) ? 'good' : 'bad'),
  },
  'corner over edge': {
    atAGlance: false,
    values: ['match', 'no match'],
    about: 'Do the sides of the two match when the corner is brought over the edge? The cross colour is not compared.',
    of: overTheEdge,
  },
  'down when hidden by R or L': hidden('RL'),
  'down when hidden by F or B': hidden('FB'),
  ...LIKENESSES,
} as const satisfies Record<string, PairFeature>;

/** Whether it takes comparing two pieces' colours to see it. */
export const isComparison = (name: string): boolean => name in LIKENESSES || name === 'corner over edge';

export type FeatureName = keyof typeof FEATURES;
export const FEATURE_NAMES = Object.keys(FEATURES) as FeatureName[];

const MIRRORED: Readonly<Record<string, string>> = {
  left: 'right',
  right: 'left',
  'far left': 'far right',
  'far right': 'far left',
  'front left': 'front right',
  'front right': 'front left',
  'back left': 'back right',
  'back right': 'back left',
};
const TURNED_BACK: Readonly<Record<string, string>> = { U: "U'", "U'": 'U' };

/** The value that is seen in a mirror at the left or right where this one is seen. */
export const mirroredValue = (feature: string, value: string): string =>
  (feature === 'U between' ? TURNED_BACK : MIRRORED)[value] ?? value;

const featureOf = (look: Look, name: FeatureName): string | undefined => FEATURES[name].of(look);

/** All features of a sighting that have a meaning for it. */
export function featuresOf(sighting: PairSighting): Partial<Record<FeatureName, string>> {
  const look = lookOf(sighting);
  const known = FEATURE_NAMES.map((name) => [name, featureOf(look, name)] as const);
  return Object.fromEntries(known.filter(([, value]) => value !== undefined));
}

/**
 * The first question of a lesson: is the corner's top colour like the edge's, which is its top colour on top, and that in
 * front or behind in a slot? Undefined where the corner is not on top, or has the cross colour up.
 */
export function topsLike(sighting: PairSighting): string | undefined {
  const look = lookOf(sighting);
  if (featureOf(look, 'cross colour') === 'up') return undefined;
  return featureOf(
    look,
    featureOf(look, 'edge at') === 'top' ? 'edge top and corner top' : 'edge front and corner top',
  );
}

export const isGoodEdgeAt = (sighting: PairSighting): boolean => isGoodEdge(lookOf(sighting));
