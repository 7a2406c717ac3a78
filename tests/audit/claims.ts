import type { PairText, SolutionClaim, SolutionClaimText } from '../../src/audit/claims-file.ts';
import { basePlaces, sightOf } from '../../src/audit/pair-claims.ts';
import { cornerOf } from '../../src/audit/places.ts';
import { type Reproof, reprove } from '../../src/audit/reprove.ts';

/** The claim's fields for any step, as those of a pair mean them. */
export const goalOfPair = ({ pair, kept }: PairText): PairText & Pick<SolutionClaimText, 'base' | 'goal'> => ({
  pair,
  kept,
  base: basePlaces(kept),
  goal: { home: [cornerOf(pair), pair], top: [], free: null },
});

/** A pair's turns proved anew, with where it is after the set-up. */
export const reprovePair = (
  claim: PairText & { readonly setup: string; readonly solution: string },
): Reproof & ReturnType<typeof sightOf> => ({ ...reprove({ ...claim, ...goalOfPair(claim) }), ...sightOf(claim) });

/** A claim as it is made before it is known where it is printed. */
export const printedOnPage = (claim: object): SolutionClaim =>
  ({ ...claim, sheet: 'a.pdf', page: 1 }) as never as SolutionClaim;

/** A right claim, followed by hand: the corner is lifted to UFR, its D sticker on R; the edge to UB, its F sticker up. */
export const RIGHT: SolutionClaim & PairText = {
  id: 'tuesday-1',
  kind: 'solution',
  step: 'pairs',
  file: 'tuesday.yaml',
  line: 14,
  sheet: 'tuesday.pdf',
  page: 1,
  hold: { up: 'yellow', front: 'green' },
  setup: "R U' R'",
  solution: "R U R'",
  cross: 'white',
  ...goalOfPair({ pair: 'FR', kept: ['FL', 'BL', 'BR'] }),
  address: 'UFR:R UB:U',
  case: 'UFR:R UB:U',
  family: 'top-top',
  verdict: 'solves',
  broken: [],
  length: 3,
  shortest: 3,
  phases: [{ turns: "R U R'", address: 'DFR:D FR:F' }],
};

/**
 * The edge waits in the slot at the back right. The first phase undoes the second half of the set-up, which leaves
 * F' U F: the corner goes DFR, UFR, UFL, UFR with its D sticker on D, R, F, F; the edge FR, UF, UL with F on F, F, L.
 */
export const STUCK: SolutionClaim & PairText = {
  ...RIGHT,
  id: 'tuesday-2',
  line: 20,
  setup: "F' U F R' U2 R",
  solution: "R' U2 R F' U' F",
  ...goalOfPair({ pair: 'FR', kept: ['FL', 'BL'] }),
  address: 'UFR:F BR:R',
  case: 'UFR:F BR:R',
  family: 'top-away',
  length: 6,
  shortest: 6,
  phases: [
    { turns: "R' U2 R", address: 'UFR:F UL:L' },
    { turns: "F' U' F", address: 'DFR:D FR:F' },
  ],
};

/**
 * R' U R brings the edge up beside the corner and R U' R' inserts: its middle turns are one. Between them stands what
 * R U R' leaves of a solved cube: R brings the pair up, U takes it to the front left, R' lets it be.
 */
export const MERGED: SolutionClaim = {
  ...STUCK,
  id: 'tuesday-3',
  setup: "R U2 R' U' R' U' R",
  solution: "R' U R2 U' R'",
  address: 'UBR:U BR:B',
  case: 'UFR:U BR:B',
  length: 5,
  shortest: 4,
  phases: [{ turns: "R' U R2 U' R'", address: 'DFR:D FR:F' }],
  merges: [{ turn: 3, of: 'R2', as: ['R', 'R'], address: 'UFL:L UF:U' }],
};
