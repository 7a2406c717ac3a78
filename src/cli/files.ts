/** Reading and writing files. */
import { randomBytes } from 'node:crypto';
import { access, copyFile, link, mkdir, open, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, isAbsolute, join, normalize, resolve } from 'node:path';
import { NEW, type Note, OLD, whileLocked } from './folder-lock.ts';

/** The file that `file` calls `name`: as it is seen from its own folder. */
export const seenFrom = (file: string, name: string): string =>
  normalize(isAbsolute(name) ? name : join(dirname(file), name));

/** Bytes; no lesson, course or roster comes near it. */
const LARGEST = 4_000_000;

const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'it may not be read',
  EPERM: 'it may not be read',
};

/**
 * The bytes, or why there are none, in words. Of what has more than `largest` only a little more is read, which tells it:
 * what is no file at all (a device, a pipe without end) is not read for ever.
 */
export async function readBytes(
  folder: string,
  file: string,
  largest = LARGEST,
): Promise<Uint8Array | { readonly unreadable: string }> {
  try {
    const handle = await open(resolve(folder, file));
    try {
      const chunks: Uint8Array[] = [];
      let size = 0;
      for await (const chunk of handle.createReadStream({ autoClose: false })) {
        chunks.push(chunk as Uint8Array);
        size += (chunk as Uint8Array).length;
        if (size > largest) break;
      }
      return Buffer.concat(chunks);
    } finally {
      await handle.close();
    }
  } catch (e) {
    return { unreadable: WHY[(e as NodeJS.ErrnoException).code ?? ''] ?? 'it cannot be read' };
  }
}

export interface OutFile {
  readonly path: string;
  readonly bytes: Uint8Array | string;
}

/** Whether there is anything at a path. */
export const isThere = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

/**
 * Writes all files or none, while no other turnsheet writes there. Each is written whole beside its place first; then what
 * stands there is kept under another name too, and the new one takes its place in one step: a reader finds the old one or
 * the new. If any step fails, all are taken back; if the process is ended in the midst, the next one does it. Undefined, or
 * why it could not be done.
 */
export async function writeAll(folder: string, files: readonly OutFile[]): Promise<string | undefined> {
  const steps = files.map(({ path, bytes }) => {
    const to = resolve(folder, path);
    // By chance, so that nobody has put a link there that would be followed.
    return { path, bytes, to, part: `${to}.${randomBytes(6).toString('hex')}${NEW}`, old: `${to}${OLD}` };
  });
  const folders = [...new Set(steps.map(({ to }) => dirname(to)))];
  let at = steps[0]?.path ?? '';
  try {
    for (const { path, to } of steps) {
      at = path;
      await mkdir(dirname(to), { recursive: true });
    }
    const done = await whileLocked(folders, (note) =>
      replaceAll(steps, note, (path) => {
        at = path;
      }),
    );
    return done ? undefined : `${dirname(at)} is being written to by another turnsheet`;
  } catch (e) {
    return `${at} cannot be written (${(e as NodeJS.ErrnoException).code ?? String(e)})`;
  }
}

interface Step extends OutFile {
  readonly to: string;
  readonly part: string;
  readonly old: string;
}

/** Throws what keeps one from being written, when all is as it was; `beginning` with each that is tried. */
async function replaceAll(steps: readonly Step[], note: Note, beginning: (path: string) => void): Promise<true> {
  const undo: (() => Promise<void>)[] = [];
  try {
    for (const { path, part, bytes } of steps) {
      beginning(path);
      await writeFile(part, bytes, { flag: 'wx' });
    }
    const there = new Set<string>();
    for (const { to } of steps) if (await isThere(to)) there.add(to);
    for (const folder of new Set(steps.map(({ to }) => dirname(to)))) {
      const made = steps.filter(({ to }) => dirname(to) === folder && !there.has(to));
      await note(
        folder,
        made.map(({ to }) => basename(to)),
      );
    }
    for (const { path, to, old } of steps) {
      beginning(path);
      if (there.has(to)) await keepCopy(to, old);
    }
    for (const { path, to, part, old } of steps) {
      beginning(path);
      await rename(part, to);
      undo.push(() => (there.has(to) ? rename(old, to) : rm(to, { force: true })));
    }
  } catch (e) {
    for (const step of undo.reverse()) await step().catch(() => undefined);
    await removeAll(steps.flatMap((s) => [s.part, s.old]));
    throw e;
  }
  await removeAll(steps.map((s) => s.old));
  return true;
}

/** A second name for a file; a copy where the file system has no second names. */
const keepCopy = async (from: string, to: string): Promise<void> => {
  await rm(to, { force: true });
  await link(from, to).catch(() => copyFile(from, to));
};

const removeAll = async (paths: readonly string[]): Promise<void> => {
  await Promise.all(paths.map((path) => rm(path, { force: true, recursive: true }).catch(() => undefined)));
};
