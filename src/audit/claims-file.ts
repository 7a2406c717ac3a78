/** The claims file as a stranger reads it: its form, and problems where it has another. */
import { z } from 'zod';
import { PLACES, SLOTS } from './places.ts';

const slot = z.enum(SLOTS);
const places = z.array(z.enum(PLACES)).readonly();
const count = z.number().int().nonnegative();

/** Of a phase: its turns, and the address after them. */
const phase = z.object({ turns: z.string(), address: z.string() });
const merge = z.object({
  turn: count.positive(),
  of: z.string(),
  as: z.array(z.string()).readonly(),
  address: z.string(),
});

/**
 * A claim of kind `solution` as it stands in a claims file. This is the contract of the file and not of the prover,
 * written out a second time on purpose. Further fields may stand there; they are not judged.
 */
const solutionClaim = z.object({
  id: z.string().min(1),
  kind: z.literal('solution'),
  /** Of the solve. Only pairs are judged by their address, case and family, pair and kept slots. */
  step: z.string(),
  file: z.string(),
  /** 1-based, of the solution in the lesson file. */
  line: count.positive(),
  sheet: z.string().min(1),
  /** Physical, 1-based. */
  page: count.positive(),
  hold: z.object({ up: z.string(), front: z.string() }),
  /** Six colours, up front right down back left; those of most cubes where it is left out. */
  scheme: z.string().nullish(),
  setup: z.string(),
  solution: z.string(),
  cross: z.string(),
  /** Home after the set-up and after the solution. */
  base: places,
  /** What the solution brings about besides: see `Reproof`. */
  goal: z.object({ home: places, top: places, free: z.enum(['U']).nullable() }),
  /** Of a claim about a pair, with `kept`. */
  pair: slot.optional(),
  kept: z.array(slot).readonly().optional(),
  address: z.string(),
  case: z.string(),
  family: z.string(),
  verdict: z.enum(['solves', 'fails']),
  broken: z.array(z.string()).readonly(),
  length: count,
  shortest: count.nullish(),
  phases: z.array(phase).readonly().nullish(),
  merges: z.array(merge).readonly().nullish(),
});
export type SolutionClaim = Readonly<z.infer<typeof solutionClaim>>;

/** Files come from anywhere: no question has more. */
const MOST_OPTIONS = 12;
const LONGEST_OPTION = 2_000;
const MOST_WORDS = 40;
const LONGEST_WORD = 100;

/**
 * A question which of some rules is so, of a claims file likewise. Rules are said of pairs alone.
 */
const ruleChoiceClaim = z.object({
  id: z.string().min(1),
  kind: z.literal('choice'),
  asks: z.literal('rule'),
  setup: z.string(),
  cross: z.string(),
  pair: slot,
  /** What is printed beside each letter. */
  options: z.array(z.string().max(LONGEST_OPTION)).max(MOST_OPTIONS).readonly(),
  letters: z.array(z.string()).max(MOST_OPTIONS).readonly(),
  answer: z.string(),
  /** By ours, the club's own words that are printed in their place. */
  words: z
    .record(z.string().max(LONGEST_WORD), z.string().max(LONGEST_WORD))
    .refine((words) => Object.keys(words).length <= MOST_WORDS, 'too many words')
    .optional(),
});
export type RuleChoiceClaim = Readonly<z.infer<typeof ruleChoiceClaim>>;

/** The parts of a claim that a reader of the sheet has in hand. */
export type SolutionClaimText = Pick<SolutionClaim, 'setup' | 'solution' | 'base' | 'goal'>;
/** What a claim about a pair has besides. */
export type PairText = { readonly [field in 'pair' | 'kept']: NonNullable<SolutionClaim[field]> };

const claimsFile = z.looseObject({
  lesson: z.string(),
  file: z.string(),
  sheets: z.array(z.unknown()),
  claims: z.array(z.unknown()),
});

const anyClaim = z.looseObject({ id: z.string().min(1), kind: z.string().min(1), asks: z.string().optional() });

export interface Fault {
  /** The claim's id; `claims[3]` where it has none; empty for the file as a whole. */
  readonly id: string;
  readonly fault: string;
}

export interface ClaimsRead {
  readonly solutions: readonly SolutionClaim[];
  /** Questions which rule is so. */
  readonly questions: readonly RuleChoiceClaim[];
  /** Claims of another kind. */
  readonly others: number;
  readonly faults: readonly Fault[];
}

function issuesOf(error: z.ZodError): string[] {
  return error.issues.map(({ path, message }) => (path.length === 0 ? message : `${path.join('.')}: ${message}`));
}

/** Takes the parsed JSON of a claims file. Claims of other kinds are left alone, malformed ones become faults. */
export function readClaimsFile(json: unknown): ClaimsRead {
  const file = claimsFile.safeParse(json);
  if (!file.success)
    return {
      solutions: [],
      questions: [],
      others: 0,
      faults: issuesOf(file.error).map((fault) => ({ id: '', fault })),
    };
  const solutions: SolutionClaim[] = [];
  const questions: RuleChoiceClaim[] = [];
  const faults: Fault[] = [];
  const seen = new Set<string>();
  let others = 0;
  for (const [i, entry] of file.data.claims.entries()) {
    const head = anyClaim.safeParse(entry);
    const id = head.success ? head.data.id : `claims[${i}]`;
    if (seen.has(id)) faults.push({ id, fault: 'two claims bear this id' });
    seen.add(id);
    const tell = ({ error }: { readonly error: z.ZodError }): void => {
      faults.push(...issuesOf(error).map((fault) => ({ id, fault })));
    };
    if (head.success && head.data.kind === 'choice' && head.data.asks === 'rule') {
      const claim = ruleChoiceClaim.safeParse(entry);
      if (claim.success) questions.push(claim.data);
      else tell(claim);
    } else if (head.success && head.data.kind !== 'solution') {
      others++;
    } else {
      const claim = solutionClaim.safeParse(entry);
      if (claim.success) solutions.push(claim.data);
      else tell(claim);
    }
  }
  return { solutions, questions, others, faults };
}
