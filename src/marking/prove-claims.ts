/** Claims read from disk -> items that hold. Nothing that a file says is believed: every set-up and solution is done again. */

import { coloursHeld, isWrongScheme, readScheme, schemeWords, USUAL_SCHEME } from '../cube/colours.ts';
import { readTurns } from '../cube/notation.ts';
import { prove } from '../cube/solves.ts';
import { lengthOf, type Turn } from '../cube/turns.ts';
import { writeAddress } from '../steps/pair/address.ts';
import { caseOf, familyOf } from '../steps/pair/cases.ts';
import { shortestLength } from '../steps/pair/search/find.ts';
import { doSetUp, type SetUp } from '../steps/pair/set-up.ts';
import { SLOTS } from '../steps/pair/slots.ts';
import { pairSubject } from '../steps/pair/subject.ts';
import { joined } from '../text/likely.ts';
import type { ChoiceClaimText, ClaimsText, Entry, SolutionClaimText } from './claims-file.ts';
import type { ChoiceItem, FalseClaim, SolutionItem } from './items.ts';
import { choiceFault, lettersOf } from './prove-choice.ts';
import { type RuleTable, ruleOf, ruleTable } from './prove-rule.ts';

/** As in proving a lesson: a case whose base is whole never comes near it. */
const MOST_NODES = 50_000_000;

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

/** The case that a claim's set-up gives, its kept slots as the claim has them. */
function caseOfClaim(claim: ClaimOfCase): Found<SetUp & { turns: Turn[] }> {
  const ofHold = holdFault(claim);
  if (ofHold) return { why: ofHold };
  const { setup, pair, kept } = claim;
  const read = turnsIn('set-up', setup);
  if (isFalse(read)) return read;
  const open = SLOTS.filter((slot) => !kept.includes(slot));
  const setUp = doSetUp(read.turns, pair, open);
  if ('fault' in setUp) {
    if (setUp.fault === 'rotates') return { why: 'its set-up ends with the cube turned over' };
    if (setUp.fault === 'hides-pair') return { why: "its set-up leaves the pair's edge in the bottom layer" };
    return { why: `its set-up leaves what should be kept unsolved at ${joined(setUp.broken)}` };
  }
  const why = differs('kept', inOrder(kept), inOrder(setUp.goal.kept));
  return why ? { why } : { ...setUp, turns: read.turns };
}

/** The part of an item that the place of its claim decides. */
interface Placed {
  readonly id: string;
  readonly paper: string;
  readonly number: string;
}

/** `3.1` and `cards:3.1` are solutions of case 3; whatever else has a point is PAPER.ITEM, or a further solution of it. */
function placeOf({ id, kind, sheet = '' }: { id: string; kind: string; sheet?: string | undefined }): Placed {
  const handout = /^((?:[\w-]+:)?\d+)\.\d+$/.exec(id);
  if (handout && kind === 'solution' && !/-(?:key|practice)\.pdf$/.test(sheet)) {
    return { id: handout[1]!, paper: '', number: handout[1]! };
  }
  const ofPaper = /^([^.]+)\.([^.]+)(?:\.\d+)?$/.exec(id);
  if (!ofPaper) return { id, paper: '', number: id };
  const [, paper, number] = ofPaper as unknown as [string, string, string];
  return { id: `${paper}.${number}`, paper, number };
}

export type ShortestOf = (setUp: SetUp) => number | undefined;

/** Searched once for each case: solutions of one case, and printings of one solution, share it. */
export function shortestFinder(): ShortestOf {
  const known = new Map<string, number | undefined>();
  return ({ cube, goal, address }) => {
    const pieces = goal.pieces.map((piece) => cube.spots[piece]).join(' ');
    const key = `${goal.slot} ${goal.kept.join(' ')} ${writeAddress(address)} ${pieces}`;
    if (!known.has(key)) {
      const { shortest, proved } = shortestLength(cube, goal, { nodes: MOST_NODES });
      known.set(key, proved ? shortest : undefined);
    }
    return known.get(key);
  };
}

/** An item before it is known what else there is. */
type Bare<T> = Omit<T, 'lesson' | 'position'>;
export type BareItem = Bare<SolutionItem> | Bare<ChoiceItem>;

/** What the claims of one file are proved with. */
interface Proving {
  readonly shortestOf: ShortestOf;
  readonly table: RuleTable;
}

function solutionItem(
  claim: SolutionClaimText,
  placed: Placed,
  { shortestOf, table }: Proving,
): Found<Bare<SolutionItem>> {
  const setUp = caseOfClaim(claim);
  if (isFalse(setUp)) return setUp;
  const solution = turnsIn('solution', claim.solution);
  if (isFalse(solution)) return solution;
  const { cube, goal, address } = setUp;
  const proof = prove(cube, solution.turns, goal);
  const length = lengthOf(solution.turns);
  const shortest = shortestOf(setUp);
  const why =
    (proof.verdict === 'fails' ? `its solution leaves ${joined(proof.broken)} unsolved` : undefined) ??
    differs('verdict', claim.verdict, proof.verdict) ??
    differs('broken', inOrder(claim.broken), inOrder(proof.broken)) ??
    differs('length', claim.length, length) ??
    differs('address', claim.address, writeAddress(address)) ??
    differs('case', claim.case, writeAddress(caseOf(address))) ??
    differs('family', claim.family, familyOf(address)) ??
    (claim.shortest !== undefined && shortest !== undefined
      ? differs('shortest', claim.shortest, shortest)
      : undefined);
  if (why) return { why };
  const rule = ruleOf(claim.rule, setUp, claim.pair, table);
  if (rule && isFalse(rule)) return rule;
  return {
    ...placed,
    rule,
    kind: 'solution',
    lessonFile: claim.file,
    hold: { up: claim.hold.up, front: claim.hold.front },
    cross: claim.cross,
    setup: setUp.turns,
    cube,
    goal,
    subject: pairSubject(address, { slot: claim.pair, open: SLOTS.filter((slot) => !claim.kept.includes(slot)) }, cube),
    pair: claim.pair,
    family: claim.family,
    key: { turns: claim.solution, length },
    shortest,
  };
}

function choiceItem(claim: ChoiceClaimText, placed: Placed, { table }: Proving): Found<Bare<ChoiceItem>> {
  const setUp = caseOfClaim(claim);
  if (isFalse(setUp)) return setUp;
  const { asks, options, answer } = claim;
  const letters = lettersOf(claim);
  const why = choiceFault(claim, letters, setUp);
  if (why) return { why };
  const rule = ruleOf(claim.rule, setUp, claim.pair, table);
  if (rule && isFalse(rule)) return rule;
  const { turn, now } = claim;
  const mend = turn === undefined || now === undefined ? undefined : { turn, now };
  return { ...placed, rule, kind: 'choice', lessonFile: claim.file, asks, options, letters, answer, mend };
}

/** Two claims of one item must be about one case: another solution, or another printing of it. */
function isSameCase(a: BareItem, b: BareItem): boolean {
  if (a.kind !== 'solution' || b.kind !== 'solution') return false;
  const same = (x: Bare<SolutionItem>): string =>
    [x.hold.up, x.hold.front, x.pair, x.goal.kept.join(' '), x.setup.map((t) => t.text).join(' ')].join('|');
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

export function proveFile(text: ClaimsText, shortestOf: ShortestOf): ProvedFile {
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
  const proving = { shortestOf, table: ruleTable(text.entries) };
  const seen = new Set<string>();
  for (const entry of text.entries) {
    if (entry.kind === 'malformed') {
      const { id } = placeOf({ id: entry.id, kind: 'solution' });
      refuse(entry.id, id, `it has not the form of a claim (${entry.why})`);
      continue;
    }
    if (entry.kind === 'other') {
      others.add(entry.id);
      continue;
    }
    if (entry.kind === 'rule') {
      others.add(entry.claim.id);
      continue;
    }
    const { id: claim } = entry.claim;
    const placed = placeOf(entry.claim);
    const item = itemOf(entry, placed, proving);
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

const itemOf = (entry: Entry & { kind: 'solution' | 'choice' }, placed: Placed, proving: Proving) =>
  entry.kind === 'solution' ? solutionItem(entry.claim, placed, proving) : choiceItem(entry.claim, placed, proving);

const withShorterKey = (there: BareItem, item: BareItem): BareItem =>
  there.kind === 'solution' && item.kind === 'solution' && item.key.length < there.key.length
    ? { ...there, key: item.key }
    : there;
