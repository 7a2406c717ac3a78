/** Phases in the form that claims carry. */

import { triggerSaid } from '../cube/triggers.ts';
import { spelt, type WideSpelling, writeTurns } from '../cube/turns.ts';
import type { Merge, Phase, Phases } from '../steps/phases-part.ts';
import type { MergeClaim, PhaseClaim, SolutionClaim } from './claim.ts';

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
