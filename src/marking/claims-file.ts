/** A claims file as it stands on disk: its form, before anything in it is believed. */
import { z } from 'zod';
import { COLOURS } from '../cube/colours.ts';
import { LARGEST_CLAIMS, MOST_CLAIMS } from './limits.ts';

const colour = z.enum(COLOURS);
const text = z.string().max(4_000);
const count = z.number().int().nonnegative();

const places = z.array(z.string().max(3)).max(20);

const common = {
  id: z.string().min(1).max(100),
  file: text,
  sheet: text.optional(),
  hold: z.looseObject({ up: colour, front: colour }),
  scheme: text.optional(),
  setup: text,
  cross: colour,
  rule: z.string().max(100).optional(),
  step: text,
  base: places,
  goal: z.looseObject({ home: places, top: places, free: z.enum(['U']).nullable() }),
  /** Of a paper, or left out; and what the item is called there, or on the handout. */
  paper: z.string().max(100).optional(),
  item: z.string().min(1).max(100),
};

const solutionClaim = z.looseObject({
  ...common,
  kind: z.literal('solution'),
  solution: text,
  address: text,
  case: text,
  family: text,
  verdict: z.enum(['solves', 'fails']),
  broken: z.array(z.string()).max(20),
  length: count,
  shortest: count.optional(),
});
export type SolutionClaimText = z.infer<typeof solutionClaim>;

const choiceClaim = z.looseObject({
  ...common,
  kind: z.literal('choice'),
  asks: text,
  options: z.array(text).max(12),
  letters: z.array(text).max(12).optional(),
  answer: text,
  turn: count.optional(),
  now: text.optional(),
  piece: text.optional(),
  turns: text.optional(),
  sees: z.array(z.array(text).max(60)).max(12).optional(),
});
export type ChoiceClaimText = z.infer<typeof choiceClaim>;

const ruleClaim = z.looseObject({
  id: z.string().min(1).max(100),
  kind: z.literal('rule'),
  families: z.array(text).max(20),
  see: z.array(text).max(60),
  step: text,
  number: count.positive(),
});
export type RuleClaimText = z.infer<typeof ruleClaim>;

const anyClaim = z.looseObject({ id: z.string().min(1).max(100), kind: z.string().min(1).max(100) });
const claimsFile = z.looseObject({
  lesson: text,
  edition: text.optional(),
  claims: z.array(z.unknown()).max(MOST_CLAIMS),
});

/** One entry of the list: a claim of a known kind, of another kind, or one that has not its form. */
export type Entry =
  | { readonly kind: 'solution'; readonly claim: SolutionClaimText }
  | { readonly kind: 'choice'; readonly claim: ChoiceClaimText }
  | { readonly kind: 'rule'; readonly claim: RuleClaimText }
  | { readonly kind: 'other'; readonly id: string }
  | { readonly kind: 'malformed'; readonly id: string; readonly item: string; readonly why: string };

/** A claims file as read, before anything in it is proved. */
export interface ClaimsText {
  /** As it was named to us. */
  readonly file: string;
  readonly lesson: string;
  /** As printed at the foot of the sheets, where they have one. */
  readonly edition: string | undefined;
  readonly entries: readonly Entry[];
}

const issue = ({ issues }: z.ZodError): string => {
  const { path, message } = issues[0]!;
  return path.length === 0 ? message : `${path.join('.')}: ${message}`;
};

const CLAIMS = { solution: solutionClaim, choice: choiceClaim, rule: ruleClaim };

function entryOf(value: unknown, index: number): Entry {
  const any = anyClaim.safeParse(value);
  if (!any.success) return malformed(`claims[${index}]`, {}, any.error);
  const { id, kind } = any.data;
  if (!Object.hasOwn(CLAIMS, kind)) return { kind: 'other', id };
  const read = CLAIMS[kind as keyof typeof CLAIMS].safeParse(value);
  return read.success ? ({ kind, claim: read.data } as Entry) : malformed(id, any.data, read.error);
}

/** With the item that it seems to be about. */
function malformed(id: string, { paper, item }: Readonly<Record<string, unknown>>, error: z.ZodError): Entry {
  const named = [paper, item].filter((part) => typeof part === 'string');
  return { kind: 'malformed', id, item: named.join('.') || id, why: issue(error) };
}

/** Why a claims file that is to be written could not be read again; undefined where it can. */
export function tooLarge(claims: number, bytes: number): string | undefined {
  if (claims > MOST_CLAIMS) return `has ${claims} claims, and ${MOST_CLAIMS} is the most that "mark" reads`;
  const [is, most] = [bytes, LARGEST_CLAIMS].map((n) => Math.ceil(n / 1_000_000));
  return bytes > LARGEST_CLAIMS ? `is of ${is} MB, and ${most} is the most that "mark" reads` : undefined;
}

const EARLIER =
  'an earlier turnsheet wrote it, with less than is read now; build the lesson again: its papers stay as they are';
const isOfAnEarlierTool = (claim: unknown): boolean => {
  const any = anyClaim.safeParse(claim);
  return any.success && Object.hasOwn(CLAIMS, any.data.kind) && !('step' in any.data);
};

/** The text of a claims file, or why it is none. */
export function readClaimsText(file: string, json: string): ClaimsText | { readonly unreadable: string } {
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch (e) {
    return { unreadable: `it is not JSON: ${e instanceof Error ? e.message : String(e)}` };
  }
  const read = claimsFile.safeParse(value);
  if (!read.success) return { unreadable: `it is no claims file: ${issue(read.error)}` };
  if (read.data.claims.some(isOfAnEarlierTool)) return { unreadable: EARLIER };
  const { lesson, edition } = read.data;
  return { file, lesson, edition, entries: read.data.claims.map(entryOf) };
}
