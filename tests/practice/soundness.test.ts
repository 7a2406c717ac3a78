/** Planted faults: an exercise with an answer that was not meant is refused, and the reason is given. */
import { describe, expect, it } from 'vitest';
import { readTurns } from '../../src/cube/notation.ts';
import { type Turn, turnOf, writeTurns } from '../../src/cube/turns.ts';
import { loadLesson } from '../../src/lesson/load.ts';
import type { ExerciseKind } from '../../src/lesson/practice.ts';
import type { ChoiceExercise, Exercise, PlaceExercise, SolveExercise } from '../../src/practice/exercise.ts';
import { makePapers } from '../../src/practice/papers.ts';
import { ProvedExercise } from '../../src/practice/soundness.ts';
import { bytesOf, SMALL_LESSON } from '../lesson/small-lesson.ts';
import { sampleText } from '../samples.ts';
import { withPractice } from './lessons.ts';

const turnsOf = (text: string): readonly Turn[] => {
  const read = readTurns(text);
  if (!read.ok) throw new Error(text);
  return read.turns;
};

const ITEMS = '{ likeness: 1, edge: 1, picture: 1, slip: 1, place: 1, solve: 1, drill: 1 }';
const lesson = SMALL_LESSON.replace('family:', `practice: { seed: 3, items: ${ITEMS} }\nfamily:`);
const { proved } = loadLesson('a.yaml', bytesOf(lesson));
const { papers } = makePapers(proved!.lesson.practice!, [{ code: undefined, proved: proved!, level: undefined }]);
const made = (kind: ExerciseKind): Exercise => papers[0]!.items.find((i) => i.exercise.kind === kind)!.exercise;
const choice = (kind: ExerciseKind) => made(kind) as ChoiceExercise;
const solve = made('solve') as SolveExercise;
const place = made('place') as PlaceExercise;

const reason = (exercise: Exercise): string | undefined => {
  const found = ProvedExercise.prove(exercise);
  return 'unsound' in found ? found.unsound : undefined;
};

const withRight = (kind: ExerciseKind, right: number): Exercise => ({ ...choice(kind), right: [right] });
const other = (turns: readonly Turn[]): Turn[] => [...turns, turnOf('face', 'R', 1)];
const line = (exercise: ChoiceExercise, i: number): readonly Turn[] => {
  const option = exercise.options[i]!;
  return option.says === 'turns' ? option.turns : [];
};
const said = (turns: readonly Turn[]) => ({ says: 'turns', turns }) as const;

describe('soundness', () => {
  it.each(['likeness', 'edge', 'picture', 'slip', 'place', 'solve', 'drill'] as const)(
    'finds %s sound as made',
    (kind) => {
      expect(reason(made(kind))).toBeUndefined();
    },
  );

  const slip = choice('slip');
  const picture = choice('picture');
  const wrongOfPicture = [0, 1, 2, 3].find((i) => !picture.right.includes(i))!;
  const rightOfSlip = slip.right[0]!;
  const mended = line(slip, rightOfSlip).with(slip.slip!.at - 1, slip.slip!.now);
  const rest = [0, 1, 2, 3].find((i) => i !== rightOfSlip)!;

  it.each<[string, Exercise, RegExp]>([
    ['a set-up that gives another case', { ...solve, setup: turnsOf("R U R'") }, /gives/],
    ['a set-up that breaks the cross', { ...solve, setup: turnsOf('R2 D') }, /gives no case/],
    ['a set-up that turns the cube', { ...solve, setup: [...solve.setup, ...turnsOf('y')] }, /another hold|gives/],
    ['a solution that does not solve', { ...solve, recommended: other(solve.recommended) }, /does not solve/],
    [
      'a shortest that is longer than need be',
      { ...solve, shortest: [...solve.shortest, ...turnsOf('U')] },
      /the shortest has/,
    ],
    [
      'the wrong word of like and unlike',
      withRight('likeness', 1 - choice('likeness').right[0]!),
      /the right choice is/,
    ],
    ['the wrong word of good and bad', withRight('edge', 1 - choice('edge').right[0]!), /the right choice is/],
    ['the wrong set-up for a picture', withRight('picture', wrongOfPicture), /another set-up/],
    [
      'two set-ups that give one picture',
      {
        ...picture,
        options: picture.options.with(wrongOfPicture, said([...line(picture, picture.right[0]!), ...turnsOf("U U'")])),
      },
      /2 set-ups give the picture/,
    ],
    [
      'two wrong set-ups of one case',
      {
        ...picture,
        options: picture.options.map((option, i) =>
          picture.right.includes(i)
            ? option
            : said([...line(picture, wrongOfPicture), ...(i === wrongOfPicture ? [] : turnsOf("U U'"))]),
        ),
      },
      /two wrong set-ups/,
    ],
    [
      'a choice that is no set-up',
      { ...picture, options: picture.options.with(wrongOfPicture, said(turnsOf('D'))) },
      /no set-up/,
    ],
    [
      'a slip that is none',
      { ...slip, options: slip.options.with(rightOfSlip, said(mended)) },
      /two solutions are the same|0 of the/,
    ],
    ['two slips', { ...slip, options: slip.options.with(rest, said(other(line(slip, rest)))) }, /2 of the solutions/],
    [
      'a slip said to be at another turn',
      { ...slip, slip: { ...slip.slip!, at: slip.slip!.at + 1 } },
      /the mend is at turn/,
    ],
    [
      'a slip that no single turn mends',
      {
        ...slip,
        options: slip.options.with(rightOfSlip, said([...mended, ...turnsOf('R F D L')])),
        right: [rightOfSlip],
      },
      /0 changes of one turn/,
    ],
    [
      'a slip that several turns mend',
      // A second turn of the last face: either of the two can be changed, or dropped.
      {
        ...slip,
        options: slip.options.with(rightOfSlip, said([...mended, turnOf('face', mended.at(-1)!.letter, 1)])),
      },
      /\d changes of one turn mend it/,
    ],
    ['a place where the piece is not', { ...place, at: place.at === 'UB' ? 'UF' : 'UB' }, /comes to/],
    [
      'turns that leave the piece where it is',
      { ...place, turns: [], after: place.subject.cube, ...stays(place) },
      /stays|comes to/,
    ],
  ])('refuses %s', (_, exercise, says) => {
    expect(reason(exercise)).toMatch(says);
  });

  it('refuses a set-up that is an answer taken back', () => {
    const setup = turnsOf(
      writeTurns([...solve.recommended].reverse().map((t) => turnOf(t.kind, t.letter, (4 - t.quarters) as 1))),
    );
    expect(reason({ ...solve, setup })).toMatch(/taken back/);
  });

  it('lets nothing pass that only looks proved', () => {
    expect(ProvedExercise.isProved(papers[0]!.items[0]!.proved)).toBe(true);
    expect(ProvedExercise.isProved({ exercise: solve })).toBe(false);
  });
});

describe('the words of rules', () => {
  // What corner-away.yaml sees first: the edge's top colour against the corner's colour beside the cross colour.
  const asked = withPractice(sampleText('corner-away'), { seed: 1, items: { rule: 12 } });
  const { proved: corner } = loadLesson('a.yaml', bytesOf(asked));
  const { papers: some } = makePapers(corner!.lesson.practice!, [
    { code: undefined, proved: corner!, level: undefined },
  ]);
  const rules = some[0]!.items.map(({ exercise }) => exercise as ChoiceExercise);
  const withStatements = (exercise: ChoiceExercise, change: (statement: string) => string[]): Exercise => ({
    ...exercise,
    options: exercise.options.map((option) =>
      option.says === 'rule' ? { ...option, statements: option.statements.flatMap(change) } : option,
    ),
  });

  it('are sound as made', () => {
    expect(rules.map(reason)).toEqual(rules.map(() => undefined));
  });

  it('are refused where they leave out what gives them a meaning', () => {
    const isLeftOut = (statement: string) => statement.startsWith('{cross}');
    const found = rules.map((exercise) =>
      reason(withStatements(exercise, (statement) => (isLeftOut(statement) ? [] : [statement]))),
    );
    expect(found).toContain('2 of the rules are true as they are printed');
  });

  it('are refused where they say nothing that is known', () => {
    const found = rules.map((exercise) => reason(withStatements(exercise, (statement) => [`${statement} or so`])));
    for (const text of found) expect(text).toMatch(/^what is printed of rule [1-4] cannot be read in one way$/);
  });
});

/** The place at which a piece is before any turn: found by asking where it comes to by none. */
function stays(exercise: PlaceExercise): Pick<PlaceExercise, 'at'> {
  const found = reason({ ...exercise, turns: [] }) ?? '';
  return { at: (/comes to (\w+)/.exec(found)?.[1] ?? exercise.at) as PlaceExercise['at'] };
}
