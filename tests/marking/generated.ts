/**
 * Answers as a class might write them, right and wrong, of which the second checker says what they are: its own reader
 * and its own stickers (src/audit), which share nothing with the engine.
 */

import { basePlaces } from '../../src/audit/pair-claims.ts';
import { cornerOf, isHome, PLACES, SLOTS } from '../../src/audit/places.ts';
import { lengthOf, readTurns } from '../../src/audit/read-turns.ts';
import { afterTurns, againstCentres } from '../../src/audit/stickers.ts';
import { marker } from '../../src/marking/mark.ts';
import { likelyMeant } from '../../src/marking/spelling.ts';
import { reprovePair } from '../audit/claims.ts';
import { type Random, randomFrom } from '../random.ts';
import { type ClaimText, claimsOf, fileOf, optionsOf, proved, sampleNames, submission } from './class.ts';

const FACES = [...'UDRLFB'];
const LAYERS = [...FACES, ...FACES.map((f) => `${f}w`), ...'MESxyz'];
const TURNS = LAYERS.flatMap((layer) => ['', '2', "'"].map((amount) => layer + amount));

/** The verdict by the second checker, by the words of the design. */
export function expectedOf(
  { setup, pair, kept }: ClaimText,
  answer: string,
): { verdict: string; broken: string[]; length: number } {
  const read = readTurns(answer);
  const before = readTurns(setup);
  if (!before.ok) throw new Error(setup);
  if (!read.ok) return { verdict: 'unreadable', broken: [], length: 0 };
  const start = afterTurns(before.turns);
  const raw = afterTurns(read.turns, start);
  const [was, is] = [againstCentres(start), againstCentres(raw)];
  const required = new Set([...basePlaces(kept), cornerOf(pair), pair]);
  const broken = PLACES.filter((place) => required.has(place) && !isHome(is, place));
  const length = lengthOf(read.turns);
  const isWhole = (state: typeof is, slot: (typeof SLOTS)[number]): boolean =>
    isHome(state, cornerOf(slot)) && isHome(state, slot);
  if (broken.length === 0) {
    const centresMoved = [49, 50, 51, 52, 53, 54].some((c) => raw[c] !== start[c]);
    const turned = centresMoved || read.turns.some(({ layer }) => 'xyz'.includes(layer));
    return { verdict: turned ? 'solves-turned' : 'solves', broken, length };
  }
  if (isWhole(is, pair) && kept.some((slot) => !isWhole(is, slot))) return { verdict: 'disturbs', broken, length };
  const onlyPair = broken.every((place) => place === pair || place === cornerOf(pair));
  const others = SLOTS.filter((s) => s !== pair && !kept.includes(s) && !isWhole(was, s) && isWhole(is, s));
  return { verdict: onlyPair && others.length > 0 ? 'other-pair' : 'fails', broken, length };
}

const split = (text: string): string[] => text.split(' ');
const inverted = (turns: readonly string[]): string[] =>
  turns.map((t) => (t.endsWith("'") ? t.slice(0, -1) : t.endsWith('2') ? t : `${t}'`)).reverse();

/** In a mirror to the left and right, of face and wide turns. */
const mirrored = (turns: readonly string[]): string[] =>
  turns.map((t) => inverted([t.replace(/[RL]/, (f) => (f === 'R' ? 'L' : 'R'))])[0]!);

/** As one writes the same who has turned the cube by y: the face that was on the right is in front. */
const fromTheRight = (turns: readonly string[]): string[] =>
  turns.map((t) => t.replace(/^[FRBL]/, (f) => 'FRBLF'['FRBL'.indexOf(f) + 1]!));

const isPlain = (turns: readonly string[]): boolean => turns.every((t) => /^[UDRLFB]w?[2']?$/.test(t));

type Plant = (right: readonly string[], r: Random) => readonly string[] | undefined;

/** The slips, from an answer that is right; undefined where it has no room for one. */
const SLIPS: Readonly<Record<string, Plant>> = {
  changed: (right, r) => {
    const at = r.below(right.length);
    return right.with(at, r.pick(TURNS.filter((t) => t !== right[at])));
  },
  prime: (right, r) => {
    const at = r.below(right.length);
    const layer = right[at]!.replace(/[2']$/, '');
    return right.with(at, r.pick(['', '2', "'"].map((a) => layer + a).filter((t) => t !== right[at])));
  },
  dropped: (right, r) => right.toSpliced(r.below(right.length), 1),
  added: (right, r) => right.toSpliced(r.below(right.length + 1), 0, r.pick(TURNS)),
  swapped: (right, r) => {
    if (right.length < 2) return undefined;
    const at = r.below(right.length - 1);
    return right.toSpliced(at, 2, right[at + 1]!, right[at]!);
  },
  'u-first': (right) => (right[0]!.startsWith('U') && right[0]!.length < 3 ? right.slice(1) : undefined),
  inverted: (right) => inverted(right),
  mirrored: (right) => (isPlain(right) ? mirrored(right) : undefined),
  'other-side': (right) => (isPlain(right) ? fromTheRight(right) : undefined),
};

/** Other answers that are as right as the key; tidy ones never turn a face twice in a row, which slips could not tell apart. */
function another(key: readonly string[], r: Random, tidy: boolean): readonly string[] {
  switch (r.below(6)) {
    case 0:
      return isPlain(key) ? ["y'", ...fromTheRight(key)] : key;
    case 1:
      return [...key, r.pick(['U', "U'", 'U2', 'y', "y'", 'y2', 'x', 'z2'])];
    case 2: {
      if (tidy) return key;
      const first = r.pick(['U', "U'", 'U2']);
      return [first, ...inverted([first]), ...key];
    }
    case 3: {
      const at = key.indexOf('R');
      // A wide turn is its opposite face and a rotation: regulations, article 12a.
      return at < 0 ? key : key.toSpliced(at, 1, 'Lw', 'x');
    }
    default:
      return key;
  }
}

/** The same turns spelt otherwise, in ways that are read. */
function respelt(turns: readonly string[], r: Random): string {
  const signs = r.pick(["'", '’', '′']);
  const text = turns.map((t) => t.replace("'", signs).replace(/2$/, r.chance(0.2) ? `2${signs}` : '2'));
  switch (r.below(5)) {
    case 0:
      return text.join('');
    case 1: {
      const at = r.below(text.length);
      return [...text.slice(0, at), `(${text.slice(at).join(' ')})`].join(' ');
    }
    case 2:
      return `  ${text.join('   ')} `;
    case 3:
      return text.map((t) => t.replace(/^([UDRLFB])w/, (_, f: string) => f.toLowerCase())).join(' ');
    default:
      return text.join(' ');
  }
}

/** Spelt in ways that are not read, but understood. */
const MISSPELT: readonly ((turns: readonly string[]) => string)[] = [
  (turns) => turns.map((t) => t.replace("'", 'i')).join(' '),
  (turns) => turns.map((t) => t.replace("'", '3')).join(' '),
  (turns) => turns.map((t) => t.replace("'", '´')).join(' '),
  (turns) => turns.map((t) => t.replace("'", '`')).join(' '),
  (turns) => turns.map((t) => t.replace("'", '-')).join(' '),
  (turns) => turns.join(', '),
  (turns) => turns.map((t) => t.replace(/2$/, "'2")).join(' '),
  (turns) => turns.map((t) => t.replace('B', 'В')).join(' '),
];

/** The same case a turn of the top later, so that a solution begins with one; its fields by the second checker. */
function turnedFirst(claim: ClaimText, index: number): ClaimText {
  const [turn, back] = [
    ['U', "U'"],
    ["U'", 'U'],
    ['U2', 'U2'],
  ][index % 3] as [string, string];
  const setup = `${claim.setup} ${turn}`;
  const solution = `${back} ${claim.solution}`;
  const { address, case: form, family, length } = reprovePair({ ...claim, setup, solution });
  const { shortest: _, ...rest } = { ...claim, shortest: 0 };
  return {
    ...rest,
    id: `top:${claim.id}`,
    item: `top:${claim.item}`,
    setup,
    solution,
    ...{ address, case: form, family, length },
  };
}

export interface Tally {
  answers: number;
  readonly verdicts: Record<string, number>;
  readonly planted: Record<string, number>;
  meant: number;
  readonly faults: string[];
}

/** Marks so many answers and compares; everything that is not as the second checker says is a fault. */
export function markGenerated(count: number, seed: number): Tally {
  const r = randomFrom(seed);
  const samples = sampleNames().flatMap((name) =>
    claimsOf(name).map((claim) => ({ ...claim, id: `${name}:${claim.id}`, item: `${name}:${claim.item}` })),
  );
  const claims = [...samples, ...samples.filter((_, i) => i % 3 === 0).map(turnedFirst)];
  const { items, falseClaims } = proved(fileOf(claims));
  if (falseClaims.length > 0) throw new Error(falseClaims[0]!.why);
  const mark = marker(items, optionsOf());
  const tally: Tally = { answers: 0, verdicts: {}, planted: {}, meant: 0, faults: [] };

  const check = (claim: ClaimText, answer: string, restored?: readonly string[], slip?: string): void => {
    tally.answers++;
    const row = mark(submission(claim.id, answer));
    const expected = expectedOf(claim, answer);
    const told = `${claim.id} "${answer}"${slip ? ` (${slip})` : ''}`;
    tally.verdicts[expected.verdict] = (tally.verdicts[expected.verdict] ?? 0) + 1;
    if (row.verdict !== expected.verdict) tally.faults.push(`${told}: ${row.verdict}, not ${expected.verdict}`);
    if ([...row.broken].sort().join() !== expected.broken.toSorted().join())
      tally.faults.push(`${told}: broken ${row.broken}`);
    if (expected.verdict !== 'unreadable' && row.length !== expected.length)
      tally.faults.push(`${told}: length ${row.length}`);
    for (const miss of row.nearMisses) {
      const solves = expectedOf(claim, miss.answer).verdict.startsWith('solves');
      if (miss.kind !== 'neighbour' && !solves) tally.faults.push(`${told}: near miss ${miss.answer} does not solve`);
    }
    if (!restored || expected.verdict.startsWith('solves')) return;
    tally.planted[slip!] = (tally.planted[slip!] ?? 0) + 1;
    if (!row.nearMisses.some((miss) => miss.answer === restored.join(' '))) {
      tally.faults.push(`${told}: planted in "${restored.join(' ')}", which is not among the near misses`);
    }
  };

  while (tally.answers < count) {
    const claim = r.pick(claims);
    const key = split(claim.solution);
    const which = r.below(10);
    const right = another(key, r, which >= 2);
    if (which < 2) check(claim, respelt(right, r));
    else if (which < 8) {
      const slip = r.pick(Object.keys(SLIPS));
      const answer = SLIPS[slip]!(right, r);
      if (answer && answer.length > 0) check(claim, answer.join(' '), right, slip);
    } else if (which === 8) {
      check(
        claim,
        Array.from({ length: 1 + r.below(14) }, () => r.pick(r.chance(0.7) ? TURNS.slice(0, 18) : TURNS)).join(' '),
      );
    } else {
      const answer = r.pick(MISSPELT)(key);
      check(claim, answer);
      if (readTurns(answer).ok) continue;
      const meant = likelyMeant(answer).map((turns) => turns.map((t) => t.text).join(' '));
      tally.meant++;
      if (!meant.includes(key.join(' '))) tally.faults.push(`${claim.id} "${answer}": meant ${meant.join(' or ')}`);
    }
  }
  return tally;
}
