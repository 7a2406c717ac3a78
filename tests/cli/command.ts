/** Runs a command as the process would, in a folder of its own, and catches what it says. */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run } from '../../src/cli/run.ts';

export interface Said {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

export const newFolder = (): string => mkdtempSync(join(tmpdir(), 'turnsheet-'));

export function put(folder: string, name: string, text: string): string {
  writeFileSync(join(folder, name), text);
  return name;
}

export async function command(
  folder: string,
  args: readonly string[],
  {
    terminal = false,
    env = {},
    stop = new AbortController().signal,
    heard = () => undefined,
    typed = [],
  }: {
    terminal?: boolean;
    env?: Record<string, string>;
    stop?: AbortSignal;
    heard?: (text: string) => void;
    typed?: readonly string[];
  } = {},
): Promise<Said> {
  let out = '';
  let err = '';
  const lines = [...typed];
  const code = await run(args, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
      heard(text);
    },
    ask: (question) => {
      err += question;
      return Promise.resolve(lines.shift());
    },
    env,
    terminal,
    folder,
    stop,
  });
  return { code, out, err };
}
