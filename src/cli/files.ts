/** Reading and writing files. */
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';

/** The bytes, or why there are none, in words. */
export async function readBytes(folder: string, file: string): Promise<Uint8Array | { readonly unreadable: string }> {
  try {
    return await readFile(resolve(folder, file));
  } catch (e) {
    return { unreadable: WHY[(e as NodeJS.ErrnoException).code ?? ''] ?? 'it cannot be read' };
  }
}

const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'it may not be read',
  EPERM: 'it may not be read',
};

export interface OutFile {
  readonly path: string;
  readonly bytes: Uint8Array | string;
}

/**
 * Writes all files or none: each is written whole beside its place first, and only when all are there are they renamed.
 * Files that were there stay as they were until then. Undefined, or why it could not be done.
 */
export async function writeAll(folder: string, files: readonly OutFile[]): Promise<string | undefined> {
  const steps = files.map((f) => ({ ...f, to: resolve(folder, f.path), part: `${resolve(folder, f.path)}.part` }));
  try {
    for (const { to, part, bytes } of steps) {
      await mkdir(dirname(to), { recursive: true });
      await writeFile(part, bytes);
    }
    for (const { to, part } of steps) await rename(part, to);
    return undefined;
  } catch (e) {
    await Promise.all(steps.map(({ part }) => rm(part, { force: true }).catch(() => undefined)));
    const { code, path } = e as NodeJS.ErrnoException;
    return `${path?.replace(/\.part$/, '') ?? 'the files'} cannot be written (${code ?? String(e)})`;
  }
}
