import type { Colour, RuleWords, Said } from './words.ts';

const PIECES: Readonly<Record<string, string>> = { corner: 'the corner', edge: 'the edge', both: 'both' };
const WHEREABOUTS: Readonly<Record<string, string>> = { home: 'at home', top: 'on top', away: 'in a foreign slot' };
const NEAR: Readonly<Record<string, string>> = {
  same: 'the same slot',
  next: 'the slot beside it',
  across: 'the slot across',
};
const FACING: Readonly<Record<string, string>> = {
  up: 'up',
  down: 'down',
  front: 'to the front',
  back: 'to the back',
  left: 'to the left',
  right: 'to the right',
};

const or = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;

/** The named colours of the two pieces. */
const COLOUR_OF: Readonly<Record<string, string>> = {
  'edge top': "the edge's top",
  'edge front': "the edge's front or back colour",
  'edge side': "the edge's side colour",
  'corner top': "the corner's top",
  'corner front': "the corner's front or back colour",
  'corner side': "the corner's side colour",
  'corner sideways': "the corner's other sideways colour",
};

const likenessOf = (feature: string): [string, string] | undefined => {
  const [edge, corner] = feature.split(' and ');
  const [one, two] = [COLOUR_OF[edge ?? ''], COLOUR_OF[corner ?? '']];
  return one && two ? [one, two] : undefined;
};

function facing(values: readonly string[]): string {
  const sideways = ['front', 'back', 'left', 'right'];
  if (values.length === 4 && sideways.every((value) => values.includes(value))) return 'sideways';
  return or(values.map((value) => FACING[value] ?? value));
}

const pieceOf = (feature: string): string => PIECES[feature.split(' ')[0] ?? ''] ?? feature;

function condition(feature: string, values: readonly string[], cross: Colour): readonly Said[] {
  const likeness = likenessOf(feature);
  if (likeness) return [`${likeness[0]} is ${values[0] === 'like' ? 'like' : 'unlike'} ${likeness[1]}`];
  switch (feature) {
    case 'cross colour':
      return [{ colour: cross }, ` faces ${facing(values)}`];
    case 'corner at':
    case 'edge at':
      return [`${pieceOf(feature)} is ${or(values.map((value) => WHEREABOUTS[value] ?? value))}`];
    case 'edge':
      return [`the edge is ${or(values)}`];
    case 'corner over edge':
      return [
        values[0] === 'match'
          ? 'the sides match when the corner is over the edge'
          : 'the sides do not match when the corner is over the edge',
      ];
    case 'edge from corner':
      return [`the edge is in ${or(values.map((value) => NEAR[value] ?? value))} as seen from the corner`];
    case 'corner from own slot':
    case 'edge from own slot':
      return [
        `${pieceOf(feature)} is in or over ${or(values.map((value) => NEAR[value] ?? value))} as seen from its own`,
      ];
    case 'corner column':
    case 'edge column':
      return [`${pieceOf(feature)} is at the ${or(values)}`];
    case 'corner depth':
    case 'edge depth':
      return [`${pieceOf(feature)} is ${or(values.map((value) => (value === 'front' ? 'in front' : value)))}`];
    case 'corner side':
    case 'edge side':
      return [`${pieceOf(feature)} is at the ${or(values)}`];
    case 'U between':
      return [`${or(values)} brings the one over the other`];
    case 'down when hidden by R or L':
    case 'down when hidden by F or B': {
      const faces = feature.slice(-6);
      const isCross = values[0] === 'cross colour';
      return [`moved aside by ${faces}, the corner has `, { colour: cross }, isCross ? ' below' : ' not below'];
    }
    default:
      return [`${feature}: ${or(values)}`];
  }
}

function question(feature: string, cross: Colour): readonly Said[] {
  const likeness = likenessOf(feature);
  if (likeness) return [`Is ${likeness[0]} like ${likeness[1]}?`];
  switch (feature) {
    case 'cross colour':
      return ['Where does ', { colour: cross }, ' face?'];
    case 'edge':
      return ['Is the edge good or bad?'];
    case 'corner over edge':
      return ['Bring the corner over the edge: do the sides match?'];
    case 'edge from corner':
      return ['Are the two in one slot, or in two?'];
    case 'corner at':
    case 'edge at':
      return [`Where is ${pieceOf(feature)}?`];
    case 'down when hidden by R or L':
    case 'down when hidden by F or B':
      return [`What is below when ${feature.slice(-6)} moves the corner aside?`];
    default:
      return [`What about ${pieceOf(feature)}: ${feature}?`];
  }
}

const WAYS: Readonly<Record<string, string>> = {
  hidden: ', with the other piece moved aside by that face',
  together: ', the other piece going along on top',
  direct: ', the other piece left where it is',
};

export const rules: RuleWords = {
  title: 'See, then turn',
  about: (count, exact) =>
    `${count} ${count === 1 ? 'rule' : 'rules'}; the first that fits applies. ` +
    (exact ? 'Each holds in every case, seen from every side.' : 'Where one has exceptions they stand below it.'),
  see: 'See',
  turn: 'Turn',
  stands: 'Then you have',
  try: 'Try it',
  condition,
  question,
  otherwise: 'none of the above',
  lift: (piece, faces, way) => {
    const with_ = faces.length === 4 ? 'either face of its slot' : or(faces);
    return `lift ${PIECES[piece ?? ''] ?? 'the stuck piece'} with ${with_}${way ? (WAYS[way] ?? '') : ''}`;
  },
  by: (trigger) => [`do ${trigger ? `the ${trigger}, ` : ''}`, ', at the slot of the stuck piece'],
  nothing: 'lift nothing',
  turnTheCube: 'turn the whole cube a quarter',
  joined: 'a joined pair',
  split: 'a split',
  family: (family) => {
    const [corner, edge] = family.split('-').map((word) => WHEREABOUTS[word]!);
    return `the corner ${corner} and the edge ${edge}`;
  },
  theCase: 'the case of the picture',
  insert: (turns) => `a pair that ${turns} inserts`,
  lookAgain: 'a case of another rule',
  holds: (holds, of, most) => `${holds === of ? 'always' : `in ${holds} of ${of} views`}, up to ${most} turns`,
  exceptions: (count) =>
    `${count === 1 ? 'The exception' : `The ${count} exceptions`}, each with its shortest solution:`,
  exceptionsMore: (count) => `And ${count} more.`,
  exactWith: (conditions) => `Without exception if also ${conditions}.`,
};
