/** Practice papers: one for each student, all different where neighbours could look, all equally hard. */
import { listed } from '../lesson/likely.ts';
import type { ExerciseKind, Level, PracticeRequest } from '../lesson/practice.ts';
import type { Problem, Span } from '../lesson/problem.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import { drawWords, lettersFor, partsFor } from './check-word.ts';
import { CHECK_WORDS } from './check-words.ts';
import type { Exercise } from './exercise.ts';
import type { Candidate } from './kinds/kind.ts';
import { KINDS } from './kinds/kinds.ts';
import { type Material, materialOf } from './material.ts';
import { paperCode } from './paper-code.ts';
import { type Random, randomFor } from './random.ts';
import { Coverage, distancesOf, ranked, type Shelf, shelvesOf, targetOf } from './selection.ts';
import { type SetUps, startSetUps } from './set-ups.ts';
import { ProvedExercise } from './soundness.ts';

export interface Student {
  /** Printed at the top of the paper; undefined: nothing is. */
  readonly code: string | undefined;
  /** The lesson as it is for this student. */
  readonly proved: ProvedLesson;
  /** Undefined: as the lesson says. */
  readonly level: Level | undefined;
  /** Lessons of the evenings before, the latest first, as they are for this student; some of their cases come back. */
  readonly earlier?: readonly ProvedLesson[];
}

export interface PaperItem {
  /** As printed, from 1. */
  readonly number: number;
  readonly proved: ProvedExercise;
  readonly exercise: Exercise;
  /** Indices of the options in the order in which they are printed; empty where there are none. */
  readonly order: readonly number[];
  /** The letters printed before them. */
  readonly letters: readonly string[];
  /** Of the line of the lesson that asked for it. */
  readonly span: Span;
}

export interface PracticePaper {
  readonly code: string;
  readonly student: Student;
  readonly items: readonly PaperItem[];
  /** What the letters of the right choices spell, one after the other; empty: no check word. */
  readonly checkWords: readonly string[];
  /** In points: see difficulty.ts. */
  readonly difficulty: number;
  /** What papers of this level are to come to. */
  readonly target: number;
}

/** Hundredths by which a paper may be off its level's target: two papers of a level differ by at most twice that. */
export const MOST_OFF = 3;

/** A line of the lesson and the shelves for what it asks. */
interface Group {
  readonly kind: ExerciseKind;
  readonly span: Span;
  readonly candidates: readonly Candidate[];
  readonly shelves: readonly Shelf[];
}

/** The stuff of one variation of a lesson, with what was worked out for earlier papers. */
interface Desk {
  readonly material: Material;
  readonly request: PracticeRequest;
  /** By kind: what there is. */
  readonly candidates: ReadonlyMap<ExerciseKind, readonly Candidate[]>;
  /** For items to solve, one after the other: what an earlier lesson has. */
  readonly returning: readonly (readonly Candidate[])[];
  /** By kind and key; a text says why there is none. */
  readonly made: Map<string, ProvedExercise | string>;
}

function deskOf({ proved, earlier = [] }: Student, request: PracticeRequest, setUps: SetUps): Desk {
  const leading = { hand: proved.lesson.hand, model: proved.lesson.hands };
  const material = materialOf(proved, leading, setUps);
  const candidates = new Map(request.asked.map(({ kind }) => [kind, KINDS[kind].candidates(material)]));
  const own = new Set(material.seen.map((one) => one.key));
  const returning = distancesOf(earlier.length).map((distance) =>
    KINDS.solve
      .candidates(materialOf(earlier[distance - 1]!, leading, setUps))
      .filter((one) => one.open.length === 0 && !own.has(one.key)),
  );
  return { material, request, candidates, returning: returning.filter((of) => of.length > 0), made: new Map() };
}

function exerciseOf(kind: ExerciseKind, candidate: Candidate, desk: Desk): ProvedExercise | string {
  const id = `${kind} ${candidate.key}`;
  const known = desk.made.get(id);
  if (known) return known;
  const exercise = KINDS[kind].make(candidate, desk.material, randomFor(desk.request.seed, id));
  const soundness = exercise ? ProvedExercise.prove(exercise) : { unsound: 'there are no plausible wrong answers' };
  const made = 'sound' in soundness ? soundness.sound : soundness.unsound;
  desk.made.set(id, made);
  return made;
}

/** One item to solve in so many may be of an earlier lesson. */
const MOST_RETURNING = 3;

function groupsOf(desk: Desk, level: Level): Group[] {
  const { request, candidates } = desk;
  return request.asked.flatMap(({ kind, count, span }) => {
    const all = candidates.get(kind)!;
    const back = kind === 'solve' ? desk.returning.slice(0, Math.floor(count / MOST_RETURNING)) : [];
    const open = kind === 'solve' ? Math.min(request.open, count - back.length) : 0;
    const group = (of: readonly Candidate[], n: number): Group[] =>
      n === 0 ? [] : [{ kind, span, candidates: of, shelves: shelvesOf(of, level, n) }];
    const isOpen = (one: Candidate): boolean => one.open.length > 0;
    return [
      ...group(
        all.filter((one) => !isOpen(one)),
        count - open - back.length,
      ),
      ...group(all.filter(isOpen), open),
      ...back.flatMap((of) => group(of, 1)),
    ];
  });
}

interface Chosen {
  readonly group: Group;
  readonly shelf: Shelf;
  candidate: Candidate;
  proved: ProvedExercise;
}

const tooFew = ({ kind, span, shelves, candidates }: Group, reason: string | undefined): Problem => ({
  code: 'practice-too-few',
  span,
  message:
    `there are not enough different exercises: ${shelves.length} of the kind ${kind} are asked for, ` +
    `${candidates.length} can be made${reason ? ` and some are refused (${reason})` : ''}`,
  hint: 'ask for fewer, or teach more cases',
});

/** What chooses for one paper. */
interface Choosing {
  readonly desk: Desk;
  readonly coverage: { readonly paper: Coverage; readonly all: Coverage };
  /** By place on the paper, what the paper before has there. */
  readonly before: readonly Candidate[];
  readonly random: Random;
}

const idOf = (kind: ExerciseKind, { key }: Candidate): string => `${kind} ${key}`;

function chooseAll(groups: readonly Group[], { desk, coverage, before, random }: Choosing): Chosen[] | Problem {
  const chosen: Chosen[] = [];
  for (const group of groups) {
    const used = new Set<string>();
    for (const shelf of group.shelves) {
      const neighbour = before[chosen.length];
      const not = new Set([...used, ...(neighbour ? [neighbour.key] : [])]);
      let reason: string | undefined;
      const first = (candidates: readonly Candidate[]): Chosen | undefined => {
        for (const candidate of ranked(candidates, coverage, not, random)) {
          const proved = exerciseOf(group.kind, candidate, desk);
          if (typeof proved !== 'string') return { group, shelf, candidate, proved };
          reason = proved;
        }
        return undefined;
      };
      const one = first(shelf) ?? first(group.candidates);
      if (!one) return tooFew(group, reason);
      used.add(one.candidate.key);
      coverage.paper.add(one.candidate);
      coverage.all.add(one.candidate);
      chosen.push(one);
    }
  }
  return chosen;
}

const total = (chosen: readonly Chosen[]): number =>
  chosen.reduce((sum, { candidate }) => sum + candidate.difficulty, 0);

/** Near enough not to be bettered. */
const isNear = (off: number, target: number): boolean => 100 * Math.abs(off) <= target;
const MOST_SWAPS = 60;

/** Changes single items for others of their shelf, as long as that brings the whole nearer to the target. */
function balance(chosen: Chosen[], target: number, { desk, before }: Choosing): void {
  for (let swaps = 0; swaps < MOST_SWAPS; swaps++) {
    const off = total(chosen) - target;
    if (isNear(off, target)) return;
    const used = new Set(chosen.map((one) => idOf(one.group.kind, one.candidate)));
    let best: { at: number; candidate: Candidate; proved: ProvedExercise } | undefined;
    let least = Math.abs(off);
    chosen.forEach(({ group: { kind }, shelf, candidate: old }, at) => {
      for (const candidate of shelf) {
        const left = Math.abs(off + candidate.difficulty - old.difficulty);
        if (left >= least || used.has(idOf(kind, candidate)) || before[at]?.key === candidate.key) continue;
        const proved = exerciseOf(kind, candidate, desk);
        if (typeof proved === 'string') continue;
        least = left;
        best = { at, candidate, proved };
      }
    });
    if (!best) return;
    Object.assign(chosen[best.at]!, { candidate: best.candidate, proved: best.proved });
  }
}

/** Choices whose letters go into the check word. */
const isLettered = ({ exercise: e }: ProvedExercise): boolean => e.form === 'choice' && e.right.length === 1;

const PLAIN_LETTERS = 'ABCDEFGHIJKLMNOP';

/** The check words of a paper and the letters of its items; undefined if the list of words does not do. */
function lettering(
  chosen: readonly Chosen[],
  wordList: readonly string[],
  not: readonly string[],
  random: Random,
): { words: readonly string[]; items: readonly Pick<PaperItem, 'order' | 'letters'>[] } | undefined {
  const orders = chosen.map(({ proved: { exercise: e } }) =>
    e.form === 'choice' ? random.shuffled(e.options.map((_, i) => i)) : [],
  );
  const lettered = chosen.flatMap(({ proved }, i) => (isLettered(proved) ? [i] : []));
  const items = orders.map((order) => ({ order, letters: [...PLAIN_LETTERS.slice(0, order.length)] }));
  if (lettered.length < SHORTEST_WORD) return { words: [], items };
  const parts = partsFor(lettered.length, wordList);
  if (!parts) return undefined;
  const words = drawWords(parts, wordList, not, random);
  let from = 0;
  for (const word of words) {
    const places = lettered.slice(from, from + word.length);
    from += word.length;
    const counts = places.map((i) => orders[i]!.length);
    const right = places.map((i) => orders[i]!.indexOf(rightOf(chosen[i]!.proved)));
    const letters = lettersFor(word, counts, right, wordList, random);
    if (!letters) return undefined;
    places.forEach((i, n) => {
      items[i]!.letters = letters[n]!;
    });
  }
  return { words, items };
}

const SHORTEST_WORD = 3;
const rightOf = ({ exercise: e }: ProvedExercise): number => (e.form === 'choice' ? e.right[0]! : -1);

const wordsLacking = ({ wordsAt: { span } }: PracticeRequest, items: number): Problem => ({
  code: 'practice-words',
  span,
  message: `no check words of this list have together ${items} letters, as many as there are choices`,
  hint: `list words of ${listed(['three', 'four', 'five'])} letters too: they add up to any number`,
});

const uneven = ({ span }: PracticeRequest, { code, difficulty, target }: PracticePaper): Problem => ({
  code: 'practice-uneven',
  span,
  message: `paper ${code} comes to ${difficulty} points of difficulty where ${target} are wanted`,
  hint: 'teach more cases, or ask for fewer exercises, so that there is more to choose from',
});

export interface Papers {
  readonly papers: readonly PracticePaper[];
  /** With an error among them the papers are not whole. */
  readonly problems: readonly Problem[];
}

/** Papers for students in the order in which they sit. The same lesson, seed and students give the same papers. */
export function makePapers(request: PracticeRequest, students: readonly Student[]): Papers {
  const papers: PracticePaper[] = [];
  const problems: Problem[] = [];
  const desks = new Map<ProvedLesson, Desk>();
  const setUps = startSetUps();
  const all = new Coverage();
  const wordList = request.words ?? CHECK_WORDS;
  let before: readonly Candidate[] = [];
  for (const [position, student] of students.entries()) {
    const desk = desks.get(student.proved) ?? deskOf(student, student.proved.lesson.practice ?? request, setUps);
    desks.set(student.proved, desk);
    const groups = groupsOf(desk, student.level ?? request.level);
    const random = randomFor(request.seed, 'paper', position);
    const choosing: Choosing = { desk, coverage: { paper: new Coverage(), all }, before, random };
    const chosen = chooseAll(groups, choosing);
    if ('code' in chosen) return { papers, problems: [...problems, chosen] };
    const target = targetOf(groups.flatMap((g) => g.shelves));
    balance(chosen, target, choosing);
    const letters = lettering(chosen, wordList, papers.at(-1)?.checkWords ?? [], random);
    if (!letters) {
      const count = chosen.filter(({ proved }) => isLettered(proved)).length;
      return { papers, problems: [...problems, wordsLacking(request, count)] };
    }
    const paper: PracticePaper = {
      code: paperCode(lessonName(student.proved), request.seed, position),
      student,
      items: chosen.map(({ proved, group }, i) => ({
        number: i + 1,
        proved,
        exercise: proved.exercise,
        ...letters.items[i]!,
        span: group.span,
      })),
      checkWords: letters.words,
      difficulty: total(chosen),
      target,
    };
    if (100 * Math.abs(paper.difficulty - target) > MOST_OFF * target) problems.push(uneven(request, paper));
    papers.push(paper);
    before = chosen.map((one) => one.candidate);
  }
  return { papers, problems };
}

/** What tells the codes of one lesson's papers from those of another: its title as written. */
const lessonName = ({ lesson: { source, title } }: ProvedLesson): string =>
  title ? source.text.slice(title.span.start, title.span.end) : '';
