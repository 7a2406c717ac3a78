/** Claims read from disk -> items that hold. Nothing that a file says is believed: every set-up and solution is done again. */
import { writeAddress } from '../cube/address.ts';
import { caseOf, familyOf } from '../cube/cases.ts';
import { SLOTS } from '../cube/goal.ts';
import { readTurns } from '../cube/notation.ts';
import { shortestLength } from '../cube/search/find.ts';
import { prove } from '../cube/solves.ts';
import { lengthOf, type Turn } from '../cube/turns.ts';
import { joined } from '../lesson/likely.ts';
import { doSetUp, type SetUp } from '../lesson/set-up.ts';
import type { ChoiceClaimText, ClaimsText, Entry, SolutionClaimText } from './claims-file.ts';
import { type ChoiceItem, type FalseClaim, type Item, type Items, nameKey, type SolutionItem } from './items.ts';
import { choiceFault, lettersOf } from './prove-choice.ts';

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

/** The case that a claim's set-up gives, its kept slots as the claim has them. */
function caseOfClaim({
  setup,
  pair,
  kept,
}: Pick<SolutionClaimText, 'setup' | 'pair' | 'kept'>): Found<SetUp & { turns: Turn[] }> {
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

type ShortestOf = (setUp: SetUp) => number | undefined;

/** Searched once for each case: solutions of one case, and printings of one solution, share it. */
function shortestFinder(): ShortestOf {
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

type Bare<T> = Omit<T, 'lesson' | 'position'>;
type BareItem = Bare<SolutionItem> | Bare<ChoiceItem>;

function solutionItem(claim: SolutionClaimText, placed: Placed, shortestOf: ShortestOf): Found<Bare<SolutionItem>> {
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
  return {
    ...placed,
    kind: 'solution',
    lessonFile: claim.file,
    hold: { up: claim.hold.up, front: claim.hold.front },
    cross: claim.cross,
    setup: setUp.turns,
    cube,
    goal,
    pair: claim.pair,
    family: claim.family,
    key: { turns: claim.solution, length },
    shortest,
  };
}

function choiceItem(claim: ChoiceClaimText, placed: Placed): Found<Bare<ChoiceItem>> {
  const setUp = caseOfClaim(claim);
  if (isFalse(setUp)) return setUp;
  const { asks, options, answer } = claim;
  const letters = lettersOf(claim);
  const why = choiceFault(claim, letters, setUp);
  if (why) return { why };
  return { ...placed, kind: 'choice', lessonFile: claim.file, asks, options, letters, answer };
}

/** Two claims of one item must be about one case: another solution, or another printing of it. */
function isSameCase(a: BareItem, b: BareItem): boolean {
  if (a.kind !== 'solution' || b.kind !== 'solution') return false;
  const same = (x: Bare<SolutionItem>): string =>
    [x.hold.up, x.hold.front, x.pair, x.goal.kept.join(' '), x.setup.map((t) => t.text).join(' ')].join('|');
  return same(a) === same(b);
}

interface Gathered {
  readonly items: Map<string, BareItem & { readonly lesson: string }>;
  readonly names: Map<string, string>;
  readonly unproved: Map<string, FalseClaim>;
  readonly others: Set<string>;
}

function gather(
  entry: Entry,
  { file, lesson }: ClaimsText,
  into: Gathered,
  shortestOf: ShortestOf,
): FalseClaim | undefined {
  const { items, names, unproved, others } = into;
  const isKnown = (id: string): boolean =>
    names.has(nameKey(id)) || unproved.has(nameKey(id)) || others.has(nameKey(id));
  const refuse = (claim: string, item: string, why: string): FalseClaim => {
    const refused = { file, claim, item, why };
    unproved.set(nameKey(claim), refused);
    if (!items.has(nameKey(item))) unproved.set(nameKey(item), refused);
    return refused;
  };
  if (entry.kind === 'malformed') {
    return refuse(
      entry.id,
      placeOf({ id: entry.id, kind: 'solution' }).id,
      `it has not the form of a claim (${entry.why})`,
    );
  }
  if (entry.kind === 'other') {
    others.add(nameKey(entry.id));
    return undefined;
  }
  const { claim } = entry;
  const placed = placeOf(claim);
  if (isKnown(claim.id)) return refuse(claim.id, placed.id, 'two claims bear this id');
  const item =
    entry.kind === 'solution' ? solutionItem(entry.claim, placed, shortestOf) : choiceItem(entry.claim, placed);
  if (isFalse(item)) return refuse(claim.id, placed.id, item.why);
  const key = nameKey(placed.id);
  const there = items.get(key);
  if (there && !isSameCase(there, item))
    return refuse(claim.id, placed.id, 'another claim of the item has another set-up');
  names.set(nameKey(claim.id), key);
  unproved.delete(key);
  if (!there) items.set(key, { ...item, lesson });
  else if (there.kind === 'solution' && item.kind === 'solution' && item.key.length < there.key.length) {
    items.set(key, { ...there, key: item.key });
  }
  return undefined;
}

/** The items of claims files, and the claims that do not hold, in the order of the files. */
export function proveClaims(files: readonly ClaimsText[]): { items: Items; falseClaims: FalseClaim[] } {
  const into: Gathered = { items: new Map(), names: new Map(), unproved: new Map(), others: new Set() };
  const shortestOf = shortestFinder();
  const falseClaims = files.flatMap((file) =>
    file.entries.map((entry) => gather(entry, file, into, shortestOf)).filter((found) => found !== undefined),
  );
  const positions = new Map<string, number>();
  const byKey = new Map<string, Item>();
  for (const [key, bare] of into.items) {
    const sheet = `${bare.lesson}|${bare.paper}`;
    const position = positions.get(sheet) ?? 0;
    positions.set(sheet, position + 1);
    byKey.set(key, { ...bare, position } as Item);
  }
  const items = [...byKey.values()];
  const byName = new Map(byKey);
  for (const [name, key] of into.names) byName.set(name, byKey.get(key)!);
  const papers = [...new Set(items.map((item) => item.paper).filter((paper) => paper !== ''))];
  return { items: { items, byName, unproved: into.unproved, others: into.others, papers }, falseClaims };
}
