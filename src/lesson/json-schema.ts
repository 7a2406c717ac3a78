/** The lesson format as a JSON Schema (draft 7), from which editors complete keys and mark faults. */
import { z } from 'zod';
import { lessonSchema } from './schema.ts';

/** The text of the file. */
export function jsonSchema(): string {
  const schema = z.toJSONSchema(lessonSchema, { io: 'input', target: 'draft-7' });
  return `${JSON.stringify({ ...schema, title: 'A lesson of turnsheet' }, undefined, 2)}\n`;
}
