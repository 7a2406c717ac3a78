/** What may be advised for a pair, where rules are to be found: lifts and triggers, each with what it aims at. */
import type { Face } from '../../cube/faces.ts';
import { everySide } from '../../cube/sides.ts';
import { TRIGGERS } from '../../cube/triggers.ts';
import { inverse, type Turn, writeTurns } from '../../cube/turns.ts';
import { type Aim, LIFTED_PIECES, type PairAdvice, WAYS } from './advice.ts';
import { FAMILIES, type Family } from './cases.ts';
import { completions, countOf } from './completions.ts';

/** As in rules: the side faces, or those in front and behind. With any of four the student would still have to choose. */
const LIFTS: readonly (readonly Face[])[] = [
  ['R', 'L'],
  ['F', 'B'],
];
const ANY_FACE: readonly Face[] = ['R', 'L', 'F', 'B'];
/** No solution over a take-out is longer. */
const ANY_LENGTH = 30;

const READY: readonly Aim[] = [{ kind: 'joined' }, { kind: 'split' }];
const stuckIn = (family: Family): number => family.split('-').filter((where) => where !== 'top').length;
/** Families of which fewer pieces are stuck: going on from there is what another lesson teaches. */
const nearer = (families: readonly Family[]): Aim[] =>
  FAMILIES.filter((family) => families.every((one) => stuckIn(family) < stuckIn(one))).map((family) => ({
    kind: 'family',
    family,
  }));

/** Triggers and what undoes them; one of a single face is a lift like any other, and counts done twice. */
const BY: readonly (readonly Turn[])[] = Object.values(TRIGGERS)
  .flatMap((turns) => [turns, inverse(turns)].map((some) => (isOfOneFace(some) ? [...some, ...some] : some)))
  // Advice is tried from every side and in a mirror: one of two that are the same then is enough.
  .filter((turns, i, all) => all.findIndex((other) => sidesText(other) === sidesText(turns)) === i);

function sidesText(turns: readonly Turn[]): string {
  return everySide(turns)
    .map((side) => writeTurns(side))
    .sort()
    .join();
}

function isOfOneFace(turns: readonly Turn[]): boolean {
  return new Set(turns.map((t) => t.letter).filter((letter) => letter !== 'U')).size === 1;
}

/** What may be advised for the families, the plainest first. */
function advicesWith(families: readonly Family[], aims: readonly Aim[]): PairAdvice[] {
  const pieces = [undefined, ...(families.some((family) => stuckIn(family) > 1) ? LIFTED_PIECES : [])];
  const lifting = [undefined, ...WAYS].flatMap((way) =>
    pieces.flatMap((piece) =>
      aims.flatMap((aim) => LIFTS.map((lift): PairAdvice => ({ aim, lift, piece, way, most: ANY_LENGTH }))),
    ),
  );
  const byTriggers = BY.flatMap((by) =>
    READY.map((aim): PairAdvice => ({ aim, lift: ANY_FACE, by, most: ANY_LENGTH })),
  );
  return [...lifting, ...byTriggers];
}

/** Joined and split; for families where those two cannot be had everywhere, families with fewer pieces stuck besides. */
export const advices = (families: readonly Family[]): readonly (readonly PairAdvice[])[] =>
  [READY, [...READY, ...nearer(families)]].map((aims) => advicesWith(families, aims));

/** The piece that is stuck in all of the families while the other one is on top. */
function stuckAlone(families: readonly Family[]): 'corner' | 'edge' | undefined {
  if (families.every((family) => family.startsWith('top-') && family !== 'top-top')) return 'edge';
  return families.every((family) => family.endsWith('-top') && family !== 'top-top') ? 'corner' : undefined;
}

/** The same with words that leave fewer ways, those with the fewest words first; a face may be told by the colour it brings up. */
export function wordedAdvices(families: readonly Family[]): readonly (readonly PairAdvice[])[] {
  const piece = stuckAlone(families);
  return advices(families).map((all) => {
    const plain = all.filter(({ way }) => way === undefined);
    const byColour = plain
      .filter(({ by, lift }) => piece && !by && lift === LIFTS[0])
      .flatMap((advice) => completions({ ...advice, lift: ANY_FACE, piece }))
      .filter(({ up }) => up !== undefined);
    return [...plain.flatMap(completions), ...byColour].sort((a, b) => countOf(a) - countOf(b));
  });
}
