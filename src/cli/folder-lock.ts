/**
 * One turnsheet at a time writes into a folder: a file there names the process, and what it is about to make. Who finds
 * the file of a process that is no more takes back what that one left half done.
 */
import { randomBytes } from 'node:crypto';
import { open, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

const LOCK = '.turnsheet-lock';
/** What stood there before, until all is written. */
export const OLD = '.turnsheet-old';
/** Written, and not yet in its place. */
export const NEW = '.turnsheet-new';

const STEP = 50;
const LONGEST = 20_000;
const UNNAMED = 2_000;

interface Held {
  readonly pid: number;
  /** Names of files that were not there before. */
  readonly made: readonly string[];
}

const codeOf = (e: unknown): string | undefined => (e as NodeJS.ErrnoException).code;

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (e) {
    // It is there, and another's.
    return codeOf(e) === 'EPERM';
  }
}

/** Who is no more, and what it was about to make; undefined while someone is at it. */
async function leftIn(path: string): Promise<Held | undefined> {
  try {
    const { mtimeMs } = await stat(path);
    const { pid, made } = JSON.parse((await readFile(path, 'utf8')) || '{}') as Partial<Held>;
    if (typeof pid === 'number' && Array.isArray(made)) return isAlive(pid) ? undefined : { pid, made };
    // Ended before it wrote who it was.
    return Date.now() - mtimeMs > UNNAMED ? { pid: 0, made: [] } : undefined;
  } catch {
    return undefined;
  }
}

/** What a process left that was ended in the midst of writing: as if it had not begun. */
async function takeBack(folder: string, { made }: Held): Promise<void> {
  const names = await readdir(folder);
  const isName = (name: unknown): name is string => typeof name === 'string' && !/[\\/]/.test(name);
  for (const name of made.filter(isName)) await rm(join(folder, name), { force: true });
  for (const name of names) {
    if (name.endsWith(NEW)) await rm(join(folder, name), { force: true });
    if (name.endsWith(OLD)) await rename(join(folder, name), join(folder, name.slice(0, -OLD.length)));
  }
}

/** Whether the folder is ours now. */
async function tryLock(folder: string): Promise<boolean> {
  const path = join(folder, LOCK);
  try {
    const handle = await open(path, 'wx');
    await handle.writeFile(JSON.stringify({ pid: process.pid, made: [] } satisfies Held));
    await handle.close();
    return true;
  } catch (e) {
    if (codeOf(e) !== 'EEXIST') throw e;
  }
  const held = await leftIn(path);
  if (!held) return false;
  // Of several who find it one alone can rename it.
  const left = `${path}-${randomBytes(6).toString('hex')}`;
  if (
    !(await rename(path, left).then(
      () => true,
      () => false,
    ))
  )
    return false;
  await takeBack(folder, held);
  await rm(left, { force: true });
  return tryLock(folder);
}

/** Notes in each folder what is about to be made there, in case it is not finished. */
export type Note = (folder: string, made: readonly string[]) => Promise<void>;

/**
 * Does some work while no other turnsheet writes into these folders, which are there. Undefined if one of them was not to
 * be had for twenty seconds.
 */
export async function whileLocked<T>(
  folders: readonly string[],
  work: (note: Note) => Promise<T>,
): Promise<T | undefined> {
  const held: string[] = [];
  const note: Note = (folder, made) =>
    writeFile(join(folder, LOCK), JSON.stringify({ pid: process.pid, made } satisfies Held));
  try {
    // In one order for all, so that no two wait for each other.
    for (const folder of [...new Set(folders)].sort()) {
      for (let waited = 0; !(await tryLock(folder)); waited += STEP) {
        if (waited >= LONGEST) return undefined;
        await wait(STEP);
      }
      held.push(folder);
    }
    return await work(note);
  } finally {
    for (const folder of held) await rm(join(folder, LOCK), { force: true });
  }
}
