/** English of rules of thumb for pairs: questions, answers, statements, advice. */
import { listed } from '../../words/english-phrases.ts';
import type { FeatureWords } from '../../words/said.ts';
import type { Whereabouts } from './address.ts';
import type { Between, LiftedPiece, Raising, Standing, Way } from './advice.ts';
import type { FeatureName } from './features.ts';

const SHORTLY = { home: 'at home', top: 'on top', away: 'away' };
const AT = { home: 'in its own slot', top: 'on top', away: 'in a foreign slot' };
const COLUMNS = {
  'front right': 'front right',
  'front left': 'front left',
  'back left': 'back left',
  'back right': 'back right',
};
const SIDES = {
  front: 'on top in front',
  back: 'on top at the back',
  left: 'on top at the left',
  right: 'on top at the right',
};
const DEPTH = { front: 'in front', behind: 'behind', middle: 'neither in front nor behind' };
const SIDE = { left: 'at the left', right: 'at the right', middle: 'neither left nor right' };

type Piece = 'corner' | 'edge';
const at = (piece: Piece): FeatureWords => ({
  ask: `Where is the ${piece}?`,
  answers: AT,
  says: (answer) => `the ${piece} is ${answer}`,
});
const column = (piece: Piece): FeatureWords => ({
  ask:
    piece === 'corner'
      ? 'Which slot is the corner in or over?'
      : 'Which slot is the edge in? If it is on top: at which side?',
  answers: { ...COLUMNS, ...(piece === 'edge' && SIDES) },
  says: (answer) => `the ${piece} is ${answer}`,
});
const depth = (piece: Piece): FeatureWords => ({
  ask: `Is the ${piece} in front or behind?`,
  answers: DEPTH,
  says: (answer) => `the ${piece} is ${answer}`,
});
const side = (piece: Piece): FeatureWords => ({
  ask: `Is the ${piece} at the left or right?`,
  answers: SIDE,
  says: (answer) => `the ${piece} is ${answer}`,
});
const fromOwnSlot = (piece: Piece): FeatureWords => ({
  ask: `How far is the ${piece} from the pair’s own slot?`,
  answers: { same: 'in or over it', next: 'next to it', across: 'across from it' },
  says: (answer) => `the ${piece} is ${answer.replaceAll(/\bit\b/g, "the pair's own slot")}`,
});
const hidden = (faces: string): FeatureWords => ({
  ask: `Let ${faces} take the corner down while it lifts the edge. Which colour of the corner faces down then?`,
  answers: { 'cross colour': '{cross}', 'another colour': 'another colour' },
  says: (answer) => `${answer} faces down once ${faces} has taken the corner down`,
});

const EDGE_COLOURS = {
  top: 'the edge’s top colour',
  front: 'the edge’s front or back colour',
  side: 'the edge’s left or right colour',
} as const;
const CORNER_COLOURS = {
  top: 'the corner’s top colour',
  front: 'the corner’s front or back colour',
  side: 'the corner’s left or right colour',
  sideways: 'the corner’s colour beside {cross}',
} as const;
type Likeness = Extract<FeatureName, `${string} and ${string}`>;
const LIKENESSES = Object.fromEntries(
  Object.entries(EDGE_COLOURS).flatMap(([e, edge]) =>
    Object.entries(CORNER_COLOURS).map(([c, corner]): [string, FeatureWords] => [
      `edge ${e} and corner ${c}`,
      {
        ask: `Compare ${edge} with ${corner}.`,
        ...(c === 'sideways' && { means: '{Cross} looks to the side, and the colour beside it does too.' }),
        answers: { like: 'like', unlike: 'unlike' },
        says: (answer) => `${edge} is ${answer} ${corner}`,
      },
    ]),
  ),
) as Readonly<Record<Likeness, FeatureWords>>;

/** The piece that comes up, where a rule or the families tell which. */
export type Lifted = LiftedPiece | 'piece';

const NAMES: Readonly<Record<Lifted, string>> = { corner: 'the corner', edge: 'the edge', both: 'both', piece: 'it' };
const OTHER: Readonly<Record<Lifted, string>> = {
  corner: 'the edge',
  edge: 'the corner',
  both: 'nothing',
  piece: 'the other piece',
};

const HOW: Readonly<Record<Way, (other: string) => string>> = {
  hidden: (other) => `the face takes ${other} down`,
  direct: (other) => `${other} is clear of the face`,
  together: (other) => `${other} moves along with it`,
};
/** Where the other piece is to be turned; of the cross colour it is told how it looks. */
const STANDS: Readonly<Record<Exclude<Standing, 'cross along'>, (face: string, across: string) => string>> = {
  'over the slot': () => 'over the old slot',
  'in the face': (face) => `beside the old slot, into ${face}`,
  'at the side': (face) => `beside the old slot, not into ${face}`,
  across: (_, across) => `across from ${across}`,
  'across the side': () => 'across from the other side of the old slot',
};

/** What the face does that is to be taken. */
function raising(up: Raising): string {
  if (up === 'cross') return 'brings {cross} up';
  if (up === 'not cross') return 'does not bring {cross} up';
  const [, likeness, piece, which] = /^(like|unlike) (corner|edge) (.*)$/.exec(up)!;
  const colours: Readonly<Record<string, string>> = piece === 'corner' ? CORNER_COLOURS : EDGE_COLOURS;
  return `brings up a colour ${likeness} ${colours[which!]!}`;
}

const features: Readonly<Record<FeatureName, FeatureWords>> = {
  'corner at': at('corner'),
  'edge at': at('edge'),
  'corner column': column('corner'),
  'edge column': column('edge'),
  'corner depth': depth('corner'),
  'edge depth': depth('edge'),
  'corner side': side('corner'),
  'edge side': side('edge'),
  'corner from own slot': fromOwnSlot('corner'),
  'edge from own slot': fromOwnSlot('edge'),
  'edge from corner': {
    ask: 'Seen from above, how far is the edge from the corner?',
    answers: { same: 'in one line with it', next: 'next to it', across: 'across from it' },
    says: (answer) => `the edge is ${answer.replaceAll(/\bit\b/g, 'the corner')}`,
  },
  'U between': {
    ask: 'Which turn of the top brings the two together?',
    answers: { none: 'none', U: 'U', U2: 'U2', "U'": "U'" },
    says: (answer) => `the turn of the top between them is ${answer}`,
  },
  'edge round the top': {
    ask: 'Stand in the middle of the cube and look at the corner. Going round the top from it, where is the edge?',
    answers: {
      right: 'next at the right',
      'far right': 'beyond, at the right',
      'far left': 'beyond, at the left',
      left: 'next at the left',
    },
    says: (answer) => `going round the top, the edge is ${answer} of the corner`,
  },
  'cross colour': {
    ask: 'Where does {cross} on the corner face?',
    answers: {
      up: 'up',
      down: 'down',
      front: 'to the front',
      back: 'to the back',
      left: 'to the left',
      right: 'to the right',
      'front or back or left or right': 'to the side',
    },
    says: (answer) => `{cross} on the corner faces ${answer}`,
  },
  edge: {
    ask: 'Is the edge good or bad?',
    means:
      'Good on top: its top colour is that of the front or back centre. Good in a slot: each colour is at its own centre or at the opposite one.',
    answers: { good: 'good', bad: 'bad' },
    says: (answer) => `the edge is ${answer}`,
  },
  'corner over edge': {
    ask: 'Bring the corner above the edge. Do their sides match (not {cross})?',
    answers: { match: 'match', 'no match': 'no match' },
    says: (answer) =>
      answer === 'match'
        ? 'the sides match when the corner is above the edge'
        : 'the sides do not match when the corner is above the edge',
  },
  'down when hidden by R or L': hidden('R or L'),
  'down when hidden by F or B': hidden('F or B'),
  ...LIKENESSES,
};

/** The same where the pieces that it names are in slots. */
const inSlots: Readonly<Partial<Record<FeatureName, FeatureWords>>> = {
  edge: {
    ask: 'Is the edge good or bad?',
    means: 'Good: each of its colours is at its own centre or at the opposite one.',
    answers: { good: 'good', bad: 'bad' },
    says: (answer) => `the edge is ${answer}`,
  },
  'edge from corner': {
    ask: 'Are corner and edge in the same slot?',
    answers: {
      same: 'one slot',
      next: 'slots next to each other',
      across: 'slots across',
      'next or across': 'two slots',
    },
    says: (answer) => `corner and edge are in ${answer}`,
  },
  'corner over edge': {
    ask: 'Do the sides of corner and edge match?',
    answers: { match: 'match', 'no match': 'no match' },
    says: (answer) => `their sides ${answer === 'match' ? 'match' : 'do not match'}`,
  },
};

export const rules = {
  features,
  inSlots,
  /** `faces`: which of the viewer's lift; `up`: of them the one that brings that up. */
  lift: (piece: Lifted, faces: readonly string[], up: Raising | undefined): string => {
    const isAny = faces.length === 0 || faces.length === 4;
    if (!up) return `Lift ${NAMES[piece]} with ${isAny ? 'either face' : listed(faces, 'or')}`;
    const which = `the face that ${raising(up)}`;
    return `Lift ${NAMES[piece]} with ${isAny ? which : `${listed(faces, 'or')}: ${which}`}`;
  },
  /** In place of a lift; the trigger's name, if the turns have one. */
  by: (trigger: string | undefined): string => (trigger ? `Do the ${trigger}, {turns}` : 'Do {turns}'),
  /** How the other piece is to stand when the face first turns; `by`: turns in place of a lift. */
  first: (how: Way | undefined, stands: Standing | undefined, lifted: Lifted, by: boolean): string | undefined => {
    const other = OTHER[lifted];
    if (how === 'together' && !stands) {
      return lifted === 'both' ? 'They come up together.' : `Turn ${other} above it first: they move as one.`;
    }
    const face = by ? 'the first face' : 'the face';
    const place =
      stands && stands !== 'cross along' ? STANDS[stands](face, lifted === 'corner' ? face : 'the slot') : undefined;
    const clauses = [
      ...(how ? [HOW[how](other)] : []),
      ...(stands === 'cross along' ? [`{cross} looks along ${how ? 'it' : face}`] : []),
    ];
    const sentences = [
      ...(how === 'hidden' && clauses.length === 1 ? [`Let the face take ${other} down.`] : []),
      ...(clauses.length > (how === 'hidden' ? 1 : 0) ? [`Turn the top first, so that ${listed(clauses)}.`] : []),
      ...(place ? [`First turn ${other} ${place}.`] : []),
    ];
    return sentences.length > 0 ? sentences.join(' ') : undefined;
  },
  /** How the top turns before the face goes back. */
  between: (between: Between, lifted: Lifted): string => {
    const name = NAMES[lifted];
    return {
      'to the side': `Then turn ${name} to the other side of its old slot.`,
      'from the side':
        lifted === 'corner'
          ? 'Then turn the top so that the corner stays in the face.'
          : `Then turn ${name} a quarter off its old slot.`,
      half: 'Then give the top a half turn.',
      clear: 'Then turn the pair out of the face.',
    }[between];
  },
  /** `anyTop`: nothing is said of where the other piece stands first. */
  byMeans: (anyTop: boolean): string =>
    anyTop ? 'Turn the top first; from the side where it fits, or mirrored.' : 'From any side, or mirrored.',
  noLift: 'Lift nothing: go on from here',
  /** What stands then, under its picture. */
  after: {
    joined: 'joined',
    split: 'split',
    family: (corner: Whereabouts, edge: Whereabouts): string =>
      corner === edge ? `both ${SHORTLY[corner]}` : `corner ${SHORTLY[corner]}, edge ${SHORTLY[edge]}`,
    case: 'this case',
    insert: 'ready to insert',
  },
  points: 'every foreign slot, the pair in every slot',
  sighting: 'a place of the two pieces',
  seen: (address: string, slot: string): string => `${address} with its own slot seen at ${slot}`,
};
