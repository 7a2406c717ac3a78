/** The course format: lessons in their order. The one place where its keys are named. */
import { z } from 'zod';
import { about } from '../text/about.ts';

const text = () => z.string().regex(/\S/);
/** ISO 8601. */
const DATE_PATTERN = '^\\d{4}-\\d{2}-\\d{2}$';

export const eveningSchema = z.strictObject({
  lesson: about(text(), 'The lesson file, as seen from the folder of the course file.', 'edge-away.yaml'),
  date: z
    .string()
    .meta({
      description: 'When it is taught, as year, month, day.',
      examples: ['2026-09-15'],
      pattern: DATE_PATTERN,
    })
    .optional(),
});

export const courseSchema = z.strictObject({
  course: about(text(), 'The name of the course.', 'Autumn course'),
  club: about(text(), 'The name of the club.', 'Saltmarsh Cube Club').optional(),
  lessons: about(z.array(eveningSchema).min(1), 'The lessons in the order in which they are taught.'),
});
