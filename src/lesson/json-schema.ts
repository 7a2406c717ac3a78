/** The formats as JSON Schemas (draft 7), from which editors complete keys and mark faults. */
import { z } from 'zod';
import { USUAL_STEP } from '../steps/steps.ts';
import { courseSchema } from './course.ts';
import { formatOf } from './schema.ts';

function written(schema: z.ZodType, title: string): string {
  const json = z.toJSONSchema(schema, { io: 'input', target: 'draft-7' });
  return `${JSON.stringify({ ...json, title }, undefined, 2)}\n`;
}

/** The text of lessons/lesson.schema.json. */
export const jsonSchema = (): string => written(formatOf(USUAL_STEP).lesson, 'A lesson of turnsheet');
/** The text of lessons/course.schema.json. */
export const courseJsonSchema = (): string => written(courseSchema, 'A course of turnsheet');
