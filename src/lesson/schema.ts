/**
 * The lesson format: the one place where its keys are named. Types, checking and the help of editors come from here.
 * Keys are plain words of a coach; values that are turns, slots or colours are read further in read.ts.
 */
import { z } from 'zod';
import { FAMILIES } from '../cube/cases.ts';
import { COLOURS } from '../cube/colours.ts';
import { SLOTS } from '../cube/goal.ts';

const text = () => z.string().min(1);
const prose = (about: string) => text().meta({ description: `${about} Paragraphs are parted by an empty line.` });
const turns = (about: string) => text().meta({ description: about, examples: ["R U' R'"] });
const colour = z.enum(COLOURS);
const slot = z.enum(SLOTS);

export const holdSchema = z.strictObject({
  cross: colour.meta({ description: 'The colour of the face held down.' }),
  front: colour.meta({ description: 'The colour of the face towards the viewer.' }),
});

export const solutionSchema = z.union([
  turns('Turns that solve the case.'),
  z.strictObject({
    turns: turns('Turns that solve the case.'),
    remark: prose('What to say about this solution.').optional(),
  }),
]);

export const caseSchema = z.strictObject({
  name: text().meta({ description: 'What the class calls this case; a line of its own.' }).optional(),
  hold: holdSchema.partial().meta({ description: 'Where this case is held otherwise than the lesson.' }).optional(),
  slot: slot.meta({ description: "The pair's own slot. Without it: FR, the one at the front right." }).optional(),
  setup: turns('Turns that make the case on a solved cube.'),
  open: z.array(slot).meta({ description: 'Further slots that need not be solved before or after.' }).optional(),
  solutions: z.array(solutionSchema).min(1).meta({ description: 'Recommended solutions, the best first.' }),
  watch: prose('What to watch in this case.').optional(),
});

export const partSchema = z.strictObject({
  part: text().meta({ description: 'The heading of a part of the lesson; the cases below it belong to it.' }),
  text: prose('What to say before its cases.').optional(),
});

export const lessonSchema = z.strictObject({
  title: text().meta({ description: 'The heading of the lesson.' }),
  club: text().meta({ description: 'The name of the club.' }).optional(),
  course: text().meta({ description: 'The course, and which evening of it.' }).optional(),
  for: text().meta({ description: 'Who the lesson is for.' }).optional(),
  language: z.enum(['en']).meta({ description: 'The language of the printed words.' }).optional(),
  hold: holdSchema.meta({ description: 'How the solved cube is held before each set-up.' }),
  family: z
    .union([z.enum(FAMILIES), z.array(z.enum(FAMILIES)).min(1)])
    .meta({ description: 'Where corner and edge are, <corner>-<edge>; one family or a list.' })
    .optional(),
  text: prose('The explanation that opens the handout.').optional(),
  watch: prose('What to watch for in the whole lesson; stands beside the text.').optional(),
  cases: z
    .array(z.union([partSchema, caseSchema]))
    .min(1)
    .meta({ description: 'The cases in the order in which they are printed, and the headings between them.' }),
});

export type LessonFile = z.infer<typeof lessonSchema>;
export type CaseFile = z.infer<typeof caseSchema>;
export type PartFile = z.infer<typeof partSchema>;
