/** Practice papers: one for each student, all different where neighbours could look, all equally hard. */

import type { Level, PracticeRequest } from '../lesson/practice.ts';
import type { Problem, Span } from '../lesson/problem.ts';
import type { ProvedLesson } from '../lesson/prove.ts';
import { listed } from '../text/likely.ts';
import { CHECK_WORDS } from './check-word.ts';
import { balance, type Choosing, chooseAll, givenAway, total } from './choose.ts';
import type { Exercise } from './exercise.ts';
import type { Candidate } from './kinds/kind.ts';
import { isLettered, lettering } from './lettering.ts';
import { hashOf, randomFor } from './random.ts';
import { targetOf, Uses } from './selection.ts';
import type { ProvedExercise } from './soundness.ts';
import { groupsOf, type Stock, stockOf } from './stock.ts';

/** Whoever gets a paper, and what of the lesson is otherwise for them. */
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

/** An exercise as it stands on one paper. */
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

/** One student's paper; its key is made of the same. */
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

const wordsLacking = ({ wordsAt: { span } }: PracticeRequest, items: number): Problem => ({
  code: 'practice-words',
  span,
  message: `the check words of this list do not do for ${items} choices: they have to have together as many letters`,
  hint: `list words of ${listed(['three', 'four', 'five'])} letters too: they add up to any number`,
});

/** What more to choose from would mend. */
const wanting = (code: 'practice-uneven' | 'practice-shown', { span }: PracticeRequest, message: string): Problem => {
  const hint = 'teach more cases, or ask for fewer exercises, so that there is more to choose from';
  return { code, span, message, hint };
};

/** No letter or digit that looks like another: no 0 O Q D, 1 I L J, 2 Z, 5 S, 8 B, U V. */
const CODE_ALPHABET = '34679ACEFGHKMNPRTWXY';
const CODE_LENGTH = 3;
export const PAPER_CODES: number = CODE_ALPHABET.length ** CODE_LENGTH;
/** No common factor with their number: as many papers have codes of their own, and neighbours' do not look alike. */
const STRIDE = 3_089;

/**
 * The short name of a paper, for its foot and its key: it says which paper it is and nothing of whose. `position` from 0.
 * Of one lesson and seed no two codes are the same, up to PAPER_CODES of them.
 */
export function paperCode(lesson: string, seed: number, position: number): string {
  const n = (hashOf(`${seed}/${lesson}`) + position * STRIDE) % PAPER_CODES;
  const { length } = CODE_ALPHABET;
  return Array.from({ length: CODE_LENGTH }, (_, i) => CODE_ALPHABET[Math.floor(n / length ** i) % length]).join('');
}

/** Papers in the order of the students. */
export interface Papers {
  readonly papers: readonly PracticePaper[];
  /** With an error among them the papers are not whole. */
  readonly problems: readonly Problem[];
}

/** Papers for students in the order in which they sit. The same lesson, seed and students give the same papers. */
export function makePapers(request: PracticeRequest, students: readonly Student[]): Papers {
  const papers: PracticePaper[] = [];
  const problems: Problem[] = [];
  const stocks = new Map<ProvedLesson, Stock>();
  const all = new Uses();
  const wordList = request.words ?? CHECK_WORDS;
  const wordsUsed = new Map<string, number>();
  let before: readonly Candidate[] = [];
  for (const [position, student] of students.entries()) {
    const stock =
      stocks.get(student.proved) ??
      stockOf(student.proved, student.earlier ?? [], student.proved.lesson.practice ?? request);
    stocks.set(student.proved, stock);
    const groups = groupsOf(stock, student.level ?? request.level);
    const random = randomFor(request.seed, 'paper', position);
    const choosing: Choosing = { stock, uses: { paper: new Uses(), all }, before, random };
    const chosen = chooseAll(groups, choosing);
    if ('code' in chosen) return { papers, problems: [...problems, chosen] };
    const target = targetOf(groups.flatMap((g) => g.shelves));
    balance(chosen, target, choosing);
    const exercises = chosen.map(({ proved }) => proved.exercise);
    const letters = lettering(exercises, wordList, wordsUsed, random);
    if (!letters) {
      return { papers, problems: [...problems, wordsLacking(request, exercises.filter(isLettered).length)] };
    }
    for (const word of letters.words) wordsUsed.set(word, position);
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
    const { code, difficulty } = paper;
    if (100 * Math.abs(difficulty - target) > MOST_OFF * target) {
      const message = `paper ${code} comes to ${difficulty} points of difficulty where ${target} are wanted`;
      problems.push(wanting('practice-uneven', request, message));
    }
    const [given] = givenAway(chosen);
    if (given && !problems.some((problem) => problem.code === 'practice-shown')) {
      const message = `on paper ${code} item ${given[0] + 1} shows an answer to item ${given[1] + 1}`;
      problems.push(wanting('practice-shown', request, message));
    }
    papers.push(paper);
    before = chosen.map((one) => one.candidate);
  }
  return { papers, problems };
}

/** The papers that a lesson asks for, if it does: one for nobody in particular where no students are named. */
export const papersOf = (proved: ProvedLesson, students?: readonly Student[]): Papers =>
  proved.lesson.practice
    ? makePapers(proved.lesson.practice, students ?? [{ code: undefined, proved, level: undefined }])
    : { papers: [], problems: [] };

/** What tells the codes of one lesson's papers from those of another: its title as written. */
const lessonName = ({ lesson: { source, title } }: ProvedLesson): string =>
  title ? source.text.slice(title.span.start, title.span.end) : '';
