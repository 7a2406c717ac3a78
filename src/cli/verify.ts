/** `turnsheet verify`: claims files proved by the second checker, which shares nothing with what made them. */
import { auditClaims } from '../audit/audit-claims.ts';
import type { Fault } from '../audit/claims-file.ts';
import { LARGEST_CLAIMS } from '../marking/limits.ts';
import { readBytes } from './files.ts';
import { documentOf, type ExitCode, type Io } from './io.ts';
import type { VerifyOptions } from './options.ts';
import { counted, harmless } from './report.ts';

interface Verified {
  readonly file: string;
  /** Claims of solutions that were proved. */
  readonly claims: number;
  /** Questions which rule is so, answered from what is printed. */
  readonly questions: number;
  /** Claims of other kinds, which this checker does not know. */
  readonly others: number;
  readonly faults: readonly Fault[];
}

const unread = (file: string, fault: string): Verified => ({
  file,
  claims: 0,
  questions: 0,
  others: 0,
  faults: [{ id: '', fault }],
});

async function verifyFile(file: string, io: Io): Promise<Verified> {
  const bytes = await readBytes(io.folder, file, LARGEST_CLAIMS);
  if ('unreadable' in bytes) return unread(file, bytes.unreadable);
  let json: unknown;
  try {
    json = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return unread(file, 'it is no JSON: name the NAME.claims.json that "build" writes');
  }
  const { solutions, questions, others, faults } = auditClaims(json);
  return { file, claims: solutions.length, questions: questions.length, others, faults };
}

function textOf({ file, claims, questions, others, faults }: Verified): string {
  const lines = faults.map(({ id, fault }) => `${file}: ${id === '' ? '' : `claim ${id}: `}${harmless(fault)}`);
  const asked = questions > 0 ? `, ${counted(questions, 'question')} answered again` : '';
  const left = others > 0 ? `; ${counted(others, 'claim')} of other kinds not looked at` : '';
  const wrong = faults.length > 0 ? `${counted(faults.length, 'fault')} in ` : '';
  // Of a file that could not be read there is no more to say.
  const summary = faults.some(({ id }) => id === '')
    ? []
    : [`${file}: ${wrong}${counted(claims, 'solution')} proved again${asked}${left}`];
  return `${[...lines, ...summary].join('\n')}\n`;
}

export async function verify({ files, json }: VerifyOptions, io: Io): Promise<ExitCode> {
  const verified: Verified[] = [];
  for (const file of files) {
    const one = await verifyFile(file, io);
    verified.push(one);
    if (!json) io.err(textOf(one));
  }
  const ok = verified.every(({ faults }) => faults.length === 0);
  if (json) io.out(documentOf({ ok, files: verified }));
  return ok ? 0 : 1;
}
