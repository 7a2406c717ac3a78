/** The fields that claims of a case have in common, whatever they say of it and wherever they are printed. */

import { type Colour, type FaceColours, type Hold, USUAL_SCHEME, writeScheme } from '../cube/colours.ts';
import { homeOf } from '../cube/cube.ts';
import { triggerSaid } from '../cube/triggers.ts';
import { spelt, type Turn, type WideSpelling, writeTurns } from '../cube/turns.ts';
import type { Merge, Phase, Phases } from '../steps/phases-part.ts';
import type { Subject } from '../steps/subject.ts';
import type { ClaimOfCase, MergeClaim, PhaseClaim, SolutionClaim } from './claim.ts';
import type { Lesson } from './lesson.ts';
import type { Span } from './problem.ts';
import { positionAt } from './source.ts';

interface Held {
  readonly hold: Hold;
  readonly setup: readonly Turn[];
  /** Of what is claimed, in the lesson file. */
  readonly span: Span;
}

/** Nothing for the usual colours. */
function schemeField(scheme: FaceColours): { readonly scheme?: string } {
  const written = writeScheme(scheme);
  return written === writeScheme(USUAL_SCHEME) ? {} : { scheme: written };
}

/** Where the claim stands in the lesson file, and what is done before what it says. */
export const setUpFields = (
  { source, scheme }: Pick<Lesson, 'source' | 'scheme'>,
  { hold, setup, span }: Held,
  wide: WideSpelling,
): Pick<ClaimOfCase, 'file' | 'line' | 'hold' | 'scheme' | 'setup'> => ({
  file: source.file,
  line: positionAt(source, span.start).line,
  hold,
  ...schemeField(scheme),
  setup: writeTurns(setup, wide),
});

/** The colour held down, and what the step says besides: for a pair its slot and what is kept. */
export const ownFields = (
  { claim }: Pick<Subject, 'claim'>,
  { D }: Pick<FaceColours, 'D'>,
): { readonly cross: Colour } => ({ cross: D, ...claim() });

/** The address, exactly and as a case, and the family. */
export const addressFields = ({
  address,
  caseAddress,
  family,
}: Pick<Subject, 'address' | 'caseAddress' | 'family'>): {
  readonly address: string;
  readonly case: string;
  readonly family: string;
} => ({ address, case: caseAddress, family });

/** What stays and what has to be brought about, so that any checker can tell whether it was, knowing nothing of the step. */
export function goalClaim({
  goal: { base, pieces, top, free },
}: Pick<Subject, 'goal'>): Pick<ClaimOfCase, 'base' | 'goal'> {
  const more = pieces.filter((piece) => !base.includes(piece));
  return { base: base.map(homeOf), goal: { home: more.map(homeOf), top, free: free ?? null } };
}

/** Which printed item it is about. */
export interface Itemed {
  /** Left out: it stands on no paper. */
  readonly paper?: string;
  readonly item: string;
  /** Of several solutions, from 1. */
  readonly nth: number;
}

/** Of which step and item it is, and what has to be brought about. */
export const goalFields = (
  subject: Pick<Subject, 'step' | 'goal'>,
  { paper, item, nth }: Itemed,
): Pick<ClaimOfCase, 'step' | 'base' | 'goal' | 'paper' | 'item' | 'nth'> => ({
  step: subject.step,
  ...goalClaim(subject),
  ...(paper !== undefined && { paper }),
  item,
  nth,
});

const phaseClaim = ({ turns, does, stands, hides, address, trigger }: Phase, wide: WideSpelling): PhaseClaim => ({
  turns: writeTurns(turns, wide),
  does: does.join('+'),
  address,
  ...(stands && { stands }),
  ...(hides && { hides }),
  ...(trigger && { trigger: triggerSaid(trigger) }),
});

const mergeClaim = ({ turn, of, as, does, address }: Merge, wide: WideSpelling): MergeClaim => ({
  turn,
  of: spelt(of, wide),
  as: [spelt(as[0], wide), spelt(as[1], wide)],
  does,
  address,
});

/** The fields of a solution's claim that tell its phases. */
export const phaseClaims = (
  { phases, merges }: Phases,
  wide: WideSpelling,
): Required<Pick<SolutionClaim, 'phases' | 'merges'>> => ({
  phases: phases.map((phase) => phaseClaim(phase, wide)),
  merges: merges.map((merge) => mergeClaim(merge, wide)),
});
