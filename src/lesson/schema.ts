/**
 * The lesson format: the one place where its keys are named. Types, checking and the help of editors come from here.
 * Keys are plain words of a coach; values that are turns, slots or colours are read further in read.ts.
 */
import { z } from 'zod';
import { COLOURS } from '../cube/colours.ts';
import { ALLOWED } from '../cube/search/allowed.ts';
import type { Turn } from '../cube/turns.ts';
import { wordsFor } from '../rules/conditions.ts';
import type { RulePart } from '../steps/rule-part.ts';
import type { Step } from '../steps/step.ts';
import { steps } from '../steps/steps.ts';
import { about } from '../text/about.ts';
import { LEADING_HANDS } from './leading-hand.ts';
import { CHOICES, FACT_SHARES } from './lesson.ts';
import { LEVELS, SHARED_KINDS, type SharedKind } from './practice.ts';

/** Not blank. */
export const text = () => z.string().regex(/\S/);
const colour = z.enum(COLOURS);
const turns = () => z.string().min(1);
const address = text;
/** Any; the names are held to the step's (formatOf). */
const families = () => z.union([text(), z.array(text()).min(1)]);

export const holdSchema = z.strictObject({
  cross: about(colour, 'The colour of the face held down.', 'white'),
  front: about(colour, 'The colour of the face towards the viewer.', 'green'),
});

export const schemeSchema = z.strictObject({
  up: about(colour, 'Held one fixed way: the colour on top.', 'white'),
  front: about(colour, 'The colour in front.', 'green'),
  right: about(colour, 'The colour at the right.', 'red'),
  down: about(colour, 'The colour below.', 'yellow'),
  back: about(colour, 'The colour at the back.', 'blue'),
  left: about(colour, 'The colour at the left.', 'orange'),
});

const solutionTurns = () => about(turns(), 'Turns that solve the case.', "R U R'");

export const solutionSchema = z.union([
  solutionTurns(),
  z.strictObject({
    turns: solutionTurns(),
    remark: about(text(), 'What to say about this solution.', 'One hand does it all.').optional(),
  }),
]);

export const caseSchema = z.strictObject({
  name: about(text(), 'What the class calls this case; best on one line.', 'Back left, corner above').optional(),
  hold: about(holdSchema.partial(), 'Where this case is held otherwise than the lesson.', { front: 'red' }).optional(),
  setup: about(turns(), 'Turns that make the case on a solved cube.', "R U R' L' U L").optional(),
  address: address().optional(),
  solutions: about(
    z.union([solutionTurns(), z.array(solutionSchema).min(1)]),
    'Recommended solutions, the best first. Without them one is chosen or there is a line to write on: see choose.',
    ["L' U L R U R'"],
  ).optional(),
  watch: about(text(), 'What to watch in this case.', 'The edge shows you {green}.').optional(),
});

export const partSchema = z.strictObject({
  part: about(text(), 'A heading; the cases below it belong to it.', 'The same from every side'),
  text: about(text(), 'What to say before its cases.').optional(),
  again: about(
    z.boolean(),
    'true: its cases were listed before. Elsewhere a case listed twice is told as a slip.',
    true,
  ).optional(),
});

export const everySchema = z.strictObject({
  every: about(text(), 'A panel for every case of this family, with a set-up made for each.', 'top-away'),
  only: about(z.array(address()).min(1), 'Only these of its cases, by address.', ['UFR:R FL:F']).optional(),
  hold: about(holdSchema.partial(), 'Where these cases are held otherwise than the lesson.').optional(),
});

export const claimsSchema = z.strictObject({
  cases: about(
    z.enum(['all', 'selection']),
    'all: every case of the families is here. selection: some of them, and the handout says so.',
    'all',
  ).optional(),
  turns: about(z.int().min(1), 'No solution has more turns than this.', 8).optional(),
  rotations: about(z.enum(['none']), 'none: no solution turns the whole cube.', 'none').optional(),
});

const cost = () => z.number().min(0).max(20);

/** What a club finds hard, in units of one turn of U: see HANDS in src/cube/search/hands.ts. */
export const handsSchema = z.strictObject({
  ...(Object.fromEntries(
    ['U', 'D', 'R', 'L', 'F', 'B', 'M', 'E', 'S', 'x', 'y', 'z'].map((letter) => [
      letter,
      about(cost(), `What one quarter turn of ${letter} costs.`, 1).optional(),
    ]),
  ) as Record<Turn['letter'], z.ZodOptional<z.ZodNumber>>),
  half: about(cost(), 'What a half turn costs more than a quarter.', 0.4).optional(),
  wide: about(cost(), 'What a wide turn costs more than its face.', 0.3).optional(),
  regrip: about(cost(), 'What taking hold anew costs.', 1.2).optional(),
  flow: about(cost(), 'What a turn costs less when the same hand goes on.', 0.15).optional(),
  allow: about(
    z.array(z.enum(ALLOWED)),
    'What solutions that the tool chooses may use besides turns of faces. Without it they have no wide turns, no slices, ' +
      'and no turn of the cube but a y at the start that spares turns of B. tipping: the cross may leave the bottom.',
    ['wide', 'rotations'],
  ).optional(),
});

/** For editors; reading tells more of what is wrong than that a text does not fit. */
const seenPattern = (words: readonly string[]): string => {
  const word = `(${words.join('|')})`;
  return `^\\s*(not\\s+)?${word}((\\s*,\\s*|\\s+or\\s+)${word})*\\s*$`;
};

/** What is seen: features of the step, each with one of its words, several with "or", or "not" before them. */
const seeSchemaOf = (rules: RulePart) =>
  z.strictObject(
    Object.fromEntries(
      Object.entries(rules.features).map(([name, { about: asks }]) => {
        const words = wordsFor(rules, name);
        const description = `${asks} ${words.join(', ')}; "not" before it, "or" between.`;
        return [
          name,
          z
            .string()
            .meta({ description, pattern: seenPattern(words) })
            .optional(),
        ];
      }),
    ),
  );

/** Names of facts, as they stand in round brackets behind a sentence. */
const FACT_NAME = /^[\p{L}\p{N}][\p{L}\p{N} -]*$/u;

const ruleSchemaOf = (rules: RulePart, see: ReturnType<typeof seeSchemaOf>) =>
  z.strictObject({
    see: about(
      see,
      'When the rule applies, and no earlier one does. Without it: whenever no earlier one does.',
      rules.seeExamples.rule,
    ).optional(),
    turn: about(
      z.enum(['cube']),
      `cube: turn the whole cube a quarter, and look at the rules again. ${rules.about.turn}`,
    ).optional(),
    // Read by the step, so that they have no type here.
    ...(rules.fields as Record<never, z.ZodType>),
    most: about(z.int().min(1).max(30), rules.about.most, 8),
    say: about(text(), 'What to say about it, in your words.').optional(),
  });

const factSchemaOf = ({ fields, about: said }: RulePart, see: ReturnType<typeof seeSchemaOf>) =>
  z.strictObject({
    see: about(see, 'Of which cases it speaks, as seen from all four sides. Without it: of all.').optional(),
    turn: about(z.enum(['cube']), 'cube: the whole cube is turned a quarter, either way, and "is" is seen.').optional(),
    ...(fields as Record<never, z.ZodType>),
    most: about(z.int().min(1).max(30), `${said.most} Without it: 30.`, 8).optional(),
    is: about(see, 'What is seen: at once, or once the cube is turned. In place of an aim.').optional(),
    in: about(z.enum(FACT_SHARES), 'In how many of them it holds; without it: all.', 'none').optional(),
  });

/** Words of ours which a club may have others for, beside those of a step. */
const TERMS = ['cross', 'set up', 'solve', 'hold', 'turn'];

const wordsSchema = z.record(z.string(), text());

/** A page has room for some forty; more is a book. */
const count = () => z.int().min(0).max(60);

const ITEMS: Readonly<Record<SharedKind, string>> = {
  solve: 'A set-up, and lines to write a solution on.',
  place: 'Where does a piece go by some turns? To be marked on an empty picture.',
  slip: 'One of four solutions is wrong: which, and at which turn?',
  picture: 'Which of four set-ups gives the picture?',
  rule: 'Which row of the rules of the lesson speaks of this case?',
  order: 'The parts of a solution are to be put in their order; for cases whose solution has three or more.',
  drill: 'Set-ups with boxes for times.',
};

export const practiceSchema = z.strictObject({
  seed: about(
    z
      .int()
      .min(0)
      .max(2 ** 31),
    'The same seed gives the same papers, another one others.',
    7,
  ).optional(),
  level: about(z.enum(LEVELS), 'How hard: easy, middle (without it) or hard.', 'middle').optional(),
  items: about(
    z.strictObject(
      Object.fromEntries(SHARED_KINDS.map((kind) => [kind, about(count(), ITEMS[kind], 4).optional()])) as Record<
        string,
        z.ZodOptional<z.ZodInt>
      >,
    ),
    'How many exercises of each kind.',
    { solve: 6, likeness: 4 },
  ),
  open: about(count(), 'So many of the items to solve have a further slot open, as in a real solve.', 2).optional(),
  only: about(
    z.strictObject({
      family: families().optional(),
      rule: about(
        z.union([z.int().min(1), z.array(z.int().min(1)).min(1)]),
        'Only cases to which this rule of the lesson applies, or one of these, by number.',
        2,
      ).optional(),
      see: about(
        z.record(z.string(), z.string()),
        'Only cases that look like this: conditions as in a rule.',
      ).optional(),
      hand: about(
        z.enum(['left', 'right']),
        'Only cases whose recommended solution turns the left side first, or the right one.',
        'left',
      ).optional(),
      turns: about(z.int().min(1), 'Only cases solved in so many turns or fewer.', 8).optional(),
    }),
    'Which of the cases taught are practised; without it all.',
  ).optional(),
  earlier: about(
    z.array(text()).min(1),
    'Files of earlier lessons, the latest first, from the folder of this one: of those 1, 2, 4, 8 … evenings ago one item to ' +
      'solve comes back.',
    ['edge-away.yaml', 'standard-pairs.yaml'],
  ).optional(),
  words: about(
    z.array(z.string().regex(/^[A-Za-z]{3,9}$/)).min(1),
    'Check words, of three to nine letters each: the letters of the right answers spell one of them.',
    ['SLOT', 'FRONT', 'CORNER'],
  ).optional(),
});

export const lessonSchema = z.strictObject({
  title: about(text(), 'The heading of the lesson.', 'The edge waits in a foreign slot'),
  club: about(text(), 'The name of the club.', 'Ondrelby Cube Club').optional(),
  course: about(text(), 'The course, and which evening of it.', 'Autumn course · evening 2').optional(),
  for: about(text(), 'Who the lesson is for.', 'For those who solve with a cross and pairs').optional(),
  step: about(text(), 'The step of the solve that the lesson is about; without it: pairs.').optional(),
  language: about(z.enum(['en']), 'The language of the printed words.', 'en').optional(),
  hold: about(holdSchema, 'How the solved cube is held before each set-up.', { cross: 'white', front: 'green' }),
  scheme: about(schemeSchema, 'The colours of your cubes, if they are not the usual ones.').optional(),
  hand: about(
    z.enum(LEADING_HANDS),
    'left: everything is printed mirrored, turns, pictures and words, for those who lead with the left hand.',
    'left',
  ).optional(),
  wide: about(z.enum(['Rw', 'r']), 'How wide turns are printed.', 'r').optional(),
  words: about(
    wordsSchema,
    'What your club calls things; printed in place of our words, with a list at the end.',
  ).optional(),
  show: about(
    z.array(z.enum(['undo', 'shortest', 'states', 'why'])),
    'What else to print. undo: the turns that take a set-up back. shortest: a shortest solution, where none is listed. ' +
      'states: a small picture after each phase of the first solution. why: under each solution what in its turns is ' +
      'begun, done and taken back, and its triggers.',
    ['undo'],
  ).optional(),
  choose: about(
    z.enum(CHOICES),
    "Cases without solutions get one: the one that the lesson's rules give (the easiest, where they give none), the " +
      'easiest for hands, or a shortest one. It stays the same from run to run. none: a line to write on. Left out: rules ' +
      'where the lesson has some, else none.',
    'easiest',
  ).optional(),
  hands: about(handsSchema, 'What your club finds hard; our figures are used for what is not named.', {
    B: 2,
    y: 3,
  }).optional(),
  triggers: about(
    z.record(z.string().regex(/^[\p{L}\p{N}][\p{L}\p{N} -]*$/u), turns()),
    'Runs of turns that your club has names for, as the right hand does them at the front right; printed where they occur, ' +
      'and rules may name them. Ours are right four, left four and sledge.',
    { sledge: "R' F R F'" },
  ).optional(),
  family: families().optional(),
  claims: about(claimsSchema, 'What the lesson promises; it is held to each, and they are printed.', {
    cases: 'all',
    turns: 8,
  }).optional(),
  rules: about(
    z.array(z.unknown()).min(1),
    'Rules of thumb in their order, the first that fits applies. Each is proved on every case of the families, as seen from ' +
      'all four sides; exceptions are found and printed with it.',
  ).optional(),
  facts: about(
    z.record(z.string().regex(FACT_NAME), z.unknown()),
    'What sentences of the texts say of the cases, by names of yours: a sentence written as [It can always be lifted.](name) is ' +
      'printed without its marks, and what the fact says is proved on every case of the families, as seen from all four sides.',
  ).optional(),
  cards: about(
    z.strictObject({
      duplex: about(
        z.enum(['long', 'short']),
        'Over which edge of the paper your printer turns it for the back.',
        'long',
      ),
    }),
    'Prints cards to cut out: set-up and picture in front, the first solution behind.',
    { duplex: 'long' },
  ).optional(),
  plan: about(
    z.strictObject({ minutes: about(z.int().min(10).max(240), 'How long the evening is.', 60) }),
    'Prints a running order for the coach: what to show and when, what to ask, the slip to expect, set-ups for a drill.',
    { minutes: 60 },
  ).optional(),
  text: about(
    text(),
    "The explanation that opens the handout. An empty line parts paragraphs, '# ' begins a heading, '- ' a list item.",
  ).optional(),
  watch: about(text(), 'What to watch for in the whole lesson; stands beside the text.').optional(),
  practice: about(practiceSchema, 'A practice paper and its key: how many exercises of which kind.', {
    seed: 7,
    items: { solve: 6, likeness: 4 },
  }).optional(),
  cases: about(
    z.array(z.union([partSchema, everySchema, caseSchema])).min(1),
    'The cases in the order in which they are printed, and the headings between them.',
  ),
});

/**
 * The format of lessons about a step: the tables above with the keys that the step has of its own. What those hold is read
 * by the step, so they have no type here.
 */
export interface Format {
  readonly step: Step;
  readonly lesson: typeof lessonSchema;
  readonly case: typeof caseSchema;
  readonly every: typeof everySchema;
  readonly claims: typeof claimsSchema;
  readonly practice: typeof practiceSchema;
  readonly words: z.ZodObject;
  /** Undefined where the step has no rules: the lesson has no keys for them, nor for facts. */
  readonly rule: ReturnType<typeof ruleSchemaOf> | undefined;
  readonly fact: ReturnType<typeof factSchemaOf> | undefined;
}

function makeFormat(step: Step): Format {
  const { rules } = step;
  const { fields, about: said } = step.lesson;
  const family = z.enum(step.families);
  const orSome = (description: string) =>
    about(z.union([family, z.array(family).min(1)]), description, said.family[1]).optional();
  const ofCase = caseSchema.extend({
    address: about(address(), ...said.address).optional(),
    ...fields.case,
  });
  const every = everySchema.extend({
    every: about(family, everySchema.shape.every.description!, said.family[1]),
    ...fields.every,
  });
  const claims = claimsSchema.extend(fields.claims);
  const see = rules && seeSchemaOf(rules);
  const rule = rules && see && ruleSchemaOf(rules, see);
  const fact = rules && see && factSchemaOf(rules, see);
  const only = practiceSchema.shape.only.unwrap();
  const { items } = practiceSchema.shape;
  const seen = see ? { see: about(see, only.shape.see.unwrap().description!, rules.seeExamples.only).optional() } : {};
  const questions = step.practice.questions.map(({ name, about: asks }) => [name, about(count(), asks, 4).optional()]);
  const practice = practiceSchema.extend({
    items: z
      .strictObject({ ...Object.fromEntries(questions), ...(rule ? items : items.omit({ rule: true })).shape })
      .meta(items.meta()!),
    only: (rule ? only : only.omit({ rule: true, see: true }))
      .extend({ family: orSome('Only cases of this family or these.'), ...seen, ...fields.only })
      .meta(only.meta()!)
      .optional(),
  });
  const terms = [...step.lesson.terms, ...TERMS];
  const words = z
    .strictObject(
      Object.fromEntries(
        terms.map((term) => [term, about(text(), `What your club says for "${term}" in print.`).optional()]),
      ),
    )
    .meta({ ...lessonSchema.shape.words.unwrap().meta(), examples: [{ [terms[0]!]: 'pocket' }] });
  const named = <T extends z.ZodType>(schema: T, key: 'claims' | 'practice'): z.ZodOptional<T> =>
    schema.meta(lessonSchema.shape[key].unwrap().meta()!).optional();
  const ofRules = lessonSchema.shape.rules.unwrap().description!;
  const ofFacts = lessonSchema.shape.facts.unwrap().description!;
  const lesson = (rule ? lessonSchema : lessonSchema.omit({ rules: true, facts: true })).extend({
    step: about(z.enum(steps().map(({ name }) => name)), lessonSchema.shape.step.unwrap().description!).optional(),
    words: words.optional(),
    family: orSome(said.family[0]),
    claims: named(claims, 'claims'),
    practice: named(practice, 'practice'),
    ...(rule && { rules: about(z.array(rule).min(1), ofRules).optional() }),
    ...(fact && { facts: about(z.record(z.string().regex(FACT_NAME), fact), ofFacts).optional() }),
    cases: about(z.array(z.union([partSchema, every, ofCase])).min(1), lessonSchema.shape.cases.description!),
  });
  // The steps' own keys are there as the coach wrote them; only the types do not know them.
  return { step, lesson, case: ofCase, every, claims, practice, words, rule, fact } as unknown as Format;
}

const formats = new WeakMap<Step, Format>();

export function formatOf(step: Step): Format {
  const known = formats.get(step) ?? makeFormat(step);
  formats.set(step, known);
  return known;
}

export type CaseFile = z.infer<typeof caseSchema>;
export type RuleFile = z.infer<ReturnType<typeof ruleSchemaOf>>;
export type EveryFile = z.infer<typeof everySchema>;
