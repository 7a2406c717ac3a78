/** The claims file as a stranger reads it: its form, and problems where it has another. */
import { z } from 'zod';
import { PLACES, type Place, SLOTS, type Slot } from './places.ts';

/** The parts of a claim that a reader of the sheet has in hand. */
export interface SolutionClaimText {
  readonly setup: string;
  readonly solution: string;
  /** Home after the set-up and after the solution. */
  readonly base: readonly Place[];
  /** What the solution brings about besides: see `Reproof`. */
  readonly goal: { readonly home: readonly Place[]; readonly top: readonly Place[]; readonly free: 'U' | null };
}

/** Of a claim about a pair. */
export interface PairText {
  readonly pair: Slot;
  readonly kept: readonly Slot[];
}

export interface PhaseText {
  readonly turns: string;
  readonly address: string;
}

export interface MergeText {
  readonly turn: number;
  readonly of: string;
  readonly as: readonly string[];
  readonly address: string;
}

/**
 * A claim of kind `solution` as it stands in a claims file. This is the contract of the file and not of the prover,
 * written out a second time on purpose. Further fields may stand there; they are not judged.
 */
export interface SolutionClaim extends SolutionClaimText {
  /** Both, or neither: see `PairText`. */
  readonly pair?: Slot | undefined;
  readonly kept?: readonly Slot[] | undefined;
  readonly id: string;
  readonly kind: 'solution';
  /** Of the solve. Only pairs are judged by their address, case and family, pair and kept slots. */
  readonly step: string;
  readonly file: string;
  /** 1-based, of the solution in the lesson file. */
  readonly line: number;
  readonly sheet: string;
  /** Physical, 1-based. */
  readonly page: number;
  readonly hold: { readonly up: string; readonly front: string };
  /** Six colours, up front right down back left; those of most cubes where it is left out. */
  readonly scheme?: string | null | undefined;
  readonly cross: string;
  readonly address: string;
  readonly case: string;
  readonly family: string;
  readonly verdict: 'solves' | 'fails';
  readonly broken: readonly string[];
  readonly length: number;
  readonly shortest?: number | null | undefined;
  readonly phases?: readonly PhaseText[] | null | undefined;
  readonly merges?: readonly MergeText[] | null | undefined;
}

const slot = z.enum(SLOTS);
const places = z.array(z.enum(PLACES));
const count = z.number().int().nonnegative();

const solutionClaim = z.looseObject({
  id: z.string().min(1),
  kind: z.literal('solution'),
  step: z.string(),
  file: z.string(),
  line: count.positive(),
  sheet: z.string().min(1),
  page: count.positive(),
  hold: z.looseObject({ up: z.string(), front: z.string() }),
  scheme: z.string().nullish(),
  setup: z.string(),
  solution: z.string(),
  cross: z.string(),
  base: places,
  goal: z.looseObject({ home: places, top: places, free: z.enum(['U']).nullable() }),
  pair: slot.optional(),
  kept: z.array(slot).optional(),
  address: z.string(),
  case: z.string(),
  family: z.string(),
  verdict: z.enum(['solves', 'fails']),
  broken: z.array(z.string()),
  length: count,
  shortest: count.nullish(),
  phases: z.array(z.looseObject({ turns: z.string(), address: z.string() })).nullish(),
  merges: z
    .array(z.looseObject({ turn: count.positive(), of: z.string(), as: z.array(z.string()), address: z.string() }))
    .nullish(),
}) satisfies z.ZodType<SolutionClaim>;

const claimsFile = z.looseObject({
  lesson: z.string(),
  file: z.string(),
  sheets: z.array(z.unknown()),
  claims: z.array(z.unknown()),
});

const anyClaim = z.looseObject({ id: z.string().min(1), kind: z.string().min(1) });

export interface Fault {
  /** The claim's id; `claims[3]` where it has none; empty for the file as a whole. */
  readonly id: string;
  readonly fault: string;
}

export interface ClaimsRead {
  readonly solutions: readonly SolutionClaim[];
  /** Claims of another kind. */
  readonly others: number;
  readonly faults: readonly Fault[];
}

function issuesOf(error: z.ZodError): string[] {
  return error.issues.map(({ path, message }) => (path.length === 0 ? message : `${path.join('.')}: ${message}`));
}

/** Takes the parsed JSON of a claims file. Claims of another kind are left alone, malformed ones become faults. */
export function readClaimsFile(json: unknown): ClaimsRead {
  const file = claimsFile.safeParse(json);
  if (!file.success)
    return { solutions: [], others: 0, faults: issuesOf(file.error).map((fault) => ({ id: '', fault })) };
  const solutions: SolutionClaim[] = [];
  const faults: Fault[] = [];
  const seen = new Set<string>();
  let others = 0;
  for (const [i, entry] of file.data.claims.entries()) {
    const head = anyClaim.safeParse(entry);
    const id = head.success ? head.data.id : `claims[${i}]`;
    if (seen.has(id)) faults.push({ id, fault: 'two claims bear this id' });
    seen.add(id);
    if (head.success && head.data.kind !== 'solution') {
      others++;
      continue;
    }
    const claim = solutionClaim.safeParse(entry);
    if (claim.success) solutions.push(claim.data);
    else faults.push(...issuesOf(claim.error).map((fault) => ({ id, fault })));
  }
  return { solutions, others, faults };
}
