/** Read the picture: which of four set-ups gives it? The wrong ones are those that a hasty look takes for it. */

import { type Turn, writeTurns } from '../../cube/turns.ts';
import { isFault } from '../../steps/step.ts';
import { stepOf } from '../../steps/steps.ts';
import type { Subject } from '../../steps/subject.ts';
import { wordDistance } from '../../text/likely.ts';
import { setUpFor } from '../carry.ts';
import { seeing } from '../difficulty.ts';
import type { ChoiceExercise, Exercise, Option } from '../exercise.ts';
import { familiarIn } from '../familiar.ts';
import type { Random } from '../random.ts';
import { baseOf, candidateOf, type Kind } from './kind.ts';

const COMPARING = 40;
const WRONG = 3;

/** A turn of U forgotten, the neighbours, those farther off: as plausible as they come first. */
function likely(subject: Subject, random: Random): Subject[] {
  const step = stepOf(subject);
  const missingU = random.shuffled(step.upToTop(subject).slice(1)).slice(0, 1);
  const { near, far } = step.practice.lookAlikes(subject);
  return [...missingU, ...random.shuffled(near), ...far];
}

/** Of so many likely ones the wrong ones are drawn, so often anew at most. */
const DRAWN_FROM = 9;
const DRAWS = 12;

/** Different as addresses from the right one, and as cases from each other; the likeliest first. */
function wrongOnes(subject: Subject, random: Random): Subject[] {
  const wrong: Subject[] = [];
  for (const one of likely(subject, random)) {
    const isThere = wrong.some((w) => w.caseAddress === one.caseAddress);
    if (one.address !== subject.address && !isThere && !one.isSolved) wrong.push(one);
    if (wrong.length === DRAWN_FROM) break;
  }
  return wrong;
}

type Turns = readonly Turn[];

/** Turns that differ between two rows, as letters of words do. */
const apart = (a: Turns, b: Turns): number => wordDistance(lettersOf(a), lettersOf(b));
const lettersOf = (turns: Turns): string => String.fromCodePoint(...turns.map(({ index }) => index + 1));

/** Whether one of the two rows that are most alike, of all that there are, is the first. */
function isFirstLikeAnother(rows: readonly Turns[]): boolean {
  const nearest = (i: number): number => Math.min(...rows.flatMap((row, j) => (j === i ? [] : [apart(row, rows[i]!)])));
  const [first, ...others] = rows.map((_, i) => nearest(i));
  return first! <= Math.min(...others);
}

/**
 * Set-ups for wrong ones beside the right one. More often than not the right one is none of the two that are most alike:
 * otherwise whoever looks at the choices alone would find it.
 */
function wrongSetUps(right: Turns, setUps: readonly Turns[], random: Random): Turns[] {
  const hides = random.below(5) < 3;
  let drawn = setUps.slice(0, WRONG);
  for (let i = 0; i < DRAWS && isFirstLikeAnother([right, ...drawn]) === hides; i++) {
    drawn = random.shuffled(setUps).slice(0, WRONG);
  }
  return drawn;
}

const option = (turns: Extract<Option, { says: 'turns' }>['turns']): Option => ({ says: 'turns', turns });

function given({ options, subject }: ChoiceExercise): (Subject | undefined)[] {
  return options.map((one) => {
    const done = one.says === 'turns' ? stepOf(subject).after(one.turns, subject.where) : undefined;
    return done && !isFault(done) ? done : undefined;
  });
}

function unsound(exercise: Exercise): string | undefined {
  if (exercise.form !== 'choice') return 'it offers no choice';
  const found = given(exercise);
  const none = found.indexOf(undefined);
  if (none >= 0) {
    const bad = exercise.options[none]!;
    return `${bad.says === 'turns' ? writeTurns(bad.turns) : 'a choice'} is no set-up for this case`;
  }
  const fitting = found.flatMap((one, i) => (one!.address === exercise.subject.address ? [i] : []));
  if (fitting.length !== 1) return `${fitting.length} set-ups give the picture`;
  if (exercise.right.join() !== fitting.join()) return 'another set-up gives the picture';
  const wrong = found.flatMap((one, i) => (i === fitting[0] ? [] : [one!.caseAddress]));
  return new Set(wrong).size === wrong.length ? undefined : 'two wrong set-ups give one case';
}

export const picture: Kind = {
  candidates: ({ taught, leading }) => taught.map((one) => candidateOf(one, COMPARING + seeing(one, leading))),
  make(one, material, random): ChoiceExercise | undefined {
    const isFamiliar = familiarIn(material);
    const base = baseOf('picture', one);
    const wrong = wrongOnes(one.subject, random).map((other) => setUpFor(other, []));
    const known = wrong.filter(isFamiliar);
    if (known.length < WRONG || !isFamiliar(base.setup)) return undefined;
    const setUps = wrongSetUps(base.setup, known, random);
    return { ...base, form: 'choice', options: [base.setup, ...setUps].map(option), right: [0] };
  },
  unsound,
};
