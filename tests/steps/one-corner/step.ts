/** A third step, small enough for a test: one corner of the first layer is brought home under a whole cross. */
import { z } from 'zod';
import type { FaceColours } from '../../../src/cube/colours.ts';
import {
  afterTurns,
  type Cube,
  homeOf,
  isHome,
  pieceOf,
  placeOf,
  seenPiece,
  solvedCube,
} from '../../../src/cube/cube.ts';
import type { Face } from '../../../src/cube/faces.ts';
import { givesAway } from '../../../src/cube/gives-away.ts';
import { goalOfPieces } from '../../../src/cube/goal.ts';
import { fromTheSide } from '../../../src/cube/sides.ts';
import {
  CORNERS,
  cornerAt,
  cornerOf,
  cornerSpot,
  cornerSpotTurned,
  faceOfCornerSpot,
} from '../../../src/cube/spots.ts';
import { inverse, type Turn } from '../../../src/cube/turns.ts';
import { centreAt } from '../../../src/cube/view.ts';
import type { OwnFields } from '../../../src/steps/lesson-part.ts';
import type { SetUpFault, Step } from '../../../src/steps/step.ts';
import type { Subject, Where } from '../../../src/steps/subject.ts';
import { about } from '../../../src/text/about.ts';
import type { Words } from '../../../src/words/words.ts';
import { english } from './english.ts';
import { solutionsFrom } from './search.ts';

/** By the quarter turns about U that bring DFR there. */
const HOMES = ['DFR', 'DFL', 'DBL', 'DBR'] as const;
type Home = (typeof HOMES)[number];
const CROSS = (['DF', 'DL', 'DB', 'DR'] as const).map(pieceOf);
const SOLVED = 'DFR:D';

interface CornerWhere extends Where {
  /** Where the corner belongs. */
  readonly corner: Home;
}
interface CornerSubject extends Subject {
  readonly where: CornerWhere;
  /** Its cross-coloured sticker, seen with its home at DFR. */
  readonly spot: number;
}
const own = (subject: Subject): CornerSubject => subject as CornerSubject;
const home = (where: Where): Home => (where as CornerWhere).corner;
const wordsOf = ({ steps }: Words): typeof english => steps['one-corner'] as typeof english;

const write = (spot: number): string => `${cornerOf(spot)}:${faceOfCornerSpot(spot)}`;
const isOnTop = (spot: number): boolean => cornerOf(spot).startsWith('U');
const roundTheTop = (spot: number): number[] =>
  isOnTop(spot) ? [0, 1, 2, 3].map((quarters) => cornerSpotTurned(spot, 'U', quarters)) : [spot];
const caseOf = (spot: number): number => roundTheTop(spot).find((one) => cornerOf(one) === 'UFR') ?? spot;
const familyOf = (spot: number): string => (isOnTop(spot) ? 'on-top' : 'below');
const ALL = Array.from({ length: 24 }, (_, spot) => spot);

function subjectOn(cube: Cube, where: CornerWhere, spot: number): CornerSubject {
  const piece = pieceOf(where.corner);
  const said = (colours: FaceColours, words: Words): string => {
    const { at, faces } = seenPiece(cube, piece);
    return wordsOf(words).corner(at, colours.D, faces);
  };
  return {
    step: 'one-corner',
    where,
    spot,
    cube,
    goal: goalOfPieces(CROSS, [piece]),
    address: write(spot),
    caseAddress: write(caseOf(spot)),
    family: familyOf(spot),
    side: where.corner,
    isSolved: write(spot) === SOLVED,
    emphasis: (now) => {
      const at = placeOf(now, piece);
      return {
        roleOf: (sticker) =>
          sticker.piece === undefined
            ? 'centre'
            : sticker.piece === piece
              ? 'main'
              : CROSS.includes(sticker.piece)
                ? 'kept'
                : 'other',
        bodies: [piece],
        target: at === where.corner ? [] : [where.corner],
        framed: at.startsWith('D') && at !== where.corner ? [[at]] : [],
      };
    },
    describe: (now, colours, words) => {
      const { at, faces } = seenPiece(now, piece);
      return wordsOf(words).corner(at, colours.D, faces);
    },
    named: said,
    claim: () => ({ corner: where.corner }),
  };
}

const quartersTo = (where: CornerWhere): number => HOMES.indexOf(where.corner);
const searched = ({ spot, where }: CornerSubject, longer: number): Turn[][] =>
  solutionsFrom(spot, longer).solutions.map(({ turns }) => fromTheSide(turns, quartersTo(where)));

/** As solved as can be: the cube from which a shortest solution leads to the solved one. */
function subjectAt(spot: number, where: CornerWhere): CornerSubject {
  const [turns] = solutionsFrom(spot, 0).solutions;
  const back = fromTheSide(inverse(turns!.turns), quartersTo(where));
  return subjectOn(afterTurns(solvedCube(), back), where, spot);
}

/** With its home seen at DFR. */
const spotSeen = (cube: Cube, where: CornerWhere): number =>
  cornerSpotTurned(cube.spots[pieceOf(where.corner)]!, 'U', (4 - quartersTo(where)) % 4);

function after(setup: readonly Turn[], where: CornerWhere): CornerSubject | SetUpFault {
  const cube = afterTurns(solvedCube(), setup);
  if (centreAt(cube.view, 'U') !== 'U') return { fault: 'rotates', down: centreAt(cube.view, 'D') };
  const broken = CROSS.filter((piece) => !isHome(cube, piece)).map(homeOf);
  if (broken.length > 0) return { fault: 'breaks-base', broken };
  return subjectOn(cube, where, spotSeen(cube, where));
}

function read(text: string): number | undefined {
  const [, place, face] = /^([UDRLFB]{3}):([UDRLFB])$/.exec(text) ?? [];
  const corner = CORNERS.find((one) => one === place);
  return corner?.includes(face!) ? cornerSpot(corner, face as Face) : undefined;
}

const IN_MIRROR: Readonly<Record<string, Face>> = { F: 'R', R: 'F', L: 'B', B: 'L', U: 'U', D: 'D' };
const SIDE_MIRROR: Readonly<Record<Home, Home>> = { DFR: 'DFL', DFL: 'DFR', DBL: 'DBR', DBR: 'DBL' };
/** Left for right, and then round until its home is seen at DFR again. */
function mirrored(spot: number): number {
  const place = cornerAt([...cornerOf(spot)].map((face) => IN_MIRROR[face]!));
  return cornerSpot(place, IN_MIRROR[faceOfCornerSpot(spot)]!);
}

const cornerField = about(
  z.enum(HOMES),
  'Where the corner belongs: DFR (without it), DFL, DBL, DBR.',
  'DBL',
).optional();
const cornersIn = (fields: OwnFields): Home[] => [(fields['corner'] ?? []) as Home | Home[]].flat();
const USUAL: CornerWhere = { corner: 'DFR' };

export const oneCorner: Step = {
  name: 'one-corner',
  families: ['on-top', 'below'],
  words: { en: english },
  usual: USUAL,
  after: (setup, where) => after(setup, where as CornerWhere),
  at: (text, where) => {
    const spot = read(text);
    return spot === undefined ? undefined : subjectAt(spot, where as CornerWhere);
  },
  cases: (family) =>
    [...new Set(ALL.map(caseOf))]
      .filter((spot) => familyOf(spot) === family && write(spot) !== SOLVED)
      .map((spot) => subjectAt(spot, USUAL)),
  upToTop: (subject) => roundTheTop(own(subject).spot).map((spot) => subjectAt(spot, own(subject).where)),
  turned: (subject, quarters) => {
    const { spot, where } = own(subject);
    return subjectAt(spot, { corner: HOMES[(quartersTo(where) + quarters) % 4]! });
  },
  mirrored: (subject) => subjectAt(mirrored(own(subject).spot), { corner: SIDE_MIRROR[own(subject).where.corner] }),
  solutions: (subject, longer) => ({
    ...solutionsFrom(own(subject).spot, longer),
    solutions: searched(own(subject), longer).map((turns) => ({ turns, length: turns.length })),
  }),
  shortest: (subject) => ({ shortest: solutionsFrom(own(subject).spot, 0).shortest, proved: true }),
  setUp: (subject, avoid) => {
    const shortest = searched(own(subject), 0);
    const answers = avoid.length > 0 ? avoid : shortest;
    const hiding = searched(own(subject), 2)
      .map((turns) => inverse(turns))
      .find((setup) => !answers.some((answer) => givesAway(setup, answer)));
    if (!hiding) throw new Error(`no set-up for ${subject.address}`);
    return hiding;
  },

  lesson: {
    fields: {
      case: { corner: cornerField },
      every: { corner: cornerField },
      claims: {},
      only: { corner: cornerField },
    },
    about: {
      family: ['Where the corner is: on-top or below.', 'on-top'],
      address: ['Where its cross colour is.', 'UFR:R'],
    },
    terms: ['corner'],
    problems: {},
    whereOf: (fields): CornerWhere => ({ corner: cornersIn(fields)[0] ?? 'DFR' }),
    mirroredWhere: (where): CornerWhere => ({ corner: SIDE_MIRROR[home(where)] }),
    likelyWhere: (where) =>
      HOMES.filter((corner) => corner !== home(where)).map((corner) => {
        const meant: CornerWhere = { corner };
        return { where: meant, said: `the corner of ${corner}`, write: `corner: ${corner}` };
      }),
    wrongAddress: (text) => ({ message: `"${text}" is no place of a corner`, hint: 'write UFR:R' }),
    likelyFamily: (written) => (written.includes('top') ? 'on-top was likely meant' : undefined),
    familiesSaid: 'on-top (in the top layer), below (in the bottom layer)',
    likelyWord: () => undefined,
    baseSaid: 'the cross',
    unsolvedSaid: (broken) => broken.join(' and '),
    excusing: () => undefined,
    hidden: () => ({ message: 'the corner cannot be seen', hint: 'mend the set-up' }),
    misnamed: () => undefined,
    promises: () => [],
    mirroredPromise: (promise) => promise,
    broken: () => undefined,
    promiseSaid: () => '',
  },
  practice: {
    questions: [
      {
        name: 'height',
        about: 'Is the corner on top or below?',
        answers: ['top', 'below'],
        right: (subject) => (isOnTop(own(subject).spot) ? 'top' : 'below'),
      },
    ],
    words: (words) => wordsOf(words).practice,
    seeing: (subject) => (isOnTop(own(subject).spot) ? 0 : 10),
    spread: () => [],
    lookAlikes: (subject) => {
      const { spot, where } = own(subject);
      const others = [1, 2].map((by) => subjectAt(spot - (spot % 3) + ((spot + by) % 3), where));
      const far = ALL.filter((one) => isOnTop(one) && cornerOf(one) !== cornerOf(spot)).map((one) =>
        subjectAt(one, where),
      );
      return { near: others, far };
    },
    pieces: (subject) => [{ name: 'corner', piece: pieceOf(own(subject).where.corner) }],
    pieceSaid: ({ at, colour, faces }, words) => wordsOf(words).corner(at, colour, faces),
    sidesWanted: cornersIn,
    isWanted: () => true,
    mirroredFilter: (filter) => ({
      ...filter,
      ...(filter['corner'] ? { corner: cornersIn(filter).map((c) => SIDE_MIRROR[c]) } : {}),
    }),
  },
  marking: {
    subjectOfClaim: ({ corner }, setup) => {
      const at = HOMES.find((one) => one === corner);
      if (!at) return { why: 'its corner is none of the first layer' };
      const done = after(setup, { corner: at });
      return 'fault' in done ? { why: 'its set-up breaks the cross' } : done;
    },
    failed: (_, broken) => ({ verdict: 'fails', says: (words) => wordsOf(words).fails(broken) }),
    words: (words) => wordsOf(words).marking,
  },
  sheets: {
    words: (words) => wordsOf(words).sheets,
    remark: () => undefined,
    openSaid: () => undefined,
  },
  find: {
    address: ['corner', 'UFR:R'],
    options: { find: { corner: 'string' }, cases: {} },
    sought: (start, options) => {
      const where: CornerWhere = { corner: cornersIn(options as OwnFields)[0] ?? 'DFR' };
      const found = typeof start === 'string' ? oneCorner.at(start, where) : after(start, where);
      if (!found || 'fault' in found) return { usage: 'no corner under a whole cross' };
      const { cube, goal, address } = found;
      return { cube, goal, said: address, fields: { address }, broken: [] };
    },
    search: ({ cube, goal }, { longer = 0 }) => {
      const where: CornerWhere = { corner: homeOf(goal.pieces.at(-1)!) as Home };
      return oneCorner.solutions(subjectOn(cube, where, spotSeen(cube, where)), longer);
    },
    columns: [],
    catalogue: (families) =>
      families
        .flatMap((family) => oneCorner.cases(family) ?? [])
        .map(({ address, family }) => {
          const { solutions, shortest } = solutionsFrom(read(address)!, 0);
          return {
            address,
            fields: { family },
            cells: [],
            shortest: shortest!,
            solutions: solutions.length,
            longer: 0,
          };
        }),
  },
};
