/** What a practice paper's key claims: each answer, in the form that other programs can check. */

import { lengthOf, writeTurns } from '../cube/turns.ts';
import { addressFields, goalFields, ownFields, phaseClaims, setUpFields } from '../lesson/case-claim.ts';
import type { ChoiceClaim, Claim, SolutionClaim } from '../lesson/claim.ts';
import { ruleField } from '../lesson/prove-rules.ts';
import { wholeOf } from '../lesson/rule-words.ts';
import type { ChoiceExercise, Option, PlaceExercise, SolveExercise } from '../practice/exercise.ts';
import type { PaperItem, PracticePaper } from '../practice/papers.ts';
import { writeCondition } from '../rules/conditions.ts';
import type { Step } from '../steps/step.ts';
import { stepOf } from '../steps/steps.ts';
import type { Making } from './making.ts';
import { itemId, optionText, paperMaking, rightLetters, shorterId, shorterOf } from './practice-texts.ts';

function commonOf(paper: PracticePaper, item: PaperItem, { wide }: Making) {
  const { lesson, rules } = paper.student.proved;
  const { setup, subject } = item.exercise;
  return {
    id: itemId(paper, item),
    ...setUpFields(lesson, { hold: lesson.hold, setup, span: item.span }, wide),
    ...ownFields(subject, lesson.colours),
    ...ruleField(rules, subject),
  };
}

const goalOf = ({ code }: PracticePaper, { number, exercise }: PaperItem, nth = 1) =>
  goalFields(exercise.subject, { paper: code, item: String(number), nth });

/** The recommended answer, and a shorter one where there is one: `K4T.7` and `K4T.7.2`. */
function solutionClaims(paper: PracticePaper, item: PaperItem, e: SolveExercise, making: Making): SolutionClaim[] {
  const common = commonOf(paper, item, making);
  const shortest = lengthOf(e.shortest);
  const { subject } = e;
  const { triggers } = paper.student.proved.lesson;
  const { phases } = stepOf(subject);
  return [e.recommended, ...shorterOf(e)].map((turns, i) => ({
    ...common,
    id: i === 0 ? common.id : shorterId(common.id),
    kind: 'solution',
    solution: writeTurns(turns, making.wide),
    ...addressFields(subject),
    verdict: 'solves',
    broken: [],
    length: lengthOf(turns),
    shortest,
    proved: true,
    ...(phases && phaseClaims(phases.of(subject, turns, triggers), making.wide)),
    ...goalOf(paper, item, i + 1),
  }));
}

/** All that a rule must see to stand alone. */
const seesOf = (option: Option, { rules }: Step): string[] =>
  option.says === 'rule' ? wholeOf(option.rule, option.lesson).map((c) => writeCondition(rules!, c)) : [];

function ruleFields({ student }: PracticePaper, { order, exercise }: PaperItem, { options }: ChoiceExercise) {
  const { clubWords } = student.proved.lesson;
  const sees = order.map((i) => seesOf(options[i]!, stepOf(exercise.subject)));
  return { sees, ...(Object.keys(clubWords).length > 0 && { words: clubWords }) };
}

function choiceClaim(paper: PracticePaper, item: PaperItem, e: ChoiceExercise, making: Making): ChoiceClaim {
  const { slip } = e;
  return {
    ...commonOf(paper, item, making),
    kind: 'choice',
    asks: e.kind,
    options: item.order.map((i) => optionText(item, e, i, paperMaking(paper, making))),
    letters: item.letters,
    answer: rightLetters(item),
    ...(e.kind === 'rule' && ruleFields(paper, item, e)),
    ...(slip && {
      turn: slip.at,
      was: writeTurns([slip.was], making.wide),
      now: writeTurns([slip.now], making.wide),
    }),
    ...goalOf(paper, item),
  };
}

function placeClaim(paper: PracticePaper, item: PaperItem, e: PlaceExercise, making: Making): ChoiceClaim {
  return {
    ...commonOf(paper, item, making),
    kind: 'choice',
    asks: 'place',
    options: [],
    letters: [],
    answer: `${e.at}:${e.faces}`,
    piece: e.asked.name,
    turns: writeTurns(e.turns, making.wide),
    ...goalOf(paper, item),
  };
}

function claimsOf(paper: PracticePaper, item: PaperItem, making: Making): Claim[] {
  const { exercise: e } = item;
  switch (e.form) {
    case 'solve':
      return solutionClaims(paper, item, e, making);
    case 'choice':
      return [choiceClaim(paper, item, e, making)];
    case 'place':
      return [placeClaim(paper, item, e, making)];
  }
}

/** In the order of the items; an item to solve may have two. */
export const practiceClaims = (paper: PracticePaper, making: Making): Claim[] =>
  paper.items.flatMap((item) => claimsOf(paper, item, making));
