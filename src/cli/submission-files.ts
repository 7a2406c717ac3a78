/** Claims files and submissions named on the command line -> what is in them. */
import { readdir, stat } from 'node:fs/promises';
import { basename, dirname, extname, join, resolve } from 'node:path';
import { type ClaimsText, readClaimsText } from '../marking/claims-file.ts';
import { isUnreadable, type SubmissionsRead, type Unreadable } from '../marking/fields.ts';
import { LARGEST_CLAIMS, LARGEST_SUBMISSIONS, MOST_ROWS } from '../marking/limits.ts';
import { type IsPaper, readSubmissions, SUBMISSION_FILES } from '../marking/read-submissions.ts';
import type { Submission } from '../marking/submission.ts';
import { readBytes } from './files.ts';

/** What is wrong with a file, or with a row or a claim of it. */
export interface FileProblem {
  readonly severity: 'error' | 'warning';
  readonly file: string;
  readonly row?: number;
  readonly claim?: string;
  readonly message: string;
}

async function bytesOf(
  folder: string,
  file: string,
  largest: number,
): Promise<Uint8Array | { readonly unreadable: string }> {
  const bytes = await readBytes(folder, file, largest);
  if ('unreadable' in bytes || bytes.length <= largest) return bytes;
  return { unreadable: `it is larger than ${largest / 1_000_000} MB` };
}

async function readFile(folder: string, file: string, isPaper?: IsPaper): Promise<SubmissionsRead | Unreadable> {
  const bytes = await bytesOf(folder, file, LARGEST_SUBMISSIONS);
  return 'unreadable' in bytes ? bytes : readSubmissions(file, bytes, isPaper);
}

/** What a file that is given as claims is instead, as far as it can be told. */
function mistakenFor(file: string, bytes: Uint8Array): string | undefined {
  if (Buffer.from(bytes.subarray(0, 5)).toString('latin1') === '%PDF-') return 'it is a printed sheet';
  if (/\.(?:csv|tsv|txt)$/i.test(file)) return 'it is a file of answers';
  return /\.ya?ml$/i.test(file) ? 'it is a lesson or a file of answers' : undefined;
}

/**
 * The claims file of a sheet or a lesson: beside it, or where "build" writes if it is told nothing. A sheet is called
 * after its lesson, and what it is may follow: `edge-away-key.pdf`.
 */
async function claimsFor(folder: string, file: string): Promise<string | undefined> {
  const stem = basename(file, extname(file));
  const names = stem.split('-').map((_, i, parts) => `${parts.slice(0, parts.length - i).join('-')}.claims.json`);
  for (const path of [dirname(file), 'out'].flatMap((at) => names.map((name) => join(at, name)))) {
    if (await stat(resolve(folder, path)).catch(() => undefined)) return path;
  }
  return undefined;
}

async function whyNoClaims(folder: string, file: string, bytes: Uint8Array, unreadable: string): Promise<string> {
  const what = mistakenFor(file, bytes);
  if (what === undefined) return unreadable;
  const claims = await claimsFor(folder, file);
  const remedy = claims ? `name ${claims} in its place` : 'name the .claims.json that "build" wrote with the handout';
  return `${what}, not a claims file: ${remedy}`;
}

export async function readClaims(
  folder: string,
  files: readonly string[],
  problems: FileProblem[],
): Promise<ClaimsText[]> {
  const read: ClaimsText[] = [];
  for (const file of files) {
    const bytes = await bytesOf(folder, file, LARGEST_CLAIMS);
    const claims = 'unreadable' in bytes ? bytes : readClaimsText(file, new TextDecoder().decode(bytes));
    if (!('unreadable' in claims)) read.push(claims);
    else {
      const { unreadable } = claims;
      const message = 'unreadable' in bytes ? unreadable : await whyNoClaims(folder, file, bytes, unreadable);
      problems.push({ severity: 'error', file, message });
    }
  }
  return read;
}

/** Not a folder, nor a pipe, which could keep us waiting for ever; a link to a file is one. */
const isFile = async (path: string): Promise<boolean> => (await stat(path).catch(() => undefined))?.isFile() ?? false;

/**
 * Files as they are, folders as the submissions in them, by name: no hidden files, which systems leave beside others,
 * and not the class table that we write ourselves.
 */
async function expanded(folder: string, names: readonly string[], ours: string): Promise<string[]> {
  const all: string[] = [];
  for (const name of names) {
    const info = await stat(resolve(folder, name)).catch(() => undefined);
    if (!info?.isDirectory()) all.push(name);
    else {
      const isOne = (n: string): boolean => SUBMISSION_FILES.test(n) && !n.startsWith('.') && n !== ours;
      const inside = (await readdir(resolve(folder, name))).filter(isOne).sort((a, b) => (a < b ? -1 : 1));
      for (const n of inside) if (await isFile(resolve(folder, name, n))) all.push(join(name, n));
    }
  }
  return all;
}

export interface Gathered {
  readonly rows: readonly Submission[];
  readonly files: readonly { readonly file: string; readonly rows: number; readonly blank: number }[];
}

export async function gatherSubmissions(
  folder: string,
  names: readonly string[],
  ours: string,
  isPaper: IsPaper,
  problems: FileProblem[],
): Promise<Gathered> {
  const rows: Submission[] = [];
  const files: { file: string; rows: number; blank: number }[] = [];
  const all = await expanded(folder, names, ours);
  if (all.length === 0) {
    problems.push({ severity: 'error', file: names[0]!, message: 'the folder has no CSV, YAML or text file' });
  }
  for (const file of all) {
    const read = await readFile(folder, file, isPaper);
    if (isUnreadable(read)) {
      const { unreadable: message, row } = read;
      problems.push({ severity: 'error', file, ...(row !== undefined && { row }), message });
      continue;
    }
    for (const fault of read.faults) problems.push({ severity: 'warning', file, ...fault });
    rows.push(...read.rows);
    files.push({ file, rows: read.rows.length, blank: read.blank });
  }
  if (rows.length > MOST_ROWS) {
    const message = `more than ${MOST_ROWS} rows: mark one class at a time`;
    problems.push({ severity: 'error', file: names[0]!, message });
    return { rows: [], files };
  }
  return { rows, files };
}

/** The rows of a class table that is there from an earlier run. */
export async function earlierTable(
  folder: string,
  file: string,
  problems: FileProblem[],
): Promise<readonly Submission[]> {
  if (!(await stat(resolve(folder, file)).catch(() => undefined))) return [];
  const read = await readFile(folder, file);
  const isTable = !isUnreadable(read) && (read.rows.length === 0 || read.columns?.has('mark'));
  if (isTable) return read.rows;
  // Written over, the coach's marks in it would be lost.
  const why = isUnreadable(read) ? read.unreadable : 'it has no column mark';
  const message = `${why}: its marks would be lost; mend it or move it away`;
  problems.push({ severity: 'error', file, message });
  return [];
}
