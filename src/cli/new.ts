/** `turnsheet new`: a lesson to begin with. */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isThere } from './files.ts';
import { documentOf, type ExitCode, type Io } from './io.ts';
import type { NewOptions } from './options.ts';
import { starterLesson } from './starter.ts';

/** Shipped with the package; as seen from both src/cli and dist. */
const SCHEMA_PLACES = ['../lessons/lesson.schema.json', '../../lessons/lesson.schema.json'];

async function schemaFile(): Promise<string | undefined> {
  for (const place of SCHEMA_PLACES) {
    const path = fileURLToPath(new URL(place, import.meta.url));
    if (await isThere(path)) return path;
  }
  return undefined;
}

export async function newLesson({ file, json }: NewOptions, io: Io): Promise<ExitCode> {
  const path = resolve(io.folder, file);
  const schema = await schemaFile();
  const named = schema ? relative(dirname(path), schema).split(sep).join('/') : 'lesson.schema.json';
  let failure: string | undefined;
  try {
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, starterLesson(named), { flag: 'wx' });
  } catch (e) {
    const { code } = e as NodeJS.ErrnoException;
    failure = code === 'EEXIST' ? 'it is there already; choose another name' : `it cannot be written (${code})`;
  }
  if (json) io.out(documentOf({ ok: !failure, file, ...(failure && { failure }) }));
  if (failure) io.err(`turnsheet: ${file}: ${failure}\n`);
  else if (!json) io.err(`${file} is written. To print it: npx turnsheet build ${file}\n`);
  return failure ? 1 : 0;
}
