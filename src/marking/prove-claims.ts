/** Claims read from disk -> items that hold. Nothing that a file says is believed: every set-up and solution is done again. */

import { coloursHeld, isWrongScheme, readScheme, schemeWords, USUAL_SCHEME } from '../cube/colours.ts';
import { readTurns } from '../cube/notation.ts';
import { prove } from '../cube/solves.ts';
import { lengthOf, type Turn } from '../cube/turns.ts';
import { goalClaim } from '../lesson/case-claim.ts';
import type { GoalClaim } from '../lesson/claim.ts';
import { stepNamed, stepOf } from '../steps/steps.ts';
import { type Subject, subjectKey } from '../steps/subject.ts';
import { joined } from '../text/likely.ts';
import type { ChoiceClaimText, ClaimsText, Entry, SolutionClaimText } from './claims-file.ts';
import type { ChoiceItem, FalseClaim, SolutionItem } from './items.ts';
import { choiceFault, lettersOf } from './prove-choice.ts';
import { type RuleTable, ruleOf, ruleTable } from './prove-rule.ts';

type Found<T> = T | { readonly why: string };
const isFalse = (found: object): found is { readonly why: string } => 'why' in found;

const differs = (field: string, said: unknown, is: unknown): string | undefined =>
  said === is ? undefined : `the file says ${field} ${said || 'none'}, the cube says ${is || 'none'}`;

const inOrder = (words: readonly string[]): string => [...words].sort().join(' ');

function turnsIn(field: string, text: string): Found<{ turns: Turn[] }> {
  const reading = readTurns(text);
  return reading.ok
    ? reading
    : { why: `its ${field} cannot be read at character ${reading.at + 1}: ${reading.message}` };
}

/** The cross is opposite to what is up, and what is in front is beside both, in the colours that the claim names. */
function holdFault({ hold, cross, scheme }: ClaimOfCase): string | undefined {
  const colours = scheme === undefined ? USUAL_SCHEME : readScheme(schemeWords(scheme));
  if (isWrongScheme(colours)) return colours.wrong;
  const held = coloursHeld(colours, hold);
  if (!held) return `${hold.front} cannot be in front with ${hold.up} up`;
  return differs('cross', cross, held.D);
}

type ClaimOfCase = SolutionClaimText | ChoiceClaimText;

const goalText = ({ home, top, free }: ClaimOfCase['goal'] | GoalClaim): string =>
  [inOrder(home), ...(top.length > 0 ? [`top of ${inOrder(top)}`] : []), ...(free ? [`up to ${free}`] : [])].join(', ');

/** The case that a claim's set-up gives, and the set-up. */
function caseOfClaim(claim: ClaimOfCase): Found<{ subject: Subject; setup: readonly Turn[] }> {
  const ofHold = holdFault(claim);
  if (ofHold) return { why: ofHold };
  const step = stepNamed(claim.step);
  if (!step) return { why: `nothing is known of the step "${claim.step}"` };
  const read = turnsIn('set-up', claim.setup);
  if (isFalse(read)) return read;
  const subject = step.marking.subjectOfClaim(claim, read.turns);
  if (isFalse(subject)) return subject;
  // Marking asks the step; what the file says for other checkers has to be the same.
  const is = goalClaim(subject);
  const why =
    differs('base', inOrder(claim.base), inOrder(is.base)) ?? differs('goal', goalText(claim.goal), goalText(is.goal));
  return why ? { why } : { subject, setup: read.turns };
}

/** The part of an item that the place of its claim decides. */
interface Placed {
  readonly id: string;
  readonly paper: string;
  readonly number: string;
}

/** `paper` is left out on a handout: see `ClaimOfCase` (src/lesson/claim.ts). */
const placeOf = ({ paper = '', item }: { paper?: string | undefined; item: string }): Placed => ({
  id: paper === '' ? item : `${paper}.${item}`,
  paper,
  number: item,
});

/** An item before it is known what else there is. */
type Bare<T> = Omit<T, 'lesson' | 'position' | 'onPaper'>;
export type BareItem = Bare<SolutionItem> | Bare<ChoiceItem>;

function solutionItem(claim: SolutionClaimText, placed: Placed, table: RuleTable): Found<Bare<SolutionItem>> {
  const setUp = caseOfClaim(claim);
  if (isFalse(setUp)) return setUp;
  const { subject, setup } = setUp;
  const solution = turnsIn('solution', claim.solution);
  if (isFalse(solution)) return solution;
  const proof = prove(subject.cube, solution.turns, subject.goal);
  const length = lengthOf(solution.turns);
  const fewest = stepOf(subject).shortest(subject);
  const shortest = fewest.proved ? fewest.shortest : undefined;
  const why =
    (proof.verdict === 'fails' ? `its solution leaves ${joined(proof.broken)} unsolved` : undefined) ??
    differs('verdict', claim.verdict, proof.verdict) ??
    differs('broken', inOrder(claim.broken), inOrder(proof.broken)) ??
    differs('length', claim.length, length) ??
    differs('address', claim.address, subject.address) ??
    differs('case', claim.case, subject.caseAddress) ??
    differs('family', claim.family, subject.family) ??
    (claim.shortest !== undefined && shortest !== undefined
      ? differs('shortest', claim.shortest, shortest)
      : undefined);
  if (why) return { why };
  const rule = ruleOf(claim.rule, subject, table);
  if (rule && isFalse(rule)) return rule;
  return {
    ...placed,
    rule,
    kind: 'solution',
    step: subject.step,
    lessonFile: claim.file,
    hold: { up: claim.hold.up, front: claim.hold.front },
    cross: claim.cross,
    setup,
    subject,
    key: { turns: claim.solution, length },
    shortest,
  };
}

function choiceItem(claim: ChoiceClaimText, placed: Placed, table: RuleTable): Found<Bare<ChoiceItem>> {
  const setUp = caseOfClaim(claim);
  if (isFalse(setUp)) return setUp;
  const { subject } = setUp;
  const { asks, options, answer, step } = claim;
  const letters = lettersOf(claim);
  const why = choiceFault(claim, letters, subject);
  if (why) return { why };
  const rule = ruleOf(claim.rule, subject, table);
  if (rule && isFalse(rule)) return rule;
  const { turn, now } = claim;
  const mend = turn === undefined || now === undefined ? undefined : { turn, now };
  return { ...placed, rule, step, kind: 'choice', lessonFile: claim.file, asks, options, letters, answer, mend };
}

/** Two claims of one item must be about one case: another solution, or another printing of it. */
function isSameCase(a: BareItem, b: BareItem): boolean {
  if (a.kind !== 'solution' || b.kind !== 'solution') return false;
  const same = (x: Bare<SolutionItem>): string =>
    [x.hold.up, x.hold.front, subjectKey(x.subject), x.setup.map((t) => t.text).join(' ')].join('|');
  return same(a) === same(b);
}

/** What one file has. */
export interface ProvedFile {
  readonly text: ClaimsText;
  /** By their ids, in the order of the file. */
  readonly items: ReadonlyMap<string, BareItem>;
  /** The id of the item by that of each of its claims. */
  readonly claims: ReadonlyMap<string, string>;
  /** By claim id, and by item id where no claim of the item holds. */
  readonly unproved: ReadonlyMap<string, FalseClaim>;
  readonly others: ReadonlySet<string>;
  readonly falseClaims: readonly FalseClaim[];
}

export function proveFile(text: ClaimsText): ProvedFile {
  const items = new Map<string, BareItem>();
  const claims = new Map<string, string>();
  const unproved = new Map<string, FalseClaim>();
  const others = new Set<string>();
  const falseClaims: FalseClaim[] = [];
  const refuse = (claim: string, item: string, why: string): void => {
    const refused = { file: text.file, claim, item, why };
    falseClaims.push(refused);
    unproved.set(claim, refused);
    if (!items.has(item)) unproved.set(item, refused);
  };
  const table = ruleTable(text.entries);
  const seen = new Set<string>();
  for (const entry of text.entries) {
    if (entry.kind === 'malformed') {
      refuse(entry.id, entry.item, `it has not the form of a claim (${entry.why})`);
      continue;
    }
    if (entry.kind === 'other' || entry.kind === 'rule') {
      others.add(entry.kind === 'rule' ? entry.claim.id : entry.id);
      continue;
    }
    const { id: claim } = entry.claim;
    const placed = placeOf(entry.claim);
    const item = itemOf(entry, placed, table);
    const there = items.get(placed.id);
    if (seen.has(claim)) refuse(claim, placed.id, 'two claims bear this id');
    else if (isFalse(item)) refuse(claim, placed.id, item.why);
    else if (there && !isSameCase(there, item)) {
      refuse(claim, placed.id, 'another claim of the item has another set-up');
    } else {
      claims.set(claim, placed.id);
      unproved.delete(placed.id);
      items.set(placed.id, there ? withShorterKey(there, item) : item);
    }
    seen.add(claim);
  }
  return { text, items, claims, unproved, others, falseClaims };
}

const itemOf = (entry: Entry & { kind: 'solution' | 'choice' }, placed: Placed, table: RuleTable) =>
  entry.kind === 'solution' ? solutionItem(entry.claim, placed, table) : choiceItem(entry.claim, placed, table);

const withShorterKey = (there: BareItem, item: BareItem): BareItem =>
  there.kind === 'solution' && item.kind === 'solution' && item.key.length < there.key.length
    ? { ...there, key: item.key }
    : there;
