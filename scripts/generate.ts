/** Writes what is made from the source and kept beside it: the schemas for editors, the pages of problems and of hands. */
import { writeFileSync } from 'node:fs';
import { handsPage } from '../src/lesson/hands-page.ts';
import { courseJsonSchema, jsonSchema } from '../src/lesson/json-schema.ts';
import { problemsPage } from '../src/lesson/problems-page.ts';

const root = new URL('../', import.meta.url);
writeFileSync(new URL('lessons/lesson.schema.json', root), jsonSchema());
writeFileSync(new URL('lessons/course.schema.json', root), courseJsonSchema());
writeFileSync(new URL('docs/problems.md', root), problemsPage());
writeFileSync(new URL('docs/hands.md', root), handsPage());
