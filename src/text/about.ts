/** Keys of a file format, with what editors show of them. */
import type { z } from 'zod';

/** The schema with a description, and examples of values as they are written. */
export const about = <T extends z.ZodType>(schema: T, description: string, ...examples: unknown[]): T =>
  schema.meta({ description, ...(examples.length > 0 ? { examples } : {}) });
